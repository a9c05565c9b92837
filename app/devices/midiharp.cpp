#include "app/devices/midiharp.h"

#include "app/devices/midiclient.h"
#include "core/files/midi/messages.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <map>
#include <string_view>
#include <utility>

namespace devices {

namespace {

namespace midi = files::midi;

int channelOf(harp::Side hand) { return hand == harp::Side::Right ? 0 : 1; }

std::unique_ptr<RtMidiOut> client()
{
    auto const api = chosenApi();
    if (!api) return nullptr;
    try {
        auto out = std::make_unique<RtMidiOut>(*api, "Sallow");
        out->setErrorCallback(keepQuiet);
        return out;
    } catch (RtMidiError const&) {
        return nullptr;
    }
}

class MidiHarp final : public sound::Instrument {
public:
    explicit MidiHarp(std::unique_ptr<RtMidiOut> out) : m_out(std::move(out))
    {
        for (harp::Side const hand : {harp::Side::Right, harp::Side::Left})
            send({midi::programChange | channelOf(hand), midi::harpProgram});
    }
    ~MidiHarp() override { dampAllBut({}); }

    void pluck(harp::StringIndex string, int midi, int velocity, harp::Side hand) override
    {
        damp(string);
        send({midi::noteOn | channelOf(hand), midi, velocity});
        m_sounding[string] = {channelOf(hand), midi};
    }
    // Where another string sounds the same key on the same channel, it goes on.
    void damp(harp::StringIndex string) override
    {
        auto const found = m_sounding.find(string);
        if (found == m_sounding.end()) return;
        auto const ended = found->second;
        m_sounding.erase(found);
        bool const still = std::ranges::any_of(
            m_sounding, [&ended](auto const& other) { return other.second == ended; });
        if (!still)
            send({midi::noteOff | ended.channel, ended.midi, midi::usualReleaseVelocity});
    }
    void dampAllBut(std::set<harp::StringIndex> const& strings) override
    {
        std::vector<harp::StringIndex> others;
        for (auto const& [string, key] : m_sounding)
            if (!strings.contains(string)) others.push_back(string);
        for (harp::StringIndex const string : others) damp(string);
    }
    void click(sound::Stress stress) override
    {
        bool const bar = stress == sound::Stress::Bar;
        int const key = bar ? midi::highWoodBlock : midi::lowWoodBlock;
        int const velocity = bar ? 110 : stress == sound::Stress::HalfBar ? 98 : 80;
        send({midi::noteOn | midi::percussionChannel, key, velocity});
        send({midi::noteOff | midi::percussionChannel, key, midi::usualReleaseVelocity});
    }
    void beatBegins(bool fromTheStart) override
    {
        send({fromTheStart ? midi::start : midi::goOn});
    }
    void beatClock() override { send({midi::timingClock}); }
    void beatEnds() override { send({midi::stop}); }
    void write(float*, float*, int) override {} // it is heard elsewhere

private:
    struct Key {
        int channel = 0;
        int midi = 0;
        friend bool operator==(Key const&, Key const&) = default;
    };

    void send(std::initializer_list<int> bytes)
    {
        std::vector<unsigned char> message;
        for (int const byte : bytes) message.push_back(static_cast<unsigned char>(byte));
        m_out->sendMessage(&message);
    }

    std::unique_ptr<RtMidiOut> m_out;
    std::map<harp::StringIndex, Key> m_sounding;
};

// "Harp:port 1 20:0" without the numbers at its end.
std::string_view named(std::string_view port)
{
    auto const cut = port.find_last_not_of("0123456789:");
    if (cut == std::string_view::npos || port[cut] != ' ') return port;
    if (port.find(':', cut) == std::string_view::npos) return port;
    return port.substr(0, cut);
}

} // namespace

std::vector<std::string> midiOutputs()
{
    auto const out = client();
    return out ? portsOf(*out) : std::vector<std::string>{};
}

base::Result<std::unique_ptr<sound::Instrument>> openMidiHarp(std::string const& port)
{
    base::Fault const cannotOpen{base::FaultCode::NoMidiPort, "MIDI", port};
    auto out = client();
    if (!out) return cannotOpen;
    auto const names = portsOf(*out);
    auto const found = std::ranges::find_if(
        names, [&port](std::string const& name) { return sameDevice(name, port); });
    if (found == names.end()) return cannotOpen;
    out->openPort(static_cast<unsigned>(found - names.begin()), "harp");
    if (!out->isPortOpen()) return cannotOpen;
    return std::unique_ptr<sound::Instrument>(std::make_unique<MidiHarp>(std::move(out)));
}

bool sameDevice(std::string const& port, std::string const& other)
{
    return named(port) == named(other);
}

} // namespace devices
