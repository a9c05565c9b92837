#include "core/arrange/terms.h"

#include <algorithm>
#include <cmath>

namespace arrange {

namespace {

int degreeInOctave(int degree) { return ((degree - 1) % 7 + 7) % 7 + 1; }

// A degree that does not close, or a third, which closes less plainly than root and fifth. On
// top of a roll the third is at home.
Points colourOf(Taste::Cadence const& taste, Laid const& laid)
{
    Points worst = 0;
    for (Pluck const& p : laid.plucks) {
        int const degree = degreeInOctave(p.degree);
        if (degree == 1 || degree == 5) continue;
        Points const third = laid.voicing.rolled ? 0 : taste.coloured;
        worst = std::max(worst, degree == 3 ? third : taste.openEnd);
    }
    return worst;
}

// Each onset beyond three.
Points movement(Taste::Cadence const& taste, Laid const& laid)
{
    Points onsets = 0;
    for (std::size_t i = 0; i < laid.plucks.size(); ++i)
        if (i == 0 || laid.plucks[i].at != laid.plucks[i - 1].at) ++onsets;
    return taste.stirs * std::max<Points>(0, onsets - 3);
}

bool endsOnRoot(Laid const& laid)
{
    double const last = laid.plucks.back().at;
    return std::ranges::any_of(laid.plucks, [&](Pluck const& p) {
        return p.at == last && degreeInOctave(p.degree) == 1;
    });
}

bool hasOctave(Laid const& laid)
{
    return std::ranges::any_of(laid.plucks, [&](Pluck const& p) {
        return p.string > laid.bass && (p.string - laid.bass) % 7 == 0;
    });
}

// Notes plucked at once that are neither a roll nor a bare octave: a beat of dance goes on.
bool strikesOn(Laid const& laid)
{
    if (laid.voicing.rolled) return false;
    for (std::size_t i = 0; i + 1 < laid.plucks.size(); ++i) {
        bool const together = laid.plucks[i].at == laid.plucks[i + 1].at;
        bool const octave = (laid.plucks[i + 1].string - laid.plucks[i].string) % 7 == 0;
        if (together && !octave) return true;
    }
    return false;
}

bool onOwnBass(View const& view, Laid const& laid)
{
    return std::ranges::min_element(laid.plucks, {}, &Pluck::midi)->midi % 12 ==
           view.chord.lowest;
}

// A last chord has its bass below the tune, where it carries.
Points highBass(Taste::Cadence const& taste, Laid const& laid)
{
    int const lowest = std::ranges::min_element(laid.plucks, {}, &Pluck::midi)->midi;
    return taste.high * std::max(0, lowest - taste.highAbove);
}

// The last beat of the bar at the end of a phrase is left to ring: crotchets where beats are
// longer and even. [music-7]
Points breathless(View const& view, Laid const& laid)
{
    Taste::Cadence const& taste = view.taste->cadence;
    music::Length const crotchet{music::Rational(1, 4)};
    music::Length const beat = music::beatLength(view.meter);
    music::Length const last = music::isCompound(view.meter) ? beat : std::min(beat, crotchet);
    if (laid.rests() || view.spanLength <= last) return 0;
    double const from = (view.spanLength - last).wholes.toDouble();
    bool const struck =
        std::ranges::any_of(laid.plucks, [&](Pluck const& p) { return p.at >= from; });
    if (!struck) return 0;
    Points const each = taste.noBreath[static_cast<std::size_t>(view.close)];
    return std::lround(static_cast<double>(each) * (isSlow(view) ? taste.breathSlow : 1.0));
}

bool leftHasThird(View const& view, Laid const& laid)
{
    return std::ranges::any_of(laid.plucks, [&](Pluck const& p) {
        return p.midi % 12 == *view.chord.third;
    });
}

bool oneStroke(Laid const& laid) { return laid.plucks.front().at == laid.plucks.back().at; }

// The last chord of an air or a waltz is held or rolled, with its third where the mode is sure
// [music-7].
Points endsSlowly(View const& view, Laid const& laid)
{
    Taste::Cadence const& taste = view.taste->cadence;
    auto const level = static_cast<std::size_t>(view.level->number - 1);
    Points sum = highBass(taste, laid) + (endsOnRoot(laid) ? 0 : taste.notOnRoot) +
                 (onOwnBass(view, laid) ? 0 : taste.inverted) +
                 (oneStroke(laid) ? 0 : taste.endsBroken) +
                 (laid.voicing.rolled ? 0 : taste.endsUnrolled[level]);
    for (Pluck const& p : laid.plucks)
        if (!view.chord.tone[static_cast<std::size_t>(p.midi % 12)])
            sum = std::max(sum, taste.openEnd);
    if (!view.chord.third) return sum;
    bool const third = leftHasThird(view, laid);
    if (view.modeSure) return sum + (third ? 0 : taste.endsWithoutThird[level]);
    return sum + (third ? taste.coloured : 0);
}

// A close of a beat or less is struck once and rings; a longer one may be broken, and a chord
// struck in it beats on like the dance.
Points ofStrokes(View const& view, Laid const& laid)
{
    Taste::Cadence const& taste = view.taste->cadence;
    constexpr double little = 1e-6; // whole notes
    if (view.span > view.beat + little) return strikesOn(laid) ? taste.block : 0;
    return oneStroke(laid) ? 0 : taste.chopped;
}

} // namespace

bool isSlow(View const& view)
{
    return view.kind == tune::Kind::Air || view.kind == tune::Kind::Waltz;
}

Points cadence(View const& view, Laid const& laid)
{
    if (view.upbeat) return 0;
    Points const breath = view.endsPhrase ? breathless(view, laid) : 0;
    if (view.close == Close::None) return breath;
    Taste::Cadence const& taste = view.taste->cadence;
    Points sum = taste.rests;
    bool const ends = view.close == Close::Tune;
    auto const level = static_cast<std::size_t>(view.level->number - 1);
    if (ends && isSlow(view) && !laid.rests()) return endsSlowly(view, laid) + breath;
    if (!laid.rests())
        sum = colourOf(taste, laid) + movement(taste, laid) + highBass(taste, laid) +
              (endsOnRoot(laid) ? 0 : taste.notOnRoot) +
              (onOwnBass(view, laid) ? 0 : taste.inverted) +
              (hasOctave(laid) ? 0 : taste.noOctave) + ofStrokes(view, laid) +
              (laid.voicing.rolled ? taste.rollsDance[level] : 0);
    double const share = view.close == Close::Tune ? 1.0 : taste.partShare;
    return std::lround(share * static_cast<double>(sum)) + breath;
}

} // namespace arrange
