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

// The outline of what has been drawn: asked how far up or down it reaches over a stretch. Kept
// in upright strips a sixteenth of a space wide; a strip that is touched counts as taken, so an
// answer may reach a strip too far to the sides, never too little. Time and memory grow with
// the width of what is drawn, not with how much it is.
class Skyline {
public:
    void add(Box box);
    void add(Skyline const& other, double dy);

    // Highest and lowest y over the stretch; `otherwise` where nothing stands.
    double top(double left, double right, double otherwise) const;
    double bottom(double left, double right, double otherwise) const;
    // Of all that has been drawn.
    double top(double otherwise) const;
    double bottom(double otherwise) const;

private:
    friend double distanceBetween(Skyline const& above, Skyline const& below, double clear);

    struct Strip {
        double top;
        double bottom;
    };
    // Strips from `first` to before `end`, clipped to those that are kept.
    struct Stretch {
        long first = 0;
        long end = 0;
    };
    Stretch stretch(double left, double right) const;
    Strip const& at(long strip) const
    {
        return m_strips[static_cast<std::size_t>(strip - m_first)];
    }
    void reserve(long first, long end);

    long m_first = 0; // number of the first strip that is kept
    std::vector<Strip> m_strips;
};

// How far apart, origin to origin, two skylines must lie for a clear white between them.
double distanceBetween(Skyline const& above, Skyline const& below, double clear);

} // namespace sheet
