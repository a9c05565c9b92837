#include "core/sheet/pen.h"

#include "core/sheet/words.h"

#include <algorithm>
#include <cmath>

namespace sheet {

GlyphBox boxOf(MusicFont const& font, char32_t code)
{
    auto const found = font.boxes.find(code);
    return found == font.boxes.end() ? GlyphBox{0, -0.5, 1, 0.5} : found->second;
}

double advanceOf(MusicFont const& font, char32_t code)
{
    auto const found = font.advances.find(code);
    return found == font.advances.end() ? boxOf(font, code).right : found->second;
}

Point anchorOf(MusicFont const& font, char32_t code, std::string const& name, Point otherwise)
{
    auto const glyph = font.anchors.find(code);
    if (glyph == font.anchors.end()) return otherwise;
    auto const anchor = glyph->second.find(name);
    return anchor == glyph->second.end() ? otherwise : anchor->second;
}

double engravingOf(MusicFont const& font, std::string const& name, double otherwise)
{
    auto const found = font.engraving.find(name);
    return found == font.engraving.end() ? otherwise : found->second;
}

namespace {

Point placed(Point p, Point origin, double scale)
{
    return {origin.x + scale * p.x, origin.y + scale * p.y};
}

struct Placing {
    Point origin;
    double scale = 1;

    Primitive operator()(Glyph glyph) const
    {
        glyph.at = placed(glyph.at, origin, scale);
        glyph.staffSpaceMm *= scale;
        return glyph;
    }
    Primitive operator()(Words words) const
    {
        words.at = placed(words.at, origin, scale);
        words.heightMm *= scale;
        return words;
    }
    Primitive operator()(Line line) const
    {
        line.from = placed(line.from, origin, scale);
        line.to = placed(line.to, origin, scale);
        line.thicknessMm *= scale;
        return line;
    }
    Primitive operator()(Shape shape) const
    {
        for (Point& corner : shape.corners) corner = placed(corner, origin, scale);
        return shape;
    }
    Primitive operator()(Bow bow) const
    {
        for (Point* point : {&bow.from, &bow.control1, &bow.control2, &bow.to})
            *point = placed(*point, origin, scale);
        bow.thicknessMm *= scale;
        return bow;
    }
    Primitive operator()(Circle circle) const
    {
        circle.centre = placed(circle.centre, origin, scale);
        circle.radiusMm *= scale;
        circle.thicknessMm *= scale;
        return circle;
    }
};

// The box of a slanted shape is cut into upright slices, so that little white is taken.
std::vector<Box> slices(std::vector<Point> const& corners)
{
    auto const [left, right] = std::minmax_element(corners.begin(), corners.end(),
                                                   [](Point a, Point b) { return a.x < b.x; });
    double const from = left->x;
    double const to = right->x;
    int const count = std::max(1, static_cast<int>(std::ceil(to - from)));
    std::vector<Box> out;
    for (int i = 0; i < count; ++i) {
        double const a = from + (to - from) * i / count;
        double const b = from + (to - from) * (i + 1) / count;
        Box slice{a, 1e9, b, -1e9};
        for (std::size_t c = 0; c < corners.size(); ++c) {
            Point const p = corners[c];
            Point const q = corners[(c + 1) % corners.size()];
            for (double x : {a, b}) {
                if (x < std::min(p.x, q.x) || x > std::max(p.x, q.x)) continue;
                double const share = p.x == q.x ? 0 : (x - p.x) / (q.x - p.x);
                double const y = p.y + share * (q.y - p.y);
                slice.top = std::min(slice.top, y);
                slice.bottom = std::max(slice.bottom, y);
            }
        }
        out.push_back(slice);
    }
    return out;
}

Box lineBox(Point from, Point to, double thickness)
{
    // Lines end flat: upright and level ones reach no further than their ends.
    double const besideX = from.y == to.y ? 0 : thickness / 2;
    double const besideY = from.x == to.x ? 0 : thickness / 2;
    return {std::min(from.x, to.x) - besideX, std::min(from.y, to.y) - besideY,
            std::max(from.x, to.x) + besideX, std::max(from.y, to.y) + besideY};
}

} // namespace

Point onBow(Bow const& bow, double t)
{
    double const a = (1 - t) * (1 - t) * (1 - t);
    double const b = 3 * (1 - t) * (1 - t) * t;
    double const c = 3 * (1 - t) * t * t;
    double const d = t * t * t;
    return {a * bow.from.x + b * bow.control1.x + c * bow.control2.x + d * bow.to.x,
            a * bow.from.y + b * bow.control1.y + c * bow.control2.y + d * bow.to.y};
}

Primitive placed(Primitive const& what, Point origin, double scale)
{
    return std::visit(Placing{origin, scale}, what);
}

Box wordsBox(std::string const& text, Point at, double height, Face face, Anchor anchor)
{
    double const width = widthOf(text, face, height);
    double const left = anchor == Anchor::Left     ? at.x
                        : anchor == Anchor::Centre ? at.x - width / 2
                                                   : at.x - width;
    return {left, at.y - wordsRise * height, left + width, at.y + wordsFall * height};
}

void Pen::belongTo(std::optional<tune::BarIndex> bar,
                   std::optional<arrange::PositionIndex> position)
{
    m_bar = bar;
    m_position = position;
}

void Pen::keep(Primitive what, Box box)
{
    m_marks.push_back({std::move(what), m_bar, m_position});
    m_reach.add(box);
}

void Pen::glyph(char32_t code, Point at, Ink ink, double scale)
{
    GlyphBox const box = boxOf(*m_font, code);
    keep(Glyph{code, at, scale, ink}, {at.x + scale * box.left, at.y - scale * box.top,
                                       at.x + scale * box.right, at.y - scale * box.bottom});
}

void Pen::uprightGlyph(char32_t code, Point at, Ink ink)
{
    GlyphBox const box = boxOf(*m_font, code);
    Glyph glyph{code, at, 1, ink};
    glyph.upright = true;
    keep(glyph, {at.x - box.top, at.y - box.right, at.x - box.bottom, at.y - box.left});
}

void Pen::line(Point from, Point to, double thickness, Ink ink)
{
    keep(Line{from, to, thickness, ink, false}, lineBox(from, to, thickness));
}

void Pen::shape(std::vector<Point> corners, Ink ink)
{
    std::vector<Box> const boxes = slices(corners);
    keep(Shape{std::move(corners), ink}, boxes.front());
    for (std::size_t i = 1; i < boxes.size(); ++i) m_reach.add(boxes[i]);
}

void Pen::bow(Point from, Point to, double height, Ink ink)
{
    double const width = to.x - from.x;
    Point const control1{from.x + 0.3 * width, from.y + height * 4 / 3};
    Point const control2{from.x + 0.7 * width, to.y + height * 4 / 3};
    double const thickness = engravingOf(*m_font, "tieMidpointThickness", 0.22);
    Bow const bow{from, control1, control2, to, thickness, ink};
    m_marks.push_back({bow, m_bar, m_position});
    int const slices = std::clamp(static_cast<int>(width), 2, 40);
    Point before = from;
    for (int i = 1; i <= slices; ++i) {
        Point const here = onBow(bow, static_cast<double>(i) / slices);
        m_reach.add({before.x, std::min(before.y, here.y) - thickness / 2, here.x,
                     std::max(before.y, here.y) + thickness / 2});
        before = here;
    }
}

void Pen::circle(Point centre, double radius, Ink ink)
{
    keep(Circle{centre, radius, 0, ink},
         {centre.x - radius, centre.y - radius, centre.x + radius, centre.y + radius});
}

void Pen::ring(Point centre, double radius, double thickness, Ink ink)
{
    double const reach = radius + thickness / 2;
    keep(Circle{centre, radius, thickness, ink},
         {centre.x - reach, centre.y - reach, centre.x + reach, centre.y + reach});
}

void Pen::words(std::string text, Point at, double height, Face face, Anchor anchor, Ink ink)
{
    Box const box = wordsBox(text, at, height, face, anchor);
    keep(Words{std::move(text), at, height, face, anchor, ink}, box);
}

void Pen::frame(Box box, double thickness, Ink ink)
{
    double const half = thickness / 2;
    Box const middle{box.left + half, box.top + half, box.right - half, box.bottom - half};
    line({box.left, middle.top}, {box.right, middle.top}, thickness, ink);
    line({box.left, middle.bottom}, {box.right, middle.bottom}, thickness, ink);
    line({middle.left, middle.top}, {middle.left, middle.bottom}, thickness, ink);
    line({middle.right, middle.top}, {middle.right, middle.bottom}, thickness, ink);
}

void Pen::take(Pen const& other, double dy)
{
    for (Mark mark : other.m_marks) {
        mark.what = placed(mark.what, {0, dy}, 1);
        m_marks.push_back(std::move(mark));
    }
    m_reach.add(other.m_reach, dy);
}

std::vector<Mark> Pen::marksAt(Point originMm, double spaceMm) const
{
    std::vector<Mark> out = m_marks;
    for (Mark& mark : out) mark.what = placed(mark.what, originMm, spaceMm);
    return out;
}

} // namespace sheet
