#include "core/arrange/pairtable.h"

#include <algorithm>
#include <cassert>
#include <optional>

namespace arrange {

namespace {

// How all numbers but one fit into two bytes.
struct Narrowing {
    Points base = 0;
    Points far = 0; // stands nowhere, or for one value
};

std::optional<Narrowing> narrowing(std::vector<Points> const& costs)
{
    if (costs.empty()) return Narrowing{};
    Points const base = *std::min_element(costs.begin(), costs.end());
    Narrowing out{base, base};
    for (Points cost : costs) {
        if (cost - base < PairTable::outOfLine) continue;
        if (out.far != base && out.far != cost) return std::nullopt;
        out.far = cost;
    }
    return out;
}

// The same numbers column after column, taken in squares that fit the nearest cache.
template<typename Number>
std::vector<Number> turned(std::vector<Number> const& numbers, std::size_t rows,
                           std::size_t columns)
{
    constexpr std::size_t side = 32;
    std::vector<Number> out(numbers.size());
    for (std::size_t top = 0; top < rows; top += side)
        for (std::size_t left = 0; left < columns; left += side)
            for (std::size_t a = top; a < std::min(top + side, rows); ++a)
                for (std::size_t b = left; b < std::min(left + side, columns); ++b)
                    out[b * rows + a] = numbers[a * columns + b];
    return out;
}

// `leastOf` of rows and columns, from the costs themselves.
template<typename Number>
void noteLeast(PairTable::Both<Number>& both, std::vector<Points> const& costs)
{
    constexpr auto none = static_cast<std::int32_t>(PairTable::largest);
    both.rows.leastOf.assign(both.columns.length, none);
    both.columns.leastOf.assign(both.rows.length, none);
    Points const* cost = costs.data();
    for (std::int32_t& ofRow : both.rows.leastOf) {
        for (std::int32_t& ofColumn : both.columns.leastOf) {
            auto const here = static_cast<std::int32_t>(*cost++);
            ofRow = std::min(ofRow, here);
            ofColumn = std::min(ofColumn, here);
        }
    }
}

template<typename Number, typename Make>
PairTable::Both<Number> linesOf(std::vector<Points> const& costs, std::size_t columns,
                                Make make)
{
    std::size_t const rows = columns == 0 ? 0 : costs.size() / columns;
    PairTable::Both<Number> both;
    both.rows.length = columns;
    both.columns.length = rows;
    both.rows.numbers.resize(costs.size());
    std::transform(costs.begin(), costs.end(), both.rows.numbers.begin(), make);
    both.columns.numbers = turned(both.rows.numbers, rows, columns);
    noteLeast(both, costs);
    return both;
}

} // namespace

PairTable::PairTable(std::vector<Points> const& costs, std::size_t columns)
    : m_costs(stored(costs, columns))
{}

std::shared_ptr<PairTable::Costs const> PairTable::stored(std::vector<Points> const& costs,
                                                          std::size_t columns)
{
    assert(columns == 0 ? costs.empty() : costs.size() % columns == 0);
    assert(std::all_of(costs.begin(), costs.end(),
                       [](Points cost) { return cost > -largest && cost < largest; }));
    auto out = std::make_shared<Costs>();
    out->columns = columns;
    out->rows = columns == 0 ? 0 : costs.size() / columns;
    std::optional<Narrowing> const narrow = narrowing(costs);
    out->isNarrow = narrow.has_value();
    if (narrow) {
        out->base = static_cast<std::int32_t>(narrow->base);
        out->far = static_cast<std::int32_t>(narrow->far);
        out->narrow = linesOf<std::uint16_t>(costs, columns, [&](Points cost) {
            Points const above = cost - narrow->base;
            return above < outOfLine ? static_cast<std::uint16_t>(above) : outOfLine;
        });
    } else {
        out->wide = linesOf<std::int32_t>(
            costs, columns, [](Points cost) { return static_cast<std::int32_t>(cost); });
    }
    return out;
}

Points PairTable::at(std::size_t row, std::size_t column) const
{
    if (!m_costs->isNarrow) return m_costs->wide.rows.line(row)[column];
    std::uint16_t const number = m_costs->narrow.rows.line(row)[column];
    return number == outOfLine ? m_costs->far : m_costs->base + number;
}

std::vector<Points> PairTable::costs() const
{
    std::vector<Points> out;
    out.reserve(size());
    for (std::size_t a = 0; a < rows(); ++a)
        for (std::size_t b = 0; b < columns(); ++b) out.push_back(at(a, b));
    return out;
}

} // namespace arrange
