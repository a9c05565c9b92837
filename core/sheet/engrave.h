#pragma once

#include "core/sheet/drawing.h"
#include "core/sheet/musicfont.h"
#include "core/sheet/score.h"
#include "core/sheet/sheet.h"

namespace sheet {

// Sets a score on paper: lines, pages, heading, foot.
Document engraved(Score const& score, MusicFont const& font, SheetStyle const& style);

// Breaks that serve every one of these scores of the same bars: each bar counts as wide, and
// each line as high, as it is where it is most so.
Breaks commonBreaks(std::vector<Score> const& scores, MusicFont const& font,
                    SheetStyle const& style);

} // namespace sheet
