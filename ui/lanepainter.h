#pragma once

#include "ui/lanelayout.h"
#include "ui/palette.h"

#include <QFont>
#include <QRectF>
#include <QString>

#include <vector>

class QPainter;

namespace ui {

inline QRectF rectOf(Box const& box) { return {box.x, box.y, box.width, box.height}; }

// Where a shape has its place from: told by lines, a ring and a word, not by colour.
enum class Standing { Suggested, Kept, Followed };

// A mark where the harp cannot give a note as written.
struct LaneSnag {
    tune::BarIndex bar = 0;
    double x = 0, y = 0; // the middle of its diamond
    int snag = 0;        // which
    bool open = false;   // nobody has chosen its way yet
    friend bool operator==(LaneSnag const&, LaneSnag const&) = default;
};

struct LaneLabel {
    LaneChord chord;
    QString name;    // "D/F♯"
    QString time;    // "2×": which time through; empty where every time
    QString pattern; // "1-5-8"
    bool drawn = true;
    bool rests = false;
    Standing standing = Standing::Suggested;
    friend bool operator==(LaneLabel const&, LaneLabel const&) = default;
};

struct LaneBarFace {
    Box box;
    QString number;
    double level = 0; // how hard; 0: not known
    bool hard = false; // harder than the level that is set
    bool odd = false;  // its notes do not add up
    bool closes = false; // a part ends
    bool repeatOpens = false;
    bool repeatCloses = false;
    friend bool operator==(LaneBarFace const&, LaneBarFace const&) = default;
};

// All that is painted of one lane but what is chosen, pointed at or sounding. Two equal faces
// look the same.
struct LaneFace {
    Lane lane;
    std::vector<music::Letter> strings; // from the foot
    std::vector<LaneLabel> labels;
    std::vector<LaneBarFace> bars;
    std::vector<LaneSnag> snags;
    QString times; // "twice"
    friend bool operator==(LaneFace const&, LaneFace const&) = default;
};

struct LaneFonts {
    QFont chord;
    QFont chordPlain; // of a time through that is not drawn
    QFont pattern;
    QFont small;
    QFont part;
};

// In the coordinates of the layout, on what is there.
void paintLane(QPainter& painter, LaneFace const& face, LaneFonts const& fonts,
               Palette const& palette);

// The room a lane is painted in, the names left of it included.
Box paintedBox(Lane const& lane);

} // namespace ui
