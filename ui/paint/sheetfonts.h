#pragma once

#include "core/base/result.h"
#include "core/sheet/drawing.h"
#include "core/sheet/musicfont.h"

#include <QFont>

namespace ui {

// The fonts of the sheet: the music font is compiled in, the text faces are TeX Gyre Termes and
// Heros where installed and the nearest serif and sans elsewhere. Needs a QGuiApplication.

// The em of every font answered here, in pixels; painters scale.
inline constexpr int fontEm = 1000;

QFont musicGlyphFont();
QFont textFont(sheet::Face face);

// Metadata of the music font, for the layout. Fault: TableMalformed.
base::Result<sheet::MusicFont> musicFont();

} // namespace ui
