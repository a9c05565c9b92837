#pragma once

#include "ui/likeshapes.h"
#include "ui/passage.h"

#include "core/proposal/proposal.h"

#include <optional>
#include <vector>

namespace ui {

// A left hand taken from one or more chords, to be put over others. Places are counted as the
// tune is written, so that a copy fits a part of the same build whatever its repeats.
struct CopiedHand {
    struct Shape {
        arrange::PositionIndex position = 0; // where it was taken from
        music::Length at; // from the first of them
        arrange::Voicing voicing;
    };
    std::vector<Shape> shapes; // in the order of the tune
    music::Length length;      // of the bars they come from: a longer passage is filled again
};

// What stands at some positions, which are sorted here.
CopiedHand copiedFrom(arrange::Arrangement const& arrangement,
                      std::vector<arrange::PositionIndex> positions);

// The positions of some bars: all, or, where a bar has a left hand of its own for each time it is
// played, those of the time that is asked for, or else of the time before.
std::vector<arrange::PositionIndex> positionsIn(arrange::Arrangement const& arrangement,
                                                Passage passage, std::optional<int> pass);

// The written time that a position stands for: 1 where its bar has one left hand for all.
int passOf(arrange::Arrangement const& arrangement, arrange::PositionIndex position);

// Where a copy comes to lie.
struct Laying {
    std::vector<ShapeAt> shapes; // as they can be played there
    int unplayable = 0;          // of the copy's shapes: the hand or the tune is in the way
    int nowhere = 0;             // of the copy's shapes: no chord begins there
};

// From a position on, once; where a passage is given, from there to its end, as often as the
// copy fits. The time played is that of the position.
Laying laidFrom(proposal::Proposal const& proposal, arrange::PositionIndex position,
                CopiedHand const& copied, std::optional<Passage> passage);

// The first shape of a copy over each of some positions.
Laying laidOver(proposal::Proposal const& proposal,
                std::vector<arrange::PositionIndex> const& positions, CopiedHand const& copied);

// The copied shapes and those from a position on, each in the other's place. Nothing where the
// two overlap.
std::optional<Laying> swappedFrom(proposal::Proposal const& proposal,
                                  arrange::PositionIndex position, CopiedHand const& copied);

// Bars that are like one, in the order of the tune, that one left out.
struct LikeBars {
    std::vector<tune::BarIndex> bars;
    bool sameNotes = false; // of the tune; else only the chords are the same
};
LikeBars barsLike(tune::Tune const& tune, tune::BarIndex bar);

} // namespace ui
