#pragma once

#include "core/sheet/drawing.h"

#include <map>
#include <string>

namespace sheet {

// Box of a glyph in staff spaces, y upwards as in the font (SMuFL glyphBBoxes).
struct GlyphBox {
    double left = 0, bottom = 0, right = 0, top = 0;
};

// What SMuFL metadata says of one music font. Lengths in staff spaces, y upwards.
struct MusicFont {
    std::string name;
    std::map<char32_t, GlyphBox> boxes;
    std::map<char32_t, double> advances;
    std::map<char32_t, std::map<std::string, Point>> anchors; // "stemUpSE", "stemDownNW" ...
    std::map<std::string, double> engraving; // "staffLineThickness", "stemThickness" ...
};

} // namespace sheet
