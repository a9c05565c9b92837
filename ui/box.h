#pragma once

namespace ui {

// A rectangle on the screen in device-independent pixels, y downwards.
struct Box {
    double x = 0, y = 0, width = 0, height = 0;
    constexpr double right() const { return x + width; }
    constexpr double bottom() const { return y + height; }
    constexpr bool contains(double px, double py) const
    {
        return px >= x && px < right() && py >= y && py < bottom();
    }
    friend constexpr bool operator==(Box const&, Box const&) = default;
};

} // namespace ui
