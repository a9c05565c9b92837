#pragma once

#include "core/proposal/proposal.h"

#include <string>
#include <vector>

namespace proposal {

// A flip for which the left hand rests through a whole chord of a solved proposal, with the two
// notes of the tune between which it stands.
struct SilencingFlip {
    std::size_t flip = 0; // index into the timeline
    tune::NotePlace after; // the note that wants the lever flipped
    std::vector<arrange::PositionIndex> positions; // that are silent for it
};
std::vector<SilencingFlip> silencingFlips(Proposal const& proposal);

// Notes that had better give way than empty a bar of the left hand: where the best way of either
// note round the flip costs less than as written with a left hand that gives up its share. To be
// proposed again with; not decided by the arranger. Empty where the flips are worth it.
std::vector<SnagChoice> easedChoices(Proposal const& proposal,
                                     std::vector<SilencingFlip> const& flips);

// What remains is said: a snag at the note that wants the lever, as written. The positions
// whose rest is told so.
std::vector<arrange::PositionIndex> addSilenceSnags(Proposal& proposal,
                                                    std::vector<SilencingFlip> const& flips);

// Chords for which the left hand has nothing to play, with why. A pick-up is not one: the left
// hand is free there.
struct ForcedRest {
    arrange::PositionIndex position = 0;
    bool forFlip = false; // the left hand turns a lever all the while
    std::string why;      // a clause
};
std::vector<ForcedRest> forcedRests(Proposal const& proposal);

// Each of them as a snag of the left hand, but for positions that are told already.
void addRestSnags(Proposal& proposal, std::vector<arrange::PositionIndex> const& told);

} // namespace proposal
