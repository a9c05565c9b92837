#include "core/proposal/keyranking.h"

#include "core/proposal/keywish.h"
#include "core/proposal/solveat.h"

#include <fmt/format.h>

#include <algorithm>
#include <limits>

namespace proposal {

namespace {

double pointsAChord(RankedKey const& key)
{
    return static_cast<double>(*key.cost) / 1000 / std::max(1, key.chords);
}

std::string lostWords(std::optional<int> lost)
{
    if (!lost) return "too many notes would have to be left out";
    return *lost == 1 ? "1 note would have to be left out"
                      : fmt::format("{} notes would have to be left out", *lost);
}

void giveReason(RankedKey& key, std::optional<double> least)
{
    if (key.why) {
        key.reason = key.fit.possible ? base::sentence(*key.why) : key.fit.reason;
        if (!key.fit.possible && key.notesLost != 0)
            key.reason += "; " + lostWords(key.notesLost);
        return;
    }
    if (!key.cost) {
        key.reason = key.fit.reason;
        return;
    }
    double const points = pointsAChord(key);
    std::string const place = least && points <= *least ? ", the lowest of all the keys" : "";
    key.reason = fmt::format("{}; left-hand score {:.2f} a chord, lower is better{}",
                             key.fit.reason, points, place);
}

RankedKey ranked(levers::KeyFit fit, Brief const& brief)
{
    RankedKey key;
    key.leversRaised = levers::leversRaised(fit.setup);
    key.fit = std::move(fit);
    if (!key.fit.possible) {
        key.why = key.fit.why;
        key.notesLost =
            levers::notesLost(tune::changed(brief.tune, brief.changes), brief.harp,
                              tempoWished(brief), brief.level, key.fit.moved);
        return key;
    }
    key.notesLost = key.fit.snags;
    auto const solved = solvedAt(brief, key.fit.moved);
    if (!solved) {
        key.why = solved.error();
        return key;
    }
    key.cost = solved->solution.best.cost;
    key.chords = static_cast<int>(solved->lattice.positions.size());
    return key;
}

} // namespace

std::vector<RankedKey> rankedKeys(Brief const& brief, KeyOrder order)
{
    std::vector<RankedKey> keys;
    for (levers::KeyFit& fit :
         levers::keyFits(tune::changed(brief.tune, brief.changes), brief.harp,
                         tempoWished(brief), brief.level,
                         pricesOf(brief)))
        keys.push_back(ranked(std::move(fit), brief));
    std::optional<double> least;
    for (RankedKey const& key : keys)
        if (key.cost) least = std::min(least.value_or(1e9), pointsAChord(key));
    for (RankedKey& key : keys) giveReason(key, least);
    auto const place = [order](RankedKey const& key) {
        if (!key.possible()) return std::numeric_limits<arrange::Points>::max();
        return order == KeyOrder::ByCost && key.cost ? *key.cost : arrange::Points{};
    };
    std::stable_sort(keys.begin(), keys.end(), [&](RankedKey const& a, RankedKey const& b) {
        return place(a) < place(b);
    });
    return keys;
}

} // namespace proposal
