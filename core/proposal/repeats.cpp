#include "core/proposal/repeats.h"

#include "core/arrange/build.h"
#include "core/arrange/takes.h"

#include <algorithm>
#include <map>
#include <optional>
#include <queue>
#include <set>

namespace proposal {

namespace {

using arrange::Lattice;
using arrange::PairTable;
using arrange::PlayedPosition;

// Far more than any tune met so far has needed.
constexpr int attemptsAllowed = 200;

arrange::Voicing const& voicing(Lattice const& lattice, Chosen chosen)
{
    return lattice.candidates[chosen.position][chosen.candidate].voicing;
}

bool playable(Proposal const& proposal, Chosen first, Chosen second)
{
    Lattice const& lattice = proposal.lattice;
    return arrange::playableInTurn(sceneOf(proposal), lattice.positions[first.position],
                                   voicing(lattice, first), lattice.positions[second.position],
                                   voicing(lattice, second));
}

// Positions in the order of playing, without the voicings that an arrangement would have.
std::vector<std::pair<music::Moment, arrange::PositionIndex>>
playedOrder(Lattice const& lattice)
{
    std::vector<std::pair<music::Moment, arrange::PositionIndex>> all;
    for (arrange::PositionIndex const i : lattice.positions.indices())
        for (arrange::Occurrence const& when : lattice.positions[i].played)
            all.emplace_back(when.at, i);
    std::sort(all.begin(), all.end());
    return all;
}

// Strings plucked again sooner than the level asks, with another position between: neighbours
// are asked elsewhere. Short positions at the end of a part leave the beginning of the repeat
// that near.
std::vector<Conflict> stringsTooSoon(Proposal const& proposal, arrange::Choice const& choice)
{
    struct Last {
        music::Moment at;
        Chosen chosen;
        std::size_t turn = 0; // in the order of playing, positions that rest left out
    };
    arrange::Arrangement const& a = proposal.arrangement;
    double const secondsAWhole = 240 / tune::quartersPerMinute(a.tempo);
    constexpr double shortOfLimit = 1e-9; // a limit met exactly is kept
    double const gap = 1 / a.level.sameStringPerSecond - shortOfLimit;
    std::vector<Conflict> out;
    std::map<int, Last> lastOn;
    std::size_t turn = 0;
    for (auto const& [start, position] : playedOrder(proposal.lattice)) {
        Chosen const here{position, choice.candidates[position]};
        arrange::Voicing const& played = voicing(proposal.lattice, here);
        if (!played.notes.empty()) ++turn;
        for (arrange::VoicedNote const& note : played.notes) {
            music::Moment const at = start + note.at;
            auto const last = lastOn.find(note.string);
            if (last != lastOn.end() && last->second.turn + 1 < turn &&
                (at - last->second.at).wholes.toDouble() * secondsAWhole < gap)
                out.push_back({last->second.chosen, here});
            lastOn[note.string] = {at, here, turn};
        }
    }
    return out;
}

bool isLocked(Lattice const& lattice, Chosen chosen)
{
    return lattice.locks[chosen.position] == chosen.candidate;
}

// A table in which one row, or one column, is what no hand can play.
PairTable withRowForbidden(PairTable const& table, std::size_t row)
{
    std::vector<arrange::Points> costs = table.costs();
    for (std::size_t b = 0; b < table.columns(); ++b)
        costs[row * table.columns() + b] = arrange::unplayablePair;
    return {costs, table.columns()};
}

PairTable withColumnForbidden(PairTable const& table, std::size_t column)
{
    std::vector<arrange::Points> costs = table.costs();
    for (std::size_t a = 0; a < table.rows(); ++a)
        costs[a * table.columns() + column] = arrange::unplayablePair;
    return {costs, table.columns()};
}

void forbid(Lattice& lattice, Chosen chosen)
{
    arrange::PositionIndex const i = chosen.position;
    auto const c = static_cast<std::size_t>(chosen.candidate);
    if (i > 0)
        lattice.pairs[i - 1] = withColumnForbidden(lattice.pairs[i - 1], c);
    else if (!lattice.pairs.empty())
        lattice.pairs[0] = withRowForbidden(lattice.pairs[0], c);
}

// One set of forbidden candidates and the best that is left.
template<typename Found>
struct Attempt {
    std::set<Chosen> forbidden;
    Found found;
};

arrange::Choice const& choiceOf(arrange::Solution const& solution) { return solution.best; }
arrange::Choice const& choiceOf(arrange::Choice const& choice) { return choice; }

struct DearerOrLater {
    template<typename Found>
    bool operator()(Attempt<Found> const& a, Attempt<Found> const& b) const
    {
        arrange::Choice const& first = choiceOf(a.found);
        arrange::Choice const& second = choiceOf(b.found);
        if (first.cost != second.cost) return first.cost > second.cost;
        if (first.candidates != second.candidates) return first.candidates > second.candidates;
        return a.forbidden > b.forbidden;
    }
};

std::optional<Conflict> firstMendable(Proposal const& proposal, arrange::Choice const& choice)
{
    for (Conflict const& conflict : conflicts(proposal, choice))
        if (!isLocked(proposal, conflict)) return conflict;
    return std::nullopt;
}

Lattice latticeWithout(Proposal const& proposal, std::set<Chosen> const& forbidden)
{
    Lattice lattice = proposal.lattice;
    for (Chosen chosen : forbidden) forbid(lattice, chosen);
    return lattice;
}

// The candidates of one side of a conflict that conflict so with what is chosen on the other.
std::set<Chosen> conflictingAt(Proposal const& proposal, arrange::Choice const& choice,
                               Conflict const& conflict, Chosen side)
{
    std::set<Chosen> out;
    for (arrange::CandidateIndex const candidate :
         proposal.lattice.candidates[side.position].indices()) {
        arrange::Choice other = choice;
        other.candidates[side.position] = candidate;
        auto const found = conflicts(proposal, other);
        bool const same = std::any_of(found.begin(), found.end(), [&](Conflict const& c) {
            return c.front().position == conflict.front().position &&
                   c.back().position == conflict.back().position;
        });
        if (same) out.insert({side.position, candidate});
    }
    return out;
}

// Where trying one candidate at a time has led nowhere: all candidates of one side that
// conflict with the other side's go at once, of the side where that costs less, until there is
// no conflict left. Playable, though something cheaper may have been passed over.
template<typename Found, typename Solve>
Attempt<Found> mendedByForce(Proposal const& proposal, Attempt<Found> best, Solve solve)
{
    constexpr int conflictsMet = 100; // each takes candidates away, so that there is an end
    for (int met = 0; met < conflictsMet; ++met) {
        auto const conflict = firstMendable(proposal, choiceOf(best.found));
        if (!conflict) return best;
        std::optional<Attempt<Found>> cheaper;
        for (Chosen side : {conflict->front(), conflict->back()}) {
            if (isLocked(proposal.lattice, side)) continue;
            std::set<Chosen> forbidden =
                conflictingAt(proposal, choiceOf(best.found), *conflict, side);
            forbidden.insert(best.forbidden.begin(), best.forbidden.end());
            std::optional<Found> next = solve(latticeWithout(proposal, forbidden));
            if (!next) continue;
            if (!cheaper || choiceOf(*next).cost < choiceOf(cheaper->found).cost)
                cheaper = Attempt<Found>{std::move(forbidden), *std::move(next)};
        }
        if (!cheaper) return best;
        best = *std::move(cheaper);
    }
    return best;
}

// The best without a conflict that can be mended: best first, one of the conflicting candidates
// forbidden at a time. `solve` answers a lattice with the best that it has, or none; `first` is
// its answer where nothing is forbidden.
template<typename Found, typename Solve>
Attempt<Found> bestPlayable(Proposal const& proposal, Found first, Solve solve)
{
    std::priority_queue<Attempt<Found>, std::vector<Attempt<Found>>, DearerOrLater> attempts;
    attempts.push({{}, std::move(first)});
    Attempt<Found> best = attempts.top();
    for (int tried = 1; !attempts.empty(); ++tried) {
        best = attempts.top();
        attempts.pop();
        auto const mendable = firstMendable(proposal, choiceOf(best.found));
        if (!mendable) break;
        if (tried == attemptsAllowed) return mendedByForce(proposal, std::move(best), solve);
        for (Chosen chosen : *mendable) {
            if (isLocked(proposal.lattice, chosen)) continue;
            std::set<Chosen> forbidden = best.forbidden;
            forbidden.insert(chosen);
            if (std::optional<Found> next = solve(latticeWithout(proposal, forbidden)))
                attempts.push({std::move(forbidden), *std::move(next)});
        }
    }
    return best;
}

} // namespace

std::vector<Conflict> conflicts(Proposal const& proposal, arrange::Choice const& choice)
{
    std::vector<Conflict> out;
    std::set<std::pair<arrange::PositionIndex, arrange::PositionIndex>> asked;
    Conflict since; // the last position that sounds, then the rests after it
    for (Conflict const& conflict : stringsTooSoon(proposal, choice)) out.push_back(conflict);
    for (auto const& [at, position] : playedOrder(proposal.lattice)) {
        Chosen const here{position, choice.candidates[position]};
        if (voicing(proposal.lattice, here).notes.empty()) {
            since.push_back(here);
            continue;
        }
        bool const inLattice = since.size() == 1 && since.front().position + 1 == position;
        if (!since.empty() && !inLattice &&
            asked.insert({since.front().position, position}).second &&
            !playable(proposal, since.front(), here)) {
            since.push_back(here);
            out.push_back(since);
        }
        since = {here};
    }
    return out;
}

bool isLocked(Proposal const& proposal, Conflict const& conflict)
{
    return std::all_of(conflict.begin(), conflict.end(),
                       [&](Chosen chosen) { return isLocked(proposal.lattice, chosen); });
}

void removeSelfConflicts(Proposal& proposal)
{
    arrange::Lattice& lattice = proposal.lattice;
    if (lattice.positions.size() != 1 || lattice.positions.front().played.size() < 2) return;
    arrange::Position const& only = lattice.positions.front();
    arrange::Candidates left = lattice.candidates.front().copy();
    left.eraseIf([&](arrange::Candidate const& c) {
        return !arrange::playableInTurn(sceneOf(proposal), only, c.voicing, only, c.voicing);
    });
    lattice.candidates.front() = std::move(left);
}

void solveAsPlayed(Proposal& proposal)
{
    Attempt<arrange::Solution> best =
        bestPlayable(proposal, arrange::solved(proposal.lattice, proposal.tables),
                     [](Lattice const& lattice) -> std::optional<arrange::Solution> {
                         return arrange::solved(lattice);
                     });
    for (Chosen chosen : best.forbidden) forbid(proposal.lattice, chosen);
    proposal.solution = std::move(best.found);
}

std::optional<arrange::Choice> anotherTakeAsPlayed(Proposal const& proposal,
                                                   std::span<arrange::Choice const> earlier)
{
    auto const solve = [&](Lattice const& lattice) -> std::optional<arrange::Choice> {
        auto take = arrange::anotherTake(lattice, earlier);
        // A pair that no hand can play is no take, however new.
        if (take && take->cost >= arrange::unplayablePair) return std::nullopt;
        return take;
    };
    std::optional<arrange::Choice> first = solve(proposal.lattice);
    if (!first) return std::nullopt;
    arrange::Choice best = bestPlayable(proposal, *std::move(first), solve).found;
    if (firstMendable(proposal, best)) return std::nullopt;
    return best;
}

} // namespace proposal
