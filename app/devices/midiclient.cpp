#include "app/devices/midiclient.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>

namespace devices {

namespace {

bool isUsual(RtMidi::Api api)
{
    // JACK is used only where it is asked for: its library complains on the terminal when no
    // server runs. So does ALSA's without a sequencer.
    if (api == RtMidi::UNIX_JACK || api == RtMidi::RTMIDI_DUMMY) return false;
    return api != RtMidi::LINUX_ALSA || std::filesystem::exists("/dev/snd/seq");
}

} // namespace

void keepQuiet(RtMidiError::Type, std::string const&, void*) {}

std::optional<RtMidi::Api> chosenApi()
{
    if (char const* named = std::getenv("SALLOW_MIDI_DRIVER"); named && *named) {
        RtMidi::Api const api = RtMidi::getCompiledApiByName(named);
        if (api == RtMidi::UNSPECIFIED) return std::nullopt;
        return api;
    }
    std::vector<RtMidi::Api> all;
    RtMidi::getCompiledApi(all);
    auto const usual = std::ranges::find_if(all, isUsual);
    if (usual == all.end()) return std::nullopt;
    return *usual;
}

std::vector<std::string> portsOf(RtMidi& client)
{
    std::vector<std::string> names;
    unsigned const count = client.getPortCount();
    for (unsigned i = 0; i < count; ++i) names.push_back(client.getPortName(i));
    return names;
}

} // namespace devices
