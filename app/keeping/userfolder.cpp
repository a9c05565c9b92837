#include "app/keeping/userfolder.h"

#include <cstdlib>
#include <optional>

namespace app {

namespace fs = std::filesystem;

namespace {

std::optional<fs::path> folderFrom(char const* variable)
{
    char const* const value = std::getenv(variable);
    if (!value || !*value) return std::nullopt;
    return fs::path(value);
}

} // namespace

fs::path userFolder()
{
    if (auto const own = folderFrom("SALLOW_USER")) return *own;
    if (auto const data = folderFrom("XDG_DATA_HOME")) return *data / "sallow";
    if (auto const home = folderFrom("HOME")) return *home / ".local" / "share" / "sallow";
    return "sallow";
}

} // namespace app
