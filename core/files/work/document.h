#pragma once

#include "core/base/result.h"
#include "core/files/tables/tables.h"
#include "core/proposal/brief.h"

#include <string>
#include <string_view>

namespace files {

// A piece of work as it is kept: the lead sheet as its author wrote it, and all that the
// arranger has decided about it (harp, hand, level, style, key, tempo, passes, locks).
struct SavedWork {
    std::string abc; // the tune's own lines of ABC
    proposal::Brief brief;
};

// The text of a .sallow file: JSON, one decision a line, described in DEVELOPERS.md. Harp,
// hand, level and style are named by their ids in the tables. A tune whose notes were changed
// is written as new lines of ABC; otherwise its own are kept.
std::string documentText(SavedWork const& work, Tables const& tables);

// Reads it back. Faults: Malformed with the line; what the tables do not have; those of the
// ABC.
base::Result<SavedWork> readDocument(std::string_view text, Tables const& tables,
                                     std::string const& file);

} // namespace files
