#pragma once

#include "core/base/result.h"
#include "core/learning/choice.h"

#include <string>
#include <string_view>
#include <vector>

namespace files {

// What the arranger has taken where something else was proposed, as it is kept on her machine.
struct TasteKept {
    bool on = true;                        // choices are noted, and new tunes arranged by them
    std::vector<learning::Choice> choices; // the oldest first
    friend bool operator==(TasteKept const&, TasteKept const&) = default;
};

std::string tasteText(TasteKept const& kept);

// Faults: Malformed, newerForm. Terms that this version does not judge by are passed over.
base::Result<TasteKept> readTaste(std::string_view text, std::string const& file);

} // namespace files
