#pragma once

#include "core/sheet/drawing.h"
#include "core/sheet/musicfont.h"
#include "core/sheet/skyline.h"

#include <optional>
#include <string>
#include <vector>

namespace sheet {

// Facts of the font, with a sensible value where its metadata is silent.
GlyphBox boxOf(MusicFont const& font, char32_t code);
double advanceOf(MusicFont const& font, char32_t code);
Point anchorOf(MusicFont const& font, char32_t code, std::string const& name, Point otherwise);
double engravingOf(MusicFont const& font, std::string const& name, double otherwise);

// Draws in staff spaces, y downwards from the top line of a staff, and keeps account of how far
// the drawing reaches. What it has drawn is taken off in millimetres.
class Pen {
public:
    explicit Pen(MusicFont const& font) : m_font(&font) {}

    MusicFont const& font() const { return *m_font; }

    // What the next marks belong to.
    void belongTo(std::optional<tune::BarIndex> bar,
                  std::optional<arrange::PositionIndex> position = {});

    void glyph(char32_t code, Point at, Ink ink = Ink::Music, double scale = 1);
    // Quarter turn to the left, as the wiggle of a roll stands.
    void uprightGlyph(char32_t code, Point at, Ink ink = Ink::Music);
    void line(Point from, Point to, double thickness, Ink ink = Ink::Music);
    void shape(std::vector<Point> corners, Ink ink = Ink::Music);
    void bow(Point from, Point to, double height, Ink ink = Ink::Music);
    void circle(Point centre, double radius, Ink ink = Ink::Music);
    void ring(Point centre, double radius, double thickness, Ink ink = Ink::Music);
    // Height of the em.
    void words(std::string text, Point at, double height, Face face,
               Anchor anchor = Anchor::Left, Ink ink = Ink::Words);
    void frame(Box box, double thickness, Ink ink); // within the box

    Skyline const& reach() const { return m_reach; }

    // Adds what another pen has drawn, so far below.
    void take(Pen const& other, double dy);

    // The marks in millimetres, the pen's origin at a place of the page.
    std::vector<Mark> marksAt(Point originMm, double spaceMm) const;

private:
    void keep(Primitive what, Box box);

    MusicFont const* m_font;
    std::optional<tune::BarIndex> m_bar;
    std::optional<arrange::PositionIndex> m_position;
    std::vector<Mark> m_marks; // in spaces
    Skyline m_reach;
};

// The same primitive scaled about the origin and moved.
Primitive placed(Primitive const& what, Point origin, double scale);

// Where a bow runs, from 0 at its beginning to 1 at its end.
Point onBow(Bow const& bow, double t);

// Box of the words as the layout measures them.
Box wordsBox(std::string const& text, Point at, double height, Face face, Anchor anchor);

} // namespace sheet
