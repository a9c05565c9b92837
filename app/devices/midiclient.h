#pragma once

#include <RtMidi.h>

#include <optional>
#include <string>
#include <vector>

namespace devices {

// The system's usual MIDI interface, or the one named by the variable SALLOW_MIDI_DRIVER ("alsa",
// "jack"). None: it has none, or not this one.
std::optional<RtMidi::Api> chosenApi();

// What RtMidi complains about is known by what it answers.
void keepQuiet(RtMidiError::Type type, std::string const& words, void* nothing);

std::vector<std::string> portsOf(RtMidi& client);

} // namespace devices
