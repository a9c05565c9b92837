#include "core/sheet/placedbrackets.h"

#include "core/sheet/geometry.h"

#include <algorithm>
#include <cmath>

namespace sheet {

void drawPlacings(Pen& pen, std::vector<PlacedBracket> const& brackets, FingerSide side)
{
    double const away = side == FingerSide::Above ? -1 : 1;
    Skyline const before = pen.reach();
    double last = 0; // where the bracket before runs
    for (PlacedBracket const& bracket : brackets) {
        double const near = side == FingerSide::Above
                                ? std::min(before.top(bracket.left, bracket.right, 0), 0.0)
                                : std::max(before.bottom(bracket.left, bracket.right, 4), 4.0);
        double y = near + away * (geometry::placingGap + geometry::placingHook);
        bool const meets = bracket.linked && std::abs(y - last) < 0.9 * geometry::placingHook;
        if (meets) y = last + away * geometry::placingHook;
        last = y;
        double const foot = y - away * geometry::placingHook;
        double const thickness = geometry::placingThickness;
        double const half = thickness / 2;
        pen.belongTo(bracket.bar);
        pen.line({bracket.left, y}, {bracket.right, y}, thickness, Ink::Finger);
        if (bracket.opens)
            pen.line({bracket.left + half, y}, {bracket.left + half, foot}, thickness,
                     Ink::Finger);
        if (bracket.closes)
            pen.line({bracket.right - half, y}, {bracket.right - half, foot}, thickness,
                     Ink::Finger);
    }
    pen.belongTo({});
}

} // namespace sheet
