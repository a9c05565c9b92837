#include "core/sheet/skyline.h"

#include <algorithm>

namespace sheet {

Box united(Box a, Box b)
{
    return {std::min(a.left, b.left), std::min(a.top, b.top), std::max(a.right, b.right),
            std::max(a.bottom, b.bottom)};
}

void Skyline::add(Skyline const& other, double dy)
{
    for (Box box : other.m_boxes) m_boxes.push_back(moved(box, 0, dy));
}

double Skyline::top(double left, double right, double otherwise) const
{
    double best = otherwise;
    for (Box const& box : m_boxes)
        if (box.left < right && box.right > left) best = std::min(best, box.top);
    return best;
}

double Skyline::bottom(double left, double right, double otherwise) const
{
    double best = otherwise;
    for (Box const& box : m_boxes)
        if (box.left < right && box.right > left) best = std::max(best, box.bottom);
    return best;
}

double distanceBetween(Skyline const& above, Skyline const& below, double clear)
{
    double distance = 0;
    for (Box const& upper : above.boxes())
        for (Box const& lower : below.boxes())
            if (upper.left < lower.right + clear / 2 && upper.right > lower.left - clear / 2)
                distance = std::max(distance, upper.bottom - lower.top + clear);
    return distance;
}

} // namespace sheet
