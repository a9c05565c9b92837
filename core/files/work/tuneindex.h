#pragma once

#include "core/base/result.h"
#include "core/collection/listing.h"

#include <string>
#include <string_view>
#include <vector>

namespace files {

// What is known of the harper's tunes, as it is kept: a line for each file and each tune, which
// only saves reading the files again. Its first line has the version of the form, its last how
// many lines there are.
std::string tuneIndexText(std::vector<collection::FileEntry> const& files);

// Faults: Malformed, with the line, where anything is not as it was written; FileUnreadable
// where a newer program wrote it. Such an index is of no use, and nothing is lost with it.
base::Result<std::vector<collection::FileEntry>> readTuneIndex(std::string_view text,
                                                               std::string const& file);

// The folders that she has named and what she has done with her tunes, which nothing but this
// file knows.
struct TunesKept {
    std::vector<std::string> folders;
    collection::Uses uses;
    friend bool operator==(TunesKept const&, TunesKept const&) = default;
};

std::string tunesText(TunesKept const& kept);
// Faults: Malformed, newerForm.
base::Result<TunesKept> readTunes(std::string_view text, std::string const& file);

} // namespace files
