#pragma once

#include "core/arrange/arrangement.h"
#include "core/sheet/pictures.h"

#include <optional>
#include <string>
#include <vector>

namespace sheet {

// All strings of a harp over the width of a page, with levers, with what each sounds under it,
// and one shape lying on them.
struct StringBand {
    std::vector<PicturedString> strings;
    std::vector<std::string> sounds; // one a string
    std::vector<ShapeDot> dots;      // lowest first
    std::string setup;               // in words
};

// As the levers stand before the first note.
StringBand stringBand(arrange::Arrangement const& arrangement, arrange::Voicing const& voicing);

// From y = 0 downwards. Answers the height.
double drawStringBand(Pen& pen, StringBand const& band, double width);

} // namespace sheet
