#pragma once

#include "core/sheet/drawing.h"

#include <QPainterPath>
#include <QString>

#include <string_view>
#include <vector>

namespace ui {

// The signs of the music font as filled outlines, in units of its em (fontEm), upright from
// their origin. Made once a thread and kept: a page draws the same few signs over and over.
QPainterPath const& outlineOf(char32_t code);

// Part of a line of words that is drawn in one piece: letters of a text face, or one
// accidental, which is drawn from the music font.
struct LetterRun {
    std::string_view text; // UTF-8, of the words handed in
    char32_t sign = 0;     // of the music font; 0: letters
    double x = 0;          // its left end on the page, in millimetres
    double widthMm = 0;
};
// The words from the left, placed as their anchor says.
std::vector<LetterRun> runsOf(sheet::Words const& words);

// Where an accidental among words has its origin, and its staff space, both in millimetres.
sheet::Point signPlace(LetterRun const& run, sheet::Words const& words);
double signSpaceMm(sheet::Words const& words);

QString letters(std::string_view utf8);

} // namespace ui
