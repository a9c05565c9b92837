#include "core/notation/durations.h"
#include "core/notation/notation.h"
#include "core/notation/placings.h"
#include "core/notation/words.h"
#include "core/sheet/attachments.h"
#include "tests/sheet/examples.h"
#include "tests/sheet/measure.h"

#include <catch2/catch.hpp>

namespace {

tune::Bar marked(std::string const& notes, std::vector<std::string> const& marks)
{
    tune::Bar bar = example::bar(notes, example::fourFour, example::gMajor);
    bar.notes.front().marks = marks;
    return bar;
}

bool shows(sheet::Document const& document, char32_t code)
{
    for (sheet::Page const& page : document.pages)
        for (sheet::Glyph const& glyph : measure::allOf<sheet::Glyph>(page))
            if (glyph.code == code) return true;
    return false;
}

std::vector<std::string> wordsOn(sheet::Document const& document)
{
    std::vector<std::string> out;
    for (sheet::Page const& page : document.pages)
        for (sheet::Words const& words : measure::allOf<sheet::Words>(page))
            out.push_back(words.text);
    return out;
}

bool has(std::vector<std::string> const& words, std::string const& text)
{
    return std::find(words.begin(), words.end(), text) != words.end();
}

} // namespace

TEST_CASE("What sends the player elsewhere is told with capitals, from marks and words alike",
          "[notation]")
{
    // ABC 2.1, section 4.14, names the marks; the capitals are those of print (Gould 2011, from
    // memory).
    tune::Bar bar = marked("G4:1/1", {"D.S.alfine"});
    bar.annotations = {{{}, "fine"}, {{}, "gently"}};
    auto const labels = notation::navigationLabels(bar);
    REQUIRE(labels.size() == 2);
    CHECK(labels[0].text == "Fine");
    CHECK(labels[1].text == "D.S. al Fine");
    auto const others = notation::annotationLabels(bar);
    REQUIRE(others.size() == 1);
    CHECK(others[0].text == "gently");
}

TEST_CASE("Loudness and hairpins of the tune are on both sheets", "[notation]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    tune::Tune tune = example::tuneOf({example::withChord(marked("G4:1/2 A4:1/2", {"mf", "<("}), "G"),
                                       example::withChord(marked("B4:1/1", {"<)"}), "G")});
    auto const pins = notation::hairpins(tune);
    REQUIRE(pins.size() == 1);
    CHECK(pins[0].opens);
    CHECK(pins[0].to.bar == 1);
    CHECK(pins[0].to.at == example::wholes(1, 1));
    for (auto const& document : {sheet::leadSheet(tune, *font, {}),
                                 sheet::arrangementSheet(example::arrangementOf(tune), *font, {})}) {
        CHECK(shows(document, sheet::glyph::dynamicMezzo));
        CHECK(shows(document, sheet::glyph::dynamicForte));
        double const thickness = 0.16 * sheet::usualStaffMm / 4;
        int strokes = 0;
        for (sheet::Line const& line : measure::allOf<sheet::Line>(document.pages[0]))
            strokes += std::abs(line.thicknessMm - thickness) < 0.02 &&
                       line.from.x != line.to.x && line.from.y != line.to.y;
        CHECK(strokes == 2);
    }
}

TEST_CASE("Every mark that ABC names shows on the sheet or is named at its foot", "[notation]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    // ABC 2.1, section 4.14, but for the four that alter an accidental's look.
    for (char const* mark :
         {"trill", "trill(", "trill)", "lowermordent", "uppermordent", "mordent", "pralltriller",
          "roll", "turn", "turnx", "invertedturn", "arpeggio", ">", "accent", "emphasis",
          "fermata", "invertedfermata", "tenuto", "0", "1", "5", "+", "plus", "snap", "slide",
          "wedge", "upbow", "downbow", "open", "thumb", "breath", "pppp", "ppp", "pp", "p",
          "mp", "mf", "f", "ff", "fff", "ffff", "sfz", "crescendo(", "<(", "crescendo)", "<)",
          "diminuendo(", ">(", "diminuendo)", ">)", "segno", "coda", "D.S.", "D.C.", "dacoda",
          "dacapo", "fine", "shortphrase", "mediumphrase", "longphrase"}) {
        CAPTURE(mark);
        CHECK(sheet::isTold(mark));
    }
    CHECK_FALSE(sheet::isTold("invertedturnx"));
    tune::Tune const tune = example::tuneOf({marked("G4:1/1", {"invertedturnx", "fermata"})});
    auto const document = sheet::leadSheet(tune, *font, {});
    CHECK(has(wordsOn(document), "The sign “invertedturnx” (bar 1) is not drawn."));
    CHECK(shows(document, sheet::glyph::fermataAbove));
}

TEST_CASE("The right hand is named by the strings it plucks", "[notation]")
{
    // On a harp in E flat whose A levers are down the tune's G sharp is plucked on an A flat
    // string: the sheet says A flat, and the tune's name stands above it in brackets.
    auto arrangement = example::arrangementOf(example::tuneOf(
        {example::withChord(example::bar("G#4:1/2 B4:1/2", example::fourFour, example::gMajor),
                            "G")}));
    arrangement.playing = tune::played(arrangement.tune);
    for (harp::StringIndex const i : arrangement.harp.indices())
        if (arrangement.harp.string(i).open.letter == music::Letter::A)
            arrangement.levers.setup[i] = harp::Lever::Down;
    auto const seated = arrange::handNotes(arrangement);
    music::Pitch plucked;
    for (arrange::HandNote const& note : seated)
        if (note.hand == harp::Side::Right && note.at == music::Moment{}) plucked = note.pitch;
    auto const notation = notation::of(arrangement, notation::Kind::Arrangement);
    music::Pitch const printed = notation.bars[0].upper.notes[0].pitches[0];
    CHECK(music::midi(plucked) == music::midi(*music::pitchFrom("G#4")));
    CHECK(printed == plucked);
    CHECK(printed == *music::pitchFrom("Ab4"));
    REQUIRE(notation.bars[0].annotations.size() == 1);
    CHECK(notation.bars[0].annotations[0].text == "(G♯)");
    // The lead sheet keeps the tune as written.
    auto const lead = notation::of(arrangement, notation::Kind::Lead);
    CHECK(lead.bars[0].upper.notes[0].pitches[0] == *music::pitchFrom("G#4"));
}

TEST_CASE("A bass that rings is one sign where a value has its length", "[notation]")
{
    // A dotted minim on the second beat of 4/4, not a crotchet tied to a minim (common practice
    // of harp notation, no source); in 6/8 the beats still show.
    auto const one = notation::ringingPieces(example::wholes(1, 4), example::wholes(3, 4),
                                             example::fourFour);
    REQUIRE(one.size() == 1);
    CHECK(one[0].value == notation::NoteValue{1, 1});
    CHECK(notation::notePieces(example::wholes(1, 4), example::wholes(3, 4), example::fourFour)
              .size() == 2);
    CHECK(notation::ringingPieces(example::wholes(2, 8), example::wholes(4, 8),
                                  example::sixEight)
              .size() == 2);
}

TEST_CASE("Brackets that tell the reader nothing new are left out", "[notation]")
{
    arrange::Arrangement made = example::arrangementOf(example::jig());
    auto const hold = [](tune::BarIndex bar, harp::StringIndex lowest) {
        return arrange::PlacingGroup{harp::Side::Left,
                                     false,
                                     {{bar, {}, lowest, 4, 0},
                                      {bar, example::wholes(1, 8), lowest + 4, 2, 0},
                                      {bar, example::wholes(2, 8), lowest + 7, 1, 0}}};
    };
    made.groups = {hold(1, 3), hold(2, 6), hold(3, 3)};
    using notation::Placings;
    CHECK(notation::placingBrackets(made, Placings::All).size() == 3);
    CHECK(notation::placingBrackets(made, Placings::None).empty());
    auto const helpful = notation::placingBrackets(made, Placings::Helpful);
    REQUIRE(helpful.size() == 1); // the same shape on other strings
    CHECK(helpful[0].from.bar == 1);
    made.groups[2].notes[1].finger = 1; // the thumb below the third note's: the hand crosses
    made.groups[2].notes[2].finger = 2;
    CHECK(notation::placingBrackets(made, Placings::Helpful).size() == 2);
}

TEST_CASE("Degrees below the root are printed in words", "[notation]")
{
    CHECK(notation::patternWords("1-low5") == "1, low 5");
    CHECK(notation::patternWords("1-5-8") == "1-5-8");
}

TEST_CASE("The piece ends with a final bar line and a double one stands before a new key",
          "[notation]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    tune::Bars bars{example::bar("G4:1/1", example::fourFour, example::gMajor),
                    example::bar("D4:1/1", example::fourFour, example::dMinor)};
    tune::Tune tune = example::tuneOf(bars);
    tune.bars.back().closes = tune::BarLine::Single;
    auto const document = sheet::leadSheet(tune, *font, {});
    double const space = sheet::usualStaffMm / 4;
    int thick = 0;
    int thin = 0;
    for (sheet::Line const& line : measure::allOf<sheet::Line>(document.pages[0])) {
        if (line.from.x != line.to.x || line.to.y - line.from.y < 3.9 * space) continue;
        ++(line.thicknessMm > 0.4 * space ? thick : thin);
    }
    CHECK(thick == 1);
    CHECK(thin == 3); // two before the new key, one of the end
}
