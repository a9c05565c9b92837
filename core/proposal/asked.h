#pragma once

#include "core/proposal/proposal.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

// Shapes that the arranger asks for by name at a chord, of the book or her own.

namespace proposal {

// The positions of a bar, by its printed number, that hold a beat (from 1); without a beat the
// bar's first. One for each pass where passes vary. Empty where there is no such bar or beat.
std::vector<arrange::PositionIndex> positionsAt(Proposal const& proposal, int bar,
                                                std::optional<int> beat);

// The proposal with a shape of the book locked at a position, at the root and in the rhythm
// that go best with all the rest. Faults: NoSuchPattern; CannotPlayHere, saying exactly what is
// in the way and what would help, where no hand can play it there.
base::Result<Proposal> withPattern(Proposal proposal, arrange::PositionIndex position,
                                   std::string_view pattern);

// A shape of the book that no hand can play at a position.
struct Unplayable {
    std::string pattern;
    std::string why; // a sentence with its remedy
    friend bool operator==(Unplayable const&, Unplayable const&) = default;
};

// All of them, in the order of the book; those that the level or the meter rules out come last.
std::vector<Unplayable> unplayable(Proposal const& proposal, arrange::PositionIndex position);

} // namespace proposal
