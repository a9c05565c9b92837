#pragma once

#include "core/arrange/points.h"
#include "core/arrange/view.h"
#include "core/arrange/voicing.h"

#include <cstdint>
#include <vector>

namespace arrange {

// One left-hand note in the numbers that the terms use: times in whole notes from the start of
// the position.
struct Pluck {
    double at = 0;
    double held = 0;
    harp::StringIndex string = 0;
    int midi = 48;
    int finger = 4;
    int degree = 1;
    int strength = 0; // of the beat on which it falls, as music::beatStrength
    int rollOrder = 0;
    friend bool operator==(Pluck const&, Pluck const&) = default;
};

// A voicing with its numbers beside it: what a term judges.
struct Laid {
    Voicing voicing;
    std::vector<Pluck> plucks; // one for each note of the voicing, in the same order
    std::uint64_t strings = 0; // bit s is set where string s is plucked
    harp::StringIndex bass = 0; // the lowest string, the highest
    harp::StringIndex top = 0;
    double shortestStep = 0; // between two onsets; 0 where there is one
    int level = 1;           // of the pattern, and what the book holds against it and
    Points penalty = 0;      // against the rhythm

    bool rests() const { return plucks.empty(); }
};

// Fills in what follows from the plucks: strings, bass, top and shortestStep.
void sumUp(Laid& laid);

// The numbers of a voicing in its position.
Laid laidAs(Voicing const& voicing, View const& view);

} // namespace arrange
