#pragma once

#include "core/arrange/arrangement.h"
#include "core/arrange/pairtable.h"
#include "core/arrange/score.h"

#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace arrange {

// A playable voicing for one position, with what the score says of it alone.
struct Candidate {
    Voicing voicing;
    Account account{};
    Points cost = 0; // total of the account
};

// The candidates of one position: a value that never changes once made. Copies share their
// memory, so that positions with the same choice, and two states in the history of undo, keep
// one list.
class CandidateList {
public:
    using value_type = Candidate;
    using const_iterator = std::vector<Candidate>::const_iterator;

    CandidateList() : CandidateList(std::vector<Candidate>{}) {}
    CandidateList(std::vector<Candidate> list)
        : m_list(std::make_shared<std::vector<Candidate> const>(std::move(list)))
    {}

    std::size_t size() const { return m_list->size(); }
    bool empty() const { return m_list->empty(); }
    Candidate const& operator[](std::size_t index) const { return (*m_list)[index]; }
    Candidate const& front() const { return m_list->front(); }
    Candidate const& back() const { return m_list->back(); }
    const_iterator begin() const { return m_list->begin(); }
    const_iterator end() const { return m_list->end(); }

    std::vector<Candidate> copy() const { return *m_list; } // to make another list

private:
    std::shared_ptr<std::vector<Candidate> const> m_list;
};

// What the solver sees: every position, its candidates, and what each pair of neighbours costs.
struct Lattice {
    std::vector<Position> positions;
    std::vector<CandidateList> candidates; // one list for each position, never empty
    std::vector<PairTable> pairs; // pairs[i]: rows are candidates of i, columns those of i + 1
    std::vector<std::optional<int>> locks; // candidate the arranger has committed, if any
    std::vector<int> like; // the first position with the same music: tune, chord and place in
                           // the bar; levers, and so candidates, may differ

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
