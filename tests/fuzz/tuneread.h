#pragma once

#include "core/files/abc/write.h"
#include "core/files/check.h"
#include "core/tune/playing.h"

// Whatever the bytes were, the reader came back with a tune or a fault; the tune must stand up
// to what follows.
inline int standsUp(base::Result<tune::Tune> const& tune)
{
    if (!tune) return 0;
    tune::played(*tune);
    tune::chordSpans(*tune);
    files::checkLine(*tune);
    files::abcOfTune(*tune);
    return 0;
}
