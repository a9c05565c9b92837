#include "core/files/latticebinary.h"

#include "core/arrange/takes.h"

#include <algorithm>
#include <cstdint>
#include <limits>
#include <type_traits>

namespace files {

namespace {

using arrange::Points;

constexpr std::string_view fileMark = "SALLOWLT";
constexpr std::uint32_t version = 1;
constexpr std::uint32_t noLock = std::numeric_limits<std::uint32_t>::max();

class Bytes {
public:
    // Lowest byte first, whatever machine this is.
    template<typename Number>
    void put(Number number)
    {
        auto bits = static_cast<std::make_unsigned_t<Number>>(number);
        for (std::size_t i = 0; i < sizeof(Number); ++i) {
            m_bytes += static_cast<char>(bits & 0xFFU);
            bits = static_cast<std::make_unsigned_t<Number>>(std::uint64_t{bits} >> 8U);
        }
    }
    void count(std::size_t number) { put(static_cast<std::uint32_t>(number)); }
    void text(std::string_view text) { m_bytes += text; }
    std::string take() { return std::move(m_bytes); }

private:
    std::string m_bytes;
};

void putPosition(Bytes& out, proposal::Proposal const& proposal, arrange::PositionIndex i)
{
    auto const& lock = proposal.lattice.locks[i];
    auto const& candidates = proposal.lattice.candidates[i];
    out.count(candidates.size());
    out.put(lock ? static_cast<std::uint32_t>(*lock) : noLock);
    for (arrange::Candidate const& c : candidates) out.put(c.cost);
    for (Points regret : proposal.solution.regrets[i]) out.put(regret);
}

// In two bytes each where the table has them so, else in four.
void putTable(Bytes& out, arrange::PairTable const& table)
{
    constexpr std::uint32_t two = 2;
    constexpr std::uint32_t four = 4;
    out.put(table.isNarrow() ? two : four);
    out.put(table.base());
    out.put(table.far());
    if (table.isNarrow())
        for (std::uint16_t number : table.narrow().rows.numbers) out.put(number);
    else
        for (std::int32_t number : table.wide().rows.numbers) out.put(number);
}

void putChoice(Bytes& out, arrange::Choice const& choice)
{
    out.put(choice.cost);
    for (int candidate : choice.candidates) out.put(static_cast<std::uint32_t>(candidate));
}

} // namespace

arrange::Choice bestOf(proposal::Proposal const& proposal)
{
    return proposal.take ? arrange::solved(proposal.lattice).best : proposal.solution.best;
}

std::string latticeBinary(proposal::Proposal const& proposal)
{
    arrange::Lattice const& lattice = proposal.lattice;
    auto const takes = arrange::takes(lattice, bestOf(proposal), alternativesListed);
    Bytes out;
    out.text(fileMark);
    out.put(version);
    out.count(lattice.positions.size());
    for (arrange::PositionIndex const i : lattice.positions.indices())
        putPosition(out, proposal, i);
    for (arrange::PairTable const& table : lattice.pairs) putTable(out, table);
    out.count(takes.size()); // the best among them, first
    for (arrange::Choice const& take : takes) putChoice(out, take);
    return out.take();
}

} // namespace files
