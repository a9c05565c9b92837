#pragma once

#include "app/exitstatus.h"
#include "app/outputnames.h"
#include "app/outputs.h"
#include "core/base/result.h"

#include <string>
#include <vector>

namespace app {

// "1-5", "2-4", "1,3,5": levels in rising order. Fault: BadCall.
base::Result<std::vector<int>> levelsFrom(std::string const& text);

// The pages of one tune at several levels. What no level could give is said on stderr. Of
// `sound` the pages tell how the end slows.
base::Result<sheet::Document> levelPages(proposal::Brief const& brief,
                                         std::vector<int> const& levels,
                                         files::Tables const& tables,
                                         sheet::SheetStyle const& style,
                                         SoundWish const& sound = {});

// One tune at several levels. Pages of all go into one file, with the same lines and pages;
// of other kinds every level gets a file of its own, "-level3" before the ending. `names` are
// those of the call.
base::Result<base::Done> writeLevels(proposal::Brief const& brief, std::string const& abc,
                                     std::vector<int> const& levels,
                                     files::Tables const& tables,
                                     std::vector<Output> const& outputs, SheetKind kind,
                                     sheet::SheetStyle const& style, OutputNames& names,
                                     SoundWish const& sound = {});

} // namespace app
