#pragma once

#include "core/arrange/arrangement.h"

#include <string>

namespace files {

// Standard MIDI File, type 1: tempo, meter and key on the first track, right hand and left hand
// on tracks of their own, harp sound. Bytes.
std::string midiFile(arrange::Arrangement const& arrangement);

} // namespace files
