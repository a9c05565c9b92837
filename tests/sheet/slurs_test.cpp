#include "core/notation/handcrossing.h"
#include "core/notation/melody.h"
#include "core/notation/placings.h"
#include "core/sheet/slurs.h"
#include "tests/sheet/examples.h"
#include "tests/sheet/measure.h"
#include "tests/sheet/violations.h"

#include <catch2/catch.hpp>

using sheet::SlurSpan;

namespace {

notation::PrintedBar upperBar(std::vector<std::pair<int, int>> const& opensAndCloses)
{
    notation::PrintedBar bar;
    for (auto const& [opens, closes] : opensAndCloses) {
        notation::StaffNote note;
        note.pitches = {*music::pitchFrom("G4")};
        note.slursOpen = opens;
        note.slursClose = closes;
        bar.upper.notes.push_back(note);
    }
    return bar;
}

std::vector<sheet::Bow> bowsOf(tune::Tune const& tune, sheet::MusicFont const& font)
{
    return measure::allOf<sheet::Bow>(sheet::leadSheet(tune, font, {}).pages[0]);
}

} // namespace

TEST_CASE("Slurs nest, meet on one note and cross bar lines", "[slurs]")
{
    // (a (b c) d) | (e f) (f' ... where one ends as the next begins
    auto const spans = sheet::slurSpans({upperBar({{1, 0}, {1, 0}, {0, 1}, {0, 1}}),
                                         upperBar({{1, 0}, {1, 1}}), upperBar({{0, 1}})});
    CHECK(spans == std::vector<SlurSpan>{
                       {{0, 1}, {0, 2}}, {{0, 0}, {0, 3}}, {{1, 0}, {1, 1}}, {{1, 1}, {2, 0}}});
}

TEST_CASE("A slur without end or over one note only is not drawn", "[slurs]")
{
    CHECK(sheet::slurSpans({upperBar({{1, 0}, {0, 0}})}).empty());
    CHECK(sheet::slurSpans({upperBar({{1, 1}, {0, 1}})}).size() == 1); // opens again at its end
    CHECK(sheet::slurSpans({upperBar({{0, 1}})}).empty());
}

TEST_CASE("A slur lies below where all stems point up, else above, clear of the notes",
          "[slurs]")
{
    // The rule of [gould11], from memory.
    auto const font = measure::musicFont();
    if (!font) return;
    auto tune = example::tuneOf(
        {example::bar("E4:1/4 G4:1/4 A4:1/4 F4:1/4", example::fourFour, example::gMajor)});
    tune.bars[0].notes[0].slursOpen = 1;
    tune.bars[0].notes[3].slursClose = 1;
    auto const below = bowsOf(tune, *font);
    REQUIRE(below.size() == 1);
    CHECK(below[0].control1.y > below[0].from.y);
    tune.bars[0].notes[2].pitches = {*music::pitchFrom("D5")};
    auto const above = bowsOf(tune, *font);
    REQUIRE(above.size() == 1);
    CHECK(above[0].control1.y < above[0].from.y);
    // Its middle runs above the highest notehead.
    double highest = 1e9;
    for (sheet::Glyph const& glyph :
         measure::allOf<sheet::Glyph>(sheet::leadSheet(tune, *font, {}).pages[0]))
        if (measure::isNotehead(glyph.code)) highest = std::min(highest, glyph.at.y);
    CHECK(sheet::onBow(above[0], 0.6).y < highest - 0.5 * 7.5 / 4);
}

TEST_CASE("A tie to a note with grace notes before it runs under them", "[ties]")
{
    // Stems of grace notes point up [gould11], from memory: above, the tie would cross them.
    auto const font = measure::musicFont();
    if (!font) return;
    auto tune = example::tuneOf(
        {example::bar("B4:1/4~ B4:1/4 z:1/2", example::fourFour, example::gMajor)});
    auto const plain = bowsOf(tune, *font);
    REQUIRE(plain.size() == 1);
    CHECK(plain[0].control1.y < plain[0].from.y);
    tune.bars[0].notes[1].graces = {*music::pitchFrom("C5")};
    auto const graced = bowsOf(tune, *font);
    REQUIRE(graced.size() == 1);
    CHECK(graced[0].control1.y > graced[0].from.y);
    CHECK(measure::violations(sheet::leadSheet(tune, *font, {}), *font, 1).empty());
}

TEST_CASE("A tie from a chord with a flag keeps off the flag", "[ties]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    auto const tune = example::tuneOf({example::bar("z:3/16 C5+C6:1/16~ C5+C6:1/4 z:1/2",
                                                    example::fourFour, example::gMajor)});
    auto const ties = bowsOf(tune, *font);
    REQUIRE(ties.size() == 2);
    for (sheet::Bow const& tie : ties) CHECK(tie.control1.y < tie.from.y);
    auto const found = measure::violations(sheet::leadSheet(tune, *font, {}), *font, 1);
    CHECK(found.count("tie or slur through flag") == 0);
}

TEST_CASE("Ties of a narrow chord with a flag keep off it, whichever way its stem points",
          "[ties]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    // A fourth has room for a tie between its heads; of a third one begins beside the flag.
    for (char const* notes :
         {"z:3/8 C5+F5:1/8~ C5+F5:1/4 z:1/4", "z:3/8 C5+E5:1/8~ C5+E5:1/2",
          "z:3/8 E4+G4:1/8~ E4+G4:1/2", "z:3/8 E4+A4:1/8~ E4+A4:1/2", "z:7/8 C5+E5:1/8~"}) {
        CAPTURE(notes);
        auto const tune =
            example::tuneOf({example::bar(notes, example::fourFour, example::gMajor),
                             example::bar("C5+E5:1/1", example::fourFour, example::gMajor)});
        auto const document = sheet::leadSheet(tune, *font, {});
        auto const ties = measure::allOf<sheet::Bow>(document.pages[0]);
        REQUIRE(ties.size() == 2);
        for (sheet::Bow const& tie : ties) CHECK(tie.to.x - tie.from.x > 7.5 / 4);
        for (auto const& [kind, count] : measure::violations(document, *font, 1)) {
            CAPTURE(kind);
            CHECK(count == 0);
        }
    }
}

TEST_CASE("A high left-hand note stands on the upper staff where the tune leaves it room",
          "[crossing]")
{
    auto const written = example::bar("D5:1/2 D5:1/2", example::fourFour, example::gMajor);
    auto arrangement =
        example::arrangementOf(example::tuneOf({example::withChord(written, "G")}));
    notation::PrintedBar bar;
    bar.upper = notation::melodyBar(arrangement.tune, 0, {});
    notation::StaffNote low;
    low.length = example::wholes(1, 2);
    low.value = {1, 0};
    low.pitches = {*music::pitchFrom("G3")};
    notation::StaffNote high = low;
    high.at = example::wholes(1, 2);
    high.position = arrange::PositionIndex(1); // of another chord: a figure is not torn apart
    high.pitches = {*music::pitchFrom("G4")}; // three ledger lines over the bass staff
    bar.lower.notes = {low, high};
    notation::PrintedBar moved = bar;
    notation::moveHighNotes(moved, written);
    REQUIRE(moved.upperBelow.notes.size() == 1);
    CHECK(moved.upperBelow.notes[0].pitches == high.pitches);
    CHECK(moved.lower.notes[1].hidden);
    // A second below the tune there is no room, and an accidental would be read wrongly.
    notation::PrintedBar crowded = bar;
    crowded.upper.notes[1].pitches = {*music::pitchFrom("A4")};
    notation::moveHighNotes(crowded, written);
    CHECK(crowded.upperBelow.notes.empty());
    notation::PrintedBar altered = bar;
    altered.upper.notes[0].pitches = {*music::pitchFrom("D#5")};
    notation::moveHighNotes(altered, written);
    CHECK(altered.upperBelow.notes.empty());
}

TEST_CASE("What is plucked at once has no placing bracket, a run has one over it", "[placings]")
{
    arrange::Arrangement made = example::arrangementOf(example::jig());
    made.groups = {
        {harp::Side::Right, false, {{1, {}, 20, 3, {}}, {1, example::wholes(1, 8), 21, 2, {}}}},
        {harp::Side::Right, true, {{2, {}, 22, 1, {}}}},
        {harp::Side::Left, false, {{1, {}, 3, 4, 0}, {1, {}, 7, 2, 0}}}};
    auto const brackets = notation::placingBrackets(made);
    REQUIRE(brackets.size() == 2);
    CHECK(brackets[0].to.at == example::wholes(1, 8));
    // A linked one begins where the one before ends.
    CHECK(brackets[1].linked);
    CHECK(brackets[1].from.bar == 1);
    CHECK(brackets[1].from.at == example::wholes(1, 8));
}
