#include "core/arrange/terms.h"

#include <algorithm>
#include <cmath>

namespace arrange {

namespace {

constexpr Points openEnd = 900;  // a degree that does not close: second, fourth, sixth, seventh
constexpr Points coloured = 300; // a third: closes, but less plainly than root and fifth
constexpr Points notOnRoot = 250;
constexpr Points stirs = 250; // each onset beyond three
constexpr Points rests = 600;
constexpr double partShare = 0.6; // the end of a part against the end of the tune

int degreeInOctave(int degree) { return ((degree - 1) % 7 + 7) % 7 + 1; }

Points colourOf(Laid const& laid)
{
    Points worst = 0;
    for (Pluck const& p : laid.plucks) {
        int const degree = degreeInOctave(p.degree);
        if (degree == 1 || degree == 5) continue;
        worst = std::max(worst, degree == 3 ? coloured : openEnd);
    }
    return worst;
}

Points movement(Laid const& laid)
{
    Points onsets = 0;
    for (std::size_t i = 0; i < laid.plucks.size(); ++i)
        if (i == 0 || laid.plucks[i].at != laid.plucks[i - 1].at) ++onsets;
    return stirs * std::max<Points>(0, onsets - 3);
}

bool endsOnRoot(Laid const& laid)
{
    double const last = laid.plucks.back().at;
    return std::ranges::any_of(laid.plucks, [&](Pluck const& p) {
        return p.at == last && degreeInOctave(p.degree) == 1;
    });
}

} // namespace

Points cadence(View const& view, Laid const& laid)
{
    if (view.close == Close::None) return 0;
    Points sum = rests;
    if (!laid.rests())
        sum = colourOf(laid) + movement(laid) + (endsOnRoot(laid) ? 0 : notOnRoot);
    double const share = view.close == Close::Tune ? 1.0 : partShare;
    return std::lround(share * static_cast<double>(sum));
}

} // namespace arrange
