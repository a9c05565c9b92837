#pragma once

#include "core/levers/clock.h"

#include <map>
#include <vector>

namespace levers {

// Chooses one window for each gap such that no hand is wanted at two levers at once, with the
// least total cost. Exact, but for gaps with more than a thousand ways to go together at once
// (an accidental at nearly every note): there the cheapest ways found are kept. The same
// questions get the same answers. Time grows with the windows of gaps that get into each
// other's way; gaps that were decided together before are remembered, so that one of these
// should serve all plans that are compared.
class Moments {
public:
    // `choices` are the windows of each gap, not empty, and always the same for the same gap.
    // Empty when no such choice exists.
    std::vector<Window> chosen(std::vector<Gap> const& gaps,
                               std::vector<std::vector<Window>> const& choices);

private:
    std::vector<Window> const& together(std::vector<std::size_t> const& members,
                                        std::vector<Gap> const& gaps,
                                        std::vector<std::vector<Window>> const& choices);

    std::map<Gap, int> m_names;
    std::map<std::vector<int>, std::vector<Window>> m_known;
    std::size_t m_mostWays = 1000; // that are kept at once
};

// Whether one hand would be wanted at two levers at once. Windows may touch, and a hand that
// turns one lever to and fro stays there: windows of the same string may overlap.
bool overlap(Window const& a, Window const& b);

} // namespace levers
