#pragma once

#include "core/levers/keyfit.h"
#include "core/proposal/proposal.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace proposal {

// One key for a tune on a harp, with the arrangement that is the best there.
struct RankedKey {
    levers::KeyFit fit;
    // Of the best whole arrangement there, by a full solve with the flips where the lever plan
    // puts them; none where there is no arrangement, the tune has no chords to arrange, or the
    // key asks for so many more flips and snags than the best that it is not solved.
    // Comparable between keys of one tune.
    std::optional<arrange::Points> cost;
    int chords = 0;                 // positions it is spread over
    std::optional<base::Fault> why; // where there is none
    int leversRaised = 0;
    std::optional<int> notesLost; // that would have to be left out; none: beyond counting
    std::string reason;           // a sentence for the arranger

    bool possible() const { return fit.possible && !why; }
};

// In which order keys are told: as a proposal takes them (levers::keyFits: her own key first
// unless another gains clearly), or by what the left hand makes of them, the least cost first.
enum class KeyOrder { AsTaken, ByCost };

// Every move of the tune up to six semitones and an octave (two on a small harp) that the brief
// could be played in, the better ones solved in full. What cannot be arranged stands last, with
// its fault. Time: one solve for each key. `reached` is told after each how many of how many
// are done.
std::vector<RankedKey>
rankedKeys(Brief const& brief, KeyOrder order = KeyOrder::AsTaken,
           std::function<void(std::size_t, std::size_t)> const& reached = {});

} // namespace proposal
