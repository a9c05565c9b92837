#include "core/files/abc/read.h"
#include "core/files/abc/write.h"
#include "core/files/work/document.h"
#include "core/harp/harp.h"
#include "core/proposal/edited.h"
#include "core/proposal/proposal.h"
#include "core/tune/chordedits.h"
#include "core/tune/edit/bars.h"
#include "core/tune/edit/notes.h"
#include "core/tune/edit/whole.h"
#include "tests/ui/scenario.h"

#include <catch2/catch.hpp>

using music::Length;
using music::Rational;

namespace {

tune::Tune blank()
{
    return tune::newTune({"The Kiln Door",
                          tune::Kind::Jig,
                          {{music::Letter::G, 0}, music::Mode::Ionian},
                          {6, 8, false},
                          8,
                          Length{Rational(1, 8)}});
}

proposal::Brief briefOf(tune::Tune tune)
{
    proposal::Brief brief = scenario::brief();
    brief.tune = std::move(tune);
    brief.key = proposal::AsWritten{};
    return brief;
}

proposal::Brief savedAndRead(proposal::Brief const& brief, std::string const& abc)
{
    std::string const text = files::documentText({abc, brief}, scenario::tables());
    auto const work = files::readDocument(text, scenario::tables(), "test.sallow");
    REQUIRE(work);
    return work->brief;
}

// Where a tune was read is not part of it.
tune::Tune withoutPlaces(tune::Tune tune)
{
    tune.said.clear();
    for (tune::Bar& bar : tune.bars) {
        bar.place = {};
        for (tune::Note& note : bar.notes) note.place = {};
    }
    return tune;
}

} // namespace

TEST_CASE("A tune of rests can be arranged: a drone until there are notes", "[editing]")
{
    for (auto key :
         {proposal::KeyWish(proposal::AsWritten{}), proposal::KeyWish(proposal::BestKey{})}) {
        proposal::Brief brief = briefOf(blank());
        brief.key = key;
        auto const made = proposal::propose(brief);
        REQUIRE(made);
        CHECK(made->arrangement.positions.size() >= 8);
    }
    proposal::Brief none = briefOf(blank());
    none.tune.bars.clear();
    CHECK(proposal::propose(none).error().code == base::FaultCode::NoNotes);
}

TEST_CASE("A tune of rests is saved and read back", "[editing]")
{
    tune::Tune const tune = blank();
    CHECK(withoutPlaces(savedAndRead(briefOf(tune), files::abcOfTune(tune)).tune) ==
          withoutPlaces(tune));
}

TEST_CASE("An edited tune is saved as it became, chords in the midst of a note with it",
          "[editing]")
{
    std::string const abc =
        "X:1\nT:The Kiln Door\nM:6/8\nL:1/8\nK:G\n\"G\"GABc2d|\"D\"d6|\"G\"G6|]\n";
    tune::Tune tune = *files::readAbc(abc, files::abcTunes(abc)->front(), "test");
    tune = withNote(tune, {1, 0}, {*music::pitchFrom("E5")}, Length{Rational(3, 4)});
    tune = withChord(tune, {1, Length{Rational(3, 8)}}, *music::chordFrom("A7"));
    tune = withBars(tune, 3);
    CHECK(withoutPlaces(savedAndRead(briefOf(tune), abc).tune) == withoutPlaces(tune));
    // An unedited tune keeps its own lines.
    tune::Tune const asRead = *files::readAbc(abc, files::abcTunes(abc)->front(), "test");
    auto const text = files::documentText({abc, briefOf(asRead)}, scenario::tables());
    CHECK(files::readDocument(text, scenario::tables(), "t")->abc == abc);
}

TEST_CASE("What was decided about bars and notes goes where they go", "[editing]")
{
    proposal::Brief brief = scenario::brief();
    proposal::Lock lock;
    lock.bar = 2;
    lock.root = music::pitchFrom("G2");
    brief.locks = {lock};
    brief.locks.push_back(lock);
    brief.locks.back().bar = 4;
    brief.fingers = {{harp::Side::Right, 4, {}, 1, 0, 2}};
    tune::Note const& fourth = brief.tune.bars[4].notes[1];
    REQUIRE_FALSE(fourth.pitches.empty());
    brief.changes = {{{4, 1, 0, false}, tune::Change::LeftOut},
                     {{2, 0, 0, false}, tune::Change::LeftOut}};

    auto const more = withEditedTune(brief, withBars(brief.tune, 3), {3, 1});
    CHECK(more.locks[0].bar == 2);
    CHECK(more.locks[1].bar == 5);
    CHECK(more.fingers[0].bar == 5);
    CHECK(more.changes[0].place.bar == 5);
    CHECK(more.changes[1].place.bar == 2);

    auto const less = withEditedTune(brief, withoutBars(brief.tune, 2, 2), {2, -1});
    REQUIRE(less.locks.size() == 1);
    CHECK(less.locks[0].bar == 3);
    REQUIRE(less.changes.size() == 1);
    CHECK(less.changes[0].place.bar == 3);

    // A note that is gone takes with it what was decided about it.
    auto const silent = withEditedTune(brief, silenced(brief.tune, {4, 1}));
    CHECK(silent.changes.size() == 1);
    auto const up = withEditedTune(brief, transposed(brief.tune, {1, 2}), {}, {1, 2});
    CHECK(up.locks[0].root == music::pitchFrom("A2"));
}
