#pragma once

#include "core/collection/entry.h"

#include <optional>
#include <string_view>
#include <vector>

namespace collection {

// The first notes of a tune that is looked for, as she has them in her ear: typed, or played on
// an instrument.
struct FirstNotes {
    enum class As { Letters, Degrees, Keys };
    As as = As::Letters;
    // Letters: 0 C to 6 B; degrees: 0 the home note to 6; keys: MIDI numbers.
    std::vector<int> notes;
    friend bool operator==(FirstNotes const&, FirstNotes const&) = default;
};

// Most notes that are compared; what is typed or played beyond them changes nothing.
inline constexpr std::size_t mostFirstNotes = 16;

// Reads "g a b d", "GABd", "F# Bb", ABC such as "G2AB c2BA" (of which only the letters count),
// or degrees: "1 2 3 5", "5123" (8 is 1 again). Sharps and flats make no difference: what
// counts is how the tune goes over the strings. None where a sign is neither.
std::optional<FirstNotes> firstNotesFrom(std::string_view typed);
FirstNotes firstNotesPlayed(std::vector<int> const& midi);

// How unlike the opening of a tune is: 0 where it begins just so in the same key, a little more
// in another key, more where its pick-up or the first notes are missing on either side, where
// notes are repeated or held otherwise, or, among six or more, where one is another. None where
// it is another tune. The octave of typed notes is not known, and no rhythm is.
std::optional<int> unlikeness(FirstNotes const& wanted, TuneEntry const& entry);

} // namespace collection
