#pragma once

#include "core/arrange/indices.h"
#include "core/tune/indices.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace sheet {

// What a mark is for: the painter chooses its colour, tests and screens tell marks apart.
enum class Ink {
    Music,
    Staff,
    Words,
    Chord,
    PatternLabel,
    Finger,
    Lever,
    Caution,
    RedString,
    BlueString,
    Paper, // what shows the paper through: letters in noteheads
    Quiet
};

enum class Face { Roman, Italic, Bold, Sans, SansBold };
enum class Anchor { Left, Centre, Right };

// All places and sizes are in millimetres from the top left corner of the page, y downwards.
struct Point {
    double x = 0;
    double y = 0;
    friend bool operator==(Point const&, Point const&) = default;
};

// A character of the SMuFL music font; its origin lies on the baseline as the font has it.
struct Glyph {
    char32_t code = 0;
    Point at;
    double staffSpaceMm = 1.75; // a quarter of the staff's height; the font's em is four spaces
    Ink ink = Ink::Music;
    bool upright = false; // a quarter turn to the left about its origin: the wiggle of a roll
};
struct Words {
    std::string text;    // UTF-8
    Point at;            // on the baseline
    double heightMm = 3; // of the em
    Face face = Face::Roman;
    Anchor anchor = Anchor::Left;
    Ink ink = Ink::Words;
};
struct Line {
    Point from;
    Point to;
    double thicknessMm = 0.2;
    Ink ink = Ink::Music;
    bool dashed = false;
};
// A filled shape: beams, blocks.
struct Shape {
    std::vector<Point> corners;
    Ink ink = Ink::Music;
};
// A filled crescent between two cubic curves: ties and slurs.
struct Bow {
    Point from, control1, control2, to;
    double thicknessMm = 0.35; // at the middle
    Ink ink = Ink::Music;
};
struct Circle {
    Point centre;
    double radiusMm = 1;
    double thicknessMm = 0; // 0: filled
    Ink ink = Ink::Music;
};

using Primitive = std::variant<Glyph, Words, Line, Shape, Bow, Circle>;

// One drawn thing and what it belongs to, so that a screen can light it and find it under a
// click.
struct Mark {
    Primitive what;
    std::optional<tune::BarIndex> bar;
    std::optional<arrange::PositionIndex> position;
};

// The ground of a bar, or of a position within it, for finding what was clicked and for
// lighting what plays.
struct Area {
    Point topLeft;
    Point bottomRight;
    tune::BarIndex bar = 0;
    std::optional<arrange::PositionIndex> position;
};

struct Page {
    double widthMm = 210;
    double heightMm = 297;
    std::vector<Mark> marks;
    std::vector<Area> areas; // bars first, then positions
};

// A place that a reader of the printed thing may want to turn to.
struct Bookmark {
    std::string text;
    int page = 0;   // index into Document::pages
    double yMm = 0; // from the top of the page
    int level = 0;  // 1: a part of the bookmark of level 0 before it
    friend bool operator==(Bookmark const&, Bookmark const&) = default;
};

// How its pages lie open: one by one; two side by side from the first on; or two side by side
// as in a book, whose first page is a right-hand one.
enum class Opening { PageByPage, InPairs, AsABook };

// The printed thing: what screen, PDF, SVG and PNG are painted from.
struct Document {
    std::string title;
    std::string author;
    std::vector<Page> pages;
    std::vector<Bookmark> bookmarks{}; // in the order of reading
    Opening opening = Opening::PageByPage;
};

} // namespace sheet
