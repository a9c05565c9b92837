#pragma once

#include "core/sheet/pen.h"
#include "core/sheet/score.h"

#include <vector>

namespace sheet {

// Words that stand in a row above or below a staff.
struct PlacedLabel {
    Label label;
    double x = 0; // left edge, or the middle for lever cues
    tune::BarIndex bar = 0;
    double barLeft = 0;  // where its bar begins
    double barRight = 0; // and ends
};

struct RowStyle {
    Face face = Face::Roman;
    double height = 2;
    Ink ink = Ink::Words;
};

// One baseline for the whole row: above all that the pen has drawn under it, and at least so
// far from the staff.
void drawRowAbove(Pen& pen, std::vector<PlacedLabel> const& labels, RowStyle const& style,
                  double gap, double leastAboveStaff);
void drawRowBelow(Pen& pen, std::vector<PlacedLabel> const& labels, RowStyle const& style,
                  double gap, double leastBelowStaff);

// Words of the writer, each as low as it can stand above the staff and not beyond `rightEnd`.
void drawAnnotations(Pen& pen, std::vector<PlacedLabel> const& annotations, double rightEnd);

// A small star over each note that is not played as it is written; a line of the foot says how.
void drawStars(Pen& pen, std::vector<PlacedLabel> const& notes);

// "D.S. al Fine": at the right end of its bar, above what stands there.
void drawNavigation(Pen& pen, std::vector<PlacedLabel> const& words);

// Lever changes: bold in a box below the upper staff, each under its moment, beside the one
// before where two would touch, or under it where the bar has no room.
void drawLeverCues(Pen& pen, std::vector<PlacedLabel> const& cues);

// Bracket of a first or second ending over some bars of one line.
struct EndingBracket {
    double left = 0;
    double right = 0;
    std::string text;   // "1.", empty where it goes on from the line before
    bool opens = true;  // a hook at its left
    bool closes = true; // a hook at its right
    tune::BarIndex bar = 0;
};
void drawEndings(Pen& pen, std::vector<EndingBracket> const& endings);

// A part's letter in a box, its left edge at x, above what is drawn there.
void drawPartLetter(Pen& pen, std::string const& letter, double x);

} // namespace sheet
