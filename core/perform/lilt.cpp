#include "core/perform/lilt.h"

#include "core/music/meter.h"

#include <algorithm>
#include <set>

namespace perform {

namespace {

using music::Length;
using music::Moment;
using music::Rational;

// The beat that is divided in two or three, where this meter has one.
std::optional<Length> dividedBeat(LiltWay::Of of, music::Meter meter)
{
    if (of == LiltWay::Of::Threes)
        return music::isCompound(meter) ? std::optional(music::beatLength(meter))
                                        : std::nullopt;
    if (music::isCompound(meter)) return std::nullopt;
    // A dance in 2/4 has semiquavers where one in 4/4 has quavers.
    return Length{meter.unit == 4 && meter.beats == 2 ? Rational(1, 8) : Rational(1, 4)};
}

// Where notes begin within a beat, the beat itself left out.
using Shares = std::set<Rational>;

bool areAllParts(Shares const& shares, int of)
{
    return std::ranges::all_of(
        shares, [of](Rational share) { return (share * Rational(of)).denominator() == 1; });
}

std::vector<std::pair<double, double>> pairKnots(Shares const& shares, Lilt const& lilt)
{
    Rational const half(1, 2);
    Rational const dotted(3, 4);
    if (shares.empty() || !areAllParts(shares, 4)) return {};
    Rational written = half;
    if (!shares.contains(half)) {
        if (shares.size() != 1 || !shares.contains(dotted)) return {};
        written = dotted;
    }
    double const from = written.toDouble();
    return {{from, from + lilt.amount * (lilt.way.most - from)}};
}

std::vector<std::pair<double, double>> threeKnots(Shares const& shares, Lilt const& lilt)
{
    Rational const second(1, 3);
    if (!shares.contains(second) || !areAllParts(shares, 3)) return {};
    double const from = second.toDouble();
    double const third = 2.0 / 3;
    return {{from, from + lilt.amount * (lilt.way.most - from)}, {third, third}};
}

} // namespace

std::optional<LiltWay> liltOf(std::vector<KindOfLilt> const& lilts, tune::Tune const& tune)
{
    tune::Kind const kind = tune::kindOf(tune);
    for (KindOfLilt const& lilt : lilts)
        if (lilt.kind == kind && dividedBeat(lilt.way.of, tune.meter)) return lilt.way;
    return std::nullopt;
}

LiltedTime::LiltedTime(arrange::Arrangement const& arrangement, Lilt const& lilt)
{
    if (lilt.amount <= 0) return;
    std::map<Moment, std::pair<Length, Shares>> beats;
    for (arrange::HandNote const& note : arrange::handNotes(arrangement)) {
        auto const& played = arrangement.playing.bars[note.playedBar];
        tune::Bar const& bar = arrangement.tune.bars[played.bar];
        auto const beat = dividedBeat(lilt.way.of, bar.meter);
        if (!beat) continue;
        Length const inBar = note.at - played.at + bar.upbeat;
        Rational const beatsBefore = inBar / *beat;
        Rational const whole(music::floorOf(beatsBefore));
        Moment const start = note.at - (inBar - *beat * whole);
        auto& [length, shares] = beats[start];
        length = *beat;
        if (Rational const share = beatsBefore - whole; share != Rational(0))
            shares.insert(share);
    }
    for (auto const& [start, beat] : beats) {
        auto const& [length, shares] = beat;
        auto knots = lilt.way.of == LiltWay::Of::Pairs ? pairKnots(shares, lilt)
                                                       : threeKnots(shares, lilt);
        if (!knots.empty()) m_beats.emplace(start, Beat{length, std::move(knots)});
    }
}

double LiltedTime::at(Moment moment) const
{
    double const written = moment.wholes.toDouble();
    auto after = m_beats.upper_bound(moment);
    if (after == m_beats.begin()) return written;
    auto const& [start, beat] = *std::prev(after);
    if (moment >= start + beat.length) return written;
    double const share = ((moment - start) / beat.length).toDouble();
    std::pair<double, double> from{0, 0};
    std::pair<double, double> to{1, 1};
    for (auto const& knot : beat.knots) {
        if (knot.first <= share)
            from = knot;
        else if (to.first == 1)
            to = knot;
    }
    double const played = from.second + (share - from.first) * (to.second - from.second) /
                                            (to.first - from.first);
    return start.wholes.toDouble() + played * beat.length.wholes.toDouble();
}

} // namespace perform
