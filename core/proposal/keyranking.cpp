#include "core/proposal/keyranking.h"

#include "core/base/words.h"
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
    if (!lost) return base::said("too many notes would have to be left out");
    return base::sayCount(*lost, "{} note would have to be left out",
                          "{} notes would have to be left out");
}

void giveReason(RankedKey& key, std::optional<double> least, bool mended)
{
    if (key.why) {
        key.reason = key.fit.possible ? base::sentence(*key.why) : key.fit.reason;
        bool const byTuning = key.why->code == base::FaultCode::KeyBeyondTuning;
        if (!key.fit.possible && mended && !byTuning)
            key.reason +=
                base::said("; it asks for far more flips, or notes played otherwise, than the "
                           "best key");
        else if (!key.fit.possible && !mended && key.notesLost != 0)
            key.reason += "; " + lostWords(key.notesLost);
        return;
    }
    if (!key.cost) {
        key.reason = key.fit.reason;
        return;
    }
    double const points = pointsAChord(key);
    std::string const place =
        least && points <= *least ? base::said(", the lowest of all the keys") : "";
    key.reason = base::say("{}; left-hand score {:.2f} a chord, lower is better{}",
                           key.fit.reason, points, place);
}

// Whether a key is worth a full solve: the best ones are, and those that ask for little more in
// flips, until so many chords have been solved in all keys together; in a long tune only where
// they have no snags. The others would take most of the time and are nobody's choice.
bool worthSolving(levers::KeyFit const& fit, std::size_t place, int bestRank, std::size_t bars,
                  int chordsSolved)
{
    constexpr std::size_t alwaysSolved = 6;
    constexpr std::size_t shortTune = 12; // bars
    constexpr int mostChords = 256;
    return place < alwaysSolved ||
           (chordsSolved < mostChords && (fit.snags == 0 || bars <= shortTune) &&
            fit.rank <= bestRank + levers::farBehind);
}

RankedKey ranked(levers::KeyFit fit, Brief const& brief, bool solve)
{
    RankedKey key;
    key.leversRaised = levers::leversRaised(fit.setup);
    key.fit = std::move(fit);
    if (!key.fit.possible) {
        key.why = key.fit.why;
        // Where snags are mended such a key is merely far behind, and nothing is counted.
        if (!brief.mending.refuse) return key;
        key.notesLost = levers::notesLost(tune::changed(brief.tune, brief.changes), brief.harp,
                                          tempoWished(brief), brief.level, key.fit.moved);
        return key;
    }
    key.notesLost = key.fit.snags;
    if (!solve) return key;
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

std::vector<RankedKey> rankedKeys(Brief const& brief, KeyOrder order,
                                  std::function<void(std::size_t, std::size_t)> const& reached)
{
    std::vector<RankedKey> keys;
    auto fits = levers::keyFits(tune::changed(brief.tune, brief.changes), brief.harp,
                                tempoWished(brief), brief.level, pricesOf(brief),
                                levers::KeysAsked::Compared);
    int const best = fits.empty() ? 0 : fits.front().rank;
    int chordsSolved = 0;
    for (levers::KeyFit& fit : fits) {
        bool const solve =
            worthSolving(fit, keys.size(), best, brief.tune.bars.size(), chordsSolved);
        keys.push_back(ranked(std::move(fit), brief, solve));
        chordsSolved += keys.back().chords;
        if (reached) reached(keys.size(), fits.size());
    }
    std::optional<double> least;
    for (RankedKey const& key : keys)
        if (key.cost) least = std::min(least.value_or(1e9), pointsAChord(key));
    for (RankedKey& key : keys) giveReason(key, least, !brief.mending.refuse);
    auto const place = [order](RankedKey const& key) {
        if (!key.possible()) return std::numeric_limits<arrange::Points>::max();
        if (order == KeyOrder::AsTaken) return arrange::Points{};
        // Without a solve after those with one.
        return key.cost.value_or(std::numeric_limits<arrange::Points>::max() - 1);
    };
    std::stable_sort(keys.begin(), keys.end(), [&](RankedKey const& a, RankedKey const& b) {
        return place(a) < place(b);
    });
    return keys;
}

} // namespace proposal
