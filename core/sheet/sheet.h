#pragma once

#include "core/arrange/arrangement.h"
#include "core/arrange/unfold.h"
#include "core/notation/placings.h"
#include "core/perform/slowing.h"
#include "core/sheet/drawing.h"
#include "core/sheet/helps.h"
#include "core/sheet/musicfont.h"

#include <optional>
#include <string>
#include <vector>

namespace sheet {

enum class Paper { A4, Letter };

// Heights of a five-line staff. Harp music is read from further away than that of most
// instruments.
inline constexpr double usualStaffMm = 7.5;
inline constexpr double largeStaffMm = 10.5; // large print
inline constexpr double hugeStaffMm = 13;    // for beginners, and for eyes that see badly
struct PaperSize {
    double widthMm = 210; // ISO 216
    double heightMm = 297;
};
constexpr PaperSize sizeOf(Paper paper)
{
    return paper == Paper::A4 ? PaperSize{} : PaperSize{215.9, 279.4};
}

// How a sheet is made to fit its pages.
struct Fit {
    double scale = 1;    // of the staff's height
    double shapes = 1;   // of the box "Patterns used here"; 0: it is left out
    friend bool operator==(Fit const&, Fit const&) = default;
};

// Where lines and pages end, for sheets of the same bars that are to look alike: the first bar
// of every line, the first line of every page, and the size that goes with them.
struct Breaks {
    std::vector<tune::BarIndex> lines;
    std::vector<int> pages;
    Fit fit{};
};

using notation::Placings;

// What a sheet says of its place in a set.
struct PlaceInSet {
    std::string place;  // "Tune 2 of 3"
    std::string change; // what is done about the levers before it; empty: it is the first
    std::string next;   // told at its foot; empty: it is the last
};

struct SheetStyle {
    Paper paper = Paper::A4;
    double marginMm = 14;
    double staffMm = usualStaffMm;
    double mayShrinkTo = 0.88;  // of the staff's height, where that saves a page turn
    bool fingers = true;
    bool chordSymbols = true;
    bool patternLabels = true;
    Placings placings = Placings::Helpful; // brackets over fingers that are placed together
    bool shapes = true;             // the box "Patterns used here"
    std::optional<Breaks> breaks{}; // none: chosen for the sheet itself
    arrange::LastTime lastTime = arrange::LastTime::WhereItDiffers;
    Helps helps{};
    perform::Slowing slowing{};        // of the arrangement's end, where the page tells of it
    std::optional<PlaceInSet> inSet{}; // its pages bear no numbers of their own then
};

// The arrangement sheet: grand staves with title, key, meter, chord symbols, tune, left hand,
// pattern label under each position, fingers, and the lever set-up at the head.
Document arrangementSheet(arrange::Arrangement const& arrangement, MusicFont const& font,
                          SheetStyle const& style);
// Breaks with which all these arrangements of one tune fit their pages.
Breaks commonBreaks(std::vector<arrange::Arrangement> const& arrangements,
                    MusicFont const& font, SheetStyle const& style);
// The lead sheet with the pattern label under each chord.
Document patternSheet(arrange::Arrangement const& arrangement, MusicFont const& font,
                      SheetStyle const& style);
// Tune and chord symbols alone.
Document leadSheet(tune::Tune const& tune, MusicFont const& font, SheetStyle const& style);

} // namespace sheet
