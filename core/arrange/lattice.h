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

using Candidates = base::List<CandidateIndex, Candidate>;

// The candidates of one position: a value that never changes once made. Copies share their
// memory, so that positions with the same choice, and two states in the history of undo, keep
// one list.
class CandidateList {
public:
    using value_type = Candidate;
    using const_iterator = Candidates::const_iterator;

    CandidateList() : CandidateList(Candidates()) {}
    CandidateList(Candidates list) : m_list(std::make_shared<Candidates const>(std::move(list)))
    {}

    int size() const { return m_list->size(); }
    bool empty() const { return m_list->empty(); }
    bool holds(CandidateIndex index) const { return m_list->holds(index); }
    base::Indices<CandidateIndex> indices() const { return m_list->indices(); }
    Candidate const& operator[](CandidateIndex index) const { return (*m_list)[index]; }
    Candidate const& front() const { return m_list->front(); }
    Candidate const& back() const { return m_list->back(); }
    const_iterator begin() const { return m_list->begin(); }
    const_iterator end() const { return m_list->end(); }
    CandidateIndex indexOf(const_iterator place) const { return m_list->indexOf(place); }

    Candidates copy() const { return *m_list; } // to make another list

private:
    std::shared_ptr<Candidates const> m_list;
};

// Something for each candidate of a position.
using Costs = base::List<CandidateIndex, Points>;

// What the solver sees: every position, its candidates, and what each pair of neighbours costs.
struct Lattice {
    Positions positions;
    base::List<PositionIndex, CandidateList> candidates; // none of them empty
    base::List<PositionIndex, PairTable> pairs; // rows are candidates of a position, columns
                                                // those of the next; none for the last
    base::List<PositionIndex, std::optional<CandidateIndex>> locks; // what the arranger has
                                                                    // committed, if anything
    base::List<PositionIndex, PositionIndex>
        like; // the first position with the same music: tune, chord and place in
              // the bar; levers, and so candidates, may differ

    Points pair(PositionIndex position, CandidateIndex a, CandidateIndex b) const
    {
        return pairs[position].at(static_cast<std::size_t>(a), static_cast<std::size_t>(b));
    }
};

// A choice of one candidate for each position and its cost.
struct Choice {
    base::List<PositionIndex, CandidateIndex> candidates;
    Points cost = 0;
    friend bool operator==(Choice const&, Choice const&) = default;
};

// The best whole arrangement, and what every other candidate would add to it: for each position
// and candidate, the cost of the best arrangement that uses it less the cost of the best of
// all. 0: part of a best arrangement. Below 0 only where a lock stands in the way of something
// better.
struct Solution {
    Choice best;
    base::List<PositionIndex, Costs> regrets;
    friend bool operator==(Solution const&, Solution const&) = default;
};

} // namespace arrange
