#pragma once

#include "core/arrange/arrangement.h"
#include "core/arrange/pairtable.h"
#include "core/arrange/score.h"

#include <optional>
#include <vector>

namespace arrange {

// A playable voicing for one position, with what the score says of it alone.
struct Candidate {
    Voicing voicing;
    Account account{};
    Points cost = 0; // total of the account
};

// What the solver sees: every position, its candidates, and what each pair of neighbours costs.
struct Lattice {
    std::vector<Position> positions;
    std::vector<std::vector<Candidate>> candidates; // one list for each position, never empty
    std::vector<PairTable> pairs; // pairs[i]: rows are candidates of i, columns those of i + 1
    std::vector<std::optional<int>> locks; // candidate the arranger has committed, if any
    std::vector<int> like; // the first position with the same view: the same candidates in the
                           // same order

    Points pair(std::size_t position, std::size_t a, std::size_t b) const
    {
        return pairs[position].at(a, b);
    }
};

// A choice of one candidate for each position and its cost.
struct Choice {
    std::vector<int> candidates;
    Points cost = 0;
    friend bool operator==(Choice const&, Choice const&) = default;
};

// The best whole arrangement, and what every other candidate would add to it: for each position
// and candidate, the cost of the best arrangement that uses it less the cost of the best of
// all. 0: part of a best arrangement. Below 0 only where a lock stands in the way of something
// better.
struct Solution {
    Choice best;
    std::vector<std::vector<Points>> regrets;
    friend bool operator==(Solution const&, Solution const&) = default;
};

} // namespace arrange
