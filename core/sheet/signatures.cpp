#include "core/sheet/signatures.h"

#include "core/sheet/glyphs.h"
#include "core/sheet/notesetting.h"

#include <algorithm>
#include <array>
#include <string>

namespace sheet {

namespace {

char32_t clefGlyph(Clef clef) { return clef == Clef::Treble ? glyph::gClef : glyph::fClef; }

// Steps from the middle line of the treble clef: F5 C5 G5 D5 A4 E5 B4 and B4 E5 A4 D5 G4 C5 F4.
constexpr std::array sharpSteps{4, 1, 5, 2, -1, 3, 0};
constexpr std::array flatSteps{0, 3, -1, 2, -2, 1, -3};

constexpr double signGap = 0.08;

int alterOf(int signature) { return signature > 0 ? 1 : -1; }

std::u32string digits(int number)
{
    std::u32string out;
    for (char digit : std::to_string(number)) out += glyph::timeSig(digit - '0');
    return out;
}

double widthOf(std::u32string const& glyphs, MusicFont const& font)
{
    double width = 0;
    for (char32_t code : glyphs) width += advanceOf(font, code);
    return width;
}

void drawRow(Pen& pen, std::u32string const& glyphs, double left, double y)
{
    for (char32_t code : glyphs) {
        pen.glyph(code, {left, y});
        left += advanceOf(pen.font(), code);
    }
}

char32_t commonGlyph(music::Meter meter)
{
    return meter.unit == 2 ? glyph::timeSigCutCommon : glyph::timeSigCommon;
}

} // namespace

double drawClef(Pen& pen, Clef clef, double x)
{
    // The G clef curls about the second line from below, the F clef's dots lie about the
    // fourth.
    pen.glyph(clefGlyph(clef), {x, clef == Clef::Treble ? 3.0 : 1.0});
    return clefWidth(clef, pen.font());
}
double clefWidth(Clef clef, MusicFont const& font) { return advanceOf(font, clefGlyph(clef)); }

std::vector<int> signatureSteps(int signature, Clef clef)
{
    auto const& places = signature > 0 ? sharpSteps : flatSteps;
    std::size_t const count =
        std::min<std::size_t>(static_cast<std::size_t>(std::abs(signature)), 7);
    std::vector<int> steps(places.begin(), places.begin() + static_cast<std::ptrdiff_t>(count));
    if (clef == Clef::Bass)
        for (int& step : steps) step -= 2;
    return steps;
}

KeySign keySign(int newSignature, int oldSignature)
{
    return {newSignature, newSignature == 0 ? oldSignature : 0};
}

namespace {

struct SignRow {
    int signature = 0;
    char32_t code = 0;
};
SignRow rowOf(KeySign sign)
{
    if (sign.signature != 0) return {sign.signature, accidentalFor(alterOf(sign.signature))};
    return {sign.naturalsOf, glyph::accidentalNatural};
}

} // namespace

void drawKeySign(Pen& pen, KeySign sign, Clef clef, double x)
{
    SignRow const row = rowOf(sign);
    for (int step : signatureSteps(row.signature, clef)) {
        pen.glyph(row.code, {x, yOfStep(step)});
        x += advanceOf(pen.font(), row.code) + signGap;
    }
}
double keySignWidth(KeySign sign, MusicFont const& font)
{
    SignRow const row = rowOf(sign);
    int const count = std::min(std::abs(row.signature), 7);
    return count == 0 ? 0 : count * (advanceOf(font, row.code) + signGap) - signGap;
}

void drawMeter(Pen& pen, music::Meter meter, double x)
{
    if (meter.common) {
        pen.glyph(commonGlyph(meter), {x, 2});
        return;
    }
    double const width = meterWidth(meter, pen.font());
    std::u32string const above = digits(meter.beats);
    std::u32string const below = digits(meter.unit);
    drawRow(pen, above, x + (width - widthOf(above, pen.font())) / 2, 1);
    drawRow(pen, below, x + (width - widthOf(below, pen.font())) / 2, 3);
}
double meterWidth(music::Meter meter, MusicFont const& font)
{
    if (meter.common) return advanceOf(font, commonGlyph(meter));
    return std::max(widthOf(digits(meter.beats), font), widthOf(digits(meter.unit), font));
}

} // namespace sheet
