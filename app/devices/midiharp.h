#pragma once

#include "app/sound/instrument.h"
#include "core/base/result.h"

#include <memory>
#include <string>
#include <vector>

namespace devices {

// Names of the MIDI devices that can be played on now; none where the system has no MIDI.
std::vector<std::string> midiOutputs();

// A device at the other end of a MIDI cable as the instrument that is played: the right hand on
// channel 1, the left on 2, each as a harp (General MIDI program 47), clicks on the percussion
// channel, and the timing clock with start, continue and stop, which slows where the end of a
// tune does. Fault: NoMidiPort.
base::Result<std::unique_ptr<sound::Instrument>> openMidiHarp(std::string const& port);

// Whether two names are of one device: the numbers that the system adds change when it is
// plugged in again.
bool sameDevice(std::string const& port, std::string const& other);

} // namespace devices
