#include "app/devices/midikeys.h"
#include "core/harp/seats.h"
#include "tests/devices/dummyserver.h"
#include "tests/harp/harps.h"
#include "tests/sound/application.h"

#include <catch2/catch.hpp>

#include <RtMidi.h>

#include <QCoreApplication>

#include <algorithm>
#include <string>
#include <vector>

namespace {

std::vector<std::string> portsNamedKeyboard(devices::MidiKeys const& keys)
{
    auto all = keys.ports();
    std::erase_if(all, [](std::string const& port) {
        return port.find("keyboard") == std::string::npos;
    });
    return all;
}

} // namespace

TEST_CASE("Keys pressed and released on a MIDI keyboard arrive with their pitch", "[midikeys]")
{
    hearing::application();
    if (!DummyServer::isInstalled()) {
        WARN("SKIPPED: no JACK server: no keyboard was played");
        return;
    }
    DummyServer const server("sallow-test-keys");
    qputenv("SALLOW_MIDI_DRIVER", "jack");
    devices::MidiKeys keys;
    std::vector<std::string> said;
    QObject::connect(&keys, &devices::MidiKeys::keyPressed, [&](int midi, int velocity) {
        said.push_back("down " + std::to_string(midi) + " " + std::to_string(velocity));
    });
    QObject::connect(&keys, &devices::MidiKeys::keyReleased,
                     [&](int midi) { said.push_back("up " + std::to_string(midi)); });

    std::unique_ptr<RtMidiOut> keyboard;
    bool const connected = server.waitFor([&] {
        if (!keyboard) {
            try {
                keyboard = std::make_unique<RtMidiOut>(RtMidi::UNIX_JACK, "test");
                keyboard->setErrorCallback([](RtMidiError::Type, std::string const&, void*) {});
            } catch (RtMidiError const&) {
                return false;
            }
        }
        keyboard->openVirtualPort("keyboard");
        auto const ports = portsNamedKeyboard(keys);
        return !ports.empty() && keys.open(ports.front()).has_value();
    });
    if (!connected) {
        WARN("SKIPPED: the JACK server did not start: no keyboard was played");
        qunsetenv("SALLOW_MIDI_DRIVER");
        return;
    }
    CHECK(keys.isOpen());
    // MIDI 1.0: note on, controller (to be ignored), note off, note on with velocity 0 is off.
    // A server under load may drop what is sent before its connection stands: as long as nothing
    // at all has arrived, it is played again.
    for (int again = 0; again < 5 && said.empty(); ++again) {
        for (std::vector<unsigned char> const& message :
             {std::vector<unsigned char>{0x90, 60, 100},
              {0xB0, 64, 127},
              {0x83, 60, 64},
              {0x95, 62, 1},
              {0x95, 62, 0}})
            keyboard->sendMessage(&message);
        QElapsedTimer waiting;
        waiting.start();
        server.waitFor([&] {
            QCoreApplication::processEvents();
            return said.size() >= 4 || (said.empty() && waiting.hasExpired(patienceMs / 5));
        });
    }
    CHECK(said == std::vector<std::string>{"down 60 100", "up 60", "down 62 1", "up 62"});
    keys.close();
    CHECK_FALSE(keys.isOpen());
    qunsetenv("SALLOW_MIDI_DRIVER");
}

TEST_CASE("A MIDI keyboard that is not there is refused", "[midikeys]")
{
    devices::MidiKeys keys;
    auto const refused = keys.open("no such keyboard");
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == base::FaultCode::NoMidiPort);
    CHECK_FALSE(keys.isOpen());
    qputenv("SALLOW_MIDI_DRIVER", "no-such-driver");
    CHECK(keys.ports().empty());
    CHECK_FALSE(keys.open("no such keyboard"));
    qunsetenv("SALLOW_MIDI_DRIVER");
}

TEST_CASE("A key finds its string as the levers stand, the open string before its neighbour",
          "[midikeys]")
{
    auto const harp = example::floor34();
    harp::LeverSetting levers(harp.count(), harp::Lever::Down);
    auto const c4 = harp::stringForKey(harp, levers, 60);
    REQUIRE(c4);
    CHECK(harp.string(*c4).open == music::Pitch{music::Letter::C, 0, 4});
    CHECK_FALSE(harp::stringForKey(harp, levers, 61)); // no string sounds C sharp
    levers[*c4] = harp::Lever::Up;
    CHECK(harp::stringForKey(harp, levers, 61) == c4);
    CHECK_FALSE(harp::stringForKey(harp, levers, 60));
    // D sharp on the D string and E flat on its own sound alike in E flat tuning.
    auto const eFlat = *harp::stringForKey(harp, levers, 63);
    levers[eFlat - 1] = harp::Lever::Up;
    CHECK(harp::stringForKey(harp, levers, 63) == eFlat);
    CHECK_FALSE(harp::stringForKey(harp, levers, 20)); // below the harp
}
