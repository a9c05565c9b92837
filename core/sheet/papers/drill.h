#pragma once

#include "core/arrange/arrangement.h"
#include "core/sheet/sheet.h"

#include <string>
#include <vector>

namespace sheet {

// One shape of the left hand as it is placed, before anything is plucked.
struct DrillShape {
    music::Chord chord;
    std::vector<tune::BarIndex> bars;      // in written order
    std::vector<arrange::VoicedNote> held; // one a string, lowest first
    music::Moment at;                      // when it is first placed, in played time
    bool block = true; // the hand lies on all of it at ease; else it is only rolled
};

// The shapes of a tune in the order in which they come; one that stays is named once. A pattern
// of more notes than the hand lies on at once gives one shape for each of its placings.
std::vector<DrillShape> drillShapes(arrange::Arrangement const& arrangement);

// Steps of practice in hundredths of the goal; a step after which the hands rest is marked.
struct TempoStep {
    int percent = 100;
    bool restAfter = false;
};
std::vector<TempoStep> tempoSteps();

// A sheet to practise a tune's shapes from: its set-up, what to do, every shape on its strings
// and as notes, rolled and then together, and the steps up to the tempo.
Document drillSheet(arrange::Arrangement const& arrangement, MusicFont const& font,
                    SheetStyle const& style);

} // namespace sheet
