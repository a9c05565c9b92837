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
constexpr std::array<int, 12> foreignness{0,   900, 130, 1200, 1200, 400,
                                          900, 900, 900, 180,  130,  200};

constexpr int thirdMissed = 90;

// The lowest note of the shape where it is neither the chord's bass nor its root: third and
// fifth make an inversion, any other tone a bass that nobody expects.
constexpr int inverted = 220;
constexpr int strangeBass = 450;

// Share of the full judgement by beat strength 0 to 3.
constexpr std::array<double, 4> byStrength{0.3, 0.4, 0.8, 1.0};

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

int bassOf(View const& view, Laid const& laid)
{
    int const lowest = std::ranges::min_element(laid.plucks, {}, &Pluck::midi)->midi % 12;
    if (lowest == view.chord.lowest || lowest == view.chord.root) return 0;
    bool const third = view.chord.third && lowest == *view.chord.third;
    bool const fifth = (lowest - view.chord.root + 12) % 12 == 7;
    return third || fifth ? inverted : strangeBass;
}

} // namespace

Points chordFit(View const& view, Laid const& laid)
{
    if (laid.rests()) return 0;
    double sum = bassOf(view, laid);
    if (view.chord.third && !statesThird(view, laid)) sum += thirdMissed;
    for (Pluck const& p : laid.plucks)
        sum += foreign(view, p.midi) * byLength(view, p) *
               byStrength[static_cast<std::size_t>(p.strength)];
    return std::lround(sum);
}

} // namespace arrange
