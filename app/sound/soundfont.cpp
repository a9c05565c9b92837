#include "app/sound/soundfont.h"

#include "core/base/words.h"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace sound {

namespace {

// Where Debian's and other Linux packages put General MIDI fonts. The large one leads: of it no
// more is read than the harp.
constexpr std::array usualPlaces{
    "/usr/share/sounds/sf2/FluidR3_GM.sf2", "/usr/share/soundfonts/FluidR3_GM.sf2",
    "/usr/share/sounds/sf2/TimGM6mb.sf2",   "/usr/share/sounds/sf2/default-GM.sf2",
    "/usr/share/sounds/sf3/default-GM.sf3", "/usr/share/soundfonts/default.sf2",
};

bool isFile(std::filesystem::path const& path)
{
    std::error_code ignored;
    return std::filesystem::is_regular_file(path, ignored);
}

} // namespace

base::Result<std::filesystem::path> findSoundFont(std::filesystem::path const& wanted)
{
    if (!wanted.empty()) {
        if (isFile(wanted)) return wanted;
        return base::Fault{base::FaultCode::NoSoundFont, wanted.string(),
                           base::said("it is not there")};
    }
    if (char const* named = std::getenv("SALLOW_SOUNDFONT"); named && *named) {
        if (isFile(named)) return std::filesystem::path(named);
        return base::Fault{base::FaultCode::NoSoundFont, "SALLOW_SOUNDFONT", named};
    }
    for (char const* place : usualPlaces)
        if (isFile(place)) return std::filesystem::path(place);
    return base::Fault{base::FaultCode::NoSoundFont, base::said("sound"), {}};
}

std::vector<std::filesystem::path> soundFonts()
{
    std::vector<std::filesystem::path> fonts;
    std::vector<std::filesystem::path> files; // links followed
    for (char const* place : usualPlaces) {
        std::error_code failed;
        auto const file = std::filesystem::canonical(place, failed);
        if (failed || std::ranges::find(files, file) != files.end()) continue;
        files.push_back(file);
        fonts.emplace_back(place);
    }
    return fonts;
}

} // namespace sound
