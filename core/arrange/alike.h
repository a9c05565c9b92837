#pragma once

#include "core/arrange/lattice.h"
#include "core/arrange/scene.h"

#include <optional>

namespace arrange {

// The earlier position that a position answers: it has the same music (Lattice::like), and
// so do as many as possible of those beside the two. Of several the one with the longest such
// run, then the earliest. None where a position comes for the first time.
struct Answer {
    PositionIndex position = 0; // the earlier one
    int bars = 1;     // that the run touches
    friend bool operator==(Answer const&, Answer const&) = default;
};
std::optional<Answer> answered(Lattice const& lattice, PositionIndex position);

// Bars with the same tune and chords get the same left hand at the levels whose figures say so
// [music-10]. That two places far apart are alike is no cost of neighbours, so the chain is
// solved freely first; then each place that answers an earlier one pays for every candidate but
// the one chosen there (under the term of variety). Solved again, optimum and regrets are exact
// for the lattice as it then stands. The free optimum is a bound from below: the difference of
// the two is at most what the likeness costs. Knows no locks, so that a lock changes nothing in
// what is like what.
void drawLikeTogether(Lattice& lattice, Scene const& scene);

} // namespace arrange
