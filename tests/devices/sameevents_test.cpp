// One arrangement in four ways: what is heard, the MIDI file, a MIDI device and the strings that
// light have the same notes at the same times.

#include "app/devices/midiharp.h"
#include "app/sound/player.h"
#include "app/sound/render.h"
#include "app/sound/soundfont.h"
#include "app/sound/timed.h"
#include "core/files/midi/smfread.h"
#include "core/files/midi/write.h"
#include "core/perform/practice.h"
#include "tests/devices/dummyserver.h"
#include "tests/perform/pieces.h"
#include "tests/sound/application.h"
#include "tests/sound/spectrum.h"

#include <catch2/catch.hpp>

#include <RtMidi.h>

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <memory>
#include <mutex>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace {

struct Sounded {
    double at = 0;
    int midi = 0;
    bool left = false;
};

// Every note of one has one of the other's, as near as this, and none is left.
bool same(std::vector<Sounded> const& a, std::vector<Sounded> b, double within)
{
    for (Sounded const& one : a) {
        auto const found = std::ranges::find_if(b, [&](Sounded const& other) {
            return other.midi == one.midi && other.left == one.left &&
                   std::abs(other.at - one.at) <= within;
        });
        if (found == b.end()) {
            UNSCOPED_INFO("no note " << one.midi << " at " << one.at);
            return false;
        }
        b.erase(found);
    }
    return b.empty();
}

struct Cable { // what arrives at the other end
    std::mutex mutex;
    double at = 0;
    std::vector<Sounded> notes;
    std::vector<int> ended;
    int clocks = 0;
    std::vector<int> commands;

    static void arrived(double seconds, std::vector<unsigned char>* bytes, void* cable)
    {
        auto* const self = static_cast<Cable*>(cable);
        std::lock_guard const lock(self->mutex);
        self->at += seconds;
        if (!bytes || bytes->empty()) return;
        int const status = bytes->at(0);
        if (status == 0xF8) ++self->clocks;
        if (status == 0xFA || status == 0xFB || status == 0xFC)
            self->commands.push_back(status);
        if ((status & 0xF0) == 0x90 && (status & 0x0F) < 2)
            self->notes.push_back({self->at, bytes->at(1), (status & 0x0F) == 1});
        if ((status & 0xF0) == 0x80) self->ended.push_back(bytes->at(1));
    }
};

} // namespace

TEST_CASE("Sound, MIDI file, MIDI device and string bank have the same events", "[sameevents]")
{
    hearing::application();

    auto const arrangement = pieces::twoBars({pieces::wholes(1, 4), 150});
    perform::Course const course = perform::course(arrangement, {}, {});
    std::vector<Sounded> wanted;
    for (perform::Event const& event : course.rounds.front()->events)
        if (event.kind == perform::Event::Kind::Pluck)
            wanted.push_back({event.at, event.midi, event.hand == harp::Side::Left});
    REQUIRE(wanted.size() == 13);

    SECTION("the MIDI file, in which a roll stands on its beat")
    {
        auto const file = files::readSmf(files::midiFile(arrangement), "a.mid");
        REQUIRE(file);
        std::vector<Sounded> notes;
        for (auto const& track : file->tracks)
            for (auto const& note : track.notes)
                notes.push_back({static_cast<double>(note.from) / file->ticksACrotchet * 60 /
                                     *file->tempo,
                                 note.key, note.channel == 1});
        CHECK(same(wanted, notes, 0.1));
    }
    SECTION("the sound: each key's own frequency sets in at its time")
    {
        if (!sound::findSoundFont()) {
            WARN("no sound font: nothing was heard");
            return;
        }
        auto const recording = sound::renderToMemory(course);
        REQUIRE(recording);
        for (Sounded const& note : wanted) {
            double const hz = 440 * std::exp2((note.midi - 69) / 12.0);
            auto const strength = [&](double from) {
                auto const first = static_cast<std::size_t>(
                    std::max(0.0, from) * sound::sampleRate);
                return hearing::strengthAt(std::span<float const>(recording->left)
                                               .subspan(first, sound::sampleRate / 12),
                                           hz, sound::sampleRate);
            };
            CAPTURE(note.midi, note.at);
            double const before = note.at < 0.1 ? 0 : strength(note.at - 0.09);
            CHECK(strength(note.at + 0.02) > std::max(0.002, 1.2 * before));
        }
    }
    SECTION("the MIDI device and the strings that light, played together")
    {
        if (!DummyServer::isInstalled()) {
            WARN("SKIPPED: no JACK server: no MIDI device was played on");
            return;
        }
        DummyServer const server("sallow-test-same");
        qputenv("SALLOW_MIDI_DRIVER", "jack");
        Cable cable;
        std::unique_ptr<RtMidiIn> box;
        std::unique_ptr<sound::Instrument> harp;
        bool const connected = server.waitFor([&] {
            try {
                if (!box) {
                    box = std::make_unique<RtMidiIn>(RtMidi::UNIX_JACK, "box", 5000);
                    box->ignoreTypes(true, false, true);
                    box->setCallback(Cable::arrived, &cable);
                    box->openVirtualPort("in");
                }
                auto const ports = devices::midiOutputs();
                auto const found = std::ranges::find_if(ports, [](std::string const& port) {
                    return port.find("box") != std::string::npos;
                });
                if (found == ports.end()) return false;
                auto opened = devices::openMidiHarp(*found);
                if (opened) harp = *std::move(opened);
                return harp != nullptr;
            } catch (RtMidiError const&) {
                box.reset();
                return false;
            }
        });
        if (!connected) {
            WARN("SKIPPED: the JACK server did not start: no MIDI device was played on");
            qunsetenv("SALLOW_MIDI_DRIVER");
            return;
        }
        sound::Player player(sound::silentOutput());
        player.alsoOn(sound::timedOutput(std::move(harp)));
        std::vector<Sounded> lit;
        QObject::connect(&player, &sound::Player::stringPlucked,
                         [&](harp::StringIndex string, harp::Side hand) {
                             auto const pitch = harp::pitchAt(arrangement.harp,
                                                              arrangement.levers, string, {});
                             lit.push_back({player.place().at, music::midi(pitch),
                                            hand == harp::Side::Left});
                         });
        player.play(course);
        server.waitFor([&] {
            player.look();
            std::lock_guard const lock(cable.mutex);
            return !player.isPlaying() && cable.notes.size() >= wanted.size();
        });
        // 24 clocks a crotchet, eight crotchets (MIDI 1.0); the first message is the start.
        server.waitFor([&] {
            std::lock_guard const lock(cable.mutex);
            return cable.commands.size() >= 2;
        });
        std::lock_guard const lock(cable.mutex);
        // A machine that is busy may be late; the order is never another.
        CHECK(same(wanted, lit, 0.3));
        REQUIRE(cable.notes.size() == wanted.size());
        double const began = cable.notes.front().at;
        for (Sounded& note : cable.notes) note.at -= began;
        CHECK(same(wanted, cable.notes, 0.3));
        CHECK(cable.clocks == 24 * 8);
        CHECK(cable.commands == std::vector<int>{0xFA, 0xFC});
        qunsetenv("SALLOW_MIDI_DRIVER");
    }
}
