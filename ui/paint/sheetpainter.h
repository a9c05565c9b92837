#pragma once

#include "core/sheet/drawing.h"

#include <QColor>

class QPainter;

namespace ui {

// What each ink of the sheet looks like on paper.
struct SheetColours {
    QColor paper{0xff, 0xff, 0xff};
    QColor music{0x11, 0x14, 0x16};
    QColor staff{0x3a, 0x40, 0x44};
    QColor words{0x11, 0x14, 0x16};
    QColor chord{0x11, 0x14, 0x16};
    QColor patternLabel{0x1f, 0x65, 0x47}; // willow green, dark enough for print
    QColor finger{0x2b, 0x34, 0x3a};
    QColor lever{0x7a, 0x3b, 0x06};
    QColor caution{0x55, 0x5d, 0x62};
    QColor redString{0xb3, 0x38, 0x2b};
    QColor blueString{0x2b, 0x4c, 0x9b};
    QColor quiet{0x4a, 0x53, 0x59};
};
QColor colourOf(sheet::Ink ink, SheetColours const& colours);

// A bow is filled between two curves through the same ends, a thickness apart in the middle:
// how far down the control points of the outer one lie from the bow's own; those of the inner
// one lie as far the other way.
double halfOf(sheet::Bow const& bow);

// Letters as characters of their fonts, or as filled outlines where the reader of the file may
// not have the fonts.
enum class Lettering { Fonts, Outlines };

// Paints the marks of a page. The painter's unit is a millimetre of the page, its origin the
// page's top left corner. The one painter behind screen, printer, PDF and PNG.
void paintPage(QPainter& painter, sheet::Page const& page, SheetColours const& colours = {},
               Lettering lettering = Lettering::Outlines);

} // namespace ui
