#pragma once

#include "core/arrange/lattice.h"
#include "core/arrange/scene.h"
#include "core/arrange/terms.h"
#include "core/explain/judgement.h"

#include <optional>
#include <string>
#include <vector>

namespace explain {

// What speaks for or against the candidates of one position, in the trade's words: two or three
// whole sentences, the deciding one first. A candidate of a best arrangement is praised for
// what its rivals lack; any other is told what it costs against the best. What the candidates
// share is worked out once. All that it is made from must outlive it.
class ReasonsAt {
public:
    ReasonsAt(arrange::Scene const& scene, arrange::Lattice const& lattice,
              arrange::Solution const& solution, arrange::PositionIndex position);
    ReasonsAt(ReasonsAt const&) = delete; // its parts point to one another
    ReasonsAt& operator=(ReasonsAt const&) = delete;
    std::vector<std::string> of(arrange::CandidateIndex candidate) const;

private:
    // A neighbour's shape in the best arrangement, and what joins it to this position.
    struct Beside {
        arrange::View view;
        arrange::Laid laid;
        arrange::Neighbours join;
    };
    arrange::Account accountOf(arrange::CandidateIndex candidate) const;
    Told told(arrange::CandidateIndex candidate) const;

    arrange::Scene const& m_scene;
    arrange::Lattice const& m_lattice;
    arrange::Solution const& m_solution;
    arrange::PositionIndex m_position;
    arrange::View m_view;
    std::optional<Beside> m_before;
    std::optional<Beside> m_after;
    arrange::HandPlace m_handBefore;  // as the shape before ends
    arrange::Ringing m_ringingBefore; // from it
    arrange::HandPlace m_handAfter;   // as the shape after begins
};

// Of one candidate.
std::vector<std::string> reasonsFor(arrange::Scene const& scene,
                                    arrange::Lattice const& lattice,
                                    arrange::Solution const& solution,
                                    arrange::PositionIndex position,
                                    arrange::CandidateIndex candidate);

} // namespace explain
