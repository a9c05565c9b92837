#pragma once

#include "core/files/abc/fields.h"
#include "core/files/abc/scan.h"

#include <map>
#include <optional>

namespace files {

// How far an accidental reaches inside its bar: to the same letter in every octave (the default
// of ABC 2.1, section 11.3), to its own octave only, or to its note alone.
enum class Propagation { EveryOctave, OwnOctave, NoteOnly };

// Works out what written notes sound: the key's signature, the accidentals of the bar so far,
// and a tie that carries its accidental over the bar line.
class AbcPitches {
public:
    void setKey(AbcKey const& key);
    void setVoiceOctave(int octaves) { m_voiceOctave = octaves; }
    void setPropagation(Propagation reach) { m_reach = reach; }
    void beginBar() { m_inBar.clear(); }

    // None when the pitch lies beyond the keys of MIDI (C-1 to G9).
    std::optional<music::Pitch> pitchOf(sign::Note const& note,
                                        std::vector<music::Pitch> const& tiedOver);

private:
    int place(sign::Note const& note) const;

    AbcKey m_key;
    int m_voiceOctave = 0;
    Propagation m_reach = Propagation::EveryOctave;
    std::map<int, int> m_inBar; // alteration by letter, or by letter and octave
};

} // namespace files
