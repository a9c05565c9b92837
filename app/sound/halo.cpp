#include "app/sound/halo.h"

#include "app/sound/synth.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sound {

namespace {

// A low string rings longer than a high one; what nobody plucks rings about as long as the model
// of a plucked one halves (our judgement, no source).
double ringsFor(double hz) { return std::clamp(3.0 * std::sqrt(220 / hz), 0.6, 4.5); }

// How loud the answer is at 1: some 30 dB below a string that is plucked (our judgement).
constexpr double answer = 2.0;

constexpr float silence = 1e-15F; // below it the numbers would become slow to reckon with

} // namespace

void Halo::setStrings(int count) { m_strings.resize(count); }

void Halo::tune(harp::StringIndex string, double hz)
{
    if (string < 0) return;
    if (string >= m_strings.size()) setStrings(string.value() + 1);
    String& tuned = m_strings[string];
    if (tuned.hz == hz) return;
    double const angle = 2 * std::numbers::pi * hz / sampleRate;
    double const pole = std::pow(10.0, -3 / (ringsFor(hz) * sampleRate)); // -60 dB
    tuned = {hz,
             static_cast<float>(2 * pole * std::cos(angle)),
             static_cast<float>(-pole * pole),
             // so that a tone of its pitch that is held comes out as strong as it went in
             static_cast<float>((1 - pole * pole) * std::sin(angle)),
             tuned.free,
             0,
             0};
}

void Halo::pluck(harp::StringIndex string)
{
    if (!m_strings.holds(string)) return;
    String& plucked = m_strings[string];
    plucked.free = plucked.before = plucked.before2 = 0;
}

void Halo::free(harp::StringIndex string)
{
    if (m_strings.holds(string)) m_strings[string].free = 1;
}

void Halo::still()
{
    for (String& string : m_strings) string.before = string.before2 = 0;
}

void Halo::add(float* left, float* right, int frames)
{
    auto const level = static_cast<float>(answer * m_level);
    for (int i = 0; i < frames; ++i) {
        float const heard = left[i] + right[i];
        float low = 0;
        float high = 0;
        bool second = false;
        for (String& string : m_strings) {
            float const out = string.free * string.input * heard + string.feedback1 * string.before +
                              string.feedback2 * string.before2;
            string.before2 = string.before;
            string.before = std::abs(out) < silence ? 0 : out;
            (second ? high : low) += out;
            second = !second;
        }
        // Neighbours a little to either side: a harp is wide.
        left[i] += level * (low + 0.6F * high);
        right[i] += level * (high + 0.6F * low);
    }
}

} // namespace sound
