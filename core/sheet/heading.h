#pragma once

#include "core/sheet/pen.h"
#include "core/sheet/score.h"

namespace sheet {

// Title, composer, rhythm and tempo, lever set-up and harp line over a width in spaces. Drawn
// from y = 0 at the top margin; answers how far down it reaches.
double drawHeading(Pen& pen, Score const& score, double width);

// Title and page number at the head of a later page.
double drawRunningHead(Pen& pen, Score const& score, int page, double width);

// Remarks and the caution at the foot of the last page, its last line on y = 0.
// Answers how far up it reaches (positive).
double drawFoot(Pen& pen, Score const& score, double width);

} // namespace sheet
