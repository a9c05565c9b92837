#pragma once

#include "core/harp/levers.h"
#include "core/sheet/pen.h"

#include <string>
#include <vector>

namespace sheet {

// One string of a picture, as the player tells it from its neighbours.
struct PicturedString {
    music::Letter letter = music::Letter::C;
    bool hasLever = true;
    harp::Lever lever = harp::Lever::Down;
};

// Red for C strings, dark for F strings.
Ink inkOf(PicturedString const& string);

// A lever over a string: a block where it is up, a short bar where it is down, nothing where
// there is none. At the string's x, from y downwards.
void drawLever(Pen& pen, PicturedString const& string, Point at, double scale);

// All strings of a harp from the lowest, with their levers as they are set before the tune: a
// block at the top of a string whose lever is up, a short bar where it is down. C strings are
// red and F strings dark, and both carry their letters, for eyes that tell colours badly
// [trade-1.3].
struct LeverPicture {
    std::vector<PicturedString> strings;
};
LeverPicture leverPicture(harp::Harp const& harp, harp::LeverSetting const& setup);

// Sizes in spaces at scale 1. The place is the top left corner.
Box leverPictureBox(LeverPicture const& picture, double scale = 1);
void drawLeverPicture(Pen& pen, LeverPicture const& picture, Point at, double scale = 1);

// A finger on a string of a shape.
struct ShapeDot {
    int string = 0; // index into ShapePicture::strings
    int finger = 1;
    std::string under; // degree or note name
};

// A shape as the hand lies on the strings: a ring with its finger on every string, the thumb
// highest.
struct ShapePicture {
    std::string title;    // name of the pattern, or of the chord
    bool ofChord = false; // set as a chord symbol
    std::string caption;
    std::vector<PicturedString> strings;
    bool coloured = false;      // real strings with their letters; else any
    std::vector<ShapeDot> dots; // one a string, lowest first
};

// `rows`: for how many dots one above the other room is left, so that pictures beside each
// other are equally high.
Box shapePictureBox(ShapePicture const& picture, int rows, double scale = 1);
void drawShapePicture(Pen& pen, ShapePicture const& picture, Point at, int rows,
                      double scale = 1);

// Pictures side by side in rows over a width, inside a frame with a heading; from y = 0
// downwards. Answers the height.
double drawShapeBox(Pen& pen, std::vector<ShapePicture> const& shapes,
                    std::string const& heading, double width, double scale = 1);

// Breaks words into lines of a width.
std::vector<std::string> wrapped(std::string const& text, Face face, double height,
                                 double width);

} // namespace sheet
