#pragma once

#include "core/arrange/arrangement.h"
#include "ui/box.h"
#include "ui/lanenotes.h"

#include <optional>
#include <string>
#include <vector>

namespace ui {

// Where everything of the tune grid stands: a phrase is one lane of strings with bar lines
// across it. Knows nothing of painting.

// One chord of a bar: where its name stands, and the stretch of the lane it governs. Chords of
// different times through share the stretch and have names side by side.
struct LaneChord {
    arrange::PositionIndex position = 0;
    Box name;
    Box stretch;
    friend bool operator==(LaneChord const&, LaneChord const&) = default;
};

struct LaneBar {
    tune::BarIndex bar = 0;
    int lane = 0; // index into LaneLayout::lanes
    Box box;      // from bar line to bar line, the names above and below included
    std::vector<LaneChord> chords;
    friend bool operator==(LaneBar const&, LaneBar const&) = default;
};

struct PluckDot {
    double x = 0, y = 0;
    harp::Side hand = harp::Side::Right;
    bool fromTune = true;
    std::optional<arrange::PositionIndex> position; // none: the right hand's
    friend bool operator==(PluckDot const&, PluckDot const&) = default;
};

// How a string sounds on: loudness 1 where it is plucked, 0 where it has faded away.
struct Tail {
    double y = 0;
    double from = 0, to = 0;
    double loudFrom = 1, loudTo = 0;
    bool held = false; // within the counted length of the note
    harp::Side hand = harp::Side::Right;
    friend bool operator==(Tail const&, Tail const&) = default;
};

// Joins two notes of one shape.
struct Thread {
    double fromX = 0, fromY = 0, toX = 0, toY = 0;
    bool together = false; // plucked at the same moment
    friend bool operator==(Thread const&, Thread const&) = default;
};

struct Lane {
    tune::BarIndex firstBar = 0;
    tune::BarIndex lastBar = 0;
    std::string part;    // "A" where a part begins with this lane
    int timesPlayed = 1; // of that part
    Box box;             // all of it; the part's name stands left of it
    Box strings;         // what the strings cover
    std::vector<PluckDot> plucks;
    std::vector<Tail> tails;
    std::vector<Thread> threads;
    friend bool operator==(Lane const&, Lane const&) = default;
};

struct LaneSection {
    std::string part; // "A"
    tune::BarIndex firstBar = 0;
    tune::BarIndex lastBar = 0;
    int timesPlayed = 1;
};

struct LaneLayout {
    std::vector<Lane> lanes;
    base::List<tune::BarIndex, LaneBar> bars;
    harp::StringIndex lowestString = 0;  // at the foot of every lane
    harp::StringIndex highestString = 0; // at its head
    int barsPerLane = 4;
    double apart = 6;  // from string to string
    double height = 0; // of everything
};

// Sizes that follow from the font and the window.
struct LaneMeasure {
    double width = 900;
    double height = 500; // what is seen at once
    double nameHeight = 26;
    double footHeight = 22;
    double margin = 16;
    double gutter = 44;      // left of the lanes, for the names of parts
    double gap = 10;         // between lanes
    double narrowestBar = 130; // below it fewer bars stand in a lane
};

// A part begins where the tune says so; a tune that names no parts is divided at its repeats
// and double bars, with letters in order.
std::vector<LaneSection> laneSections(tune::Tune const& tune);

// `selected` decides which of several times through is drawn.
LaneLayout layOutLanes(arrange::Arrangement const& arrangement, LaneMeasure const& measure,
                       std::optional<arrange::PositionIndex> selected = std::nullopt);

// Across a bar and up a lane. A note on the first beat stands just behind the bar line.
double xAt(LaneBar const& bar, music::Length fromBarStart, music::Length barLength);
double yAt(LaneLayout const& layout, Lane const& lane, harp::StringIndex string);

LaneBar const* barOf(LaneLayout const& layout, arrange::PositionIndex position);
LaneChord const* chordOf(LaneLayout const& layout, arrange::PositionIndex position);

// The position under a point: a chord's name first; on a stretch that several times through
// share, the selected one or else the first.
std::optional<arrange::PositionIndex>
positionAt(LaneLayout const& layout, double x, double y,
           std::optional<arrange::PositionIndex> selected);
// The bar under a point, or the nearest one of the lane beside it.
std::optional<tune::BarIndex> barAt(LaneLayout const& layout, double x, double y);

enum class Step { Left, Right, Up, Down, First, Last };

// Where an arrow key leads from a position; the position itself at the edge.
arrange::PositionIndex neighbour(LaneLayout const& layout, arrange::PositionIndex position,
                                 Step step);

} // namespace ui
