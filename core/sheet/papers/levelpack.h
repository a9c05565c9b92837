#pragma once

#include "core/arrange/arrangement.h"
#include "core/sheet/sheet.h"

#include <vector>

namespace sheet {

// One tune arranged for several levels, one sheet after the other with the same bars, lines and
// pages, so that a mixed class plays together [trade-6]; but where they take fewer pages by
// themselves, as they do so. All have the same bars and key. Sheets of two pages lie open on
// facing ones.
Document levelPack(std::vector<arrange::Arrangement> const& levels, MusicFont const& font,
                   SheetStyle const& style);

} // namespace sheet
