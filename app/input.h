#pragma once

#include "core/base/result.h"
#include "core/files/abc.h"
#include "core/tune/tune.h"

#include <string>
#include <vector>

namespace app {

// A tunebook as it was opened: its text and where its tunes lie.
struct Book {
    std::string name; // as the user gave it; "standard input" for -
    std::string text;
    std::vector<files::AbcEntry> entries;
};

// Opens an ABC file, or standard input for "-". Faults: those of reading, UnknownFileKind.
base::Result<Book> openBook(std::string const& file);

// The tunes asked for: "first", "all", an X: number, or else a place in the book counted
// from 1. Fault: NoSuchTune.
base::Result<std::vector<files::AbcEntry>> chosenTunes(Book const& book,
                                                       std::string const& which);

base::Result<tune::Tune> readTune(Book const& book, files::AbcEntry const& entry);

} // namespace app
