#include "core/files/abc/read.h"
#include "core/files/abc/write.h"
#include "core/files/textfile.h"
#include "core/files/work/document.h"
#include "core/harmony/findchords.h"
#include "core/music/typedchord.h"
#include "core/pattern/own.h"
#include "core/proposal/asked.h"
#include "core/proposal/proposal.h"
#include "core/tune/chordorigin.h"
#include "tests/places.h"
#include "tests/tune/randomtunes.h"

#include <catch2/catch.hpp>

using namespace files;

namespace {

Tables const& shelf()
{
    static Tables const tables = *readTables(places::shared());
    return tables;
}

SavedWork example()
{
    std::string const abc = "X:4\nT:The Sluice\nM:3/4\nL:1/4\nQ:1/4=80\nK:G\n"
                            "\"G\"GBd|\"C\"ceg|\"D\"fed|\"G\"g3|]\n";
    SavedWork work{abc,
                   {*readAbc(abc, abcTunes(abc)->front(), "test"),
                    *harpFrom(shelf(), "lap26", "C", "CF"), *handFrom(shelf(), "small"),
                    *levelFrom(shelf(), 2), shelf().book, *styleFrom(shelf(), "open")}};
    work.brief.key = *music::keyFrom("G");
    work.brief.quartersPerMinute = 72.5;
    return work;
}

} // namespace

TEST_CASE("A saved arrangement reads back with every decision", "[document]")
{
    SavedWork work = example();
    auto proposal = proposal::propose(work.brief);
    REQUIRE(proposal);
    proposal = proposal::withChoice(*std::move(proposal), 1, 2, true);
    work.brief = proposal->brief;
    work.brief.passes = proposal::Passes::Written;
    work.brief.snagChoices = {{{1, 0, 0, false}, tune::Way::Held, true},
                              {{0, 1, 0, false}, tune::Way::LeaveOut, false}};
    work.brief.changes = {{{1, 1, 0, false}, tune::Change::OctaveLower},
                          {{3, 0, 0, false}, tune::Change::LeftOut}};
    work.brief.leverWishes = {{music::Letter::F, 3, harp::Lever::Down}};
    proposal = proposal::propose(work.brief);
    REQUIRE(proposal);

    auto const again = readDocument(documentText(work, shelf()), shelf(), "a.sallow");
    REQUIRE(again);
    CHECK(again->abc == work.abc);
    CHECK(again->brief.tune == work.brief.tune);
    CHECK(again->brief.harp == work.brief.harp);
    CHECK(again->brief.hand == work.brief.hand);
    CHECK(again->brief.level == work.brief.level);
    CHECK(again->brief.weights.style == "open");
    CHECK(again->brief.key == work.brief.key);
    CHECK(again->brief.quartersPerMinute == 72.5);
    REQUIRE(again->brief.locks.size() == 1);
    CHECK(again->brief.changes == work.brief.changes);
    CHECK(again->brief.snagChoices == work.brief.snagChoices);
    CHECK(again->brief.leverWishes == work.brief.leverWishes);
    auto const reopened = proposal::propose(again->brief);
    REQUIRE(reopened);
    CHECK(reopened->solution.best == proposal->solution.best);
    CHECK(reopened->lattice.locks == proposal->lattice.locks);
    CHECK(documentText(*again, shelf()) == documentText(work, shelf()));
}

TEST_CASE("Own patterns, sliders and the take are saved, and locks on own patterns hold",
          "[document]")
{
    SavedWork work = example();
    work.brief.level = *levelFrom(shelf(), 4);
    for (char const* text : {"1 5 8 (4 3 1)", "1 5 3"})
        work.brief.book =
            pattern::withOwn(work.brief.book, *pattern::ownPatternFrom(text)).book;
    work.brief.sliders = arrange::withSlider({}, *sliderFrom(shelf(), "ease"), 160);
    work.brief.take = 1;
    auto proposal = proposal::propose(work.brief);
    REQUIRE(proposal);
    proposal = proposal::withPattern(*std::move(proposal), 1, "1-5-8 (4-3-1)");
    REQUIRE(proposal);
    work.brief = proposal->brief;

    auto const again = readDocument(documentText(work, shelf()), shelf(), "a.sallow");
    REQUIRE(again);
    CHECK(again->brief.book.patterns == work.brief.book.patterns);
    CHECK(again->brief.sliders == work.brief.sliders);
    CHECK(again->brief.take == 1);
    auto const reopened = proposal::propose(again->brief);
    REQUIRE(reopened);
    CHECK(reopened->solution.best == proposal->solution.best);
    CHECK(reopened->arrangement.positions[1].voicing.pattern == "1-5-8 (4-3-1)");
}

TEST_CASE("Introduction, ending and times through are saved, and refused where none is such",
          "[document]")
{
    SavedWork work = example();
    CHECK(documentText(work, shelf()).find("\"form\"") == std::string::npos);
    work.brief.form = {2, 4, {*timeMannerFrom(shelf(), "bare"), *timeMannerFrom(shelf(), "high")}};
    std::string const text = documentText(work, shelf());
    auto const again = readDocument(text, shelf(), "a.sallow");
    REQUIRE(again);
    CHECK(again->brief.form == work.brief.form);
    CHECK(again->brief.tune == work.brief.tune);
    CHECK(again->abc == work.abc);
    for (auto const& [right, wrong] :
         {std::pair{"\"high\"", "\"loud\""}, std::pair{"\"introduction\": 2", "\"introduction\": 3"}}) {
        std::string damaged = text;
        damaged.replace(damaged.find(right), std::string(right).size(), wrong);
        CAPTURE(damaged.substr(0, 20), wrong);
        CHECK_FALSE(readDocument(damaged, shelf(), "a.sallow"));
    }
}

TEST_CASE("A document from before own patterns and sliders still opens", "[document]")
{
    std::string text = documentText(example(), shelf());
    auto const from = text.find(" \"sliders\"");
    text.erase(from, text.find(" \"locks\"") - from);
    auto const read = readDocument(text, shelf(), "a.sallow");
    REQUIRE(read);
    CHECK(read->brief.sliders.empty());
    CHECK(read->brief.take == 0);
}

TEST_CASE("The arranger's words for the page are kept beside the tune's own lines",
          "[document]")
{
    SavedWork work = example();
    CHECK(documentText(work, shelf()).find("\"words\"") == std::string::npos);
    work.brief.tune.title = "The Sluice, for two";
    work.brief.tune.arranger = "A. Willow";
    work.brief.tune.copyright = "© A. Willow";
    work.brief.tune.notes = {"Slowly.", "Let it ring."};
    auto const again = readDocument(documentText(work, shelf()), shelf(), "a.sallow");
    REQUIRE(again);
    CHECK(again->brief.tune == work.brief.tune);
    CHECK(again->abc == work.abc);
    std::string text = documentText(work, shelf());
    text.replace(text.find("\"A. Willow\""), 11, "17");
    auto const damaged = readDocument(text, shelf(), "a.sallow");
    REQUIRE_FALSE(damaged);
    CHECK(damaged.error().code == base::FaultCode::Malformed);
}

TEST_CASE("A damaged saved arrangement is refused with its line", "[document]")
{
    std::string const good = documentText(example(), shelf());
    auto const damaged = [&](std::string const& what, std::string const& with) {
        std::string text = good;
        text.replace(text.find(what), what.size(), with);
        auto const read = readDocument(text, shelf(), "a.sallow");
        REQUIRE_FALSE(read);
        return read.error();
    };
    CHECK(damaged("\"level\": 2,", "\"level\": ,").place == "a.sallow, line 10");
    CHECK(damaged("\"key\": \"G\"", "\"key\": \"H\"").place == "a.sallow, line 12");
    CHECK(damaged("\"sallow\": 2", "\"sallow\": 0").code == base::FaultCode::Malformed);
    CHECK(damaged("lap26", "lap99").code == base::FaultCode::NoSuchHarp);
    CHECK(damaged("\"hand\": \"small\",", "").code == base::FaultCode::Malformed);
    CHECK(damaged("K:G", "K:?").code == base::FaultCode::BadKey);
    CHECK_FALSE(readDocument("", shelf(), "a.sallow"));
}

TEST_CASE("A file of a newer form is refused with a word of its own", "[document]")
{
    std::string text = documentText(example(), shelf());
    text.replace(text.find("\"sallow\": 2"), 11, "\"sallow\": 3");
    auto const read = readDocument(text, shelf(), "a.sallow");
    REQUIRE_FALSE(read);
    CHECK(read.error().code == base::FaultCode::FileUnreadable);
    CHECK(base::sentence(read.error()).find("newer Sallow") != std::string::npos);
}

namespace {
std::filesystem::path forms() { return std::filesystem::path(places::tests()) / "files" / "forms"; }
} // namespace

// The folder holds files as every form of the program saved them; none of them is ever changed.
TEST_CASE("Every file that was ever saved still opens, arranges and is saved anew", "[document]")
{
    int opened = 0;
    for (auto const& file : std::filesystem::directory_iterator(forms())) {
        CAPTURE(file.path().filename().string());
        auto const text = readTextFile(file.path());
        REQUIRE(text);
        auto const read = readDocument(*text, shelf(), file.path().string());
        REQUIRE(read);
        CHECK(proposal::propose(read->brief));
        std::string const saved = documentText(*read, shelf());
        auto const again = readDocument(saved, shelf(), "again.sallow");
        REQUIRE(again);
        CHECK(documentText(*again, shelf()) == saved);
        CHECK(again->brief.tune == read->brief.tune);
        CHECK(again->brief.harp == read->brief.harp);
        CHECK(again->brief.locks == read->brief.locks);
        CHECK(again->brief.changes == read->brief.changes);
        ++opened;
    }
    CHECK(opened >= 4);
}

TEST_CASE("The earliest form keeps its shape under its old name, a full one all of its decisions",
          "[document]")
{
    auto const open = [](char const* name) {
        return *readDocument(*readTextFile(forms() / name),
                             shelf(), name);
    };
    SavedWork const earliest = open("form1-earliest.sallow");
    REQUIRE(earliest.brief.locks.size() == 1);
    CHECK(earliest.brief.locks[0].voicing.pattern.find("low") != std::string::npos);
    CHECK(earliest.brief.sliders.empty());
    // A rhythm that has another name now is found under it.
    SavedWork const plain = open("form2-plain.sallow");
    REQUIRE(plain.brief.locks.size() == 1);
    CHECK(plain.brief.locks[0].voicing.rhythm == "bass, then chord");
    auto const arranged = proposal::propose(plain.brief);
    REQUIRE(arranged);
    for (std::string const& warning : arranged->warnings)
        CHECK(warning.find("that you kept") == std::string::npos);
    SavedWork const full = open("form1-everything.sallow");
    CHECK(full.brief.locks.size() == 2);
    CHECK(full.brief.changes.size() == 2);
    CHECK(full.brief.leverWishes.size() == 1);
    CHECK(full.brief.fingers.size() == 1);
    CHECK(full.brief.sliders.size() == 1);
    CHECK(full.brief.tune.title == "The Lantern Stile, for two");
    CHECK(full.brief.passes == proposal::Passes::Varied);
    CHECK(full.brief.quartersPerMinute == 90);
}

TEST_CASE("Chords that no file has are saved with where they come from", "[document]")
{
    SavedWork work = example();
    CHECK(documentText(work, shelf()).find("\"chords\"") == std::string::npos);
    auto const chord = [](char const* text) { return *music::chordFrom(text); };
    music::Length const half{music::Rational(1, 4)};
    work.brief.tune.bars[0].chords = {
        tune::chordMark({}, chord("Em7"), tune::ChordOrigin::Found),
        tune::chordMark(half, chord("D/F#"), tune::ChordOrigin::Set)};
    work.brief.tune.bars[1].chords = {tune::chordMark({}, music::noChord(), tune::ChordOrigin::Set)};
    std::string const text = documentText(work, shelf());
    auto const again = readDocument(text, shelf(), "a.sallow");
    REQUIRE(again);
    for (tune::BarIndex const bar : work.brief.tune.bars.indices())
        CHECK(again->brief.tune.bars[bar].chords == work.brief.tune.bars[bar].chords);
    CHECK(documentText(*again, shelf()) == text);
    std::string damaged = text;
    damaged.replace(damaged.find("\"Em7\""), 5, "\"Hx?\"");
    CHECK(readDocument(damaged, shelf(), "a").error().code == base::FaultCode::Malformed);
}

// A bare melody is arranged over chords that were found; what is saved must open again with them.
TEST_CASE("A tune without chords is saved with those that were found", "[document]")
{
    std::string const abc = "X:1\nT:The Bare Bank\nM:3/4\nL:1/4\nK:G\nGBd|ceg|fed|g3|]\n";
    SavedWork work = example();
    work.abc = abc;
    work.brief.tune = harmony::withFoundChords(shelf().harmony,
                                               *readAbc(abc, abcTunes(abc)->front(), "test"));
    REQUIRE(tune::hasChords(work.brief.tune));
    auto const again = readDocument(documentText(work, shelf()), shelf(), "a.sallow");
    REQUIRE(again);
    CHECK(again->abc == abc); // the file stays as it was
    CHECK(again->brief.tune == work.brief.tune);
    CHECK(proposal::propose(again->brief));
}

TEST_CASE("Who typed a tune, and its history, stay when its notes are changed", "[document]")
{
    std::string const head = "B:A book\nH:It was heard\n+:by the weir\nZ:typed by a friend\n";
    SavedWork work = example();
    work.abc = "X:4\nT:The Sluice\n" + head + "M:3/4\nL:1/4\nK:G\nGBd|ceg|fed|g3|]\n";
    work.brief.tune = *readAbc(work.abc, abcTunes(work.abc)->front(), "test");
    work.brief.tune.bars[0].notes[0].pitches[0].octave += 1;
    auto const again = readDocument(documentText(work, shelf()), shelf(), "a.sallow");
    REQUIRE(again);
    CHECK(again->abc.find(head) != std::string::npos);
    CHECK(again->brief.tune.bars[0].notes[0].pitches ==
          work.brief.tune.bars[0].notes[0].pitches);
    SavedWork twice = *again;
    twice.brief.tune.bars[1].notes[0].pitches[0].octave += 1;
    std::string const text = readDocument(documentText(twice, shelf()), shelf(), "b")->abc;
    CHECK(text.find(head) != std::string::npos);
    CHECK(text.find("Z:") == text.rfind("Z:"));
}

TEST_CASE("Decisions at random about tunes at random are saved and read back the same",
          "[document][random]")
{
    std::mt19937 random(20261130); // fixed, so that a failure can be seen again
    auto const upTo = [&random](std::size_t most) { return random() % (most + 1); };
    auto const oneOf = [&](auto const& list) { return list[upTo(list.size() - 1)]; };
    std::size_t locks = 0;
    for (int run = 0; run < 40; ++run) {
        tune::Tune const tune = randomtunes::some(random, 20);
        if (!tune::hasNotes(tune)) continue;
        std::string const abc = abcOfTune(tune);
        CAPTURE(run, abc);
        auto const read = readAbc(abc, abcTunes(abc)->front(), "test");
        REQUIRE(read);
        SavedWork work{abc,
                       {*read, *harpFrom(shelf(), "floor34", "Eb"), oneOf(shelf().hands),
                        oneOf(shelf().levels), shelf().book, oneOf(shelf().styles)}};
        proposal::Brief& brief = work.brief;
        if (upTo(1) == 0) brief.key = proposal::AsWritten{};
        if (upTo(1) == 0) brief.quartersPerMinute = 40 + static_cast<double>(upTo(400)) / 4;
        if (upTo(1) == 0) brief.passes = proposal::Passes::Varied;
        brief.right = static_cast<proposal::RightHand>(upTo(2));
        brief.take = static_cast<int>(upTo(2));
        brief.sliders =
            arrange::withSlider({}, oneOf(shelf().sliders), static_cast<int>(10 * upTo(20)));
        tune::BarIndex const bar(static_cast<int>(upTo(brief.tune.bars.size() - 1)));
        brief.fingers = {
            {static_cast<harp::Side>(upTo(1)), bar, {}, 1, 0, 1 + static_cast<int>(upTo(3))}};
        brief.changes = {{{bar, 0, 0, false}, static_cast<tune::Change>(upTo(2))}};
        if (auto proposal = proposal::propose(brief);
            proposal && !proposal->lattice.positions.empty()) {
            auto const below = [&](int count) {
                return static_cast<int>(upTo(static_cast<std::size_t>(count - 1)));
            };
            arrange::PositionIndex const at(below(proposal->lattice.positions.size()));
            arrange::CandidateIndex const which(below(proposal->lattice.candidates[at].size()));
            auto const chosen = proposal::withChoice(*std::move(proposal), at, which, true);
            if (chosen) brief = chosen->brief;
        }
        locks += brief.locks.size();
        std::string const text = documentText(work, shelf());
        auto const again = readDocument(text, shelf(), "a.sallow");
        REQUIRE(again);
        CHECK(again->abc == work.abc);
        CHECK(again->brief.tune == brief.tune);
        CHECK(again->brief.harp == brief.harp);
        CHECK(again->brief.hand == brief.hand);
        CHECK(again->brief.level == brief.level);
        CHECK(again->brief.weights.style == brief.weights.style);
        CHECK(again->brief.key == brief.key);
        CHECK(again->brief.quartersPerMinute == brief.quartersPerMinute);
        CHECK(again->brief.passes == brief.passes);
        CHECK(again->brief.right == brief.right);
        CHECK(again->brief.take == brief.take);
        CHECK(again->brief.sliders == brief.sliders);
        CHECK(again->brief.fingers == brief.fingers);
        CHECK(again->brief.changes == brief.changes);
        CHECK(again->brief.locks.size() == brief.locks.size());
        CHECK(documentText(*again, shelf()) == text);
    }
    CHECK(locks > 10);
}
