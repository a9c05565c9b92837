#include "ui/paint/lettering.h"

#include "core/sheet/glyphs.h"
#include "core/sheet/words.h"
#include "ui/paint/sheetfonts.h"

#include <QFontMetricsF>
#include <QHash>

namespace ui {

namespace {

char32_t signGlyph(sheet::AccidentalSign sign)
{
    switch (sign) {
    case sheet::AccidentalSign::Flat:
        return sheet::glyph::accidentalFlat;
    case sheet::AccidentalSign::Sharp:
        return sheet::glyph::accidentalSharp;
    case sheet::AccidentalSign::Natural:
        break;
    }
    return sheet::glyph::accidentalNatural;
}

std::vector<LetterRun> divided(std::string_view text)
{
    std::vector<LetterRun> runs;
    std::size_t start = 0;
    for (std::size_t i = 0; i < text.size();) {
        auto const sign = sheet::accidentalSignAt(text.substr(i));
        if (!sign) {
            ++i;
            continue;
        }
        if (i > start) runs.push_back({text.substr(start, i - start), 0});
        runs.push_back({text.substr(i, sheet::accidentalSignBytes), signGlyph(*sign)});
        i += sheet::accidentalSignBytes;
        start = i;
    }
    if (start < text.size()) runs.push_back({text.substr(start), 0});
    return runs;
}

} // namespace

QPainterPath const& outlineOf(char32_t code)
{
    thread_local QHash<char32_t, QPainterPath> outlines;
    auto found = outlines.find(code);
    if (found == outlines.end()) {
        QPainterPath path;
        path.addText(0, 0, musicGlyphFont(), QString::fromUcs4(&code, 1));
        found = outlines.insert(code, path);
    }
    return *found;
}

std::vector<LetterRun> runsOf(sheet::Words const& words)
{
    std::vector<LetterRun> runs = divided(words.text);
    double width = 0;
    for (LetterRun& run : runs) {
        double const ems =
            run.sign != 0
                ? sheet::accidentalSignWidth
                : QFontMetricsF(textFont(words.face)).horizontalAdvance(letters(run.text)) /
                      fontEm;
        run.x = words.at.x + width;
        run.widthMm = ems * words.heightMm;
        width += run.widthMm;
    }
    double const left = words.anchor == sheet::Anchor::Centre  ? width / 2
                        : words.anchor == sheet::Anchor::Right ? width
                                                               : 0;
    for (LetterRun& run : runs) run.x -= left;
    return runs;
}

sheet::Point signPlace(LetterRun const& run, sheet::Words const& words)
{
    double const em = words.heightMm;
    return {run.x + 0.03 * em, words.at.y - sheet::accidentalSignRise * em};
}

double signSpaceMm(sheet::Words const& words)
{
    return sheet::accidentalSignScale * words.heightMm;
}

QString letters(std::string_view utf8)
{
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

} // namespace ui
