#include "core/arrange/terms.h"
#include "core/arrange/terms/worstpass.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace arrange {

namespace {

// Dissonance by interval class 0 to 6: the negative consonance of [hur94] where that is above
// zero.
constexpr std::array<double, 7> dissonance{0, 1.428, 0.582, 0, 0, 0, 0.453};

int intervalClass(int semitones)
{
    int const within = semitones % 12;
    return std::min(within, 12 - within);
}

double against(View const& view, Pluck const& p, TuneNote const& n)
{
    double const together = std::min(p.at + p.held, n.to) - std::max(p.at, n.from);
    if (together <= 0) return 0;
    int const apart = std::abs(n.midi - p.midi);
    double const harsh = dissonance[static_cast<std::size_t>(intervalClass(apart))];
    if (harsh == 0) return 0;
    // Both begin at once on a beat: in the open. One enters later: by where it enters.
    int const strength = n.from > p.at ? n.strength : p.strength;
    double const length = std::min(1.0, together / view.beat);
    Taste::MelodyClash const& taste = view.taste->melodyClash;
    // A tone of the chord has a right to be there: the tune's note passes over it. Less so where
    // the tune already holds what leans on it.
    bool const belongs = view.chord.tone[static_cast<std::size_t>(p.midi % 12)];
    double const share = n.from < p.at ? taste.struckUnderShare : taste.chordToneShare;
    std::size_t const octaves = std::min<std::size_t>(2, static_cast<std::size_t>(apart / 12));
    return harsh * taste.pointsEach * length * taste.byOctaves[octaves] *
           taste.byStrength[static_cast<std::size_t>(strength)] *
           (belongs ? share : 1.0);
}

} // namespace

Points melodyClash(View const& view, Laid const& laid)
{
    return std::lround(worstPass(view, [&](PassView const& pass) {
        double sum = 0;
        for (Pluck const& p : laid.plucks)
            for (TuneNote const& n : pass.tune) sum += against(view, p, n);
        return sum;
    }));
}

} // namespace arrange
