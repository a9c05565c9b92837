#pragma once

#include <vector>

namespace sheet {

// A rectangle, y downwards.
struct Box {
    double left = 0, top = 0, right = 0, bottom = 0;
};

constexpr Box moved(Box box, double dx, double dy)
{
    return {box.left + dx, box.top + dy, box.right + dx, box.bottom + dy};
}
Box united(Box a, Box b);

// What has been drawn so far, as boxes: asked how far up or down it reaches over a stretch.
class Skyline {
public:
    void add(Box box) { m_boxes.push_back(box); }
    void add(Skyline const& other, double dy);

    // Highest and lowest y over the stretch; `otherwise` where nothing stands.
    double top(double left, double right, double otherwise) const;
    double bottom(double left, double right, double otherwise) const;

    std::vector<Box> const& boxes() const { return m_boxes; }

private:
    std::vector<Box> m_boxes;
};

// How far apart, origin to origin, two skylines must lie for a clear white between them.
double distanceBetween(Skyline const& above, Skyline const& below, double clear);

} // namespace sheet
