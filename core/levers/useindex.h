#pragma once

#include "core/base/list.h"
#include "core/tune/playing.h"

namespace levers {

// What the levers must serve in turn: notes and grace notes as they are played (uses.h).
struct Use;
using UseIndex = base::Index<Use>;
using Uses = base::List<UseIndex, tune::PlayedNote>;

} // namespace levers
