#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace files {

// Earlier versions of one piece of work, in a folder of its own: what was saved, and what was
// given up unsaved, the last ten.
inline constexpr int versionsKept = 10;

struct Version {
    std::filesystem::path file;
    std::string when; // as it was given
    bool saved = true; // false: it was given up without saving
};

// Adds a document. `when` is a time that sorts as a text, such as 2026-03-01T18:22:05.123; it
// names the file. A document that is the newest one already is not added again; the oldest ones
// go. Faults: CannotWrite.
base::Result<base::Done> keepVersion(std::filesystem::path const& folder, std::string when,
                                     bool saved, std::string_view document);

// The newest first. A folder that is not there holds none.
std::vector<Version> versionsIn(std::filesystem::path const& folder);

// The folder of the versions of the work that is kept under this name (a path, or a tune of a
// book): the same for the same name, another for any other.
std::filesystem::path versionsFolder(std::filesystem::path const& all, std::string_view name);

} // namespace files
