#include "core/arrange/roughness.h"
#include "core/arrange/terms.h"

#include <algorithm>
#include <cmath>

namespace arrange {

namespace {

double fadedOver(double seconds, double ringSeconds)
{
    return std::pow(10.0, -3 * seconds / ringSeconds);
}

} // namespace

Ringing ringingAfter(Neighbours const& n, Laid const& before)
{
    Ringing out;
    View const& view = *n.before;
    for (std::size_t i = before.plucks.size(); i-- > 0;) {
        Pluck const& p = before.plucks[i];
        if ((out.mask >> (p.string % 64) & 1U) != 0) continue; // plucked again later
        double const seconds = view.seconds(view.span - p.at + n.gap);
        double const amplitude = fadedOver(seconds, view.ringSeconds[p.string]);
        if (amplitude < view.taste->ringClash.inaudible) continue;
        out.strings.push_back(p.string);
        out.amplitudes.push_back(amplitude);
        out.midi.push_back(p.midi);
        out.mask |= std::uint64_t{1} << (p.string % 64);
    }
    auto const& next = n.after->passes.front().midi;
    out.clash = base::List<harp::StringIndex, double>(next.size(), 0.0);
    for (harp::StringIndex const s : next.indices())
        for (std::size_t i = 0; i < out.midi.size(); ++i)
            if (out.midi[i] != next[s])
                out.clash[s] += out.amplitudes[i] * toneRoughness(out.midi[i], next[s]);
    return out;
}

Points ringClash(Neighbours const& n, Ringing const& ringing, Laid const& after)
{
    if (after.rests() || ringing.strings.empty() || !n.adjacent) return 0;
    double sum = 0;
    for (Pluck const& p : after.plucks) sum += ringing.clash[p.string];
    if ((ringing.mask & after.strings) != 0) {
        for (std::size_t i = 0; i < ringing.strings.size(); ++i) {
            if ((after.strings >> (ringing.strings[i] % 64) & 1U) == 0) continue;
            for (Pluck const& p : after.plucks)
                if (p.midi != ringing.midi[i])
                    sum -= ringing.amplitudes[i] * toneRoughness(ringing.midi[i], p.midi);
        }
    }
    double const mean = sum / static_cast<double>(after.plucks.size());
    // Any change of chord rings on a little: heard as harp, not as a fault. Above it one point
    // for so much more; a semitone low down has about 0.5 at full strength [hk78].
    Taste::RingClash const& taste = n.before->taste->ringClash;
    return std::lround(1000 * std::max(0.0, mean - taste.usual) / taste.pointEvery);
}

} // namespace arrange
