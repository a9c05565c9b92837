#include "core/arrange/roughness.h"
#include "core/arrange/terms.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace arrange {

namespace {

// Tones that still ring at a time, each string as it was plucked last.
class Sounding {
public:
    void pluck(Pluck const& p)
    {
        for (std::size_t i = 0; i < m_count; ++i)
            if (m_tones[i].midi == p.midi) {
                m_tones[i].amplitude = 1;
                return;
            }
        if (m_count == m_tones.size()) return;
        m_tones[m_count] = {p.midi, 1};
        m_strings[m_count++] = p.string;
    }
    void fade(View const& view, double wholes)
    {
        for (std::size_t i = 0; i < m_count; ++i) {
            double const ring = view.ringSeconds[m_strings[i]];
            m_tones[i].amplitude *= std::pow(10.0, -3 * view.seconds(wholes) / ring);
        }
    }
    std::span<RingingTone const> tones() const { return {m_tones.data(), m_count}; }

private:
    std::array<RingingTone, 8> m_tones{};
    std::array<harp::StringIndex, 8> m_strings{};
    std::size_t m_count = 0;
};

} // namespace

Points mud(View const& view, Laid const& laid)
{
    // Roughness below `clear` is not muddy: just under a minor third on C3, the usual lower
    // limit of thirds, with 0.212. Above it one point for so much more as `pointEvery` says: a
    // close triad on C2 has 0.41 [hk78, trade-5].
    Taste::Mud const& taste = view.taste->mud;
    Sounding sounding;
    double sum = 0;
    for (std::size_t i = 0; i < laid.plucks.size(); ++i) {
        sounding.pluck(laid.plucks[i]);
        bool const last = i + 1 == laid.plucks.size();
        double const until = last ? view.span : laid.plucks[i + 1].at;
        double const lasts = until - laid.plucks[i].at;
        if (lasts <= 0) continue;
        sum += lasts * std::max(0.0, roughness(sounding.tones()) - taste.clear);
        sounding.fade(view, lasts);
    }
    return std::lround(1000 * sum / view.span / taste.pointEvery);
}

} // namespace arrange
