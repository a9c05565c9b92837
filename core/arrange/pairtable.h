#pragma once

#include "core/arrange/score.h"

#include <cassert>
#include <cstdint>
#include <memory>
#include <vector>

namespace arrange {

// What every candidate of one position costs next to every candidate of the following one, row
// after row. A value that never changes once made: copies share their numbers, so that two
// places of a tune with the same chords, or two states in the history of undo, keep one table.
// Costs of pairs stay below 2^30 thousandths in size (a million points), half the memory of
// Points.
class PairTable {
public:
    static constexpr Points largest = Points{1} << 30;

    PairTable() : m_costs(std::make_shared<std::vector<std::int32_t> const>()) {}
    explicit PairTable(std::vector<std::int32_t> costs)
        : m_costs(std::make_shared<std::vector<std::int32_t> const>(std::move(costs)))
    {}
    PairTable(std::vector<Points> const& costs) : PairTable(narrowed(costs)) {}

    std::size_t size() const { return m_costs->size(); }
    Points operator[](std::size_t index) const { return (*m_costs)[index]; }
    std::int32_t const* data() const { return m_costs->data(); }
    std::vector<std::int32_t> costs() const
    {
        return *m_costs;
    } // a copy, to make another table

    // Whether both are one table in memory, not merely equal.
    bool sharesWith(PairTable const& other) const { return m_costs == other.m_costs; }

private:
    static std::vector<std::int32_t> narrowed(std::vector<Points> const& costs)
    {
        std::vector<std::int32_t> narrow;
        narrow.reserve(costs.size());
        for (Points cost : costs) {
            assert(cost > -largest && cost < largest);
            narrow.push_back(static_cast<std::int32_t>(cost));
        }
        return narrow;
    }

    std::shared_ptr<std::vector<std::int32_t> const> m_costs;
};

} // namespace arrange
