#pragma once

#include "app/cli/job.h"

namespace app {

// Arranges one tune and saves its outputs, or those of each level that the call asks for.
ExitStatus arrangeBrief(Job const& job, proposal::Brief const& brief,
                        files::AbcEntry const& entry, std::vector<Output> const& outputs,
                        SoundWish const& sound, OutputNames& names);

// The outputs with a number before each ending.
std::vector<Output> numberedAll(std::vector<Output> outputs, int number);

} // namespace app
