#pragma once

#include "core/arrange/candidates.h"

#include <optional>
#include <string>

namespace explain {

// Why a shape cannot be had at a position, and what would help: two halves of one sentence for
// the arranger, with strings, beats and figures.
struct WhyNot {
    std::string reason; // "the tune holds G4 on beat 3, a string that it needs"
    std::string remedy; // "take a smaller shape or a lower octave"
    friend bool operator==(WhyNot const&, WhyNot const&) = default;
};

// "On beat 3 the tune ...: take a smaller shape."
std::string sentence(WhyNot const& why);

// Why the left hand cannot play a shape there, at any root and in any rhythm of the book; none
// where it can. Of all the ways to lay it the one is told whose root lies nearest to the left
// hand's home, and of these the one that comes furthest.
std::optional<WhyNot> whyNot(arrange::Scene const& scene, arrange::Position const& position,
                             pattern::Pattern const& shape);

} // namespace explain
