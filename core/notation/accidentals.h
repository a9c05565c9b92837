#pragma once

#include "core/music/key.h"
#include "core/music/pitch.h"

#include <map>
#include <set>

namespace notation {

// Which accidentals a bar has shown on one staff. An accidental holds for its own line or space
// to the end of the bar, and not in other octaves [gould11].
class AccidentalMemory {
public:
    explicit AccidentalMemory(int signature = 0) : m_signature(signature) {}

    // Whether the pitch needs its accidental printed here; remembers it. Do not ask for a note
    // tied over the bar line: it keeps its pitch without a new sign.
    bool needs(music::Pitch pitch);

    // Whether a reader may doubt a pitch that needs no accidental: the same letter stood
    // altered in another octave of the bar. Only once.
    bool invitesDoubt(music::Pitch pitch);

    // What stands altered at the end of the bar: by diatonic step.
    std::map<int, int> altered() const;

private:
    int m_signature;
    std::map<int, int> m_alters; // by diatonic step
    std::set<int> m_doubts;      // steps that have been made sure of
};

} // namespace notation
