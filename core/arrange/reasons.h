#pragma once

#include "core/arrange/lattice.h"
#include "core/arrange/scene.h"
#include "core/arrange/telling.h"
#include "core/arrange/terms.h"

#include <optional>
#include <string>
#include <vector>

namespace arrange {

// What speaks for or against the candidates of one position, in the trade's words: two or three
// whole sentences, the deciding one first. A candidate of a best arrangement is praised for
// what its rivals lack; any other is told what it costs against the best. What the candidates
// share is worked out once. All that it is made from must outlive it.
class ReasonsAt {
public:
    ReasonsAt(Scene const& scene, Lattice const& lattice, Solution const& solution,
              int position);
    ReasonsAt(ReasonsAt const&) = delete; // its parts point to one another
    ReasonsAt& operator=(ReasonsAt const&) = delete;
    std::vector<std::string> of(int candidate) const;

private:
    // A neighbour's shape in the best arrangement, and what joins it to this position.
    struct Beside {
        View view;
        Laid laid;
        Neighbours join;
    };
    Account accountOf(int candidate) const;
    Told told(int candidate) const;

    Scene const& m_scene;
    Lattice const& m_lattice;
    Solution const& m_solution;
    int m_position;
    View m_view;
    std::optional<Beside> m_before;
    std::optional<Beside> m_after;
    HandPlace m_handBefore;  // as the shape before ends
    Ringing m_ringingBefore; // from it
    HandPlace m_handAfter;   // as the shape after begins
};

// Of one candidate.
std::vector<std::string> reasonsFor(Scene const& scene, Lattice const& lattice,
                                    Solution const& solution, int position, int candidate);

} // namespace arrange
