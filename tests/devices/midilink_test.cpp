// Devices that come and go: a MIDI instrument and a MIDI device are clients of a JACK server
// without hardware, and are pulled out by ending them.

#include "app/devices/midiharp.h"
#include "app/devices/midilink.h"
#include "tests/devices/dummyserver.h"
#include "tests/sound/application.h"

#include <catch2/catch.hpp>

#include <RtMidi.h>

#include <QCoreApplication>

#include <memory>
#include <string>
#include <vector>

namespace {

void quiet(RtMidiError::Type, std::string const&, void*) {}

template<typename Client>
std::unique_ptr<Client> pluggedIn(DummyServer const& server, std::string const& name)
{
    std::unique_ptr<Client> client;
    server.waitFor([&] {
        try {
            client = std::make_unique<Client>(RtMidi::UNIX_JACK, name);
            client->setErrorCallback(quiet);
            client->openVirtualPort("harp");
            return true;
        } catch (RtMidiError const&) {
            client.reset();
            return false;
        }
    });
    return client;
}

} // namespace

TEST_CASE("A device is the same when the system's numbers behind its name have changed",
          "[midilink]")
{
    CHECK(devices::sameDevice("Harp:Harp MIDI 1 20:0", "Harp:Harp MIDI 1 24:0"));
    CHECK(devices::sameDevice("Harp", "Harp"));
    CHECK_FALSE(devices::sameDevice("Harp:Harp MIDI 1 20:0", "Harp:Harp MIDI 2 20:0"));
    CHECK_FALSE(devices::sameDevice("Harp 1", "Harp 2"));
}

TEST_CASE("MIDI devices are taken when they come, let go when they go, and taken again",
          "[midilink]")
{
    hearing::application();
    if (!DummyServer::isInstalled()) {
        WARN("SKIPPED: no JACK server: no device was plugged in");
        return;
    }
    DummyServer const server("sallow-test-link");
    qputenv("SALLOW_MIDI_DRIVER", "jack");
    auto keyboard = pluggedIn<RtMidiOut>(server, "lapharp");
    if (!keyboard) {
        WARN("SKIPPED: the JACK server did not start: no device was plugged in");
        qunsetenv("SALLOW_MIDI_DRIVER");
        return;
    }
    devices::MidiLink link;
    std::vector<std::string> said;
    QObject::connect(&link, &devices::MidiLink::inputCame,
                     [&](std::string const&) { said.push_back("in came"); });
    QObject::connect(&link, &devices::MidiLink::inputGone,
                     [&](std::string const&) { said.push_back("in gone"); });
    QObject::connect(&link, &devices::MidiLink::outputCame,
                     [&](std::string const&) { said.push_back("out came"); });
    QObject::connect(&link, &devices::MidiLink::outputGone,
                     [&](std::string const&) { said.push_back("out gone"); });
    auto const lookUntil = [&](std::size_t many) {
        server.waitFor([&] {
            link.look();
            return said.size() >= many;
        });
    };
    link.want("lapharp:harp", "box:harp");
    lookUntil(1);
    CHECK(said == std::vector<std::string>{"in came"});
    CHECK(link.input().find("lapharp") != std::string::npos);
    CHECK(link.output().empty());
    auto box = pluggedIn<RtMidiIn>(server, "box");
    lookUntil(2);
    CHECK(said.back() == "out came");
    link.look();
    CHECK(said.size() == 2); // told once
    keyboard.reset();
    lookUntil(3);
    CHECK(said.back() == "in gone");
    CHECK(link.input().empty());
    box.reset();
    lookUntil(4);
    CHECK(said.back() == "out gone");
    keyboard = pluggedIn<RtMidiOut>(server, "lapharp");
    box = pluggedIn<RtMidiIn>(server, "box");
    lookUntil(6);
    CHECK(said.size() == 6);
    CHECK_FALSE(link.input().empty());
    CHECK_FALSE(link.output().empty());
    link.want(devices::MidiLink::none, "");
    CHECK(said.back() == "out gone");
    CHECK(link.input().empty());
    qunsetenv("SALLOW_MIDI_DRIVER");
}
