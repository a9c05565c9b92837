#include "core/proposal/proposal.h"
#include "scenario.h"
#include "ui/followed.h"
#include "ui/likeshapes.h"
#include "ui/menutyping.h"
#include "ui/passage.h"
#include "ui/words.h"

#include <catch2/catch.hpp>

#include <set>

using namespace ui;

namespace {

proposal::Proposal const& proposed()
{
    static proposal::Proposal const made = [] {
        auto proposal = proposal::propose(scenario::brief());
        REQUIRE(proposal);
        return *std::move(proposal);
    }();
    return made;
}

arrange::Voicing const& voicingOf(proposal::Proposal const& proposal, ShapeAt const& shape)
{
    return proposal.lattice.candidates[shape.position][shape.candidate].voicing;
}

} // namespace

TEST_CASE("A passage over a repeat is heard where the tune goes straight on", "[ui]")
{
    tune::Playing const playing = tune::played(scenario::jig());
    REQUIRE(playing.bars.size() == 32);
    // Each part of eight bars twice over: bar 8 goes on to bar 9 the second time only.
    CHECK(playedPassage(playing, {6, 9}) == PlayedPassage{14, 17});
    CHECK(playedPassage(playing, {0, 1}) == PlayedPassage{0, 1});
    CHECK(playedPassage(playing, {3, 3}) == PlayedPassage{3, 3});
    CHECK(playedPassage(playing, {0, 15}) == PlayedPassage{8, 23});
    CHECK_FALSE(playedPassage(playing, {0, 99}));
    CHECK(passageBetween(5, 2) == Passage{2, 5});
    CHECK(passageWords(scenario::jig(), {4, 5}) == QStringLiteral("Bars 5–6"));
    CHECK(passageWords(scenario::jig(), {4, 4}) == QStringLiteral("Bar 5"));
}

TEST_CASE("A shape is found where the same notes come again, and at every close", "[ui]")
{
    auto const& positions = proposed().arrangement.positions;
    auto const& tune = proposed().arrangement.tune;
    auto const notesOf = [&](arrange::PositionIndex position) {
        std::string out;
        auto const& at = positions[position].position;
        for (tune::Note const& note : tune.bars[at.bar].notes)
            if (note.at >= at.at && note.at < at.at + at.span)
                for (music::Pitch const pitch : note.pitches) out += music::plain(pitch) + ' ';
        return out;
    };
    int found = 0;
    for (arrange::PositionIndex const here : positions.indices()) {
        for (ShapeAt const& one :
             atEveryPlaceLike(proposed(), here, positions[here].voicing, Like::Notes)) {
            ++found;
            CHECK(notesOf(one.position) == notesOf(here));
            CHECK(one.position != here);
        }
    }
    CHECK(found > 0);

    // Two parts: the close of the first, from that of the tune.
    arrange::PositionIndex const last = positions.beyond() - 1;
    auto const closes =
        atEveryPlaceLike(proposed(), last, positions[last].voicing, Like::Close);
    REQUIRE_FALSE(closes.empty());
    for (ShapeAt const& one : closes) {
        tune::BarIndex const bar = positions[one.position].position.bar;
        CHECK((tune.bars[bar].repeatCloses || bar + 1 == tune.bars.size()));
    }
}

TEST_CASE("A shape is found again under the same chord elsewhere, and only there", "[ui]")
{
    arrange::Voicing const shape = proposed().arrangement.positions[0].voicing;
    auto const shapes = atEveryPlaceLike(proposed(), 0, shape, Like::Chord);
    REQUIRE_FALSE(shapes.empty());
    std::set<int> places;
    for (ShapeAt const& one : shapes) {
        auto const& there = proposed().arrangement.positions[one.position].position;
        CHECK(there.chord == proposed().arrangement.positions[0].position.chord);
        CHECK(there.span == proposed().arrangement.positions[0].position.span);
        CHECK(voicingOf(proposed(), one).pattern == shape.pattern);
        CHECK(places.insert(one.position).second);
    }
    CHECK_FALSE(places.contains(0));
    // Whole bars of G in the jig besides the first: 5, 8, 11 and 16, counted by hand.
    CHECK(places.size() <= 5);
}

TEST_CASE("Two shapes swapped stand each in the other's place", "[ui]")
{
    // Bars 1 and 4 of the jig: G and D for a whole bar.
    auto const shapes = swapped(proposed(), 0, 4);
    REQUIRE(shapes);
    CHECK(voicingOf(proposed(), (*shapes)[0]).pattern ==
          proposed().arrangement.positions[4].voicing.pattern);
    CHECK(voicingOf(proposed(), (*shapes)[1]).pattern ==
          proposed().arrangement.positions[0].voicing.pattern);
}

TEST_CASE("What followed a choice are just the other chords that sound otherwise now", "[ui]")
{
    int somethingFollowed = 0;
    for (arrange::PositionIndex position = 0; position < 6; ++position) {
        auto const ranked = proposal::variants(proposed(), position);
        for (std::size_t rank = 1; rank < std::min<std::size_t>(5, ranked.size()); ++rank) {
            auto const after =
                proposal::withChoice(proposed(), position, ranked[rank].candidate, true);
            REQUIRE(after);
            auto const followed = followedAfter({}, shapesOf(proposed()), *after, position);
            std::set<arrange::PositionIndex> expected; // from the sounding notes
            for (arrange::PositionIndex const i : after->arrangement.positions.indices()) {
                auto const now = after->solution.best.candidates[i];
                if (now != proposed().solution.best.candidates[i] && i != position)
                    expected.insert(i);
            }
            std::set<arrange::PositionIndex> told;
            for (Followed const& f : followed) {
                told.insert(f.position);
                CHECK(followedWords(after->arrangement, f).startsWith("Bar"));
            }
            CHECK(told == expected);
            somethingFollowed += told.empty() ? 0 : 1;
            // Taken back, nothing has followed any more.
            auto const back = proposal::withoutLock(*after, position);
            CHECK(followedAfter(followed, shapesOf(*after), back, position).empty());
        }
    }
    CHECK(somethingFollowed > 0);
}

TEST_CASE("Nothing follows from one tune to another", "[ui]")
{
    proposal::Brief brief = scenario::brief();
    brief.tune.bars.resize(8);
    auto const other = proposal::propose(brief);
    REQUIRE(other);
    CHECK(followedAfter({}, shapesOf(proposed()), *other, 0).empty());
}

TEST_CASE("Digits that are typed find the number that begins with them", "[ui]")
{
    CHECK(numberBegins("34 strings", "3"));
    CHECK(numberBegins("34 strings", "34"));
    CHECK(numberBegins("Lap harp, 26 strings", "26"));
    CHECK_FALSE(numberBegins("34 strings", "4"));
    CHECK_FALSE(numberBegins("medium", "1"));
}
