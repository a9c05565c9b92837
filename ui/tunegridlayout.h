#pragma once

#include "core/arrange/arrangement.h"
#include "ui/box.h"

#include <optional>
#include <string>
#include <vector>

namespace ui {

// Where everything of the tune grid stands: parts as headed sections, bars as cards in rows,
// chords as spans of a card. Knows nothing of painting.

// One chord of a card: where its name stands, and the stretch of the drawing it governs. Chords
// of different passes share the stretch and have names side by side.
struct GridSpan {
    int position = 0; // index into Arrangement::positions
    Box name;
    Box stretch;
};

struct GridCard {
    int bar = 0; // index into Tune::bars
    int row = 0;
    Box box;
    Box drawing; // between the chord names above and the pattern names below
    std::vector<GridSpan> spans;
};

struct GridSection {
    std::string part; // "A"
    int firstBar = 0; // indices into Tune::bars
    int lastBar = 0;
    int timesPlayed = 1;
    Box heading;
};

struct GridLayout {
    std::vector<GridSection> sections;
    std::vector<GridCard> cards; // in order of bars
    int lowestStep = 0;          // diatonic steps at the foot and the head of every drawing
    int highestStep = 0;
    int barsPerRow = 4;
    double height = 0;
};

// Sizes that follow from the font.
struct GridMeasure {
    double width = 900; // of the whole grid
    double cardHeight = 128;
    double headingHeight = 30;
    double nameHeight = 26;
    double footHeight = 20;
    double margin = 16;
    double gap = 8;
    double narrowestCard = 150; // below it fewer bars stand in a row
};

// A part begins where the tune says so; a tune that names no parts is divided at its repeats
// and double bars, with letters in order.
std::vector<GridSection> gridSections(tune::Tune const& tune);

GridLayout layOutGrid(arrange::Arrangement const& arrangement, GridMeasure const& measure);

// Across and up the drawing of a card.
double xAt(GridCard const& card, music::Length fromBarStart, music::Length barLength);
double yAt(GridLayout const& layout, Box const& drawing, int step);

GridCard const* cardOf(GridLayout const& layout, int position);
GridSpan const* spanOf(GridLayout const& layout, int position);

// The position under a point: a chord's name first; on a stretch that several passes share, the
// selected one or else the first.
std::optional<int> positionAt(GridLayout const& layout, double x, double y,
                              std::optional<int> selected);

enum class Step { Left, Right, Up, Down, First, Last };

// Where an arrow key leads from a position; the position itself at the edge.
int neighbour(GridLayout const& layout, int position, Step step);

} // namespace ui
