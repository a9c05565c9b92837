#pragma once

#include "core/levers/groupsearch.h"

#include <cstdint>
#include <deque>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <span>
#include <vector>

namespace levers {

// The ways of one group in which the notes of a figure all go the same way, the cheapest first.
// Where the cheapest way of a search is at odds with itself, the search is parted: the figure
// goes each of its ways in a search of its own. After so many partings only the cheapest part
// is followed, so that no line takes for ever.
class AgreedSearch {
public:
    // `options` and `choices`: of every note; there may be no choices at all.
    AgreedSearch(BestWindows& windows, MomentOrder const& order, StringGroup const& group,
                 NoteOptions const& options, NoteChoices const& choices);

    // Ways that cost more are not looked for.
    void limit(std::int64_t most) { m_most = most; }

    // What any way costs at least, before it is asked whether figures go one way; none: there
    // is no way.
    std::optional<std::int64_t> atLeast();

    // The turn without a window where the notes cannot be played at all.
    std::optional<Turn> stuck();

    // The way of that rank, 0 the cheapest; none when there are not so many.
    GroupWay const* way(std::size_t rank);

private:
    // Ways that figures are bound to; none: as written.
    using Bound = std::map<int, std::optional<int>>;

    struct Branch {
        std::unique_ptr<GroupSearch> search;
        Bound bound;
        std::size_t rank = 0;
    };

    std::optional<Branch> searched(GroupSearch begun, std::size_t played, Bound bound);
    std::span<NoteOption const> allowed(UseIndex note, Bound const& bound);
    std::optional<int> goes(std::optional<int> way, UseIndex note) const;
    std::optional<int> atOdds(GroupWay const& whole) const;
    void part(Branch const& branch, int figure);
    std::optional<std::size_t> cheapestBranch();
    bool next();

    BestWindows& m_windows;
    MomentOrder const& m_order;
    StringGroup const& m_group;
    NoteOptions const& m_options;
    NoteChoices const& m_choices;
    base::List<UseIndex, UseIndex> m_ringsUntil; // as GroupSearch::Pruning has it
    std::vector<NoteOption> m_allowed;
    std::optional<std::int64_t> m_most;
    int m_parted = 0;
    std::vector<Branch> m_branches;
    std::set<GroupWay> m_known;
    std::deque<GroupWay> m_told;
    std::optional<Turn> m_stuck;
};

} // namespace levers
