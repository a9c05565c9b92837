#pragma once

#include "core/arrange/arrangement.h"

#include <vector>

namespace arrange {

// An arrangement whose repeats are written out where the left hand does not do the same each
// time, so that what is printed is what is played.
struct Unfolded {
    Arrangement arrangement;
    base::List<tune::BarIndex, tune::BarIndex>
        bars; // the bar of the folded tune that each bar stands for
    base::List<PositionIndex, PositionIndex> positions; // and the position
};

// When a bar whose last time has a position of its own is written apart: where it is played
// otherwise then, or always, so that several arrangements of one tune have the same bars.
enum class LastTime { WhereItDiffers, Always };

// Whether the left hand plays some bar differently on different times through it.
bool passesDiffer(Arrangement const& arrangement,
                  LastTime lastTime = LastTime::WhereItDiffers);

// Writes out a repeated section of which any pass differs; the others keep their repeats. Where
// the tune has an order of parts or a jump, or a section's bars are not simply played one after
// the other, the whole tune is written out. Second times are named: "A 2", or in words over a
// section without a name.
// Played time and played bars stay; a position that is written more than once has copies at the
// end.
Unfolded unfolded(Arrangement const& arrangement,
                  LastTime lastTime = LastTime::WhereItDiffers);

// The arrangement as it is printed: unfolded where passes differ, else as it is.
Arrangement asPrinted(Arrangement arrangement);

} // namespace arrange
