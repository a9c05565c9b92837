#pragma once

#include "core/proposal/proposal.h"

#include <string>
#include <string_view>
#include <vector>

namespace proposal {

// What may be done about a brief that is refused. The other string for a pitch that lies on
// two, another moment or hand for a flip, and a left hand that leaves notes out for it need no
// asking: every proposal has tried them.
enum class Help {
    OtherKey,   // the key that suits best instead of the one asked for
    OtherOctave, // notes of the tune in another octave, where their strings stand otherwise
    LeaveOut,   // notes of the tune left out
    Plain,      // accidentals dropped: the notes as the key has them
    Slower,     // another tempo to arrange for
    Level,      // the next level whose player turns levers fast enough
};

// One way out, tried: its brief is arranged, by propose().
struct Remedy {
    Help help = Help::OtherKey;
    std::string sentence; // "Leave out the C♯5 in bar 7."
    Brief brief;
};

// The remedies for a brief that propose() refuses, in the order of Help; empty when nothing of
// the kind helps. `levels`: those there are. Takes a proposal for each remedy, more where a
// tempo or level is sought.
std::vector<Remedy> remediesFor(Brief const& brief, std::vector<harp::Level> const& levels);

// The name of a kind for the command line: "key", "octave", "leave-out", "plain", "slower",
// "level".
std::string_view helpId(Help help);

} // namespace proposal
