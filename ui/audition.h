#pragma once

#include "core/perform/schedule.h"

namespace ui {

// Something to be heard: which arrangement, which bars of it and how, once or round and round.
struct Audition {
    arrange::Arrangement arrangement;
    perform::Hearing hearing;
    bool loop = false;
};

} // namespace ui
