#pragma once

#include "core/proposal/proposal.h"

#include <string>

namespace files {

// The best choice of a proposal's lattice, whatever take is arranged.
arrange::Choice bestOf(proposal::Proposal const& proposal);

// How many alternatives lattice files list beside the best.
inline constexpr int alternativesListed = 3;

// lattice.bin: the numbers of lattice.json without words: a quarter to half of its size, and
// read without parsing. The form is described in DEVELOPERS.md.
std::string latticeBinary(proposal::Proposal const& proposal);

} // namespace files
