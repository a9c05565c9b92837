#pragma once

#include "core/tune/edit/notes.h"
#include "ui/box.h"

#include <optional>
#include <vector>

namespace ui {

// Where everything stands on the lane on which notes are changed: the bar with the caret wide,
// its neighbours narrow, a line for every string between the lowest and highest note. Knows
// nothing of painting.

struct MelodyBar {
    tune::BarIndex bar = 0;
    Box box;     // from bar line to bar line
    friend bool operator==(MelodyBar const&, MelodyBar const&) = default;
};

struct MelodyNote {
    tune::NoteAt at;
    bool rest = false;
    double from = 0; // across
    double to = 0;
    std::vector<int> steps; // of its pitches, as music::diatonicStep counts
};

struct MelodyLayout {
    std::vector<MelodyBar> bars;
    std::vector<MelodyNote> notes;
    Box strings; // what the lines cover
    int lowestStep = 0;
    int highestStep = 0;
    double caret = 0; // across
};

MelodyLayout layOutMelody(tune::Tune const& tune, tune::NoteAt caret, double width,
                          double height);

double yOf(MelodyLayout const& layout, int step);

// The note, rest or end of a bar nearest to a point; none outside of the bars.
std::optional<tune::NoteAt> melodyPlaceAt(MelodyLayout const& layout, double x);

} // namespace ui
