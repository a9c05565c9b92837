#include "core/sheet/engrave.h"

#include "core/base/words.h"
#include "core/sheet/breaks.h"
#include "core/sheet/geometry.h"
#include "core/sheet/heading.h"
#include "core/sheet/pages.h"
#include "core/sheet/system.h"
#include "core/sheet/words.h"

#include <algorithm>
#include <deque>
#include <optional>
#include <utility>

namespace sheet {

namespace {

// Tightest stretch at which notes still read as evenly spaced.
constexpr double tightest = 0.55;
constexpr double barsToALine = 4; // of dances [trade-6]
constexpr double afterHeading = 1.8;
constexpr double beforeFoot = 2.0;

// How much of a full bar it is; a bar that is too long counts as one. Bars of a second or later
// ending stand for those of the first, and hardly count.
double shareOfBar(tune::Bar const& bar, bool laterEnding)
{
    if (laterEnding) return 0.15;
    return std::min(1.0, (bar.length / music::barLength(bar.meter)).toDouble());
}

bool beginsLine(SetScore const& score, tune::BarIndex bar)
{
    return bar > 0 && (beginsPart(score, bar) || changeAt(score, bar).key);
}

BarWidths barWidths(SetScore const& score)
{
    BarWidths out;
    bool laterEnding = false;
    double inPart = 0;
    for (tune::BarIndex const i : score.indices()) {
        tune::Bar const& bar = score.bar(i);
        if (!bar.endings.empty()) laterEnding = bar.endings.front() > 1;
        LineColumns const columns = lineColumns(score, {i, i + 1});
        double const around = columns.closing + geometry::afterBarLine;
        double const share = shareOfBar(bar, laterEnding);
        if (beginsLine(score, i)) inPart = 0;
        out.push_back({widthAt(columns.row, 1) + around,
                       widthAt(columns.row, tightest) + around, share, beginsLine(score, i),
                       inPart});
        if (!laterEnding) inPart += share;
        if (bar.endingCloses) laterEnding = false;
    }
    return out;
}

LineRoom roomFor(SetScore const& score, double width)
{
    double const laterHead = headWidth(score, std::min(tune::BarIndex(1), score.beyond() - 1));
    return {width, headWidth(score, 0), laterHead, barsToALine, 1};
}

// Every line fills the width but a last one that is too short for it; that one is spaced like
// the line before.
std::vector<System> systemsOf(SetScore const& score, double width,
                              std::vector<tune::BarIndex> const& starts)
{
    std::vector<System> out;
    double before = 1;
    for (std::size_t i = 0; i < starts.size(); ++i) {
        bool const last = i + 1 == starts.size();
        BarRange const range{starts[i], last ? score.beyond() : starts[i + 1]};
        double const stretch = systemStretch(score, range, width);
        double const usual = std::max(before, 1.0);
        bool const tooShort = last && stretch > usual * geometry::longestStretch;
        out.push_back(system(score, range, width, tooShort ? usual : stretch));
        before = stretch;
    }
    return out;
}

// Verses under the music, a few lines to a block so that they may turn the page between them.
std::vector<System> wordsBelow(Score const& score, MusicFont const& font, double width)
{
    constexpr std::size_t linesToBlock = 8;
    constexpr double indent = 6;
    std::vector<System> out;
    std::vector<std::string> const& lines = score.wordsBelow;
    for (std::size_t first = 0; first < lines.size(); first += linesToBlock) {
        Pen pen(font);
        double y = geometry::verseHeight;
        for (std::size_t i = first; i < std::min(first + linesToBlock, lines.size()); ++i) {
            double const needed = widthOf(lines[i], Face::Roman, geometry::verseHeight);
            double const room = width - 2 * indent;
            pen.words(lines[i], {indent, y},
                      geometry::verseHeight * std::min(1.0, room / std::max(needed, 1.0)),
                      Face::Roman);
            y += 1.35 * geometry::verseHeight;
        }
        out.push_back({std::move(pen), 0, y - geometry::verseHeight, {}, {}, false, true, ""});
    }
    return out;
}

// Lays systems on pages.
class Paging {
public:
    Paging(Score const& score, MusicFont const& font, SheetStyle const& style, Fit fit)
        : m_score(score), m_font(font), m_space(fit.scale * style.staffMm / 4),
          m_paper(sizeOf(style.paper)), m_corner{style.marginMm, style.marginMm},
          m_width((m_paper.widthMm - 2 * style.marginMm) / m_space),
          m_height((m_paper.heightMm - 2 * style.marginMm) / m_space), m_heading(font),
          m_foot(font)
    {
        m_headingHeight = drawHeading(m_heading, score, m_width) + afterHeading;
        Pen running(font);
        m_runningHeight =
            drawRunningHead(running, score, base::say("{} of {}", 2, 2), m_width) +
            afterHeading;
        m_footHeight = drawFoot(m_foot, score, m_width, fit.shapes) + beforeFoot;
    }

    double width() const { return m_width; }

    Document document(std::vector<System> const& systems, std::vector<int> const& starts) const
    {
        tune::Tune const& tune = m_score.tune;
        Document out{
            tune.title, tune.arranger.empty() ? tune.composer : tune.arranger, {}, {}};
        for (std::size_t p = 0; p < starts.size(); ++p) {
            bool const last = p + 1 == starts.size();
            auto const from = systems.begin() + starts[p];
            auto const to = last ? systems.end() : systems.begin() + starts[p + 1];
            addPage(out, {from, to}, starts.size());
        }
        if (starts.size() > 1) out.opening = Opening::InPairs;
        return out;
    }

    static std::vector<SystemHeight> heights(std::vector<System> const& systems)
    {
        std::vector<SystemHeight> out;
        for (System const& system : systems)
            out.push_back({system.bottom - system.top, system.beginsPart, system.easyTurn});
        return out;
    }

    PageRoom room() const
    {
        return {m_height - m_headingHeight, m_height - m_runningHeight, m_footHeight,
                geometry::leastSystemGap};
    }

private:
    // White left over is shared out between the systems, up to a limit.
    double gapBetween(std::vector<System> const& systems, double available, bool last) const
    {
        double used = 0;
        for (System const& system : systems) used += system.bottom - system.top;
        double const gaps = static_cast<double>(systems.size()) - 1;
        double const widest = last ? geometry::widestSystemGap : geometry::widestGapOnFullPage;
        if (gaps < 1) return 0;
        return std::clamp((available - used) / gaps, geometry::leastSystemGap, widest);
    }

    void addPage(Document& document, std::vector<System> const& systems,
                 std::size_t pages) const
    {
        std::size_t const number = document.pages.size() + 1;
        bool const last = number == pages;
        Page out{m_paper.widthMm, m_paper.heightMm, {}, {}};
        double y = number == 1 ? m_headingHeight : m_runningHeight;
        double const gap = gapBetween(systems, m_height - y - (last ? m_footHeight : 0), last);
        addHead(out, number, pages);
        for (System const& system : systems) {
            add(out, system.pen, y - system.top);
            addAreas(out, system.areas, y - system.top);
            if (!system.part.empty())
                document.bookmarks.push_back(
                    {system.part, static_cast<int>(number) - 1, m_corner.y + y * m_space});
            y += system.bottom - system.top + gap;
        }
        if (last) add(out, m_foot, m_height - 0.3);
        std::stable_partition(out.areas.begin(), out.areas.end(),
                              [](Area const& area) { return !area.position; });
        document.pages.push_back(std::move(out));
    }

    void addHead(Page& page, std::size_t number, std::size_t pages) const
    {
        bool const inSet = !m_score.place.empty(); // numbered by the set
        if (number == 1) add(page, m_heading, 0);
        if (pages == 1 && !inSet) return;
        Score named;
        if (number > 1) named.tune.title = m_score.tune.title;
        if (number == 1 && inSet) named.tune.title = m_score.place;
        Pen head(m_font);
        drawRunningHead(head, named,
                        inSet ? std::string() : base::say("{} of {}", number, pages),
                        m_width);
        add(page, head, 0);
    }

    void add(Page& page, Pen const& pen, double y) const
    {
        for (Mark& mark : pen.marksAt({m_corner.x, m_corner.y + y * m_space}, m_space))
            page.marks.push_back(std::move(mark));
    }

    void addAreas(Page& page, std::vector<Area> const& areas, double y) const
    {
        auto const onPage = [&](Point p) {
            return Point{m_corner.x + p.x * m_space, m_corner.y + (y + p.y) * m_space};
        };
        for (Area area : areas) {
            area.topLeft = onPage(area.topLeft);
            area.bottomRight = onPage(area.bottomRight);
            page.areas.push_back(area);
        }
    }

    Score const& m_score;
    MusicFont const& m_font;
    double m_space; // mm
    PaperSize m_paper;
    Point m_corner; // of the margins, mm
    double m_width; // between the margins, in spaces
    double m_height;
    Pen m_heading;
    Pen m_foot;
    double m_headingHeight = 0;
    double m_runningHeight = 0;
    double m_footHeight = 0;
};

// The lines of a sheet in one size.
struct Lined {
    double scale = 1;
    std::vector<tune::BarIndex> starts;
    std::vector<System> systems;
    int offPhrase = 0;
};

// A division into lines and pages for one fit, and what speaks against it.
struct Divided {
    Fit fit;
    std::vector<int> pages;
    double cost = 0;
};

// What speaks against a division beside its size.
struct Flaws {
    bool loneLast = false; // one system on the last page
    int offPhrase = 0;     // lines that begin inside a phrase
    int hardTurns = 0;     // pages that are turned while both hands play
};

// Fewest pages come first; then no lone system on the last, turns where a hand is free, lines
// that follow the phrases, the usual size, and the box of shapes.
double costOf(Fit fit, std::size_t pages, Flaws flaws)
{
    constexpr double onePage = 1000;
    constexpr double loneSystem = 600;
    constexpr double hardTurn = 60;    // more than all that a size can cost
    constexpr double offPhraseLine = 40;
    constexpr double scale = 400;      // a tenth smaller: a line off its phrase
    constexpr double smallShapes = 25; // less than a size that is an eighth smaller
    constexpr double noShapes = 120;   // and this is more
    return onePage * static_cast<double>(pages) + (flaws.loneLast ? loneSystem : 0) +
           hardTurn * flaws.hardTurns + offPhraseLine * flaws.offPhrase +
           scale * (1 - fit.scale) +
           (fit.shapes >= 1  ? 0
            : fit.shapes > 0 ? smallShapes
                             : noShapes);
}

// The systems on pages.
Divided paged(Fit fit, std::vector<SystemHeight> const& systems, PageRoom const& room,
              int offPhrase)
{
    std::vector<int> pages = pageStarts(systems, room);
    Flaws flaws{false, offPhrase, hardTurns(systems, pages)};
    flaws.loneLast =
        pages.size() > 1 && pages.back() + 1 == static_cast<int>(systems.size());
    double const cost = costOf(fit, pages.size(), flaws);
    return {fit, std::move(pages), cost};
}

// From the usual size down, the box of shapes first as it is, then smaller, then gone.
std::vector<Fit> fits(SheetStyle const& style, bool shapes)
{
    std::vector<Fit> out;
    double const least = std::min(style.mayShrinkTo, 1.0);
    for (double box : {1.0, 0.8, 0.0})
        for (int step = 0; step <= 3; ++step) {
            if (step > 0 && least == 1) break;
            out.push_back({1 - (1 - least) * step / 3, box});
        }
    if (!shapes) std::erase_if(out, [](Fit fit) { return fit.shapes != 1; });
    return out;
}

// The cheapest of these divisions. The last, which has most room, tells how few pages there can
// be; those that cannot be cheaper even so are not tried.
template <class Divide>
Divided bestOf(std::vector<Fit> const& fits, Divide divide)
{
    Divided best = divide(fits.front());
    if (fits.size() == 1) return best;
    std::size_t fewest = 1;
    if (best.pages.size() > 1) {
        Divided roomiest = divide(fits.back());
        fewest = roomiest.pages.size();
        if (roomiest.cost < best.cost) best = std::move(roomiest);
    }
    for (Fit fit : fits) {
        if (costOf(fit, fewest, {}) >= best.cost) continue;
        Divided next = divide(fit);
        if (next.cost < best.cost) best = std::move(next);
    }
    return best;
}

void addWordsBelow(std::vector<System>& systems, Score const& score, MusicFont const& font,
                   double width)
{
    for (System& words : wordsBelow(score, font, width)) systems.push_back(std::move(words));
}

// The lines of each size, made once: they do not depend on the box of shapes.
class LinesBySize {
public:
    LinesBySize(SetScore const& set, SheetStyle const& style)
        : m_set(set), m_style(style), m_bars(barWidths(set))
    {}

    Lined const& at(Fit fit)
    {
        for (Lined const& made : m_made)
            if (made.scale == fit.scale) return made;
        double const width = Paging(*m_set.score, *m_set.font, m_style, fit).width();
        Lined out{fit.scale, {}, {}, 0};
        out.starts =
            m_style.breaks ? m_style.breaks->lines : lineStarts(m_bars, roomFor(m_set, width));
        out.systems = systemsOf(m_set, width, out.starts);
        addWordsBelow(out.systems, *m_set.score, *m_set.font, width);
        out.offPhrase = linesOffPhrase(m_bars, out.starts);
        return m_made.emplace_back(std::move(out));
    }

private:
    SetScore const& m_set;
    SheetStyle const& m_style;
    BarWidths m_bars;
    std::deque<Lined> m_made;
};

} // namespace

Document engraved(Score const& score, MusicFont const& font, SheetStyle const& style)
{
    SetScore const set = setScore(score, font);
    LinesBySize lines(set, style);
    auto const divide = [&](Fit fit) {
        Lined const& lined = lines.at(fit);
        if (style.breaks) return Divided{fit, style.breaks->pages, 0};
        Paging const paging(score, font, style, fit);
        return paged(fit, Paging::heights(lined.systems), paging.room(), lined.offPhrase);
    };
    Divided const best =
        style.breaks ? divide(style.breaks->fit)
                     : bestOf(fits(style, !score.shapes.empty()), divide);
    return Paging(score, font, style, best.fit)
        .document(lines.at(best.fit).systems, best.pages);
}

namespace {

// The bars of several scores that are to look alike: the widest of each.
BarWidths widestBars(std::vector<SetScore> const& sets)
{
    BarWidths widest;
    for (SetScore const& set : sets) {
        BarWidths const bars = barWidths(set);
        if (widest.empty()) widest = bars;
        for (tune::BarIndex i = 0; i < std::min(widest.size(), bars.size()); ++i) {
            widest[i].natural = std::max(widest[i].natural, bars[i].natural);
            widest[i].least = std::max(widest[i].least, bars[i].least);
        }
    }
    return widest;
}

// Their lines in one size, and how high each is at its highest.
struct CommonLines {
    double scale = 1;
    std::vector<tune::BarIndex> starts;
    std::vector<SystemHeight> heights;
};

} // namespace

Breaks commonBreaks(std::vector<Score> const& scores, MusicFont const& font,
                    SheetStyle const& style)
{
    std::vector<SetScore> sets;
    for (Score const& score : scores) sets.push_back(setScore(score, font));
    bool const shapes = std::any_of(scores.begin(), scores.end(),
                                    [](Score const& one) { return !one.shapes.empty(); });
    BarWidths const widest = widestBars(sets);
    std::deque<CommonLines> made;
    auto const linesAt = [&](Fit fit) -> CommonLines const& {
        for (CommonLines const& lines : made)
            if (lines.scale == fit.scale) return lines;
        CommonLines out{fit.scale, {}, {}};
        for (SetScore const& set : sets) {
            double const width = Paging(*set.score, font, style, fit).width();
            if (out.starts.empty()) out.starts = lineStarts(widest, roomFor(set, width));
            std::vector<System> systems = systemsOf(set, width, out.starts);
            addWordsBelow(systems, *set.score, font, width);
            auto const heights = Paging::heights(systems);
            if (out.heights.empty()) out.heights = heights;
            for (std::size_t i = 0; i < out.heights.size(); ++i)
                out.heights[i].height = std::max(out.heights[i].height, heights[i].height);
        }
        return made.emplace_back(std::move(out));
    };
    auto const divide = [&](Fit fit) {
        CommonLines const& lines = linesAt(fit);
        std::optional<PageRoom> room;
        for (SetScore const& set : sets) {
            PageRoom const own = Paging(*set.score, font, style, fit).room();
            if (!room) room = own;
            room->firstPage = std::min(room->firstPage, own.firstPage);
            room->page = std::min(room->page, own.page);
            room->foot = std::max(room->foot, own.foot);
        }
        return paged(fit, lines.heights, *room, linesOffPhrase(widest, lines.starts));
    };
    Divided const best = bestOf(fits(style, shapes), divide);
    return {linesAt(best.fit).starts, best.pages, best.fit};
}

} // namespace sheet
