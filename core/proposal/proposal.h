#pragma once

#include "core/base/result.h"
#include "core/proposal/brief.h"

#include <string>
#include <vector>

namespace proposal {

// The answer to a brief: the best arrangement, and all that is needed to judge and change it.
struct Proposal {
    arrange::Arrangement arrangement;
    arrange::Lattice lattice; // positions as in arrangement.positions
    arrange::Solution solution;
    std::vector<std::string> warnings; // sentences for the arranger
};

// The main job: key and set-up, candidates, exact solution, fingers. Faults: NoNotes, NoChords,
// KeyBeyondTuning, NoteOffHarp, NoMomentForFlip, NothingPlayable, each with bar and remedy.
base::Result<Proposal> propose(Brief const& brief);

// The same brief with one more lock, solved again on the lattice that is already there:
// everything but the solution stays. Fault: BadLock when the voicing is no candidate there.
base::Result<Proposal> withChoice(Proposal proposal, int position, int candidate, bool locked);
Proposal withoutLock(Proposal proposal, int position);

// One candidate as the arranger sees it.
struct Variant {
    int candidate = 0;
    arrange::Points regret = 0;
    bool chosen = false;
    bool locked = false;
    std::vector<std::string> reasons; // sentences, the deciding one first
};

// The candidates of a position, least regret first, ties by number.
std::vector<Variant> variants(Proposal const& proposal, int position);

// Why the chosen voicing stands there.
std::vector<std::string> reasons(Proposal const& proposal, int position, int candidate);

} // namespace proposal
