#pragma once

#include "app/input.h"
#include "core/collection/entry.h"
#include "core/files/tables/tables.h"

#include <functional>
#include <string>
#include <vector>

namespace app {

// What a walk through the harper's folders found.
struct Gathered {
    std::vector<collection::FileEntry> files; // of folders that are there, by their names
    // Of folders that are not there now, such as a stick that is pulled out: not listed, and
    // not read again when they are back.
    std::vector<collection::FileEntry> away;
    std::vector<std::string> troubles; // sentences: what could not be looked at or read
    int passedOver = 0;                // texts that are no tunes
    int fresh = 0;                     // files that were read now
    bool stopped = false;              // by its caller, in the middle
};

// Every tune of every file that can be opened, in the folders and the folders below them;
// hidden ones and links to folders are left out. A file that is as it was when it was `known`
// is not read again. From any thread. `goesOn` is asked before each file that is read: how many
// are done of how many; false stops it.
Gathered gathered(std::vector<std::string> const& folders,
                  std::vector<collection::FileEntry> const& known, files::Tables const& tables,
                  std::function<bool(Gathered const&, int done, int all)> const& goesOn);

// A file that is open already.
collection::FileEntry entryOfBook(std::string const& path, Book const& book);

// A sentence for each file and tune that cannot be read.
std::vector<std::string> troublesOf(std::vector<collection::FileEntry> const& files);

} // namespace app
