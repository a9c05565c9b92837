#include "core/sheet/system.h"

#include "core/base/words.h"
#include "core/sheet/attachments.h"
#include "core/sheet/geometry.h"
#include "core/sheet/glyphs.h"
#include "core/sheet/placedbrackets.h"
#include "core/sheet/rows.h"
#include "core/sheet/stringpath.h"
#include "core/sheet/ties.h"
#include "core/sheet/turns.h"
#include "core/sheet/verses.h"
#include "core/sheet/words.h"

#include <algorithm>
#include <map>
#include <utility>

namespace sheet {

using music::Length;

namespace {

constexpr double beforeClef = 0.6;
constexpr double betweenEndings = 0.6; // white between two brackets
constexpr char const* leftHand = base::marked("L.H.");

using DrawnBeams = std::vector<DrawnBeam>; // of one bar

std::size_t at(int index) { return static_cast<std::size_t>(index); }

bool showsMeter(SetScore const& score, tune::BarIndex firstBar)
{
    if (!score.score->meterShown) return false;
    return firstBar == 0 || changeAt(score, firstBar).meter;
}

// Where the parts of a line's head stand.
struct Head {
    double clef = beforeClef;
    double key = 0;
    double meter = 0;
    double repeat = 0; // bar line of a repeat that opens here
    double end = 0;    // where the music begins
};

Head headOf(SetScore const& score, tune::BarIndex firstBar)
{
    MusicFont const& font = *score.font;
    tune::Bar const& bar = score.bar(firstBar);
    Head head;
    double x = head.clef +
               std::max(clefWidth(Clef::Treble, font), clefWidth(Clef::Bass, font)) +
               geometry::afterClef;
    head.key = x;
    if (double const width = keySignWidth({music::signature(bar.key), 0}, font); width > 0)
        x += width + geometry::afterSignature;
    head.meter = x;
    if (showsMeter(score, firstBar))
        x += meterWidth(bar.meter, font) + geometry::afterSignature;
    head.repeat = x;
    if (bar.repeatOpens) x += barLineShape(nullptr, &bar, font).width + geometry::afterBarLine;
    head.end = x + 0.2;
    return head;
}

// A line being set: its places are fixed, its drawing grows staff by staff.
class LineSetting {
public:
    LineSetting(SetScore const& score, BarRange range, double width, double mostStretch)
        : m_score(score), m_range(range), m_columns(lineColumns(score, range)),
          m_head(headOf(score, range.first))
    {
        double const room = width - m_head.end - m_columns.closing;
        double const stretch = std::min(stretchFor(m_columns.row, room), mostStretch);
        m_x = columnsAt(m_columns.row, stretch);
        // A bar that no line can hold is crowded rather than cut off at the paper's edge.
        double const crowding = std::min(1.0, room / m_x.back());
        for (double& x : m_x) x = m_head.end + crowding * x;
        m_width = m_x.back() + m_columns.closing;
    }

    System set();

private:
    MusicFont const& font() const { return *m_score.font; }
    int count() const { return m_range.end - m_range.first; }
    tune::Bar const& bar(int i) const { return m_score.bar(m_range.first + i); }
    PrintedBar const& what(int i) const { return m_score.score->bars[m_range.first + i]; }
    LineColumns::OfBar const& columns(int i) const { return m_columns.bars[at(i)]; }
    double endOf(int i) const { return m_x[at(columns(i).endColumn)]; }
    double startOf(int i) const;     // right of the bar line before
    double borderAfter(int i) const; // width of the bar line behind a bar
    double xAt(int i, Length moment) const;

    StaffLine staffLine(SetScore::Staff const& bars) const;
    void drawHead(Pen& pen, Clef clef) const;
    void drawUpperStaff(Pen& pen) const;
    void drawLowerStaff(Pen& pen) const;
    std::vector<DrawnBeams> drawSigns(Pen& pen, StaffLine const& line,
                                      std::vector<music::Pitch> const& tiedOver) const;
    void drawBeside(Pen& pen, StaffLine const& line) const;
    void drawOutside(Pen& pen, StaffLine const& line,
                     std::vector<DrawnBeams> const& beams) const;
    void drawLoudness(Pen& pen) const;
    std::vector<PlacedHairpin> hairpins() const;
    void drawAllFingers(Pen& pen, StaffLine const& line, FingerSide side) const;
    void drawHandSigns(Pen& pen, StaffLine const& line) const;
    std::vector<PlacedBracket> placings(harp::Side hand) const;
    std::vector<PathStop> pathStops() const;
    void drawAbove(Pen& pen) const;
    std::vector<PlacedLabel> placed(std::vector<Label> PrintedBar::*row) const;
    std::vector<PlacedLabel> words() const;
    std::vector<EndingBracket> endings() const;
    void drawBarLines(Pen& pen, std::vector<double> const& staves) const;
    std::vector<Area> areas(double top, double bottom) const;
    std::string partOf() const;

    SetScore const& m_score;
    BarRange m_range;
    LineColumns m_columns;
    Head m_head;
    std::vector<double> m_x;
    double m_width = 0;
};

double LineSetting::startOf(int i) const
{
    if (i == 0) return m_head.end - geometry::afterBarLine;
    return endOf(i - 1) + borderAfter(i - 1) +
           changeWidth(changeAt(m_score, m_range.first + i), font());
}

double LineSetting::borderAfter(int i) const
{
    return barLineShape(&bar(i), i + 1 < count() ? &bar(i + 1) : nullptr, font()).width;
}

// Between two columns time runs evenly.
double LineSetting::xAt(int i, Length moment) const
{
    LineColumns::OfBar const& of = columns(i);
    int const column = columnOf(of, moment);
    std::size_t const index = at(column - of.firstColumn);
    Length const from = of.moments[index];
    Length const to = index + 1 < of.moments.size() ? of.moments[index + 1] : bar(i).length;
    if (to <= from) return m_x[at(column)];
    double const share = std::clamp(((moment - from) / (to - from)).toDouble(), 0.0, 1.0);
    return m_x[at(column)] + share * (m_x[at(column) + 1] - m_x[at(column)]);
}

StaffLine LineSetting::staffLine(SetScore::Staff const& bars) const
{
    StaffLine line;
    for (int i = 0; i < count(); ++i) {
        SetBar const& set = bars[m_range.first + i];
        BarPlace place{startOf(i), endOf(i), {}};
        for (SetNote const& note : set.notes)
            place.x.push_back(m_x[at(columnOf(columns(i), note.what.at))]);
        line.bars.push_back(set);
        line.places.push_back(std::move(place));
        line.indices.push_back(m_range.first + i);
    }
    return line;
}

void LineSetting::drawHead(Pen& pen, Clef clef) const
{
    double const thickness = engravingOf(font(), "staffLineThickness", 0.13);
    for (int line = 0; line < 5; ++line)
        pen.line({0, double(line)}, {m_width, double(line)}, thickness, Ink::Staff);
    drawClef(pen, clef, m_head.clef);
    drawKeySign(pen, {music::signature(bar(0).key), 0}, clef, m_head.key);
    if (showsMeter(m_score, m_range.first)) drawMeter(pen, bar(0).meter, m_head.meter);
    for (int i = 0; i < count(); ++i)
        drawChange(pen, changeAt(m_score, m_range.first + i + 1), clef,
                   endOf(i) + borderAfter(i));
}

// Notes and ties; what stands by them comes when all are drawn.
std::vector<DrawnBeams> LineSetting::drawSigns(Pen& pen, StaffLine const& line,
                                               std::vector<music::Pitch> const& tiedOver) const
{
    std::vector<DrawnBeams> beams;
    for (int i = 0; i < count(); ++i)
        beams.push_back(drawNotes(pen, line.bars[at(i)], line.places[at(i)],
                                  line.indices[at(i)], m_score.score->helps));
    drawTies(pen, line, tiedOver);
    pen.belongTo({});
    return beams;
}

// From the notes outwards: articulation, ornament; then fingers and brackets; then these.
void LineSetting::drawBeside(Pen& pen, StaffLine const& line) const
{
    for (int i = 0; i < count(); ++i)
        drawMarks(pen, line.bars[at(i)], line.places[at(i)], line.indices[at(i)]);
    pen.belongTo({});
}

void LineSetting::drawOutside(Pen& pen, StaffLine const& line,
                              std::vector<DrawnBeams> const& beams) const
{
    for (int i = 0; i < count(); ++i)
        drawTuplets(pen, line.bars[at(i)], line.places[at(i)], line.indices[at(i)],
                    beams[at(i)]);
    for (int i = 0; i < count(); ++i)
        drawOuterMarks(pen, line.bars[at(i)], line.places[at(i)], line.indices[at(i)]);
    pen.belongTo({});
}

std::vector<PlacedHairpin> LineSetting::hairpins() const
{
    std::vector<PlacedHairpin> out;
    for (notation::Hairpin const& pin : m_score.score->hairpins) {
        if (pin.to.bar < m_range.first || pin.from.bar >= m_range.end) continue;
        bool const comesIn = pin.from.bar < m_range.first;
        bool const goesOn = pin.to.bar >= m_range.end;
        double const left =
            comesIn ? startOf(0) : xAt(pin.from.bar - m_range.first, pin.from.at);
        double const right = goesOn ? endOf(count() - 1) - 0.3
                                    : xAt(pin.to.bar - m_range.first, pin.to.at) - 0.3;
        out.push_back({left, right, pin.opens, comesIn ? m_range.first : pin.from.bar});
    }
    return out;
}

void LineSetting::drawLoudness(Pen& pen) const
{
    std::vector<PlacedDynamic> dynamics;
    for (PlacedLabel const& label : placed(&PrintedBar::dynamics))
        dynamics.push_back({label.label.text, label.x, label.bar});
    drawDynamics(pen, dynamics, hairpins());
}

void LineSetting::drawAllFingers(Pen& pen, StaffLine const& line, FingerSide side) const
{
    for (int i = 0; i < count(); ++i)
        drawFingers(pen, line.bars[at(i)], line.places[at(i)], line.indices[at(i)], side);
    pen.belongTo({});
}

// Says whose notes they are where the left hand comes up to the upper staff.
void LineSetting::drawHandSigns(Pen& pen, StaffLine const& line) const
{
    for (int i = 0; i < count(); ++i) {
        if (line.bars[at(i)].notes.empty()) continue;
        if (i > 0 && !line.bars[at(i - 1)].notes.empty()) continue; // once for a passage
        double const x = line.places[at(i)].x.front();
        double const width =
            widthOf(base::wordsFor(leftHand), Face::Italic, geometry::handHeight);
        double const floor = std::max(pen.reach().bottom(x - 0.1, x + width, 4), 4.3);
        pen.belongTo(line.indices[at(i)], line.bars[at(i)].notes.front().what.position);
        pen.words(base::said(leftHand), {x, floor + 0.25 + wordsRise * geometry::handHeight},
                  geometry::handHeight, Face::Italic, Anchor::Left, Ink::Quiet);
    }
    pen.belongTo({});
}

void LineSetting::drawUpperStaff(Pen& pen) const
{
    StaffLine const line = staffLine(m_score.upper);
    StaffLine const below = staffLine(m_score.upperBelow);
    Pen notes(font()); // without the staff: slurs run through its lines
    auto const beams = drawSigns(notes, line, m_score.tiedIntoUpper[m_range.first]);
    auto const beamsBelow = drawSigns(notes, below, {});
    drawSlurs(notes, line, m_score.slurs);
    Clef const clef = m_score.score->grand ? Clef::Treble : m_score.score->clef;
    drawHead(pen, clef);
    pen.take(notes, 0);
    drawBeside(pen, line);
    drawBeside(pen, below);
    drawAllFingers(pen, line, clef == Clef::Treble ? FingerSide::Above : FingerSide::Below);
    drawPlacings(pen, placings(harp::Side::Right), FingerSide::Above);
    drawAllFingers(pen, below, FingerSide::Below);
    drawHandSigns(pen, below);
    drawOutside(pen, line, beams);
    drawOutside(pen, below, beamsBelow);
    drawLoudness(pen);
    drawVerses(pen, line, m_score.score->grand);
}

void LineSetting::drawLowerStaff(Pen& pen) const
{
    StaffLine const line = staffLine(m_score.lower);
    drawHead(pen, Clef::Bass);
    auto const beams = drawSigns(pen, line, {});
    drawBeside(pen, line);
    drawAllFingers(pen, line, FingerSide::Below);
    drawPlacings(pen, placings(harp::Side::Left), FingerSide::Below);
    drawOutside(pen, line, beams);
}

// The parts of the hand's brackets that lie on this line.
std::vector<PlacedBracket> LineSetting::placings(harp::Side hand) const
{
    double const head = boxOf(font(), glyph::noteheadBlack).right;
    std::vector<PlacedBracket> out;
    for (PlacingBracket const& bracket : m_score.score->placings) {
        if (bracket.hand != hand) continue;
        bool const comesIn = bracket.from.bar < m_range.first;
        bool const goesOn = bracket.to.bar >= m_range.end;
        if (bracket.to.bar < m_range.first || bracket.from.bar >= m_range.end) continue;
        PlacedBracket placed;
        placed.linked = bracket.linked && !comesIn;
        placed.bar = comesIn ? m_range.first : bracket.from.bar;
        placed.opens = !comesIn;
        placed.closes = !goesOn;
        placed.left =
            comesIn ? startOf(0) : xAt(bracket.from.bar - m_range.first, bracket.from.at);
        placed.right = goesOn ? endOf(count() - 1)
                              : xAt(bracket.to.bar - m_range.first, bracket.to.at) + head;
        out.push_back(placed);
    }
    return out;
}

std::vector<PlacedLabel> LineSetting::placed(std::vector<Label> PrintedBar::*row) const
{
    std::vector<PlacedLabel> out;
    for (int i = 0; i < count(); ++i)
        for (Label const& label : what(i).*row)
            out.push_back({label, xAt(i, label.at), m_range.first + i, startOf(i), endOf(i)});
    return out;
}

// The writer's words, and where the tempo falls.
std::vector<PlacedLabel> LineSetting::words() const
{
    std::vector<PlacedLabel> out = placed(&PrintedBar::annotations);
    auto const& slowing = m_score.score->slowing;
    if (!slowing || slowing->from.bar < m_range.first || slowing->from.bar >= m_range.end)
        return out;
    int const i = slowing->from.bar - m_range.first;
    PlacedLabel const label{{slowing->from.at, notation::slowingWords(*slowing), std::nullopt},
                            xAt(i, slowing->from.at),
                            slowing->from.bar,
                            startOf(i),
                            endOf(i)};
    out.insert(std::ranges::upper_bound(out, label.x, {}, &PlacedLabel::x), label);
    return out;
}

// The ending a bar belongs to runs from the bar that names it to the one that closes it.
std::vector<EndingBracket> LineSetting::endings() const
{
    std::vector<EndingBracket> out;
    bool open = false;
    for (tune::BarIndex b = 0; b < m_range.end; ++b) {
        tune::Bar const& here = m_score.bar(b);
        bool const begins = !here.endings.empty();
        open = open || begins;
        if (!open) continue;
        int const i = b - m_range.first;
        bool const next = b + 1 < m_score.count() && !m_score.bar(b + 1).endings.empty();
        bool const ends =
            here.endingCloses || here.repeatCloses || next || b + 1 == m_score.count();
        if (i >= 0) {
            if (begins || out.empty() || out.back().closes) {
                std::string text;
                for (int number : here.endings)
                    text += (text.empty() ? "" : ", ") + std::to_string(number) + ".";
                double const left = startOf(i) + (i == 0 ? 0.0 : betweenEndings / 2);
                out.push_back({left, 0, text, begins, false, b});
            }
            out.back().right =
                endOf(i) + borderAfter(i) - (i + 1 < count() ? betweenEndings / 2 : 0.0);
            out.back().closes =
                ends && (here.repeatCloses || here.closes != tune::BarLine::Single);
        }
        if (ends) open = false;
    }
    return out;
}

// Where the left hand plucks, on whichever staff it is written; a note that is tied over is
// plucked once.
std::vector<PathStop> LineSetting::pathStops() const
{
    double const middle = boxOf(font(), glyph::noteheadBlack).right / 2;
    std::map<std::pair<int, Length>, PathStop> stops;
    for (auto const* staff : {&m_score.lower, &m_score.upperBelow}) {
        StaffLine const line = staffLine(*staff);
        std::vector<music::Pitch> tied;
        for (int i = 0; i < count(); ++i)
            for (StaffNoteIndex const n : line.bars[at(i)].notes.indices()) {
                StaffNote const& note = line.bars[at(i)].notes[n].what;
                std::vector<music::Pitch> const over = std::exchange(tied, {});
                if (note.tied) tied = note.pitches;
                PathStop stop{
                    line.places[at(i)].x[n] + middle, {}, line.indices[at(i)], note.position};
                for (music::Pitch pitch : note.pitches)
                    if (std::find(over.begin(), over.end(), pitch) == over.end())
                        stop.strings.push_back(pitch);
                if (stop.strings.empty()) continue;
                PathStop& there = stops.emplace(std::pair{i, note.at}, stop).first->second;
                if (there.strings != stop.strings)
                    there.strings.insert(there.strings.end(), stop.strings.begin(),
                                         stop.strings.end());
            }
    }
    std::vector<PathStop> out;
    for (auto& [when, stop] : stops) {
        std::sort(stop.strings.begin(), stop.strings.end(), [](music::Pitch a, music::Pitch b) {
            return diatonicStep(a) < diatonicStep(b);
        });
        out.push_back(std::move(stop));
    }
    return out;
}

void LineSetting::drawAbove(Pen& pen) const
{
    drawStars(pen, placed(&PrintedBar::gaveWay));
    drawAnnotations(pen, words(), m_width);
    drawNavigation(pen, placed(&PrintedBar::navigation));
    drawRowAbove(pen, placed(&PrintedBar::chords),
                 {Face::Bold, geometry::chordHeight, Ink::Chord}, geometry::chordGap,
                 geometry::chordAboveStaff);
    drawEndings(pen, endings());
    int const number = bar(0).number;
    if (m_range.first > 0 && number > 0) {
        double const width = 2.4;
        double const roof = std::min(pen.reach().top(-0.2, width, 0), -1.0);
        pen.words(std::to_string(number), {0, roof - geometry::markGap},
                  geometry::barNumberHeight, Face::Italic, Anchor::Left, Ink::Quiet);
    }
    for (int i = 0; i < count(); ++i) {
        if (bar(i).part.empty()) continue;
        pen.belongTo(m_range.first + i);
        drawPartLetter(pen, bar(i).part, i == 0 ? 0 : endOf(i - 1));
    }
    pen.belongTo({});
}

void LineSetting::drawBarLines(Pen& pen, std::vector<double> const& staves) const
{
    for (int i = 0; i < count(); ++i) {
        pen.belongTo(m_range.first + i);
        tune::Bar const* const next = i + 1 < count() ? &bar(i + 1) : nullptr;
        drawBarLine(pen, barLineShape(&bar(i), next, font()), endOf(i), staves);
    }
    pen.belongTo({});
    if (bar(0).repeatOpens)
        drawBarLine(pen, barLineShape(nullptr, &bar(0), font()), m_head.repeat, staves);
    if (staves.size() < 2) return;
    double const thickness = engravingOf(font(), "thinBarlineThickness", 0.16);
    double const overhang = engravingOf(font(), "staffLineThickness", 0.13) / 2;
    pen.line({thickness / 2, staves.front() - overhang},
             {thickness / 2, staves.back() + 4 + overhang}, thickness);
    double const scale = (staves.back() + 4) / boxOf(font(), glyph::brace).top;
    double const width = scale * boxOf(font(), glyph::brace).right;
    pen.glyph(glyph::brace, {-geometry::braceGap - width, staves.back() + 4}, Ink::Music,
              scale);
}

std::vector<Area> LineSetting::areas(double top, double bottom) const
{
    std::vector<Area> out;
    for (int i = 0; i < count(); ++i)
        out.push_back({{i == 0 ? 0 : endOf(i - 1), top},
                       {endOf(i), bottom},
                       m_range.first + i,
                       std::nullopt});
    for (int i = 0; i < count(); ++i) {
        std::vector<Label> const& labels = what(i).labels;
        for (std::size_t l = 0; l < labels.size(); ++l) {
            double const left = l == 0 ? out[at(i)].topLeft.x : xAt(i, labels[l].at) - 0.6;
            double const right =
                l + 1 < labels.size() ? xAt(i, labels[l + 1].at) - 0.6 : endOf(i);
            out.push_back(
                {{left, top}, {right, bottom}, m_range.first + i, labels[l].position});
        }
    }
    return out;
}

std::string LineSetting::partOf() const
{
    for (int i = 0; i < count(); ++i)
        if (!bar(i).part.empty()) return bar(i).part;
    return {};
}

System LineSetting::set()
{
    bool const grand = m_score.score->grand;
    Pen pen(font());
    drawUpperStaff(pen);
    drawAbove(pen);
    std::vector<double> staves{0};
    if (grand) {
        Pen lower(font());
        drawLowerStaff(lower);
        drawLeverCues(pen, placed(&PrintedBar::leverCues));
        drawRowBelow(lower, placed(&PrintedBar::labels),
                     {Face::SansBold, geometry::labelHeight, Ink::PatternLabel},
                     geometry::labelGap, geometry::labelBelowStaff);
        if (m_score.score->helps.stringPath)
            drawStringPath(lower, pathStops(), m_width, m_score.score->helps);
        double const distance =
            std::max(4 + geometry::leastStaffGap,
                     distanceBetween(pen.reach(), lower.reach(), geometry::clearBetweenStaves));
        pen.take(lower, distance);
        staves.push_back(distance);
    } else {
        drawRowBelow(pen, placed(&PrintedBar::labels),
                     {Face::SansBold, geometry::labelHeight, Ink::PatternLabel},
                     geometry::labelGap, geometry::labelBelowStaff);
    }
    drawBarLines(pen, staves);
    double const top = pen.reach().top(0);
    double const bottom = pen.reach().bottom(4);
    return {std::move(pen),
            top,
            bottom,
            areas(top, bottom),
            m_range,
            beginsPart(m_score, m_range.first),
            freeBefore(*m_score.score, m_range.end) >= enoughToTurn,
            partOf()};
}

} // namespace

double headWidth(SetScore const& score, tune::BarIndex firstBar)
{
    return headOf(score, firstBar).end;
}

double systemStretch(SetScore const& score, BarRange range, double width)
{
    LineColumns const columns = lineColumns(score, range);
    return stretchFor(columns.row, width - headWidth(score, range.first) - columns.closing);
}

System system(SetScore const& score, BarRange range, double width, double mostStretch)
{
    return LineSetting(score, range, width, mostStretch).set();
}

} // namespace sheet
