#include "core/arrange/unfold.h"
#include "core/files/abc/read.h"
#include "core/files/abc/write.h"
#include "core/notation/lefthand.h"
#include "tests/exchange/same.h"
#include "tests/exchange/samples.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

namespace {

tune::Tune readBack(std::string const& abc)
{
    auto const entries = files::abcTunes(abc);
    REQUIRE(entries);
    auto tune = files::readAbc(abc, entries->front(), "written");
    if (!tune) FAIL(base::sentence(tune.error()));
    return *std::move(tune);
}

tune::Tune leftHandOf(std::string const& abc)
{
    auto const entries = files::abcTunes(abc);
    REQUIRE(entries);
    auto tune = files::readAbcVoice(abc, entries->front(), "LH", "written");
    if (!tune) FAIL(base::sentence(tune.error()));
    return *std::move(tune);
}

void checkSame(std::string const& head, std::string const& music)
{
    tune::Tune const tune = scenario::tuneOf("X:1\nT:t\n" + head + '\n' + music + '\n');
    std::string const abc = files::abcOfTune(tune);
    CAPTURE(abc);
    CHECK(same::difference(tune, readBack(abc)) == "");
}

// The left hand of the sheet, note by note, as the voice must have it.
void checkLeftHand(arrange::Arrangement const& arrangement, tune::Tune const& voice)
{
    REQUIRE(voice.bars.size() == arrangement.tune.bars.size());
    for (tune::BarIndex const b : voice.bars.indices()) {
        notation::StaffBar const bar = notation::leftBar(arrangement, b);
        CAPTURE(b);
        REQUIRE(voice.bars[b].notes.size() == bar.notes.size());
        CHECK(voice.bars[b].length == arrangement.tune.bars[b].length);
        for (notation::StaffNoteIndex const n : bar.notes.indices()) {
            tune::Note const& read = voice.bars[b].notes[tune::NoteIndex(n.value())];
            CHECK(read.pitches == bar.notes[n].pitches);
            CHECK(read.at == bar.notes[n].at);
            CHECK(read.tied == bar.notes[n].tied);
            std::vector<std::string> fingers;
            for (int finger : bar.notes[n].fingers) fingers.push_back(std::to_string(finger));
            if (bar.notes[n].rolled) fingers.insert(fingers.begin(), "arpeggio");
            CHECK(read.marks == fingers);
        }
    }
}

} // namespace

TEST_CASE("A tune written as ABC reads back as the same tune", "[abc][write]")
{
    SECTION("accidentals hold to the end of the bar in every octave, ties carry them over")
    {
        checkSame("M:4/4\nK:D", "^C_B=F f|F2 f2|^G4-|G2 g2|[^CE^c]2 c2|__B2 ^^F2|");
    }
    SECTION("a tie to another pitch of the same letter")
    {
        checkSame("M:4/4\nK:G", "^D4-|=D4|^D4-|D4|");
    }
    SECTION("lengths and tuplets")
    {
        checkSame("M:6/8\nK:C", "(2ab c3|(3abc (5:4:5c/d/e/f/g/ a|z3/2x/2c2 (3:2:2c2e|");
    }
    SECTION("repeats and endings")
    {
        checkSame("M:4/4\nK:C", "|:CDEF|[1 G8:|[2 A8|]");
        checkSame("M:4/4\nK:C", "C2|:CDEFGAB|1,3 c8:|2 A8:|4 F8||");
        checkSame("M:4/4\nK:C", "|:CDEF::GABc:|");
        checkSame("M:4/4\nK:C", "|::CDEF::|GABc||cBAG|]");
    }
    SECTION("meters and keys that change, pick-ups, parts and their order")
    {
        checkSame("M:C|\nP:AAB\nK:Ador",
                  "P:A\nA2|:c4d4|e6A2|[M:3/4]c2d2e2:|\nP:B\n[K:Bb]B6|c4d2|]");
    }
    SECTION("chord symbols, of first and second time too, and words")
    {
        checkSame("M:4/4\nK:C", "\"C\"\"Am\"CDEF\" \"\"G7/B\"G4|\"^with 100% care\"\"F\"C8|");
    }
    SECTION("grace notes, marks, rests that are not printed")
    {
        checkSame("M:4/4\nK:C", "{^cd}.C2 !trill!D2 x4|!fermata!z4{g}!1!c4|");
    }
    SECTION("heading with signs that mean something in ABC")
    {
        tune::Tune tune = scenario::tuneOf("X:7\nT:t\nK:C\nCDEF|\n");
        tune.title = "50% \\u0041 & more &amp; \"quotes\"";
        tune.composer = "A \\'e B";
        tune.notes = {"one", "two % three"};
        tune.tempo = tune::Tempo{{music::Rational(3, 8)}, 66.5};
        CHECK(same::difference(tune, readBack(files::abcOfTune(tune))) == "");
        CHECK(readBack(files::abcOfTune(tune)).number == 7);
    }
}

TEST_CASE("A chord symbol inside a long note cuts it in two that are tied", "[abc][write]")
{
    tune::Tune tune = scenario::tuneOf("X:1\nT:t\nK:C\n\"C\"c8|\n");
    tune.bars[0].chords.push_back(
        {{music::Rational(1, 2)}, *music::chordFrom("G7"), "G7", std::nullopt});
    tune::Tune const back = readBack(files::abcOfTune(tune));
    REQUIRE(back.bars[0].notes.size() == 2);
    CHECK(back.bars[0].notes[0].tied);
    CHECK(same::difference(tune, back, {true, false, false}) == "");
}

TEST_CASE("Both hands are voices of one ABC tune", "[abc][write]")
{
    auto const proposal = scenario::proposed(scenario::briefFor(scenario::eightBars));
    arrange::Arrangement const& arrangement = proposal.arrangement;
    std::string const abc = files::abcOfArrangement(arrangement);
    CAPTURE(abc);
    CHECK(abc.starts_with("%abc-2.1\n"));
    CHECK(abc.find("V:RH clef=treble") != std::string::npos);
    CHECK(abc.find("V:LH clef=bass") != std::string::npos);
    CHECK(abc.find("\"_Set levers") != std::string::npos);
    tune::Tune timed = arrangement.tune;
    timed.tempo = arrangement.tempo;
    CHECK(same::difference(same::sounding(timed), same::sounding(readBack(abc)), {true, true, true}) == "");
    checkLeftHand(arrangement, leftHandOf(abc));
}

TEST_CASE("Folk tunes written as ABC read back the same in both hands", "[abc][write][data][slow]")
{
    samples::someFolkTunes(25, [](tune::Tune const& tune) {
        CHECK(same::difference(tune, readBack(files::abcOfTune(tune))) == "");
        auto const proposal = proposal::propose(scenario::briefFor(tune));
        if (!proposal) return;
        std::string const abc = files::abcOfArrangement(proposal->arrangement);
        arrange::Arrangement const printed = arrange::asPrinted(proposal->arrangement);
        tune::Tune timed = printed.tune;
        timed.tempo = printed.tempo;
        CHECK(same::difference(same::sounding(timed), same::sounding(readBack(abc)), {true, true, true}) == "");
        checkLeftHand(printed, leftHandOf(abc));
    });
}

TEST_CASE("Fingers inside a chord's brackets are marks of the chord, in order", "[abc]")
{
    tune::Tune const tune = scenario::tuneOf("X:1\nT:t\nK:C\n[!4!C!2!E!1!G]2 !3!c2|\n");
    CHECK(tune.bars[0].notes[0].marks == std::vector<std::string>{"4", "2", "1"});
    CHECK(tune.bars[0].notes[1].marks == std::vector<std::string>{"3"});
}
