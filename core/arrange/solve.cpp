#include "core/arrange/solve.h"

#include "core/arrange/leastsums.h"

#include <algorithm>
#include <cassert>
#include <compare>
#include <map>
#include <queue>
#include <tuple>

namespace arrange {

namespace {

Allowed allowed(Lattice const& lattice, PositionIndex position)
{
    CandidateList const& list = lattice.candidates[position];
    if (lattice.locks.holds(position) && lattice.locks[position]) {
        assert(list.holds(*lattice.locks[position]));
        auto const lock = static_cast<std::size_t>(*lattice.locks[position]);
        return {lock, lock + 1};
    }
    return {0, static_cast<std::size_t>(list.size())};
}

// The same as indices: the first and the one beyond the last.
std::pair<CandidateIndex, CandidateIndex> indices(Allowed where)
{
    return {CandidateIndex(static_cast<int>(where.from)),
            CandidateIndex(static_cast<int>(where.to))};
}

Costs ownCosts(Lattice const& lattice, PositionIndex position)
{
    Costs costs;
    costs.reserve(lattice.candidates[position].size());
    for (Candidate const& candidate : lattice.candidates[position])
        costs.push_back(candidate.cost);
    return costs;
}

// upTo of `position` from that of the one before.
Costs upToNext(Lattice const& lattice, PositionIndex position, Costs const& before,
               Costs const& own)
{
    Costs out(leastByColumn(lattice.pairs[position - 1], before.values(),
                            allowed(lattice, position - 1)));
    for (CandidateIndex const b : out.indices()) out[b] += own[b];
    return out;
}

// after of `position` from that of the one behind it.
Costs afterPrevious(Lattice const& lattice, PositionIndex position, Costs const& behind,
                    Costs const& ownBehind)
{
    Costs ends = ownBehind;
    for (CandidateIndex const b : ends.indices()) ends[b] += behind[b];
    return Costs(
        leastByRow(lattice.pairs[position], ends.values(), allowed(lattice, position + 1)));
}

void fillUpTo(Lattice const& lattice, CostTables& tables, PositionIndex first)
{
    for (PositionIndex i = first; i < lattice.candidates.size(); ++i)
        tables.upTo[i] =
            i == 0 ? tables.own[0]
                   : upToNext(lattice, i, tables.upTo[i - 1], tables.own[i]);
}

// Fills the positions before `end`.
void fillAfter(Lattice const& lattice, CostTables& tables, PositionIndex end)
{
    PositionIndex const last = lattice.candidates.beyond() - 1;
    for (PositionIndex i = end - 1; i >= 0; --i)
        tables.after[i] =
            i == last ? Costs(lattice.candidates[last].size(), 0)
                      : afterPrevious(lattice, i, tables.after[i + 1], tables.own[i + 1]);
}

// Walks forward along `after`; the first candidate that keeps the least total is taken.
Choice bestChoice(Lattice const& lattice, CostTables const& tables)
{
    Choice choice;
    for (PositionIndex const i : lattice.candidates.indices()) {
        Allowed const where = allowed(lattice, i);
        auto const toTheEnd = [&](CandidateIndex b) {
            Points const own = tables.own[i][b] + tables.after[i][b];
            if (i == 0) return own;
            return lattice.pair(i - 1, choice.candidates.back(), b) + own;
        };
        auto const [first, end] = indices(where);
        CandidateIndex best = first;
        Points least = toTheEnd(best);
        for (CandidateIndex b = first + 1; b < end; ++b) {
            Points const here = toTheEnd(b);
            if (here >= least) continue;
            best = b;
            least = here;
        }
        if (i == 0) choice.cost = least;
        choice.candidates.push_back(best);
    }
    return choice;
}

// One way from a candidate to the end of the chain.
struct Way {
    Points cost = 0;          // of all that follows the candidate
    CandidateIndex next = 0;  // of the following position
    std::size_t nextRank = 0; // which of that candidate's own ways, counted from the cheapest
};

struct ComesLater {
    bool operator()(Way const& a, Way const& b) const
    {
        return std::tie(a.cost, a.next, a.nextRank) > std::tie(b.cost, b.next, b.nextRank);
    }
};

// The cheapest ways from every candidate to the end, each found only when it is asked for
// (Huang and Chiang, Better k-best parsing, 2005, on a chain). The way of rank r from one
// candidate is the cheapest of: the first way through each following candidate, and the next
// way through those that were taken before.
class WaysOn {
public:
    WaysOn(Lattice const& lattice, CostTables const& known) : m_lattice(lattice), m_known(known)
    {}

    // The whole choice of this rank; none when there are not so many. Ask from 0 upwards.
    std::optional<Choice> choice(std::size_t rank)
    {
        Node node{};
        if (!has(node, rank)) return std::nullopt;
        Choice out;
        out.cost = m_crossings[node].found[rank].cost;
        while (!isEnd(node)) {
            Way const way = cheapestKnown(node, rank);
            out.candidates.push_back(way.next);
            node = {node.next + 1, way.next};
            rank = way.nextRank;
        }
        return out;
    }

private:
    // A candidate, or the start of all ways before the first position: there `next` is 0. The
    // ways of a node go on at the position `next`.
    struct Node {
        PositionIndex next = 0;
        CandidateIndex candidate = 0; // of the position before it
        friend auto operator<=>(Node const&, Node const&) = default;
    };
    struct Crossing {
        std::vector<Way> found; // cheapest first
        std::priority_queue<Way, std::vector<Way>, ComesLater> waiting;
    };

    bool isEnd(Node node) const { return node.next == m_lattice.candidates.beyond(); }

    Points costThrough(Node node, CandidateIndex next, Points afterNext) const
    {
        Points const cost = m_lattice.candidates[node.next][next].cost + afterNext;
        return node.next == 0 ? cost
                              : cost + m_lattice.pair(node.next - 1, node.candidate, next);
    }

    // With its first way, which the tables already know.
    Crossing& opened(Node node)
    {
        Crossing& here = m_crossings[node];
        if (!here.found.empty()) return here;
        auto const [first, end] = indices(allowed(m_lattice, node.next));
        for (CandidateIndex b = first; b < end; ++b)
            here.waiting.push({costThrough(node, b, m_known.after[node.next][b]), b, 0});
        takeCheapest(here);
        return here;
    }

    static void takeCheapest(Crossing& here)
    {
        if (here.waiting.empty()) return;
        here.found.push_back(here.waiting.top());
        here.waiting.pop();
    }

    Way cheapestKnown(Node node, std::size_t rank) { return opened(node).found[rank]; }

    // Whether the node has a way of this rank, all lower ranks being known. Goes down along the
    // last ways found as far as they must be replaced by later ones, then comes back up.
    bool has(Node const start, std::size_t const rank)
    {
        std::vector<Node> down;
        std::size_t wanted = rank;
        for (Node node = start; !isEnd(node) && opened(node).found.size() <= wanted;) {
            down.push_back(node);
            Way const last = m_crossings[node].found.back();
            node = {node.next + 1, last.next};
            wanted = last.nextRank + 1;
        }
        for (auto node = down.rbegin(); node != down.rend(); ++node) {
            Crossing& here = m_crossings[*node];
            Way const last = here.found.back();
            Node const next{node->next + 1, last.next};
            if (knows(next, last.nextRank + 1))
                here.waiting.push({costThrough(*node, last.next,
                                               m_crossings[next].found[last.nextRank + 1].cost),
                                   last.next, last.nextRank + 1});
            takeCheapest(here);
        }
        return knows(start, rank);
    }

    // From the end there is one way, of rank 0 and without cost.
    bool knows(Node node, std::size_t rank)
    {
        return isEnd(node) ? rank == 0 : m_crossings[node].found.size() > rank;
    }

    Lattice const& m_lattice;
    CostTables const& m_known;
    std::map<Node, Crossing> m_crossings;
};

} // namespace

CostTables tables(Lattice const& lattice)
{
    int const positions = lattice.candidates.size();
    CostTables out{{}, {positions, Costs()}, {positions, Costs()}};
    out.own.reserve(positions);
    for (PositionIndex const i : lattice.candidates.indices())
        out.own.push_back(ownCosts(lattice, i));
    fillUpTo(lattice, out, 0);
    fillAfter(lattice, out, lattice.candidates.beyond());
    return out;
}

CostTables tablesAfterLock(Lattice const& lattice, CostTables before, PositionIndex position)
{
    fillUpTo(lattice, before, position + 1);
    fillAfter(lattice, before, position);
    return before;
}

Solution solved(Lattice const& lattice) { return solved(lattice, tables(lattice)); }

Solution solved(Lattice const& lattice, CostTables const& known)
{
    Solution out{bestChoice(lattice, known), {}};
    out.regrets.reserve(lattice.candidates.size());
    for (PositionIndex const i : lattice.candidates.indices()) {
        Costs regrets(lattice.candidates[i].size(), 0);
        for (CandidateIndex const a : regrets.indices())
            regrets[a] = known.upTo[i][a] + known.after[i][a] - out.best.cost;
        out.regrets.push_back(std::move(regrets));
    }
    return out;
}

std::vector<Choice> bestChoices(Lattice const& lattice, int k)
{
    std::vector<Choice> out;
    if (lattice.candidates.empty()) return out;
    CostTables const known = tables(lattice);
    WaysOn ways(lattice, known);
    for (std::size_t rank = 0; rank < static_cast<std::size_t>(std::max(k, 0)); ++rank) {
        std::optional<Choice> choice = ways.choice(rank);
        if (!choice) break;
        out.push_back(std::move(*choice));
    }
    return out;
}

} // namespace arrange
