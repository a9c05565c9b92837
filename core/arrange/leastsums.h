#pragma once

#include "core/arrange/pairtable.h"

#include <span>
#include <vector>

// The one step of which every exact answer is made: through which candidate of a position does
// a chain come cheapest to each candidate of the next.
namespace arrange {

// Candidates that a chain may use at a position: all of them, or the locked one.
struct Allowed {
    std::size_t from = 0;
    std::size_t to = 0; // one beyond the last
};

// For each column, the least of rows[a] + pair(a, column) over the allowed rows, of which there
// is at least one. Exact: rows that cannot be the least for any column are passed over unread.
// Time grows with rows * columns at most.
std::vector<Points> leastByColumn(PairTable const& pairs, std::span<Points const> rows,
                                  Allowed where);

// For each row, the least of pair(row, b) + columns[b] over the allowed columns.
std::vector<Points> leastByRow(PairTable const& pairs, std::span<Points const> columns,
                               Allowed where);

} // namespace arrange
