#pragma once

#include "core/sheet/helps.h"
#include "core/sheet/notesetting.h"
#include "core/sheet/pen.h"

#include <vector>

namespace sheet {

// Where a bar's signs stand on the line.
struct BarPlace {
    double left = 0;       // where its ground begins
    double right = 0;      // its bar line
    base::List<StaffNoteIndex, double> x; // left edge of the main row of noteheads
};

// Where a beam has been drawn: its outer edge from its first to its last stem.
struct DrawnBeam {
    BeamGroup group;
    bool up = true;
    Point from;
    Point to;
};

// The signs of one bar on one staff: heads, ledger lines, accidentals, dots, stems, flags,
// beams, rests, grace notes and rolls. The pen's origin is the staff's top line. Answers the
// beams, for what is set by them.
std::vector<DrawnBeam> drawNotes(Pen& pen, SetBar const& bar, BarPlace const& place,
                                 tune::BarIndex barIndex, Helps const& helps);

// Middle of a sign's stem, and the end of a stem without a beam.
double stemX(SetNote const& note, double x, MusicFont const& font);
double loneStemEnd(SetNote const& note);

// Left edge of a sign: where it was placed, or the middle of the bar for a whole bar's rest.
double signX(SetNote const& note, BarPlace const& place, StaffNoteIndex index,
             MusicFont const& font);

} // namespace sheet
