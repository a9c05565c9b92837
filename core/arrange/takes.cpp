#include "core/arrange/takes.h"

#include "core/arrange/leastsums.h"

#include <algorithm>
#include <limits>
#include <set>
#include <string>

namespace arrange {

namespace {

constexpr int mostNewShapes = 48;
constexpr Points never = std::numeric_limits<Points>::max() / 4;

std::string const& shapeOf(Lattice const& lattice, PositionIndex position,
                           CandidateIndex candidate)
{
    return lattice.candidates[position][candidate].voicing.pattern;
}

bool allowed(Lattice const& lattice, PositionIndex position, CandidateIndex candidate)
{
    auto const& lock = lattice.locks[position];
    return !lock || *lock == candidate;
}

// For each position, which of its candidates bring a shape that no earlier take has there.
using Fresh = base::List<PositionIndex, base::List<CandidateIndex, char>>;

Fresh newShapes(Lattice const& lattice, std::span<Choice const> earlier)
{
    Fresh fresh;
    for (PositionIndex const i : lattice.positions.indices()) {
        std::set<std::string> known;
        for (Choice const& take : earlier)
            known.insert(shapeOf(lattice, i, take.candidates[i]));
        fresh.emplace_back();
        for (CandidateIndex const c : lattice.candidates[i].indices())
            fresh.back().push_back(!known.contains(shapeOf(lattice, i, c)));
    }
    return fresh;
}

// The least cost of what follows a position: for each number of new shapes still wanted there,
// and each of its candidates.
using Rest = std::vector<Costs>;

// leastByRow where some columns cannot be used at all: they count as so dear that any other is
// cheaper, which keeps the sums small. Rows stay `never` where no column can be used.
std::vector<Points> leastUsable(PairTable const& pairs, std::vector<Points> columns)
{
    Points dearest = std::numeric_limits<Points>::min();
    for (Points cost : columns)
        if (cost != never) dearest = std::max(dearest, cost);
    if (dearest == std::numeric_limits<Points>::min())
        return std::vector<Points>(pairs.rows(), never);
    Points const beyond = dearest + pairs.spread() + 1;
    std::replace(columns.begin(), columns.end(), never, beyond);
    return leastByRow(pairs, columns, {0, columns.size()});
}

struct Search {
    Lattice const& lattice;
    Fresh fresh;
    int wanted = 0;
    base::List<PositionIndex, Rest> rests;

    // What a candidate and all that follows it cost, with so many new shapes wanted from it on.
    Points from(PositionIndex position, CandidateIndex candidate, int stillWanted) const
    {
        if (!allowed(lattice, position, candidate)) return never;
        int const after = std::max(0, stillWanted - (fresh[position][candidate] ? 1 : 0));
        Points const rest = rests[position][static_cast<std::size_t>(after)][candidate];
        return rest == never ? never : lattice.candidates[position][candidate].cost + rest;
    }

    void fill()
    {
        int const count = lattice.positions.size();
        auto const numbers = static_cast<std::size_t>(wanted) + 1;
        rests.resize(count);
        int const last = lattice.candidates.back().size();
        rests.back().assign(numbers, Costs(last, never));
        rests.back().front() = Costs(last, 0);
        for (PositionIndex i = rests.beyond() - 2; i >= 0; --i)
            for (int w = 0; w <= wanted; ++w) rests[i].push_back(restOf(i, w));
    }

    Costs restOf(PositionIndex i, int stillWanted) const
    {
        std::vector<Points> ends;
        for (CandidateIndex const b : lattice.candidates[i + 1].indices())
            ends.push_back(from(i + 1, b, stillWanted));
        return Costs(leastUsable(lattice.pairs[i], std::move(ends)));
    }

    // Walks the tables forward; the first of equal candidates is taken.
    std::optional<Choice> walked() const
    {
        Choice choice;
        int stillWanted = wanted;
        for (PositionIndex const i : lattice.positions.indices()) {
            Points least = never;
            CandidateIndex taken = 0;
            for (CandidateIndex const c : lattice.candidates[i].indices()) {
                Points cost = from(i, c, stillWanted);
                if (cost == never) continue;
                if (i > 0) cost += lattice.pair(i - 1, choice.candidates.back(), c);
                if (cost < least) {
                    least = cost;
                    taken = c;
                }
            }
            if (least == never) return std::nullopt;
            if (i == 0) choice.cost = least;
            choice.candidates.push_back(taken);
            if (fresh[i][taken]) stillWanted = std::max(0, stillWanted - 1);
        }
        return choice;
    }
};

} // namespace

int newShapesWanted(Lattice const& lattice)
{
    int free = 0;
    for (PositionIndex const i : lattice.positions.indices()) {
        if (lattice.locks[i]) continue;
        auto const& list = lattice.candidates[i];
        bool const choice = std::any_of(list.begin(), list.end(), [&](Candidate const& c) {
            return c.voicing.pattern != list.front().voicing.pattern;
        });
        if (choice) ++free;
    }
    return std::clamp(free / 3, 1, mostNewShapes);
}

std::optional<Choice> anotherTake(Lattice const& lattice, std::span<Choice const> earlier)
{
    if (lattice.positions.empty()) return std::nullopt;
    Search search{lattice, newShapes(lattice, earlier), newShapesWanted(lattice), {}};
    search.fill();
    return search.walked();
}

std::vector<Choice> takes(Lattice const& lattice, Choice const& best, int others)
{
    std::vector<Choice> all{best};
    for (int i = 0; i < others; ++i) {
        std::optional<Choice> next = anotherTake(lattice, all);
        // A pair that no hand can play is no take, however new.
        if (!next || next->cost >= unplayablePair) break;
        all.push_back(*std::move(next));
    }
    return all;
}

} // namespace arrange
