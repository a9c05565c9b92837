#include "tests/sound/hearing.h"
#include "tests/sound/spectrum.h"

using namespace hearing;

namespace {

constexpr int c4 = 60;
constexpr double c4Hz = 261.626;

double strength(sound::Recording const& recording, double from, double hz)
{
    return strengthAt(stretch(recording, from, 0.3), hz, sound::sampleRate);
}

} // namespace

TEST_CASE("An undamped string is still heard a second later and a damped one is not", "[ring]")
{
    // A C4 string falls by 60 dB in about 6 s (working value of the string model), so it has
    // lost about 10 dB after one second; the font's own harp may fall twice as fast.
    if (!canSound()) return;
    auto const ringing = recordingOf(scheduleOf({pluck(0, 20, c4)}, 3));
    auto const damped = recordingOf(scheduleOf({pluck(0, 20, c4), damp(0.3, 20)}, 3));
    double const early = strength(ringing, 0.05, c4Hz);
    CHECK(early > 0.005);
    CHECK(strength(ringing, 1.0, c4Hz) > 0.1 * early);
    CHECK(strength(damped, 1.0, c4Hz) < 0.01 * early);
}

TEST_CASE("Damping one of two neighbouring strings that sound alike leaves the other ringing",
          "[ring]")
{
    // E string with its lever up and F string with its lever down, in C tuning: E sharp is F.
    if (!canSound()) return;
    constexpr int f4 = 65;
    constexpr double f4Hz = 349.228;
    auto const both =
        recordingOf(scheduleOf({pluck(0, 16, f4), pluck(0.2, 17, f4), damp(0.5, 16)}, 2));
    auto const none = recordingOf(
        scheduleOf({pluck(0, 16, f4), pluck(0.2, 17, f4), damp(0.5, 16), damp(0.5, 17)}, 2));
    CHECK(strength(both, 1.2, f4Hz) > 20 * strength(none, 1.2, f4Hz));
}

TEST_CASE("Plucking a string again after its lever turned silences the old pitch", "[ring]")
{
    if (!canSound()) return;
    constexpr double c4SharpHz = 277.183;
    auto const turned = recordingOf(scheduleOf({pluck(0, 20, c4), pluck(0.5, 20, c4 + 1)}, 2));
    auto const kept = recordingOf(scheduleOf({pluck(0, 20, c4)}, 2));
    CHECK(strength(turned, 1.2, c4Hz) < 0.1 * strength(kept, 1.2, c4Hz));
    CHECK(strength(turned, 1.2, c4SharpHz) > 5 * strength(turned, 1.2, c4Hz));
}

TEST_CASE("With a halo a string that nobody plucked answers its octave, softly and for a while",
          "[ring]")
{
    // Sympathetic resonance: a free string takes up a partial of another that is its own pitch.
    // Common knowledge of acoustics, no source.
    if (!canSound()) return;
    auto schedule = scheduleOf({pluck(0, 20, c4), damp(0.5, 20)}, 3);
    schedule.tuned = {{0, 20, c4}, {0, 27, c4 + 12}};
    auto const heard = [&](double halo) {
        auto const recording =
            sound::renderToMemory(perform::onceOnly(schedule), {{}, 440, {}, halo});
        REQUIRE(recording);
        return *recording;
    };
    auto const dry = heard(0);
    auto const wet = heard(1);
    double const plucked = strength(dry, 0.05, c4Hz);
    CHECK(strength(dry, 1, 2 * c4Hz) < 0.001 * plucked);
    CHECK(strength(wet, 1, 2 * c4Hz) > 0.003 * plucked);
    CHECK(strength(wet, 1, 2 * c4Hz) < 0.2 * plucked);
    CHECK(strength(wet, 2.5, 2 * c4Hz) < strength(wet, 1, 2 * c4Hz));
    CHECK(strength(wet, 0.05, c4Hz) < 1.3 * plucked);
}
