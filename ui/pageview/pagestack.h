#pragma once

#include "core/sheet/drawing.h"

#include <optional>
#include <vector>

namespace ui {

// How the pages of a sheet lie under one another on the screen, in pixels. Plain geometry.
struct PageStack {
    struct Leaf {
        double left = 0, top = 0, width = 0, height = 0;
    };
    std::vector<Leaf> leaves; // one a page
    double width = 0;         // of everything, margins included
    double height = 0;
    double pixelsPerMm = 1;
};

// Pages centred in at least the width of the view, a margin around each.
PageStack pageStack(sheet::Document const& document, double pixelsPerMm, double viewWidth);

// The scale at which the widest page fills the width of the view, or the tallest its height.
double scaleToWidth(sheet::Document const& document, double viewWidth);
double scaleToPage(sheet::Document const& document, double viewWidth, double viewHeight);

// A point of the stack as a page and a place on it in millimetres; none beside the pages.
struct OnPage {
    int page = 0;
    sheet::Point at;
};
std::optional<OnPage> onPage(PageStack const& stack, double x, double y);

} // namespace ui
