#pragma once

#include "core/sheet/drawing.h"
#include "core/sheet/score.h"
#include "core/sheet/sheet.h"

#include <string>
#include <vector>

namespace sheet {

// Pages that are filled from the top with pieces of any kind: headings, pictures, lines of
// music. Measures in spaces of the style's staff.
class Papers {
public:
    Papers(MusicFont const& font, SheetStyle const& style);

    MusicFont const& font() const { return m_font; }
    double width() const { return m_width; } // between the margins
    double room() const;                     // left on this page, above its foot

    // What stands at the foot of every page, its last line at y = 0. Before the first page.
    void setFoot(Pen foot, double height);

    // At the head of every page after the first, with its number.
    void setRunningTitle(std::string title) { m_runningTitle = std::move(title); }

    void newPage();
    // The next piece, drawn from y = 0 downwards, so far below the one before; on a new page
    // where this one has no room for it and for what is to stand `with` it.
    void add(Pen const& piece, double height, double gap, double with = 0);

    Document document(std::string title, std::string author) &&;

private:
    MusicFont const& m_font;
    double m_space; // mm
    PaperSize m_paper;
    double m_marginMm;
    double m_width;
    double m_height;
    std::string m_runningTitle;
    Pen m_foot;
    double m_footHeight = 0;
    double m_y = 0;
    bool m_fresh = true; // nothing stands on the page yet
    std::vector<Page> m_pages;
};

// A line of music as a piece: drawn from y = 0 at its highest point.
struct MusicLine {
    Pen pen;
    double height = 0;
    std::vector<Area> areas; // of its bars, in the same measure
};

// The bars of a score, so many to a line, each line as wide as asked unless the last has too
// few bars for it.
std::vector<MusicLine> musicLines(Score const& score, MusicFont const& font, double width,
                                  int barsToALine);

// Staves to be written on, without clefs. Answers the height.
double drawEmptyStaves(Pen& pen, int count, double gap, double width);

} // namespace sheet
