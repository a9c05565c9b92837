#pragma once

#include "app/cli/job.h"

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace app {

// One tune of a batch, and where it is saved.
struct BatchTune {
    std::shared_ptr<Book const> book;
    files::AbcEntry entry;
    std::filesystem::path file;
    std::vector<Output> outputs;
};

// All that a batch will do, found out before anything is written. The same call gives the same
// plan, so that several processes can share it.
struct BatchPlan {
    std::vector<BatchTune> tunes;
    std::vector<base::Fault> unread; // files that cannot be read
    std::vector<std::string> folders; // to save in: those of the input, mirrored
};

// Faults: BadCall where an output would replace an input, FileUnreadable or FileMissing of the
// input itself, NoTune where a folder holds nothing to read.
base::Result<BatchPlan> batchPlan(Call const& call, files::Tables const& tables);

// "book.abc, X:3, "The Narrow Bridge"".
std::string placeOf(BatchTune const& tune);

// What was decided in the call, as far as the outputs depend on it.
std::string wishesOf(Call const& call);

} // namespace app
