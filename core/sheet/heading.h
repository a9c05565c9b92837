#pragma once

#include "core/sheet/pen.h"
#include "core/sheet/score.h"

namespace sheet {

// Title, composer, rhythm and tempo, lever set-up and harp line over a width in spaces. Drawn
// from y = 0 at the top margin; answers how far down it reaches.
double drawHeading(Pen& pen, Score const& score, double width);

// Title and page number ("2 of 3") at the head of a later page.
double drawRunningHead(Pen& pen, Score const& score, std::string const& page, double width);

// Remarks and the caution at the foot of the last page, its last line on y = 0; the box of
// shapes at a scale, none at 0. Answers how far up it reaches (positive).
double drawFoot(Pen& pen, Score const& score, double width, double shapesScale);

} // namespace sheet
