#include "app/devices/midikeys.h"

#include "app/devices/midiclient.h"
#include "core/files/midi/messages.h"

#include <QMetaObject>

#include <algorithm>
#include <chrono>

namespace devices {

namespace {

std::unique_ptr<RtMidiIn> client()
{
    auto const api = chosenApi();
    if (!api) return nullptr;
    try {
        auto in = std::make_unique<RtMidiIn>(*api, "Sallow");
        in->setErrorCallback(keepQuiet);
        return in;
    } catch (RtMidiError const&) {
        return nullptr;
    }
}

// Called on RtMidi's own thread: hands over to the thread of the keys and does nothing else.
void arrived(double, std::vector<unsigned char>* bytes, void* keys)
{
    if (!bytes || bytes->size() < 3) return;
    int const kind = bytes->at(0) & 0xF0; // of any channel
    int const midi = bytes->at(1);
    int const velocity = bytes->at(2);
    if (kind != files::midi::noteOn && kind != files::midi::noteOff) return;
    double const at =
        std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch())
            .count();
    auto* const receiver = static_cast<MidiKeys*>(keys);
    QMetaObject::invokeMethod(
        receiver,
        [receiver, midi, velocity, at, pressed = kind == files::midi::noteOn && velocity > 0] {
            if (pressed)
                emit receiver->keyPressed(midi, velocity, at);
            else
                emit receiver->keyReleased(midi, at);
        },
        Qt::QueuedConnection);
}

} // namespace

struct MidiKeys::Input {
    std::unique_ptr<RtMidiIn> in;
};

MidiKeys::MidiKeys(QObject* parent) : QObject(parent) {}

// The input goes first, so that nothing arrives any more.
MidiKeys::~MidiKeys() { close(); }

std::vector<std::string> MidiKeys::ports() const
{
    auto const in = client();
    return in ? portsOf(*in) : std::vector<std::string>{};
}

base::Result<base::Done> MidiKeys::open(std::string const& port)
{
    close();
    base::Fault const cannotOpen{base::FaultCode::NoMidiPort, "MIDI", port};
    auto in = client();
    if (!in) return cannotOpen;
    auto const names = portsOf(*in);
    auto const found = std::ranges::find(names, port);
    if (found == names.end()) return cannotOpen;
    in->setCallback(arrived, this);
    in->openPort(static_cast<unsigned>(found - names.begin()), "keys");
    if (!in->isPortOpen()) return cannotOpen;
    m_input = std::make_unique<Input>(Input{std::move(in)});
    return base::Done{};
}

void MidiKeys::close() { m_input.reset(); }

bool MidiKeys::isOpen() const { return m_input != nullptr; }

} // namespace devices
