#pragma once

#include "core/sheet/drawing.h"
#include "core/sheet/musicfont.h"
#include "core/sheet/sheet.h"

#include <string>

namespace sheet {

// A page that says in the middle why it is empty: what comes next lies open on two.
Page emptyPage(std::string const& next, SheetStyle const& style, MusicFont const& font);

} // namespace sheet
