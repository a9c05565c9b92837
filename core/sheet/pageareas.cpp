#include "core/sheet/pageareas.h"

#include <algorithm>
#include <vector>

namespace sheet {

namespace {

bool holds(Area const& area, Point p)
{
    return area.topLeft.x <= p.x && p.x < area.bottomRight.x && area.topLeft.y <= p.y &&
           p.y < area.bottomRight.y;
}

template<typename Wanted>
std::optional<PageArea> firstArea(Document const& document, Wanted wanted)
{
    for (std::size_t page = 0; page < document.pages.size(); ++page) {
        std::vector<Area> const& areas = document.pages[page].areas;
        auto const found = std::find_if(areas.begin(), areas.end(), wanted);
        if (found != areas.end()) return PageArea{static_cast<int>(page), *found};
    }
    return std::nullopt;
}

} // namespace

std::optional<Place> placeAt(Page const& page, Point at)
{
    std::optional<Place> place;
    for (Area const& area : page.areas)
        if (holds(area, at) && (!place || area.position)) place = {area.bar, area.position};
    return place;
}

std::optional<PageArea> areaOfBar(Document const& document, tune::BarIndex bar, int pass)
{
    std::optional<PageArea> found;
    int copies = 0;
    for (std::size_t page = 0; page < document.pages.size(); ++page)
        for (Area const& area : document.pages[page].areas) {
            if (area.bar != bar || area.position) continue;
            found = PageArea{static_cast<int>(page), area};
            if (++copies >= pass) return found;
        }
    return found;
}

std::optional<PageArea> areaOfPosition(Document const& document,
                                       arrange::PositionIndex position)
{
    return firstArea(document, [position](Area const& area) {
        return area.position && *area.position == position;
    });
}

std::optional<arrange::PositionIndex> positionBeside(Document const& document,
                                                     arrange::PositionIndex position, int steps)
{
    std::vector<arrange::PositionIndex> order;
    for (Page const& page : document.pages)
        for (Area const& area : page.areas)
            if (area.position) order.push_back(*area.position);
    auto const here = std::find(order.begin(), order.end(), position);
    if (here == order.end()) return std::nullopt;
    auto const index = here - order.begin() + steps;
    if (index < 0 || index >= static_cast<std::ptrdiff_t>(order.size())) return std::nullopt;
    return order[static_cast<std::size_t>(index)];
}

} // namespace sheet
