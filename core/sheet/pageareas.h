#pragma once

#include "core/sheet/drawing.h"

#include <optional>

namespace sheet {

// What lies under a point of a page.
struct Place {
    tune::BarIndex bar = 0;
    std::optional<arrange::PositionIndex> position;
    friend bool operator==(Place const&, Place const&) = default;
};
std::optional<Place> placeAt(Page const& page, Point at);

// An area and the page it lies on.
struct PageArea {
    int page = 0; // index into Document::pages
    Area area;
};
// Where repeats are written out a bar stands on the page more than once: `pass` says which is
// meant; the last where there are fewer.
std::optional<PageArea> areaOfBar(Document const& document, tune::BarIndex bar, int pass = 1);
std::optional<PageArea> areaOfPosition(Document const& document,
                                       arrange::PositionIndex position);

// The position before or after in printed order; none at the ends.
std::optional<arrange::PositionIndex>
positionBeside(Document const& document, arrange::PositionIndex position, int steps);

} // namespace sheet
