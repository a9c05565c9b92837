#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

namespace files {

// No tunebook comes near this size; what is larger is no text that we can use.
inline constexpr std::uintmax_t largestTextFile = std::uintmax_t{16} << 20; // bytes

// The bytes of a file. Faults, with the path as place: FileMissing, FileUnreadable (a folder,
// too), FileEmpty, FileTooLarge.
base::Result<std::string> readTextFile(std::filesystem::path const& path);

// Puts the bytes under this name, whole or not at all: they are written beside it first and
// then take its place. A file that nobody may write to is refused, and a link stays a link. On
// failure what was there stays and nothing else is left. Fault: CannotWrite.
base::Result<base::Done> writeWhole(std::filesystem::path const& path, std::string_view bytes);

} // namespace files
