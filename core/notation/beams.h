#pragma once

#include "core/music/meter.h"
#include "core/notation/staff.h"

#include <vector>

namespace notation {

// Notes joined by a beam, at least two.
struct BeamGroup {
    StaffNoteIndex first = 0;
    StaffNoteIndex last = 0; // inclusive
    friend bool operator==(BeamGroup const&, BeamGroup const&) = default;
};

// Beams by the meter [gould11]: dotted beats in compound time; in 4/4 and 2/2 half
// bars where they hold quavers only, else beats; in 2/4 and 3/4 the bar of quavers, else beats; in
// all other meters beats; 3/8 whole. A rest ends a beam. Where the meter allows several
// groupings (2/4, 4/4), a gap left by the writer at a beat is kept.
std::vector<BeamGroup> beamGroups(StaffBar const& bar, music::Meter meter,
                                  music::Length upbeat);

// Beams on a stem of this value: quaver 1, semiquaver 2; 0 from the crotchet up.
constexpr int beamCount(NoteValue value) { return value.halvings > 2 ? value.halvings - 2 : 0; }

// One level of beam within a group: from note to note, or a stub at one note (from == to).
struct BeamRun {
    int level = 1; // 1: the beam that all share
    StaffNoteIndex from = 0;
    StaffNoteIndex to = 0;
    bool stubToLeft = false;
    friend bool operator==(BeamRun const&, BeamRun const&) = default;
};

// The beams of a group, level by level. A lone semiquaver's stub points to the note it shares
// its beat with: to the left unless it stands first in the group or begins a beat.
std::vector<BeamRun> beamRuns(StaffBar const& bar, BeamGroup group, music::Meter meter,
                              music::Length upbeat);

} // namespace notation
