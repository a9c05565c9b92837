#include "core/sheet/slurs.h"

#include "core/sheet/geometry.h"
#include "core/sheet/pen.h"

#include <algorithm>
#include <optional>

namespace sheet {

std::vector<SlurSpan> slurSpans(base::List<tune::BarIndex, PrintedBar> const& bars)
{
    constexpr int mostBars = 8; // a longer one is a bracket that was forgotten
    std::vector<SlurSpan> out;
    std::vector<SlurSpan::End> open;
    int waiting = 0; // begun on a rest
    std::optional<SlurSpan::End> lastNote;
    for (tune::BarIndex const b : bars.indices())
        for (StaffNoteIndex const n : bars[b].upper.notes.indices()) {
            StaffNote const& note = bars[b].upper.notes[n];
            SlurSpan::End const here{b, n};
            if (!note.isRest()) lastNote = here;
            // A slur that ends where another begins ends first.
            for (int i = 0; i < note.slursClose && !open.empty(); ++i) {
                bool const written = lastNote && lastNote->bar - open.back().bar < mostBars;
                if (written && open.back() < *lastNote) out.push_back({open.back(), *lastNote});
                open.pop_back();
            }
            waiting += note.slursOpen;
            if (note.isRest()) continue;
            open.insert(open.end(), static_cast<std::size_t>(waiting), here);
            waiting = 0;
        }
    return out;
}

namespace {

constexpr double fromHead = 0.35; // white between a slur and what it begins at
constexpr double clear = 0.3;     // and what lies under it
constexpr double flattest = 0.7;  // height over its ends
constexpr double highest = 2.6;
constexpr double growth = 0.05; // with its length
constexpr double steepest = 0.4;
constexpr int samples = 16;

struct Curve {
    Point from;
    Point to;
    double away = -1; // -1 above, 1 below

    Point at(double t) const // of the straight part, without its height
    {
        double const width = to.x - from.x;
        return onBow({from, {from.x + 0.3 * width, from.y}, {from.x + 0.7 * width, to.y}, to},
                     t);
    }
};

double edge(Pen const& pen, double left, double right, double away, double otherwise)
{
    return away < 0 ? pen.reach().top(left, right, otherwise)
                    : pen.reach().bottom(left, right, otherwise);
}

// The height that keeps the curve clear of all between its ends.
double heightOver(Pen const& pen, Curve const& curve)
{
    double height = std::min(flattest + growth * (curve.to.x - curve.from.x), highest);
    double const half = (curve.to.x - curve.from.x) / samples / 2;
    for (int i = 2; i < samples - 1; ++i) {
        double const t = static_cast<double>(i) / samples;
        Point const p = curve.at(t);
        double const other =
            edge(pen, p.x - half, p.x + half, curve.away, p.y - curve.away * 9);
        double const needed = curve.away * (other - p.y) + clear;
        height = std::max(height, needed / (4 * t * (1 - t)));
    }
    return height;
}

void drawCurve(Pen& pen, Curve curve)
{
    double const width = curve.to.x - curve.from.x;
    double const rise = curve.to.y - curve.from.y;
    if (double const most = steepest * width; std::abs(rise) > most) {
        // The end that lies nearer the notes moves out.
        bool const firstIsInner = curve.away * rise > 0;
        double& inner = firstIsInner ? curve.from.y : curve.to.y;
        inner += curve.away * (std::abs(rise) - most);
    }
    double height = heightOver(pen, curve);
    for (int i = 0; i < 8 && height > highest; ++i) {
        double const lift = curve.away * (height - highest) * 0.8;
        curve.from.y += lift;
        curve.to.y += lift;
        height = heightOver(pen, curve);
    }
    pen.bow(curve.from, curve.to, curve.away * height);
}

class LineSlurs {
public:
    LineSlurs(Pen& pen, StaffLine const& line) : m_pen(pen), m_line(line) {}

    void draw(SlurSpan const& slur)
    {
        tune::BarIndex const first = m_line.indices.front();
        tune::BarIndex const last = m_line.indices.back();
        if (slur.to.bar < first || slur.from.bar > last) return;
        bool const comesIn = slur.from.bar < first;
        bool const goesOn = slur.to.bar > last;
        double const away = below(slur) ? 1 : -1;
        Curve curve;
        curve.away = away;
        if (!comesIn) curve.from = endAt(slur.from, away, false);
        if (!goesOn) curve.to = endAt(slur.to, away, true);
        double const lineLeft = m_line.places.front().left;
        double const lineRight = m_line.places.back().right - 0.1;
        if (comesIn && goesOn) {
            curve.from = {lineLeft, outside(away)};
            curve.to = {lineRight, outside(away)};
        } else if (comesIn) {
            curve.from = {std::max(0.0, std::min(lineLeft, curve.to.x - 2)), curve.to.y};
        } else if (goesOn) {
            curve.to = {std::max(lineRight, curve.from.x + 1), curve.from.y};
        }
        if (curve.to.x - curve.from.x < 0.5) return;
        m_pen.belongTo(comesIn ? first : slur.from.bar);
        drawCurve(m_pen, curve);
    }

private:
    static double outside(double away) { return away < 0 ? -1.0 : 5.0; }

    SetNote const& note(SlurSpan::End end) const
    {
        auto const bar = static_cast<std::size_t>(end.bar - m_line.indices.front());
        return m_line.bars[bar].notes[end.note];
    }

    // Below the notes when every stem under it points up.
    bool below(SlurSpan const& slur) const
    {
        for (std::size_t b = 0; b < m_line.bars.size(); ++b) {
            if (m_line.bars[b].voice != Voice::Alone) return false;
            for (StaffNoteIndex const n : m_line.bars[b].notes.indices()) {
                SlurSpan::End const here{m_line.indices[b], n};
                SetNote const& note = m_line.bars[b].notes[n];
                bool const under = slur.from <= here && here <= slur.to;
                if (under && !note.what.isRest() && note.stem == Stem::Down) return false;
            }
        }
        return true;
    }

    // At the notehead, or at the stem's end where the stem points to the slur's side.
    Point endAt(SlurSpan::End end, double away, bool ends) const
    {
        auto const bar = static_cast<std::size_t>(end.bar - m_line.indices.front());
        SetNote const& at = note(end);
        MusicFont const& font = m_pen.font();
        double const left = signX(at, m_line.places[bar], end.note, font);
        bool const stemmed = hasStem(at.what.value) && (at.stem == Stem::Up) == (away < 0);
        double const x =
            stemmed ? stemX(at, left, font) : left + boxOf(font, at.head).right / 2;
        // Beyond the grace notes that stand before the note it ends on.
        double const before = ends && !at.graces.empty() ? std::max(0.2, at.left) : 0.2;
        double const y = edge(m_pen, x - before, x + 0.2, away, 2);
        return {x, y + away * fromHead};
    }

    Pen& m_pen;
    StaffLine const& m_line;
};

} // namespace

void drawSlurs(Pen& pen, StaffLine const& line, std::vector<SlurSpan> const& slurs)
{
    LineSlurs drawing(pen, line);
    for (SlurSpan const& slur : slurs) drawing.draw(slur);
    pen.belongTo({});
}

} // namespace sheet
