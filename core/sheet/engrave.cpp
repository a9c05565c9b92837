#include "core/sheet/engrave.h"

#include "core/sheet/breaks.h"
#include "core/sheet/geometry.h"
#include "core/sheet/heading.h"
#include "core/sheet/pages.h"
#include "core/sheet/system.h"

#include <algorithm>

namespace sheet {

namespace {

struct PaperSize {
    double widthMm = 210; // ISO 216
    double heightMm = 297;
};
PaperSize sizeOf(Paper paper)
{
    return paper == Paper::A4 ? PaperSize{} : PaperSize{215.9, 279.4};
}

// Tightest spacing at which notes still read as evenly spaced.
constexpr double tightest = 0.55;
// Airs and songs breathe: four bars a line is a weaker wish there.
constexpr double dancePreference = 1;

struct Sheet {
    SetScore set;
    double widthSpaces = 0;
    double heightSpaces = 0;
};

std::vector<BarWidth> barWidths(SetScore const& score)
{
    std::vector<BarWidth> out;
    for (int i = 0; i < score.count(); ++i) {
        LineColumns const columns = lineColumns(score, {i, i + 1});
        tune::Bar const& bar = score.bar(i);
        double const around = columns.closing + geometry::afterBarLine;
        bool const part =
            i > 0 && (!bar.part.empty() || bar.repeatOpens || score.bar(i - 1).repeatCloses);
        out.push_back(
            {widthAt(columns.row, 1) + around, widthAt(columns.row, tightest) + around,
             std::min(1.0, bar.length / music::barLength(bar.meter) == music::Rational(0)
                               ? 1.0
                               : (bar.length / music::barLength(bar.meter)).toDouble()),
             part && bar.endings.empty()});
    }
    return out;
}

std::vector<System> systemsOf(SetScore const& score, double width)
{
    std::vector<int> const starts =
        lineStarts(barWidths(score),
                   {width, headWidth(score, 0), headWidth(score, 1), 4, dancePreference});
    std::vector<System> out;
    double stretchBefore = 1;
    for (std::size_t i = 0; i < starts.size(); ++i) {
        bool const last = i + 1 == starts.size();
        BarRange const range{starts[i], last ? score.count() : starts[i + 1]};
        double const stretch = systemStretch(score, range, width);
        double const most =
            last ? std::max(stretchBefore, 1.0) * geometry::longestStretch : stretch + 1;
        out.push_back(
            system(score, range, width, last && stretch > most ? stretchBefore : most));
        stretchBefore = stretch;
    }
    return out;
}

} // namespace

Document engraved(Score const& score, MusicFont const& font, SheetStyle const& style)
{
    double const space = style.staffMm / 4;
    PaperSize const paper = sizeOf(style.paper);
    double const width = (paper.widthMm - 2 * style.marginMm) / space;
    double const height = (paper.heightMm - 2 * style.marginMm) / space;
    Point const corner{style.marginMm, style.marginMm};

    SetScore const set = setScore(score, font);
    std::vector<System> const systems = systemsOf(set, width);

    Pen heading(font);
    double const headingFoot = drawHeading(heading, score, width);
    Pen running(font);
    double const runningFoot = drawRunningHead(running, score, 2, width);
    Pen foot(font);
    double const footHeight = drawFoot(foot, score, width) + 1.0;

    std::vector<SystemHeight> heights;
    for (System const& system : systems)
        heights.push_back({system.bottom - system.top, system.beginsPart});
    constexpr double afterHeading = 1.8;
    PageRoom const room{height - headingFoot - afterHeading,
                        height - runningFoot - afterHeading, footHeight,
                        geometry::leastSystemGap};
    std::vector<int> const starts = pageStarts(heights, room);

    Document document;
    document.title = score.tune.title;
    document.author = score.tune.composer;
    for (std::size_t p = 0; p < starts.size(); ++p) {
        std::size_t const first = static_cast<std::size_t>(starts[p]);
        bool const last = p + 1 == starts.size();
        std::size_t const end = last ? systems.size() : static_cast<std::size_t>(starts[p + 1]);
        Page page{paper.widthMm, paper.heightMm, {}, {}};
        auto const add = [&](Pen const& pen, Point at) {
            for (Mark& mark : pen.marksAt(at, space)) page.marks.push_back(std::move(mark));
        };
        if (p == 0) {
            add(heading, corner);
        } else {
            Pen head(font);
            drawRunningHead(head, score, static_cast<int>(p) + 1, width);
            add(head, corner);
        }
        double const top = (p == 0 ? headingFoot : runningFoot) + afterHeading;
        double used = 0;
        for (std::size_t s = first; s < end; ++s) used += heights[s].height;
        double const available = height - top - (last ? footHeight : 0);
        double const gaps = static_cast<double>(end - first) - 1;
        double const gap = gaps > 0
                               ? std::clamp((available - used) / gaps, geometry::leastSystemGap,
                                            geometry::widestSystemGap)
                               : 0;
        double y = top;
        std::vector<Area> positions;
        for (std::size_t s = first; s < end; ++s) {
            System const& system = systems[s];
            Point const origin{corner.x, corner.y + (y - system.top) * space};
            add(system.pen, origin);
            for (Area area : system.areas) {
                area.topLeft = {origin.x + area.topLeft.x * space,
                                origin.y + area.topLeft.y * space};
                area.bottomRight = {origin.x + area.bottomRight.x * space,
                                    origin.y + area.bottomRight.y * space};
                (area.position ? positions : page.areas).push_back(area);
            }
            y += heights[s].height + gap;
        }
        page.areas.insert(page.areas.end(), positions.begin(), positions.end());
        if (last) add(foot, {corner.x, corner.y + (height - 0.3) * space});
        document.pages.push_back(std::move(page));
    }
    return document;
}

} // namespace sheet
