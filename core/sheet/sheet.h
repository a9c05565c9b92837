#pragma once

#include "core/arrange/arrangement.h"
#include "core/sheet/drawing.h"
#include "core/sheet/musicfont.h"

#include <string>

namespace sheet {

enum class Paper { A4, Letter };

struct SheetStyle {
    Paper paper = Paper::A4;
    double marginMm = 14;
    double staffMm = 7.5; // height of a five-line staff; harp music is read from further away
    bool fingers = true;
    bool chordSymbols = true;
    bool patternLabels = true;
    bool placings = true; // brackets over fingers that are placed together
};

// The arrangement sheet: grand staves with title, key, meter, chord symbols, tune, left hand,
// pattern label under each position, fingers, and the lever set-up at the head.
Document arrangementSheet(arrange::Arrangement const& arrangement, MusicFont const& font,
                          SheetStyle const& style);
// The lead sheet with the pattern label under each chord.
Document patternSheet(arrange::Arrangement const& arrangement, MusicFont const& font,
                      SheetStyle const& style);
// Tune and chord symbols alone.
Document leadSheet(tune::Tune const& tune, MusicFont const& font, SheetStyle const& style);

} // namespace sheet
