#include "core/arrange/leastsums.h"

#include <algorithm>
#include <cassert>
#include <cstdint>
#include <limits>

// Where the processor has wide registers the inner loops use them; the same program runs where
// it has not. (Sanitizers of addresses and of threads cannot start such programs.)
#if defined(__GNUC__) && !defined(__clang__) && defined(__x86_64__) && defined(__GLIBC__) &&  \
    !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__)
#define SALLOW_WIDE_REGISTERS __attribute__((target_clones("avx2", "default")))
#else
#define SALLOW_WIDE_REGISTERS
#endif

namespace arrange {

namespace {

using Sums = std::vector<std::int32_t>;

// least[i] becomes the lesser of itself and the line's cost there, added to a start. The start
// comes twice: with the table's base already added, and with the value out of line.
SALLOW_WIDE_REGISTERS void lower(std::int32_t* least, std::uint16_t const* line,
                                 std::size_t length, std::int32_t near, std::int32_t far)
{
    for (std::size_t i = 0; i < length; ++i) {
        std::int32_t const sum =
            line[i] == PairTable::outOfLine ? far : near + static_cast<std::int32_t>(line[i]);
        least[i] = sum < least[i] ? sum : least[i];
    }
}

SALLOW_WIDE_REGISTERS void lower(std::int32_t* least, std::int32_t const* line,
                                 std::size_t length, std::int32_t start)
{
    for (std::size_t i = 0; i < length; ++i) {
        std::int32_t const sum = start + line[i];
        least[i] = sum < least[i] ? sum : least[i];
    }
}

SALLOW_WIDE_REGISTERS std::int32_t greatest(std::int32_t const* sums, std::size_t count)
{
    std::int32_t most = std::numeric_limits<std::int32_t>::min();
    for (std::size_t i = 0; i < count; ++i) most = sums[i] > most ? sums[i] : most;
    return most;
}

void lowerBy(Sums& least, PairTable const& pairs, PairTable::Lines<std::uint16_t> const& lines,
             std::size_t index, std::int32_t start)
{
    lower(least.data(), lines.line(index), lines.length, start + pairs.base(),
          start + pairs.far());
}

void lowerBy(Sums& least, PairTable const&, PairTable::Lines<std::int32_t> const& lines,
             std::size_t index, std::int32_t start)
{
    lower(least.data(), lines.line(index), lines.length, start);
}

// All lines with these starts (of those allowed, taken from the least of them, below
// PairTable::largest). A line whose start and least number come to no less than the greatest of
// the sums so far lowers none of them; the most promising sixteenth comes first, so that nearly
// all others can be passed over.
template<typename Number>
Sums leastSums(PairTable const& pairs, PairTable::Lines<Number> const& lines,
               Sums const& starts, Allowed where)
{
    constexpr std::size_t shareFirst = 16;
    constexpr std::size_t lookEvery = 8; // lines between two looks at the greatest sum
    Sums least(lines.length, std::numeric_limits<std::int32_t>::max());
    Sums promise(starts.size());
    for (std::size_t a = 0; a < starts.size(); ++a)
        promise[a] = starts[a] + lines.leastOf[where.from + a];

    Sums ordered = promise;
    auto const dividing =
        ordered.begin() + static_cast<std::ptrdiff_t>(ordered.size() / shareFirst);
    std::nth_element(ordered.begin(), dividing, ordered.end());
    std::int32_t const promising = *dividing;
    for (std::size_t a = 0; a < starts.size(); ++a)
        if (promise[a] <= promising) lowerBy(least, pairs, lines, where.from + a, starts[a]);

    std::int32_t worst = greatest(least.data(), least.size());
    std::size_t taken = 0;
    for (std::size_t a = 0; a < starts.size(); ++a) {
        if (promise[a] <= promising || promise[a] >= worst) continue;
        lowerBy(least, pairs, lines, where.from + a, starts[a]);
        if (++taken % lookEvery == 0) worst = greatest(least.data(), least.size());
    }
    return least;
}

// Starts too far apart for sums of 32 bits: plain, and hardly ever met.
template<typename At>
std::vector<Points> leastFarApart(std::span<Points const> starts, Allowed where,
                                  std::size_t length, At at)
{
    std::vector<Points> least(length, std::numeric_limits<Points>::max());
    for (std::size_t a = where.from; a < where.to; ++a)
        for (std::size_t i = 0; i < length; ++i)
            least[i] = std::min(least[i], starts[a] + at(a, i));
    return least;
}

template<typename Number>
std::vector<Points> near(PairTable const& pairs, PairTable::Lines<Number> const& lines,
                         std::span<Points const> starts, Allowed where, Points base)
{
    Sums fromBase(where.to - where.from);
    for (std::size_t a = 0; a < fromBase.size(); ++a)
        fromBase[a] = static_cast<std::int32_t>(starts[where.from + a] - base);
    Sums const least = leastSums(pairs, lines, fromBase, where);
    std::vector<Points> out(least.size());
    for (std::size_t i = 0; i < out.size(); ++i) out[i] = base + least[i];
    return out;
}

// Sums are taken from the least of the starts, so that 32 bits nearly always hold them.
bool nearEachOther(std::span<Points const> starts, Allowed where, Points base)
{
    auto const allowed = starts.subspan(where.from, where.to - where.from);
    return std::all_of(allowed.begin(), allowed.end(), [base](Points start) {
        return start - base < PairTable::largest;
    });
}

Points leastAllowed(std::span<Points const> starts, Allowed where)
{
    auto const allowed = starts.subspan(where.from, where.to - where.from);
    return *std::min_element(allowed.begin(), allowed.end());
}

} // namespace

std::vector<Points> leastByColumn(PairTable const& pairs, std::span<Points const> rows,
                                  Allowed where)
{
    assert(rows.size() == pairs.rows() && where.from < where.to);
    Points const base = leastAllowed(rows, where);
    if (!nearEachOther(rows, where, base))
        return leastFarApart(rows, where, pairs.columns(),
                             [&](std::size_t a, std::size_t b) { return pairs.at(a, b); });
    return pairs.isNarrow() ? near(pairs, pairs.narrow().rows, rows, where, base)
                            : near(pairs, pairs.wide().rows, rows, where, base);
}

std::vector<Points> leastByRow(PairTable const& pairs, std::span<Points const> columns,
                               Allowed where)
{
    assert(columns.size() == pairs.columns() && where.from < where.to);
    Points const base = leastAllowed(columns, where);
    if (!nearEachOther(columns, where, base))
        return leastFarApart(columns, where, pairs.rows(),
                             [&](std::size_t b, std::size_t a) { return pairs.at(a, b); });
    return pairs.isNarrow() ? near(pairs, pairs.narrow().columns, columns, where, base)
                            : near(pairs, pairs.wide().columns, columns, where, base);
}

} // namespace arrange
