#pragma once

#include "core/arrange/score.h"

#include <algorithm>
#include <cstdint>
#include <memory>
#include <vector>

namespace arrange {

// What every candidate of one position costs next to every candidate of the following one. A
// value that never changes once made: copies share their numbers, so that two places of a tune
// with the same chords, or two states in the history of undo, keep one table.
//
// Costs of pairs stay below 2^30 thousandths in size (a million points). Where all but one of
// the values that occur lie within 65 points of each other, as in every tune (the other value
// is `unplayablePair`), a cost takes two bytes; else four. The numbers are kept twice, row after
// row and column after column, because the solver asks for whole lines of both kinds.
class PairTable {
public:
    static constexpr Points largest = Points{1} << 30;

    // A narrow number that stands for the one value out of line with the others.
    static constexpr std::uint16_t outOfLine = 0xFFFF;

    // Costs as lines of equal length: the rows, or the columns.
    template<typename Number>
    struct Lines {
        std::size_t length = 0;            // numbers in a line
        std::vector<Number> numbers;       // line after line
        std::vector<std::int32_t> leastOf; // the least cost of each line

        Number const* line(std::size_t index) const { return numbers.data() + index * length; }
    };
    template<typename Number>
    struct Both {
        Lines<Number> rows;
        Lines<Number> columns;
    };

    PairTable() : PairTable(std::vector<Points>{}, 0) {}
    // `costs` row after row, so many columns in each.
    PairTable(std::vector<Points> const& costs, std::size_t columns);

    std::size_t rows() const { return m_costs->rows; }
    std::size_t columns() const { return m_costs->columns; }
    std::size_t size() const { return rows() * columns(); }
    Points at(std::size_t row, std::size_t column) const;
    std::vector<Points> costs() const; // a copy, to make another table

    // The lines as they are stored: in two bytes each (a number is `base` + itself, or `far`
    // where it is `outOfLine`), or in four. One of the two is empty.
    bool isNarrow() const { return m_costs->isNarrow; }
    Both<std::uint16_t> const& narrow() const { return m_costs->narrow; }
    Both<std::int32_t> const& wide() const { return m_costs->wide; }
    std::int32_t base() const { return m_costs->base; }
    std::int32_t far() const { return m_costs->far; }

    // No two costs lie further apart than this.
    Points spread() const
    {
        if (!isNarrow()) return 2 * largest;
        return std::max<Points>(outOfLine, Points{far()} - base());
    }

    // Whether both are one table in memory, not merely equal.
    bool sharesWith(PairTable const& other) const { return m_costs == other.m_costs; }

private:
    struct Costs {
        std::size_t rows = 0;
        std::size_t columns = 0;
        bool isNarrow = true;
        std::int32_t base = 0;
        std::int32_t far = 0;
        Both<std::uint16_t> narrow;
        Both<std::int32_t> wide;
    };
    static std::shared_ptr<Costs const> stored(std::vector<Points> const& costs,
                                               std::size_t columns);

    std::shared_ptr<Costs const> m_costs;
};

} // namespace arrange
