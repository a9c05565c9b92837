#include "core/arrange/takes.h"

#include <algorithm>
#include <limits>
#include <set>
#include <string>

namespace arrange {

namespace {

constexpr int mostNewShapes = 48;
constexpr Points never = std::numeric_limits<Points>::max() / 4;

std::string const& shapeOf(Lattice const& lattice, std::size_t position, std::size_t candidate)
{
    return lattice.candidates[position][candidate].voicing.pattern;
}

bool allowed(Lattice const& lattice, std::size_t position, std::size_t candidate)
{
    auto const& lock = lattice.locks[position];
    return !lock || static_cast<std::size_t>(*lock) == candidate;
}

// For each position, which of its candidates bring a shape that no earlier take has there.
std::vector<std::vector<bool>> newShapes(Lattice const& lattice,
                                         std::span<Choice const> earlier)
{
    std::vector<std::vector<bool>> fresh;
    for (std::size_t i = 0; i < lattice.positions.size(); ++i) {
        std::set<std::string> known;
        for (Choice const& take : earlier)
            known.insert(shapeOf(lattice, i, static_cast<std::size_t>(take.candidates[i])));
        fresh.emplace_back();
        for (std::size_t c = 0; c < lattice.candidates[i].size(); ++c)
            fresh.back().push_back(!known.contains(shapeOf(lattice, i, c)));
    }
    return fresh;
}

// The least cost of what follows a position, for each of its candidates and each number of new
// shapes still wanted there.
class Rest {
public:
    Rest(std::size_t candidates, int wanted)
        : m_wanted(static_cast<std::size_t>(wanted) + 1), m_costs(candidates * m_wanted, never)
    {}
    Points& at(std::size_t candidate, int wanted)
    {
        return m_costs[candidate * m_wanted + static_cast<std::size_t>(wanted)];
    }
    Points at(std::size_t candidate, int wanted) const
    {
        return m_costs[candidate * m_wanted + static_cast<std::size_t>(wanted)];
    }

private:
    std::size_t m_wanted;
    std::vector<Points> m_costs;
};

struct Search {
    Lattice const& lattice;
    std::vector<std::vector<bool>> fresh;
    int wanted = 0;
    std::vector<Rest> rests; // one for each position

    // What a candidate and all that follows it cost, with so many new shapes wanted from it on.
    Points from(std::size_t position, std::size_t candidate, int stillWanted) const
    {
        if (!allowed(lattice, position, candidate)) return never;
        int const after = std::max(0, stillWanted - (fresh[position][candidate] ? 1 : 0));
        Points const rest = rests[position].at(candidate, after);
        return rest == never ? never : lattice.candidates[position][candidate].cost + rest;
    }

    void fill()
    {
        std::size_t const count = lattice.positions.size();
        for (auto const& list : lattice.candidates) rests.emplace_back(list.size(), wanted);
        for (std::size_t c = 0; c < lattice.candidates.back().size(); ++c)
            rests.back().at(c, 0) = 0;
        for (std::size_t i = count - 1; i-- > 0;) fill(i);
    }

    void fill(std::size_t i)
    {
        for (std::size_t b = 0; b < lattice.candidates[i + 1].size(); ++b) {
            for (int w = 0; w <= wanted; ++w) {
                Points const next = from(i + 1, b, w);
                if (next == never) continue;
                for (std::size_t a = 0; a < lattice.candidates[i].size(); ++a) {
                    Points& least = rests[i].at(a, w);
                    least = std::min(least, lattice.pair(i, a, b) + next);
                }
            }
        }
    }

    // Walks the tables forward; the first of equal candidates is taken.
    std::optional<Choice> walked() const
    {
        Choice choice;
        int stillWanted = wanted;
        for (std::size_t i = 0; i < lattice.positions.size(); ++i) {
            Points least = never;
            std::size_t taken = 0;
            for (std::size_t c = 0; c < lattice.candidates[i].size(); ++c) {
                Points cost = from(i, c, stillWanted);
                if (cost == never) continue;
                if (i > 0)
                    cost += lattice.pair(i - 1,
                                         static_cast<std::size_t>(choice.candidates.back()), c);
                if (cost < least) {
                    least = cost;
                    taken = c;
                }
            }
            if (least == never) return std::nullopt;
            if (i == 0) choice.cost = least;
            choice.candidates.push_back(static_cast<int>(taken));
            if (fresh[i][taken]) stillWanted = std::max(0, stillWanted - 1);
        }
        return choice;
    }
};

} // namespace

int newShapesWanted(Lattice const& lattice)
{
    int free = 0;
    for (std::size_t i = 0; i < lattice.positions.size(); ++i) {
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
