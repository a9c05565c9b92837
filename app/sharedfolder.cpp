#include "app/sharedfolder.h"

#include <cstdlib>

namespace app {

std::filesystem::path sharedFolder()
{
    namespace fs = std::filesystem;
    if (char const* named = std::getenv("SALLOW_SHARED")) return named;
    std::error_code failed;
    fs::path const program = fs::read_symlink("/proc/self/exe", failed);
    if (!failed) {
        fs::path const installed = program.parent_path() / ".." / "share" / "sallow";
        if (fs::is_directory(installed, failed)) return fs::weakly_canonical(installed);
    }
    return SALLOW_SHARED_OF_CHECKOUT;
}

} // namespace app
