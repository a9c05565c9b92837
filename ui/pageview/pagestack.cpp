#include "ui/pageview/pagestack.h"

#include <algorithm>

namespace ui {

namespace {

constexpr double marginPx = 18;

struct Size {
    double width = 0;
    double height = 0;
};
Size largestPage(sheet::Document const& document)
{
    Size size;
    for (sheet::Page const& page : document.pages) {
        size.width = std::max(size.width, page.widthMm);
        size.height = std::max(size.height, page.heightMm);
    }
    return size;
}

double fitted(double room, double lengthMm)
{
    return lengthMm > 0 ? std::max(room - 2 * marginPx, 1.0) / lengthMm : 1;
}

} // namespace

PageStack pageStack(sheet::Document const& document, double pixelsPerMm, double viewWidth)
{
    PageStack stack;
    stack.pixelsPerMm = pixelsPerMm;
    stack.width = std::max(viewWidth, largestPage(document).width * pixelsPerMm + 2 * marginPx);
    double y = marginPx;
    for (sheet::Page const& page : document.pages) {
        double const width = page.widthMm * pixelsPerMm;
        double const height = page.heightMm * pixelsPerMm;
        stack.leaves.push_back({(stack.width - width) / 2, y, width, height});
        y += height + marginPx;
    }
    stack.height = y;
    return stack;
}

double scaleToWidth(sheet::Document const& document, double viewWidth)
{
    return fitted(viewWidth, largestPage(document).width);
}

double scaleToPage(sheet::Document const& document, double viewWidth, double viewHeight)
{
    return std::min(scaleToWidth(document, viewWidth),
                    fitted(viewHeight, largestPage(document).height));
}

std::optional<OnPage> onPage(PageStack const& stack, double x, double y)
{
    for (std::size_t i = 0; i < stack.leaves.size(); ++i) {
        PageStack::Leaf const& leaf = stack.leaves[i];
        double const dx = x - leaf.left;
        double const dy = y - leaf.top;
        if (dx >= 0 && dy >= 0 && dx < leaf.width && dy < leaf.height)
            return OnPage{static_cast<int>(i),
                          {dx / stack.pixelsPerMm, dy / stack.pixelsPerMm}};
    }
    return std::nullopt;
}

} // namespace ui
