#include "core/sheet/words.h"

#include <array>

namespace sheet {

namespace {

// Advance widths of the printable ASCII characters, 32 to 126, in thousandths of the em: TeX
// Gyre Termes (regular, italic, bold) and TeX Gyre Heros (regular, bold), measured from the
// fonts; they keep the widths of the PostScript core fonts Times and Helvetica.
using Widths = std::array<int, 95>;
constexpr Widths romanWidths{
    250, 333, 408, 500, 500, 833, 778, 180, 333, 333, 500, 564, 250, 333, 250, 278,
    500, 500, 500, 500, 500, 500, 500, 500, 500, 500, 278, 278, 564, 564, 564, 444,
    921, 722, 667, 667, 722, 611, 556, 722, 722, 333, 389, 722, 611, 889, 722, 722,
    556, 722, 667, 556, 611, 722, 722, 944, 722, 722, 611, 333, 278, 333, 469, 500,
    333, 444, 500, 444, 500, 444, 333, 500, 500, 278, 278, 500, 278, 778, 500, 500,
    500, 500, 333, 389, 278, 500, 500, 722, 500, 500, 444, 480, 200, 480, 541};
constexpr Widths italicWidths{
    250, 333, 420, 500, 500, 833, 778, 214, 333, 333, 500, 675, 250, 333, 250, 278,
    500, 500, 500, 500, 500, 500, 500, 500, 500, 500, 333, 333, 675, 675, 675, 500,
    920, 611, 611, 667, 722, 611, 611, 722, 722, 333, 444, 667, 556, 833, 667, 722,
    611, 722, 611, 500, 556, 722, 611, 833, 611, 556, 556, 389, 278, 389, 422, 500,
    333, 500, 500, 444, 500, 444, 278, 500, 500, 278, 278, 444, 278, 722, 500, 500,
    500, 500, 389, 389, 278, 500, 444, 667, 444, 444, 389, 400, 275, 400, 541};
constexpr Widths boldWidths{
    250, 333, 555, 500, 500, 1000, 833, 278,  333, 333, 500, 570, 250, 333, 250, 278,
    500, 500, 500, 500, 500, 500,  500, 500,  500, 500, 333, 333, 570, 570, 570, 500,
    930, 722, 667, 722, 722, 667,  611, 778,  778, 389, 500, 778, 667, 944, 722, 778,
    611, 778, 722, 556, 667, 722,  722, 1000, 722, 722, 667, 333, 278, 333, 581, 500,
    333, 500, 556, 444, 556, 444,  333, 500,  556, 278, 333, 556, 278, 833, 556, 500,
    556, 556, 444, 389, 333, 556,  500, 722,  500, 500, 444, 394, 220, 394, 520};
constexpr Widths sansWidths{
    278,  278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278,
    556,  556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556,
    1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778,
    667,  778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556,
    333,  556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556,
    556,  556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584};
constexpr Widths sansBoldWidths{
    278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278,
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 333, 333, 584, 584, 584, 611,
    975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833, 722, 778,
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556,
    333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611,
    611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584};

Widths const& widthsOf(Face face)
{
    switch (face) {
    case Face::Italic:
        return italicWidths;
    case Face::Bold:
        return boldWidths;
    case Face::Sans:
        return sansWidths;
    case Face::SansBold:
        return sansBoldWidths;
    case Face::Roman:
        break;
    }
    return romanWidths;
}

constexpr int otherWidth = 520; // any character beyond ASCII that is no accidental

bool continuesCharacter(char byte)
{
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80;
}

} // namespace

std::optional<AccidentalSign> accidentalSignAt(std::string_view text)
{
    if (text.starts_with("♭")) return AccidentalSign::Flat;
    if (text.starts_with("♮")) return AccidentalSign::Natural;
    if (text.starts_with("♯")) return AccidentalSign::Sharp;
    return std::nullopt;
}

double widthOf(std::string_view text, Face face, double height)
{
    Widths const& widths = widthsOf(face);
    double thousandths = 0;
    while (!text.empty()) {
        char const byte = text.front();
        if (accidentalSignAt(text)) {
            thousandths += 1000 * accidentalSignWidth;
            text.remove_prefix(accidentalSignBytes);
            continue;
        }
        if (byte >= ' ' && byte <= '~')
            thousandths += widths[static_cast<std::size_t>(byte - ' ')];
        else if (!continuesCharacter(byte))
            thousandths += otherWidth;
        text.remove_prefix(1);
    }
    return thousandths / 1000 * height;
}

} // namespace sheet
