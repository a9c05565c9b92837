#pragma once

#include "core/files/abc/read.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace files {

// What the head of a tune says of it, as it is written there: enough for a list of the tunes of
// a large book, and found without reading their notes.
struct TuneHeading {
    std::string kind;  // R:
    std::string key;   // K:, without what follows the key
    std::string meter; // M:, of the tune or else of the file
};

// For each of the entries.
std::vector<TuneHeading> tuneHeadings(std::string_view bytes,
                                      std::vector<AbcEntry> const& entries);

// Bars as a player counts them: a pick-up is none.
int barsCounted(tune::Tune const& tune);

// What only reading a tune tells.
struct TuneGlance {
    std::optional<tune::Tune> tune; // none: it cannot be read
    int bars = 0;                   // barsCounted
    bool chords = false;
    std::string unreadable; // why, for the reader
};
TuneGlance glanceAt(std::string_view bytes, AbcEntry const& entry, std::string const& file);

} // namespace files
