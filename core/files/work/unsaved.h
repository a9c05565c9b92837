#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace files {

// Work that is not saved yet, as it is kept aside for the case that the program or the machine
// stops: the document itself, and what the arranger needs to know it again.
struct Unsaved {
    std::string title;
    std::string file;               // the .sallow file it was saved under; empty: none yet
    std::string source;             // the file the tune came from
    std::string changed;            // when, ISO 8601
    std::vector<std::string> steps; // what was done since it was last saved, in words
    std::string document;           // see document.h
    friend bool operator==(Unsaved const&, Unsaved const&) = default;
};

std::string unsavedText(Unsaved const& unsaved);

// Faults: Malformed, newerForm. The document in it is not looked at.
base::Result<Unsaved> readUnsaved(std::string_view text, std::string const& file);

} // namespace files
