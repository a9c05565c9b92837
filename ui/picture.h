#pragma once

#include "core/files/tables/tables.h"

#include <QImage>
#include <QSize>

namespace ui {

class Session;

// What `sallow picture` can show: the tune grid or the string bank alone, or the whole
// workbench with the grid or with the sheet.
enum class Scene { Grid, Sheet, Bank, Workbench };

// The picture at its size in device-independent pixels, `scale` device pixels to each. The
// program must be dressed before; it needs no display.
QImage picture(Session& session, files::Tables const& tables, Scene scene, QSize size,
               double scale = 1);

} // namespace ui
