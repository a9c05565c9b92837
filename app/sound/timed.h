#pragma once

#include "app/sound/instrument.h"
#include "app/sound/output.h"

#include <memory>

namespace sound {

// An instrument that nobody asks for sound, such as one at the end of a MIDI cable, played in real
// time by a thread of its own, in steps of a block: 1.33 ms.
std::unique_ptr<Output> timedOutput(std::unique_ptr<Instrument> instrument);

} // namespace sound
