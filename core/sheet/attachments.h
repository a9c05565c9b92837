#pragma once

#include "core/sheet/notedrawing.h"

#include <string>
#include <string_view>
#include <vector>

namespace sheet {

// What is set by the notes once they are drawn, each clear of all that is there already.

// A number at the beam where one beam holds the whole tuplet, else over a bracket [gould11].
void drawTuplets(Pen& pen, SetBar const& bar, BarPlace const& place, tune::BarIndex barIndex,
                 std::vector<DrawnBeam> const& beams);

// Articulations at the notehead's side and ornaments above it, before the fingers; fermatas,
// breaths, segno and coda beyond all that.
void drawMarks(Pen& pen, SetBar const& bar, BarPlace const& place, tune::BarIndex barIndex);
void drawOuterMarks(Pen& pen, SetBar const& bar, BarPlace const& place,
                    tune::BarIndex barIndex);

// Whether a mark of a note shows on the sheet, as a sign or in words.
bool isTold(std::string_view mark);

// "mf" under its note, and the part of a hairpin on one line.
struct PlacedDynamic {
    std::string text;
    double x = 0;
    tune::BarIndex bar = 0;
};
struct PlacedHairpin {
    double left = 0;
    double right = 0;
    bool opens = true;
    tune::BarIndex bar = 0;
};
// In one row below the staff and all that hangs from it.
void drawDynamics(Pen& pen, std::vector<PlacedDynamic> const& dynamics,
                  std::vector<PlacedHairpin> const& hairpins);

enum class FingerSide { Above, Below };

// Fingers outside the staff, the highest note's number on top.
void drawFingers(Pen& pen, SetBar const& bar, BarPlace const& place, tune::BarIndex barIndex,
                 FingerSide side);

} // namespace sheet
