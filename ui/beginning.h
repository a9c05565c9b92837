#pragma once

#include "core/tune/tune.h"

#include <QPixmap>

namespace ui {

// The first bars of a tune as they are printed, without heading, in this room (pixels of a
// screen of this ratio). Null where the music font is not there.
QPixmap beginningOf(tune::Tune tune, int width, int height, double ratio);

} // namespace ui
