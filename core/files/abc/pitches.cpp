#include "core/files/abc/pitches.h"

namespace files {

void AbcPitches::setKey(AbcKey const& key)
{
    m_key = key;
    m_inBar.clear();
}

int AbcPitches::place(sign::Note const& note) const
{
    return index(note.letter) + (m_reach == Propagation::OwnOctave ? 7 * note.octave : 0);
}

std::optional<music::Pitch> AbcPitches::pitchOf(sign::Note const& note,
                                                std::vector<music::Pitch> const& tiedOver)
{
    constexpr int farthestOctave = 12; // keeps the arithmetic small; MIDI ends long before
    constexpr int highestKey = 127;
    if (note.octave < -farthestOctave || note.octave > farthestOctave) return std::nullopt;
    music::Pitch pitch{note.letter, m_key.alter[static_cast<std::size_t>(index(note.letter))],
                       note.octave + m_key.octave + m_voiceOctave};
    if (note.accidental) {
        pitch.alter = *note.accidental;
        if (m_reach != Propagation::NoteOnly) m_inBar[place(note)] = pitch.alter;
    } else if (auto const found = m_inBar.find(place(note)); found != m_inBar.end()) {
        pitch.alter = found->second;
    } else {
        for (music::Pitch const& tied : tiedOver)
            if (tied.letter == pitch.letter && tied.octave == pitch.octave) pitch = tied;
    }
    int const key = midi(pitch);
    return key >= 0 && key <= highestKey ? std::optional(pitch) : std::nullopt;
}

} // namespace files
