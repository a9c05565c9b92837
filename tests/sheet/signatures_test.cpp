#include "core/sheet/barline.h"
#include "core/sheet/signatures.h"
#include "tests/sheet/examples.h"

#include <catch2/catch.hpp>

using notation::Clef;
using sheet::Stroke;

TEST_CASE("Accidentals of a signature stand on their fixed lines and spaces", "[signatures]")
{
    // Elementary theory: sharps F C G D A E B begin on the top line of the treble, flats
    // B E A D G C F on the middle line; the bass has the same shape a line lower.
    auto const steps = [](std::vector<std::string> const& names) {
        std::vector<int> out;
        for (std::string const& name : names)
            out.push_back(notation::staffStep(*music::pitchFrom(name), Clef::Treble));
        return out;
    };
    CHECK(sheet::signatureSteps(7, Clef::Treble) ==
          steps({"F5", "C5", "G5", "D5", "A4", "E5", "B4"}));
    CHECK(sheet::signatureSteps(-7, Clef::Treble) ==
          steps({"B4", "E5", "A4", "D5", "G4", "C5", "F4"}));
    CHECK(sheet::signatureSteps(1, Clef::Bass) ==
          std::vector<int>{notation::staffStep(*music::pitchFrom("F3"), Clef::Bass)});
    CHECK(sheet::signatureSteps(-3, Clef::Bass)[1] ==
          notation::staffStep(*music::pitchFrom("E3"), Clef::Bass));
    CHECK(sheet::signatureSteps(0, Clef::Treble).empty());
}

TEST_CASE("Naturals are printed only where a signature vanishes", "[signatures]")
{
    CHECK(sheet::keySign(0, 2).naturalsOf == 2);
    CHECK(sheet::keySign(1, 2).naturalsOf == 0);
    CHECK(sheet::keySign(-3, 2).signature == -3);
}

TEST_CASE("Repeats show their dots to the side that is repeated", "[signatures]")
{
    sheet::MusicFont const font;
    tune::Bar plain;
    tune::Bar closing;
    closing.repeatCloses = true;
    tune::Bar opening;
    opening.repeatOpens = true;
    auto const strokes = [](sheet::BarLineShape const& shape) {
        std::vector<Stroke> out;
        for (auto const& part : shape.parts) out.push_back(part.stroke);
        return out;
    };
    using List = std::vector<Stroke>;
    CHECK(strokes(barLineShape(&plain, &plain, font)) == List{Stroke::Thin});
    CHECK(strokes(barLineShape(&closing, nullptr, font)) ==
          List{Stroke::Dots, Stroke::Thin, Stroke::Thick});
    CHECK(strokes(barLineShape(&plain, &opening, font)) ==
          List{Stroke::Thick, Stroke::Thin, Stroke::Dots});
    CHECK(strokes(barLineShape(&closing, &opening, font)) ==
          List{Stroke::Dots, Stroke::Thin, Stroke::Thick, Stroke::Thin, Stroke::Dots});
    tune::Bar final;
    final.closes = tune::BarLine::Final;
    CHECK(strokes(barLineShape(&final, nullptr, font)) == List{Stroke::Thin, Stroke::Thick});
}
