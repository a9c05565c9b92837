#pragma once

#include "core/notation/notation.h"
#include "core/perform/tuneset.h"
#include "core/sheet/sheet.h"

namespace sheet {

// A set as one paper. Its first page has the set's title and the order of its tunes with keys,
// levers and pages; then come the sheets of the tunes, of the kind asked for. Each has what is
// flipped before it boxed at its head, and at its foot the tune that comes next. The pages are
// counted through; a tune of two pages lies open on two facing ones, for which a page may be
// left empty. Each tune is a bookmark, its parts below it.
Document setPaper(perform::PlayedSet const& set, notation::Kind kind, MusicFont const& font,
                  SheetStyle const& style);

} // namespace sheet
