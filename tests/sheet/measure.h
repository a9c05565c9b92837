#pragma once

#include "core/files/tables/tables.h"
#include "core/files/textfile.h"
#include "tests/places.h"
#include "tests/sheet/boxes.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <optional>
#include <string>

namespace measure {

// The music font's metadata where it has been fetched; says so where not.
inline std::optional<sheet::MusicFont> musicFont()
{
    std::string const path = places::musicFont() + "/metadata.json";
    if (!std::filesystem::exists(path)) {
        WARN("SKIPPED: the music font is not there (npm ci in packaging/)");
        return std::nullopt;
    }
    return files::musicFontFrom(*files::readTextFile(path)).value();
}

} // namespace measure
