#pragma once

#include "core/sheet/glyphs.h"
#include "core/sheet/pen.h"
#include "core/sheet/sheet.h"

#include <algorithm>
#include <vector>

// What a finished page can be measured by.
namespace measure {

inline sheet::Box united(sheet::Box a, sheet::Box b)
{
    return {std::min(a.left, b.left), std::min(a.top, b.top), std::max(a.right, b.right),
            std::max(a.bottom, b.bottom)};
}

// Box of a primitive in millimetres.
struct BoxOf {
    sheet::MusicFont const& font;

    sheet::Box operator()(sheet::Glyph const& g) const
    {
        sheet::GlyphBox const b = sheet::boxOf(font, g.code);
        double const s = g.staffSpaceMm;
        if (g.upright)
            return {g.at.x - s * b.top, g.at.y - s * b.right, g.at.x - s * b.bottom,
                    g.at.y - s * b.left};
        return {g.at.x + s * b.left, g.at.y - s * b.top, g.at.x + s * b.right,
                g.at.y - s * b.bottom};
    }
    sheet::Box operator()(sheet::Words const& w) const
    {
        return sheet::wordsBox(w.text, w.at, w.heightMm, w.face, w.anchor);
    }
    sheet::Box operator()(sheet::Line const& l) const
    {
        // Lines end flat: upright and level ones reach no further than their ends.
        double const besideX = l.from.y == l.to.y ? 0 : l.thicknessMm / 2;
        double const besideY = l.from.x == l.to.x ? 0 : l.thicknessMm / 2;
        return {std::min(l.from.x, l.to.x) - besideX, std::min(l.from.y, l.to.y) - besideY,
                std::max(l.from.x, l.to.x) + besideX, std::max(l.from.y, l.to.y) + besideY};
    }
    sheet::Box operator()(sheet::Shape const& s) const
    {
        sheet::Box box{1e9, 1e9, -1e9, -1e9};
        for (sheet::Point p : s.corners) box = united(box, {p.x, p.y, p.x, p.y});
        return box;
    }
    sheet::Box operator()(sheet::Bow const& b) const
    {
        sheet::Box box{b.from.x, b.from.y, b.from.x, b.from.y};
        constexpr int steps = 16;
        for (int i = 1; i <= steps; ++i) {
            sheet::Point const p = sheet::onBow(b, static_cast<double>(i) / steps);
            box = united(box, {p.x, p.y, p.x, p.y});
        }
        return box;
    }
    sheet::Box operator()(sheet::Circle const& c) const
    {
        return {c.centre.x - c.radiusMm, c.centre.y - c.radiusMm, c.centre.x + c.radiusMm,
                c.centre.y + c.radiusMm};
    }
};
inline sheet::Box box(sheet::Mark const& mark, sheet::MusicFont const& font)
{
    return std::visit(BoxOf{font}, mark.what);
}

template<typename Kind>
std::vector<Kind> allOf(sheet::Page const& page)
{
    std::vector<Kind> found;
    for (sheet::Mark const& mark : page.marks)
        if (Kind const* what = std::get_if<Kind>(&mark.what)) found.push_back(*what);
    return found;
}

inline bool isNotehead(char32_t code)
{
    return code >= sheet::glyph::noteheadDoubleWhole && code <= sheet::glyph::noteheadBlack;
}

// Staff lines from the top of the page; five make a staff.
inline std::vector<sheet::Line> staffLines(sheet::Page const& page)
{
    std::vector<sheet::Line> lines;
    for (sheet::Line const& line : allOf<sheet::Line>(page))
        if (line.ink == sheet::Ink::Staff) lines.push_back(line);
    std::sort(lines.begin(), lines.end(),
              [](sheet::Line const& a, sheet::Line const& b) { return a.from.y < b.from.y; });
    return lines;
}

} // namespace measure
