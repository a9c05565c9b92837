#pragma once

#include "core/arrange/arrangement.h"
#include "core/sheet/musicfont.h"
#include "core/sheet/sheet.h"

#include <QString>

namespace ui {

// The kinds of paper that are made from the open arrangement.
enum class PaperKind { Arrangement, Pattern, Lead, Drill };

QString paperName(PaperKind kind);

sheet::Document paperOf(PaperKind kind, arrange::Arrangement const& arrangement,
                        sheet::MusicFont const& font, sheet::SheetStyle const& style);

} // namespace ui
