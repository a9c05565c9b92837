#pragma once

#include "core/tune/tune.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace files {

// One step along the notes of a line: a syllable for the next note, or on to the next bar.
struct VerseStep {
    tune::Syllable syllable; // empty: the note is passed over
    bool toNextBar = false;
    friend bool operator==(VerseStep const&, VerseStep const&) = default;
};

// A line of words to sing, by the signs of ABC 2.1, section 5.1: - parts the syllables of a
// word, _ holds one for another note, * passes a note over, ~ joins two words under one note,
// \- is a hyphen that is sung over, | goes on to the next bar.
std::vector<VerseStep> verseSteps(std::string_view text);

// One step of a line of symbols (ABC 2.1, section 4.15).
struct SymbolStep {
    std::string symbol; // with its signs: "\"Am\"", "!f!"; empty: the note is passed over
    bool toNextBar = false;
    friend bool operator==(SymbolStep const&, SymbolStep const&) = default;
};
// None where the text has something else than these.
std::optional<std::vector<SymbolStep>> symbolSteps(std::string_view text);

} // namespace files
