#pragma once

#include "core/arrange/arrangement.h"

#include <optional>
#include <vector>

namespace ui {

// One pluck of the written tune as a lane shows it: of several times through a bar one is
// drawn.
struct LaneNote {
    tune::BarIndex bar = 0;
    music::Length at; // from the start of that bar
    music::Length held;
    music::Length rings; // until the string is plucked again, its lever turns or it has faded
    music::Length fades; // until it has faded, were it left alone
    harp::StringIndex string = 0;
    harp::Side hand = harp::Side::Right;
    bool fromTune = true;
    int rollOrder = 0;
    std::optional<arrange::PositionIndex> position; // none: the right hand's
    // Which written bars follow as it is played, without a jump.
    std::vector<tune::BarIndex> barsBehind;
};

// Of the times through that share a stretch one is drawn: the selected one, or else the first.
bool drawnAt(arrange::Arrangement const& arrangement, arrange::PositionIndex position,
             std::optional<arrange::PositionIndex> selected);

// By time, then from the lowest string.
std::vector<LaneNote> laneNotes(arrange::Arrangement const& arrangement,
                                std::optional<arrange::PositionIndex> selected);

} // namespace ui
