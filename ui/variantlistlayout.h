#pragma once

#include <algorithm>
#include <optional>

namespace ui {

// Rows of equal height of which the current one is taller: it shows all its reasons. Only rows
// that can be seen are painted, so that hundreds cost nothing.
struct VariantListLayout {
    int rows = 0;
    std::optional<int> current;
    double rowHeight = 74;
    double extra = 0; // by which the current row is taller
    double gap = 7;
    double margin = 12;

    double top(int row) const
    {
        double const before = margin + row * (rowHeight + gap);
        return current && row > *current ? before + extra : before;
    }
    double heightOf(int row) const { return current == row ? rowHeight + extra : rowHeight; }
    double height() const
    {
        return rows == 0 ? 0 : top(rows - 1) + heightOf(rows - 1) + margin;
    }
    // The row at a height, or in the gap below it; none beyond the ends.
    std::optional<int> rowAt(double y) const
    {
        if (rows == 0 || y < margin || y >= height() - margin) return std::nullopt;
        double const pitch = rowHeight + gap;
        double below = y - margin;
        if (current && y >= top(*current) + heightOf(*current))
            below -= extra;
        else if (current && y >= top(*current))
            return current;
        return std::min(rows - 1, static_cast<int>(below / pitch));
    }
};

} // namespace ui
