#include "tests/perform/pieces.h"
#include "tests/sound/hearing.h"
#include "tests/sound/spectrum.h"

using namespace hearing;

namespace {

constexpr double c3Hz = 130.81;
constexpr double g3Hz = 196.00;
constexpr double c5Hz = 523.25;

double strength(sound::Recording const& recording, double from, double hz)
{
    return strengthAt(stretch(recording, from, 0.6), hz, sound::sampleRate);
}

sound::Recording played(perform::Hearing const& hearing)
{
    return recordingOf(perform::scheduled(pieces::twoBars(), hearing));
}

} // namespace

TEST_CASE("Muting a hand takes its pitches out of the sound and leaves the other's",
          "[arrangement]")
{
    if (!canSound()) return;
    perform::Hearing rightAlone;
    rightAlone.left = false;
    perform::Hearing leftAlone;
    leftAlone.right = false;
    auto const both = played({});
    auto const right = played(rightAlone);
    auto const left = played(leftAlone);
    double const from = 0.2; // the rolled C3 G3 C4 and the tune's C5 have sounded
    CHECK(strength(right, from, c3Hz) < 0.02 * strength(both, from, c3Hz));
    CHECK(strength(right, from, g3Hz) < 0.02 * strength(both, from, g3Hz));
    CHECK(strength(right, from, c5Hz) > 0.3 * strength(both, from, c5Hz));
    CHECK(strength(left, from, c3Hz) > 0.9 * strength(both, from, c3Hz));
}

TEST_CASE("Strings of the left hand ring on below the tune until they are plucked again",
          "[arrangement]")
{
    // G3 is plucked with the roll in the first bar and again in the middle of the second, six
    // seconds later; C3 again at four seconds. A C3 string loses 60 dB in about 7 s, the
    // default font in about 6.
    if (!canSound()) return;
    perform::Hearing leftAlone;
    leftAlone.right = false;
    auto const left = played(leftAlone);
    CHECK(strength(left, 1.0, c3Hz) > 0.2 * strength(left, 0.1, c3Hz));
    CHECK(strength(left, 3.3, c3Hz) > 0.01 * strength(left, 0.1, c3Hz));
    CHECK(strength(left, 4.1, c3Hz) > 3 * strength(left, 3.3, c3Hz));
}

TEST_CASE("Half tempo makes the sound twice as long and no lower", "[arrangement]")
{
    if (!canSound()) return;
    perform::Hearing slow;
    slow.tempoScale = 0.5;
    auto const schedule = perform::scheduled(pieces::twoBars(), slow);
    CHECK(schedule.counted == 16);
    auto const recording = recordingOf(schedule);
    auto const peak = peakNear(stretch(recording, 0.3, 0.6), c5Hz, 50, sound::sampleRate);
    REQUIRE(peak);
    CHECK(std::abs(centsBetween(c5Hz, peak->hz)) < 5);
}
