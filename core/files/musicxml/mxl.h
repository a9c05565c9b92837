#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace files {

// Compressed MusicXML (.mxl): a zip archive whose META-INF/container.xml names the score
// [mxml40].

bool looksZipped(std::string_view bytes);

// The archive around one score. `name` is that of the score inside, without folder or ending.
std::string mxlFile(std::string_view musicXml, std::string const& name);

// The score in an archive. Nothing is written to the disk, and no more is unpacked than a score
// can be long. `file` is named in faults: Malformed (no archive, no score in it, encrypted),
// FileTooLarge.
base::Result<std::string> scoreInMxl(std::string_view bytes, std::string const& file);

} // namespace files
