#pragma once

#include "core/perform/schedule.h"

#include <vector>

namespace ui {

// Something to be heard: which arrangement, which bars of it and how, once or round and round.
struct Audition {
    arrange::Arrangement arrangement;
    perform::Hearing hearing;
    bool loop = false;
    bool clicks = false;        // on every beat
    std::vector<double> tempos; // of round after round, the last for all that follow; none: as
                                // `hearing` has it
};

} // namespace ui
