#pragma once

#include "core/arrange/lattice.h"
#include "core/arrange/scene.h"

#include <memory>
#include <vector>

namespace arrange {

// Everything the solver needs: for each position its playable candidates with their accounts,
// for each two neighbours the cost of every pair. No list of candidates is empty: the left hand
// can always rest. Of a tune of more than a thousand chords only the cheapest shapes at each
// are weighed, the fewer the longer it is. No locks are set. Time grows with positions *
// candidates squared.
Lattice latticeFor(Scene const& scene, Positions positions);

// Builds lattices of one tune with other and other levers, as latticeFor would: what was worked
// out for positions and neighbours that look the same with both is not worked out again.
class LatticeBuilder {
public:
    // The values that the scene refers to are to outlive it.
    explicit LatticeBuilder(Scene const& scene);
    ~LatticeBuilder();
    LatticeBuilder(LatticeBuilder const&) = delete;
    LatticeBuilder& operator=(LatticeBuilder const&) = delete;

    Lattice lattice(harp::LeverTimeline const& levers, Positions positions);

private:
    struct Known;
    Scene m_scene;
    std::unique_ptr<Known> m_known;
};

// The second after the first, which is not empty either: two stretches of one tune that are
// weighed in different ways. The scene, which is that of the second, judges where they meet.
Lattice joined(Scene const& scene, Lattice first, Lattice second);

// The terms of one pair of neighbours by name, weights applied: what Lattice::pair adds up.
Account pairAccount(Scene const& scene, Lattice const& lattice, PositionIndex position,
                    CandidateIndex candidate, CandidateIndex nextCandidate);

// Whether one hand can play the first voicing and then the second, wherever their positions
// follow each other within a bar. What latticeFor asks of neighbours in writing, for those that
// are neighbours only in playing: over a repeat, from one ending to another, across a rest.
bool playableInTurn(Scene const& scene, Position const& before, Voicing const& first,
                    Position const& after, Voicing const& second);

} // namespace arrange
