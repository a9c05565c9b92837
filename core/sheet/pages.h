#pragma once

#include <vector>

namespace sheet {

// One system as the choice of page ends sees it, in any one unit.
struct SystemHeight {
    double height = 0;
    bool beginsPart = false;
    bool easyTurn = false; // at its end a hand is free for long enough
};

struct PageRoom {
    double firstPage = 0; // room for systems under the heading
    double page = 0;      // room on every later page
    double foot = 0;      // taken from the last page
    double leastGap = 0;  // between two systems
};

// First system of every page. Pages lie open two by two, so that one in two ends with a turn.
// As few pages as can be; among those, turns where a hand is free, breaks where a part begins
// unless that leaves about half a page white. No last page holds a lone system if another
// division has as few pages. Exact, by dynamic programming.
std::vector<int> pageStarts(std::vector<SystemHeight> const& systems, PageRoom const& room);

// How many of these pages are turned while both hands play.
int hardTurns(std::vector<SystemHeight> const& systems, std::vector<int> const& pages);

} // namespace sheet
