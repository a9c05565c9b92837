#pragma once

#include "core/files/work/unsaved.h"

#include <filesystem>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

class QLockFile;

namespace app {

inline constexpr std::string_view unsavedEnding = ".unsaved";

std::string lockOf(std::filesystem::path const& file);

// Work that a program kept and did not live to save. While one of these lives no other window
// is offered it.
struct LeftBehind {
    std::filesystem::path file;
    files::Unsaved unsaved;
    std::shared_ptr<QLockFile> claim;
};

// Those of the folder, the latest first. What cannot be read is left where it is and named in
// `unreadable`.
std::vector<LeftBehind> leftBehind(std::filesystem::path const& folder,
                                   std::vector<std::string>* unreadable = nullptr);

// It is opened, and kept again by the one that opened it, or it is thrown away.
void dropLeftBehind(LeftBehind const& left);

} // namespace app
