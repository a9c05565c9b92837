#pragma once

#include "core/proposal/proposal.h"

#include <optional>
#include <span>
#include <vector>

// A tune is solved as it is written, one position after the other. It is played otherwise: the
// end of a part is followed by its beginning, a first ending by the repeat, and across a rest
// two positions meet that are no neighbours. What no hand can play there is found here.

namespace proposal {

struct Chosen {
    arrange::PositionIndex position = 0;
    arrange::CandidateIndex candidate = 0;
    friend auto operator<=>(Chosen const&, Chosen const&) = default;
};

// Candidates that cannot be played one after the other: the outer two, and the rests between.
using Conflict = std::vector<Chosen>;

// Everything in a choice that no hand can play although the lattice does not say so, in order
// of playing.
std::vector<Conflict> conflicts(Proposal const& proposal, arrange::Choice const& choice);

// Whether every candidate of a conflict is locked, so that only the arranger can mend it.
bool isLocked(Proposal const& proposal, Conflict const& conflict);

// Where a single position is the whole tune and is repeated, takes away the candidates that
// cannot follow themselves.
void removeSelfConflicts(Proposal& proposal);

// Solves the lattice, whose pairs are as written and whose tables are made. Where the best
// choice has a conflict, the best one without is found (best first, one of the conflicting
// candidates forbidden at a time) and the lattice's pairs say what was forbidden, at
// `arrange::unplayablePair` each, so that anyone who solves the lattice finds the same. Where two
// hundred choices still conflict, whole sides of conflicts are forbidden until none is left: the
// arrangement is playable, but a cheaper one may have been passed over. Locked candidates are
// never forbidden: a conflict among them alone stays.
void solveAsPlayed(Proposal& proposal);

// Another take (core/arrange/takes.h) of a solved proposal that can be played, too, over its
// repeats: the cheapest without a conflict, found in the same way. None when there is none.
std::optional<arrange::Choice> anotherTakeAsPlayed(Proposal const& proposal,
                                                   std::span<arrange::Choice const> earlier);

} // namespace proposal
