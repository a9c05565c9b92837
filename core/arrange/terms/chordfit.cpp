#include "core/arrange/terms.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace arrange {

namespace {

// How foreign a note is that is no tone of the chord, by semitones above the root: flat ninth,
// ninth, minor third, major third, fourth, tritone, fifth, augmented fifth, sixth, minor and
// major seventh. A third beside the chord's own third, or a fifth beside its fifth, is wrong; a
// ninth is colour. Common practice, no source.
constexpr std::array<int, 12> foreignness{0,   900, 250, 1200, 1200, 450,
                                          900, 900, 900, 300,  250,  350};

constexpr int thirdMissed = 80;

// Share of the full judgement by beat strength 0 to 3.
constexpr std::array<double, 4> byStrength{0.5, 0.7, 0.85, 1.0};

bool isTone(View const& view, int midi)
{
    return view.chord.tone[static_cast<std::size_t>(midi % 12)];
}

int foreign(View const& view, int midi)
{
    if (isTone(view, midi)) return 0;
    return foreignness[static_cast<std::size_t>((midi - view.chord.root + 120) % 12)];
}

// A note held for a beat or more stands in full, a shorter one passes by.
double byLength(View const& view, Pluck const& p)
{
    return 0.5 + 0.5 * std::min(1.0, p.held / view.beat);
}

bool statesThird(View const& view, Laid const& laid)
{
    int const third = *view.chord.third;
    bool const inLeft =
        std::ranges::any_of(laid.plucks, [&](Pluck const& p) { return p.midi % 12 == third; });
    bool const inTune = std::ranges::any_of(
        view.passes.front().tune, [&](TuneNote const& n) { return n.midi % 12 == third; });
    return inLeft || inTune;
}

} // namespace

Points chordFit(View const& view, Laid const& laid)
{
    if (laid.rests()) return 0;
    double sum = view.chord.third && !statesThird(view, laid) ? thirdMissed : 0;
    for (Pluck const& p : laid.plucks)
        sum += foreign(view, p.midi) * byLength(view, p) *
               byStrength[static_cast<std::size_t>(p.strength)];
    return std::lround(sum);
}

} // namespace arrange
