#pragma once

#include "core/music/time.h"

#include <QColor>
#include <QRectF>

class QPainter;

namespace ui {

// Small pictures on buttons, drawn as outlines so that they are crisp at any size.
enum class Sign {
    None,
    Play,
    Stop,
    Loop,
    FromHere,
    Locked,
    Unlocked,
    Close,
    Notice,
    Done,
    Rest
};

// Fills the square in the middle of `box`.
void paintSign(QPainter& painter, Sign sign, QRectF const& box, QColor const& colour);

// A note of a metronome mark (minim, crotchet or quaver, dotted where the length is) standing
// on the bottom of `box`; answers the width used.
double paintNote(QPainter& painter, music::Length length, QRectF const& box,
                 QColor const& colour);

} // namespace ui
