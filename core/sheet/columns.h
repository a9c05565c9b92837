#pragma once

#include "core/sheet/barline.h"
#include "core/sheet/notesetting.h"
#include "core/sheet/score.h"
#include "core/sheet/signatures.h"
#include "core/sheet/slurs.h"
#include "core/sheet/spacing.h"

#include <vector>

namespace sheet {

// The music of a score made ready bar by bar, before it is broken into lines.
struct SetScore {
    Score const* score = nullptr;
    MusicFont const* font = nullptr;
    using Staff = base::List<tune::BarIndex, SetBar>;
    Staff upper;
    Staff upperBelow; // the left hand on the upper staff
    Staff lower;      // empty bars on single-staff sheets
    base::List<tune::BarIndex, std::vector<music::Pitch>> tiedIntoUpper; // carried by a tie
    std::vector<SlurSpan> slurs;

    tune::Bar const& bar(tune::BarIndex index) const { return score->tune.bars[index]; }
    int count() const { return score->bars.size(); }
    base::Indices<tune::BarIndex> indices() const { return score->bars.indices(); }
    tune::BarIndex beyond() const { return score->bars.beyond(); }
};
SetScore setScore(Score const& score, MusicFont const& font);

// Whether a part or a repeat begins with this bar; endings belong to what comes before.
bool beginsPart(SetScore const& score, tune::BarIndex bar);

// Bars from `first` to before `end` on one line.
struct BarRange {
    tune::BarIndex first = 0;
    tune::BarIndex end = 0;
};

// What changes between one bar and the next, beside the bar line.
struct Change {
    std::optional<KeySign> key;
    std::optional<music::Meter> meter;
    bool any() const { return key || meter; }
};
Change changeAt(SetScore const& score, tune::BarIndex bar);
double changeWidth(Change const& change, MusicFont const& font);
void drawChange(Pen& pen, Change const& change, Clef clef, double x);

// The places of one line: a column for every moment at which something stands, one shared grid
// for both staves, and one for every bar line.
struct LineColumns {
    ColumnRow row;
    struct OfBar {
        std::vector<music::Length> moments;
        int firstColumn = 0; // of the moments
        int endColumn = 0;   // the left edge of its closing bar line
    };
    std::vector<OfBar> bars;
    double closing = 0; // width of what stands after the last column: bar line, courtesy signs
};
LineColumns lineColumns(SetScore const& score, BarRange range);

// Column of a moment of a bar: its own, or else the last one before it.
int columnOf(LineColumns::OfBar const& bar, music::Length at);

} // namespace sheet
