// Sound against the clock: how long a file takes beside FluidSynth's own player and renderer on the
// same MIDI file and font, what a callback of a sound device costs with every string ringing, how
// soon a key is heard, and a soak of a loop whose tempo and left hand change all the time.
//
//   sallow_sound_bench               all but the soak
//   sallow_sound_bench soak MINUTES  in real time, by a thread of its own

#include "app/sound/performance.h"
#include "app/sound/player.h"
#include "app/sound/render.h"
#include "app/sound/soundfont.h"
#include "app/sound/timed.h"
#include "core/files/midi/write.h"
#include "core/perform/practice.h"
#include "tests/perform/pieces.h"

#include <QCoreApplication>
#include <QTimer>

#include <fluidsynth.h>
#include <sys/resource.h>
#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <random>
#include <string>
#include <vector>

namespace {

std::string inTemporary(char const* name)
{
    return (std::filesystem::temp_directory_path() / name).string();
}

using Clock = std::chrono::steady_clock;

// Of this process, all its threads.
double processorSeconds()
{
    timespec now{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

// Bars of quavers over a left hand of four: as full as a left hand comes.
arrange::Arrangement piece(int bars, double beatsPerMinute, int variant = 0)
{
    using namespace pieces;
    using music::Letter;
    tune::Tune tune;
    tune.title = "Bench";
    std::vector<std::vector<arrange::VoicedNote>> left;
    auto const quarter = wholes(1, 4);
    for (int i = 0; i < bars; ++i) {
        tune.bars.push_back(barOf({4, 4}, wholes(1, 8), {c5, e5, g5, e5, d5, e5, c5, d5}));
        harp::StringIndex const low = stringOf(i % 2 == 0 ? Letter::C : Letter::F, 3) - variant;
        std::vector<arrange::VoicedNote> notes;
        for (int beat = 0; beat < 4; ++beat)
            notes.push_back(voiced(quarter * music::Rational(beat), quarter,
                                   low + (beat % 2 == 0 ? beat : beat * 2), 0));
        left.push_back(notes);
    }
    return arranged(tune, {quarter, beatsPerMinute}, left);
}

// Our own file, written to a disk that is not there, so that only the sound is timed.
double ours(perform::Course const& course, std::filesystem::path const& font, double& length)
{
    sound::Voice const voice{font, 440, {}, 0};
    double const before = processorSeconds();
    auto const rendered =
        sound::renderToFile(course, inTemporary("sallow-bench.wav"), {}, voice);
    if (!rendered) std::exit(1);
    length = rendered->length;
    return processorSeconds() - before;
}

// FluidSynth's player and file renderer on the MIDI file of the same arrangement, with the
// settings of our synth: rate, reverb, interpolation, no chorus.
double theirs(std::string const& midi, std::filesystem::path const& font)
{
    double const before = processorSeconds();
    fluid_settings_t* const settings = new_fluid_settings();
    fluid_settings_setstr(settings, "audio.file.name",
                          inTemporary("sallow-bench-fluid.wav").c_str());
    fluid_settings_setstr(settings, "audio.file.type", "wav");
    fluid_settings_setstr(settings, "audio.file.format", "s24");
    fluid_settings_setstr(settings, "player.timing-source", "sample");
    fluid_settings_setint(settings, "synth.lock-memory", 0);
    fluid_settings_setnum(settings, "synth.sample-rate", sound::sampleRate);
    fluid_settings_setint(settings, "synth.chorus.active", 0);
    fluid_settings_setint(settings, "synth.dynamic-sample-loading", 1);
    fluid_settings_setnum(settings, "synth.gain", 0.55);
    fluid_synth_t* const synth = new_fluid_synth(settings);
    fluid_synth_sfload(synth, font.c_str(), 1);
    fluid_synth_set_interp_method(synth, -1, FLUID_INTERP_7THORDER);
    fluid_player_t* const player = new_fluid_player(synth);
    fluid_player_add(player, midi.c_str());
    fluid_player_play(player);
    fluid_file_renderer_t* const renderer = new_fluid_file_renderer(synth);
    while (fluid_player_get_status(player) == FLUID_PLAYER_PLAYING)
        if (fluid_file_renderer_process_block(renderer) != FLUID_OK) break;
    fluid_player_stop(player);
    fluid_player_join(player);
    delete_fluid_file_renderer(renderer);
    delete_fluid_player(player);
    delete_fluid_synth(synth);
    delete_fluid_settings(settings);
    return processorSeconds() - before;
}

void offline()
{
    auto const arrangement = piece(48, 100);
    std::string const midi = inTemporary("sallow-bench.mid");
    std::ofstream(midi, std::ios::binary) << files::midiFile(arrangement);
    auto const course = perform::course(arrangement, {}, {});
    for (auto const& font : sound::soundFonts()) {
        double length = 0;
        ours(course, font, length); // the font is read, and measured, once
        theirs(midi, font);
        std::vector<double> own;
        std::vector<double> other;
        for (int i = 0; i < 5; ++i) { // by turns, so that other processes slow both alike
            own.push_back(ours(course, font, length));
            other.push_back(theirs(midi, font));
        }
        double const a = *std::ranges::min_element(own);
        double const b = *std::ranges::min_element(other);
        std::printf("%s: %.0f s of sound in %.2f s, FluidSynth's renderer %.2f s: %.2f of its "
                    "time\n",
                    font.filename().c_str(), length, a, b, a / b);
    }
}

void callback()
{
    constexpr int frames = 256;
    for (double const halo : {0.0, 1.0})
        for (auto const& font : sound::soundFonts()) {
            auto synth = sound::HarpSynth::open({font, 440, {}, halo});
            if (!synth) continue;
            for (harp::StringIndex string = 0; string < 38; ++string) {
                synth->tuned(string, 33 + 2 * string);
                synth->pluck(string, 33 + 2 * string % 70, 90, harp::Side::Left);
            }
            std::vector<float> left(frames);
            std::vector<float> right(frames);
            std::vector<double> each;
            double const before = processorSeconds();
            int const blocks = 2 * sound::sampleRate / frames;
            for (int i = 0; i < blocks; ++i) {
                double const began = processorSeconds();
                synth->write(left.data(), right.data(), frames);
                each.push_back(processorSeconds() - began);
            }
            double const used = processorSeconds() - before;
            std::ranges::sort(each);
            double const period = static_cast<double>(frames) / sound::sampleRate;
            std::printf("%s, 38 strings ringing, halo %.0f %%: %.1f %% of a core, the dearest of "
                        "100 callbacks %.1f %%\n",
                        font.filename().c_str(), 100 * halo, 100 * used / 2,
                        100 * each[each.size() * 99 / 100] / period);
        }
}

void firstSound()
{
    constexpr int frames = 256;
    for (auto const& font : sound::soundFonts()) {
        auto synth = sound::HarpSynth::open({font, 440, {}, 0});
        if (!synth) continue;
        sound::Performance performance(std::move(*synth));
        std::vector<float> left(frames);
        std::vector<float> right(frames);
        int worst = 0;
        for (int key = 36; key <= 96; ++key) {
            for (int i = 0; i < 40; ++i) performance.render(left.data(), right.data(), frames);
            performance.stop();
            for (int i = 0; i < 200; ++i)
                performance.render(left.data(), right.data(), frames); // silence
            float rest = 0;
            for (float const sample : left) rest = std::max(rest, std::abs(sample));
            performance.pluck(0, key, 85);
            int buffers = 0;
            for (bool heard = false; !heard && buffers < 20; ++buffers) {
                performance.render(left.data(), right.data(), frames);
                for (float const sample : left)
                    heard = heard || std::abs(sample) > 4 * rest + 1e-5F;
            }
            worst = std::max(worst, buffers);
        }
        std::printf("%s: a key is heard in buffer %d at the latest (256 frames each)\n",
                    font.filename().c_str(), worst);
    }
}

long residentKb()
{
    std::ifstream in("/proc/self/statm");
    long pages = 0;
    long resident = 0;
    in >> pages >> resident;
    return resident * (sysconf(_SC_PAGESIZE) / 1024);
}

// A sound device without hardware: asks for 256 frames in real time and counts how often they
// came later than they are heard.
class Dummy final : public sound::Instrument {
public:
    explicit Dummy(sound::HarpSynth synth) : m_synth(std::move(synth)) {}
    void pluck(harp::StringIndex s, int m, int v, harp::Side h) override
    {
        m_synth.pluck(s, m, v, h);
    }
    void damp(harp::StringIndex s) override { m_synth.damp(s); }
    void dampAllBut(std::set<harp::StringIndex> const& s) override { m_synth.dampAllBut(s); }
    void click(sound::Stress s) override { m_synth.click(s); }
    void tuned(harp::StringIndex s, int m) override { m_synth.tuned(s, m); }
    void write(float* left, float* right, int frames) override
    {
        double const before = processorOfThread();
        m_synth.write(left, right, frames);
        double const used = processorOfThread() - before;
        longest = std::max(longest.load(), used);
        if (used > static_cast<double>(frames) / sound::sampleRate) ++late;
        ++blocks;
    }
    static inline std::atomic<long> blocks = 0;
    static inline std::atomic<long> late = 0; // blocks that took longer to make than to hear
    static inline std::atomic<double> longest = 0;

private:
    static double processorOfThread()
    {
        timespec now{};
        clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
        return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
    }
    sound::HarpSynth m_synth;
};

int soak(int count, char** words, double minutes)
{
    QCoreApplication application(count, words);
    auto synth = sound::HarpSynth::open({});
    if (!synth) return 1;
    sound::Player player(sound::timedOutput(std::make_unique<Dummy>(std::move(*synth))));
    arrange::Arrangement const settings[] = {piece(4, 132, 0), piece(4, 132, 1)};
    std::mt19937 random(1);
    perform::Hearing hearing;
    int which = 0;
    bool clicks = false;
    auto const course = [&] {
        return perform::course(settings[which], hearing, {{}, true, clicks});
    };
    player.play(course());
    long changes = 0;
    long rounds = 0;
    QObject::connect(&player, &sound::Player::roundReached, [&rounds] { ++rounds; });
    QTimer change;
    QObject::connect(&change, &QTimer::timeout, [&] {
        ++changes;
        switch (random() % 4) {
        case 0: hearing.tempoScale = 0.5 + 0.01 * static_cast<double>(random() % 100); break;
        case 1: which = 1 - which; break;
        case 2: clicks = !clicks; break;
        default: hearing.balance = 0.01 * static_cast<double>(random() % 100); break;
        }
        if (random() % 50 == 0)
            player.play(course());
        else
            player.replace(course());
    });
    change.start(137);
    long const began = residentKb();
    long settled = began;
    QTimer::singleShot(60'000, [&settled] { settled = residentKb(); });
    QTimer::singleShot(static_cast<int>(minutes * 60'000), &application, &QCoreApplication::quit);
    auto const from = Clock::now();
    QCoreApplication::exec();
    double const passed = std::chrono::duration<double>(Clock::now() - from).count();
    std::printf("soak of %.1f min: %ld changes, %ld times round, %ld blocks, of which %ld took "
                "longer than they last (longest %.2f of it)\n",
                passed / 60, changes, rounds, Dummy::blocks.load(), Dummy::late.load(),
                Dummy::longest.load() * sound::sampleRate / sound::blockFrames);
    std::printf("memory: %ld KB at the start, %ld after a minute, %ld at the end\n", began,
                settled, residentKb());
    return 0;
}

} // namespace

int main(int count, char** words)
{
    if (count > 2 && std::string(words[1]) == "soak")
        return soak(count, words, std::atof(words[2]));
    offline();
    callback();
    firstSound();
    return 0;
}
