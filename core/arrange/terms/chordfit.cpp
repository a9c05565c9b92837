#include "core/arrange/terms.h"

#include <algorithm>
#include <cmath>

namespace arrange {

namespace {

bool isTone(View const& view, int midi)
{
    return view.chord.tone[static_cast<std::size_t>(midi % 12)];
}

// How foreign a note is that is no tone of the chord, by semitones above the root. Thirds,
// fifths and sevenths that are wrong for the chord are the business of `quality`.
Points foreign(View const& view, Pluck const& p)
{
    if (isTone(view, p.midi) || wrongTone(view, p)) return 0;
    if (view.chord.slash) return view.taste->chordFit.overBass;
    auto const above = static_cast<std::size_t>((p.midi - view.chord.root + 120) % 12);
    return view.taste->chordFit.foreignness[above];
}

// A note held for a beat stands in full, a shorter one passes by, a longer one stays in the
// way.
double byLength(View const& view, Pluck const& p)
{
    return 0.5 + 0.5 * std::min(2.0, p.held / view.beat);
}

// The lowest note of the shape where it is neither the chord's bass nor its root: third and
// fifth make an inversion, any other tone a bass that nobody expects.
Points bassOf(View const& view, Laid const& laid)
{
    int const lowest = std::ranges::min_element(laid.plucks, {}, &Pluck::midi)->midi % 12;
    if (lowest == view.chord.lowest || lowest == view.chord.root) return 0;
    bool const third = view.chord.third && lowest == *view.chord.third;
    bool const fifth = (lowest - view.chord.root + 12) % 12 == 7;
    Taste::ChordFit const& taste = view.taste->chordFit;
    return third ? taste.inverted : fifth ? taste.sixFour : taste.strangeBass;
}

// Notes struck together after the bass of which one is foreign and none the chord's root or
// third: they sound another chord, as fifth and ninth do.
Points anotherChord(View const& view, Laid const& laid)
{
    auto const level = static_cast<std::size_t>(view.level->number - 1);
    Points sum = 0;
    for (std::size_t i = 0; i < laid.plucks.size();) {
        std::size_t end = i + 1;
        while (end < laid.plucks.size() && laid.plucks[end].at == laid.plucks[i].at) ++end;
        bool const several = i > 0 && end - i > 1;
        bool strange = false;
        bool held = false;
        for (std::size_t k = i; k < end; ++k) {
            int const pitch = laid.plucks[k].midi % 12;
            strange = strange || !view.chord.tone[static_cast<std::size_t>(pitch)];
            held = held || pitch == view.chord.root ||
                   (view.chord.third && pitch == *view.chord.third);
        }
        if (several && strange && !held) sum += view.taste->chordFit.anotherChord[level];
        i = end;
    }
    return sum;
}

} // namespace

Points chordFit(View const& view, Laid const& laid)
{
    if (laid.rests()) return 0;
    double sum = static_cast<double>(bassOf(view, laid));
    for (Pluck const& p : laid.plucks) {
        // Over a named bass a foreign note makes another chord, on whatever beat.
        double const strength =
            view.chord.slash
                ? 1.0
                : view.taste->chordFit.byStrength[static_cast<std::size_t>(p.strength)];
        sum += static_cast<double>(foreign(view, p)) * byLength(view, p) * strength;
    }
    return std::lround(sum) + anotherChord(view, laid);
}

} // namespace arrange
