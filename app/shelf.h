#pragma once

#include "app/options.h"
#include "core/base/result.h"
#include "core/files/tables/tables.h"

#include <filesystem>

namespace app {

// Where the user's own harps are kept: harps.json in SALLOW_USER, or in the user's folder for
// data of programs.
std::filesystem::path ownHarpsFile();

// The program's tables with the user's own harps. A book of harps that cannot be read is told
// on stderr and left out.
base::Result<files::Tables> openShelf();

// The same with the harps of --harp-file, which is refused when it cannot be read.
base::Result<files::Tables> openShelf(ArrangeOptions const& options);

// Adds a harp to the user's own, or changes it there. Faults: CannotWrite; Malformed for a book
// that is there but cannot be read, which is left as it is.
base::Result<base::Done> keepHarp(harp::HarpModel const& harp);

} // namespace app
