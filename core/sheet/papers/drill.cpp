#include "core/sheet/papers/drill.h"

#include "core/base/words.h"
#include "core/hands/lefthand.h"
#include "core/notation/durations.h"
#include "core/sheet/cautions.h"
#include "core/sheet/heading.h"
#include "core/sheet/papers/exercise.h"
#include "core/sheet/papers/papers.h"
#include "core/sheet/shapes.h"
#include "core/sheet/words.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace sheet {

using arrange::Arrangement;
using arrange::VoicedNote;

namespace {

// Heights of the em in spaces.
constexpr double lineHeight = 1.65;
constexpr double cellHeight = 1.7;
constexpr double footHeight = 1.3;

constexpr int shapesToALine = 4;
constexpr double pictureScale = 1.0;
constexpr double betweenLines = 2.6;

// Placing before plucking, closing and coming off [trade-3.3]; the rest common practice.
constexpr auto whatToDo = base::markedList(
    "1.  Place all the fingers of the shape before you pluck: look once, then feel the "
    "strings.",
    "2.  Check that your hand is relaxed: thumb high, wrist and shoulder loose, no finger "
    "pressing.",
    "3.  Roll the shape from low to high, closing each finger into the palm; then pluck it "
    "together.",
    "4.  Come off and move on: place the next shape in good time.");

bool sameHold(std::vector<VoicedNote> const& a, std::vector<VoicedNote> const& b)
{
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](VoicedNote const& x, VoicedNote const& y) {
                          return x.string == y.string && x.finger == y.finger;
                      });
}

std::vector<arrange::PlacingGroup> groupsOf(Arrangement const& arrangement)
{
    std::vector<arrange::PlacingGroup> groups;
    for (arrange::PlacingGroup const& group : arrangement.groups)
        if (group.hand == harp::Side::Left) groups.push_back(group);
    return groups.empty() ? hands::leftHand(arrangement).groups : groups;
}

// The fingers of a group on their strings, lowest first.
std::vector<VoicedNote> heldBy(arrange::PlacingGroup const& group)
{
    std::map<int, VoicedNote> byString;
    for (arrange::GroupNote const& note : group.notes) {
        VoicedNote held;
        held.string = note.string;
        held.finger = note.finger;
        byString.emplace(note.string, held);
    }
    std::vector<VoicedNote> held;
    for (auto const& [string, note] : byString) held.push_back(note);
    return held;
}

bool isEasy(Arrangement const& arrangement, std::vector<VoicedNote> const& held)
{
    std::vector<harp::PlacedFinger> placed;
    for (VoicedNote const& note : held) placed.push_back({note.string, note.finger});
    return harp::easeOf(arrangement.harp, arrangement.hand, placed) == harp::Ease::Easy;
}

// "bar 3", "bars 3, 4 …": as many as there is room for.
std::string barsText(tune::Tune const& tune, std::vector<tune::BarIndex> const& bars)
{
    constexpr std::size_t most = 4;
    if (bars.size() == 1) return tune::barName(tune, bars.front());
    std::string text = base::said("bars ");
    for (std::size_t i = 0; i < std::min(most, bars.size()); ++i)
        text += (i > 0 ? ", " : "") + std::to_string(tune.bars[bars[i]].number);
    return bars.size() > most ? text + " …" : text;
}

StaffNote minim(DrillShape const& shape, Arrangement const& arrangement, bool second)
{
    StaffNote note;
    note.length = {music::Rational(1, 2)};
    note.at = second ? note.length : music::Length{};
    note.value = {1, 0};
    for (VoicedNote const& held : shape.held) {
        note.pitches.push_back(
            harp::pitchAt(arrangement.harp, arrangement.levers, held.string, shape.at));
        if (!second) note.fingers.push_back(held.finger);
    }
    bool const several = shape.held.size() > 1;
    note.rolled = several && (!second || !shape.block);
    note.bracketed = several && second && shape.block;
    return note;
}

// A bar for each shape: rolled, then together.
Score drillScore(Arrangement const& arrangement, std::vector<DrillShape> const& shapes)
{
    Score score;
    score.grand = false;
    score.clef = Clef::Bass;
    score.meterShown = false;
    score.tune.key = arrangement.tune.key;
    for (DrillShape const& shape : shapes) {
        tune::Bar written;
        written.key = arrangement.tune.key;
        written.length = music::barLength(written.meter);
        written.closes = tune::BarLine::Double;
        score.tune.bars.push_back(std::move(written));
        PrintedBar bar;
        bar.upper.notes = {minim(shape, arrangement, false), minim(shape, arrangement, true)};
        score.bars.push_back(std::move(bar));
    }
    score.tune.bars.back().closes = tune::BarLine::Final;
    return score;
}

ShapePicture pictureOf(DrillShape const& shape, Arrangement const& arrangement)
{
    arrange::Voicing voicing;
    voicing.notes = shape.held;
    ShapePicture picture = shapeOn(arrangement.harp, arrangement.levers, voicing, shape.at);
    picture.title = music::shown(shape.chord);
    picture.ofChord = true;
    picture.caption = barsText(arrangement.tune, shape.bars);
    if (!shape.block) picture.caption += base::said(" · rolled only");
    return picture;
}

std::string beats(double value) { return std::to_string(std::lround(value)); }

// The steps to the tempo, a cell each with a box to tick, and the rests between them.
double drawSteps(Pen& pen, tune::Tempo const& goal, double width)
{
    std::vector<TempoStep> const steps = tempoSteps();
    double cells = 0;
    for (TempoStep const& step : steps) cells += step.restAfter ? 2 : 1;
    double const cell = width / cells;
    double const top = 0.1;
    double const foot = top + 6.2;
    double x = 0;
    auto const upright = [&](double at) { pen.line({at, top}, {at, foot}, 0.1, Ink::Quiet); };
    auto const words = [&](std::string const& text, double line, Face face, Ink ink) {
        pen.words(text, {x + cell / 2, top + line}, cellHeight, face, Anchor::Centre, ink);
    };
    pen.line({0, top}, {width, top}, 0.1, Ink::Quiet);
    pen.line({0, foot}, {width, foot}, 0.1, Ink::Quiet);
    upright(0.05);
    for (TempoStep const& step : steps) {
        words(std::to_string(step.percent) + " %", 1.75, Face::SansBold, Ink::Words);
        words("= " + beats(goal.beatsPerMinute * step.percent / 100), 3.7, Face::Roman,
              Ink::Words);
        double const box = 1.1;
        pen.frame({x + (cell - box) / 2, top + 4.55, x + (cell + box) / 2, top + 4.55 + box},
                  0.1, Ink::Quiet);
        x += cell;
        upright(std::min(x, width - 0.05));
        if (!step.restAfter) continue;
        words(base::said("steps|rest"), 2.6, Face::Italic, Ink::Caution);
        words(base::said("hands down"), 4.5, Face::Italic, Ink::Caution);
        x += cell;
        upright(std::min(x, width - 0.05));
    }
    return foot;
}

double drawWords(Pen& pen, std::string const& text, double width)
{
    double y = 0;
    for (std::string const& line : wrapped(text, Face::Roman, lineHeight, width)) {
        y += 1.3 * lineHeight;
        pen.words(line, {0, y}, lineHeight, Face::Roman);
    }
    return y;
}

void addHead(Papers& papers, Arrangement const& arrangement)
{
    Score head;
    head.tune = arrangement.tune;
    head.tune.tempo = arrangement.tempo;
    head.setupLine = harp::setupLine(arrangement.harp, arrangement.levers.setup);
    head.levers = leverPicture(arrangement.harp, arrangement.levers.setup);
    head.harpLine = base::say("left-hand placing drill · level {}", arrangement.level.number);
    Pen pen(papers.font());
    double const height = drawHeading(pen, head, papers.width());
    papers.add(pen, height, 0);
    double gap = 1.2;
    for (char const* text : whatToDo) {
        Pen line(papers.font());
        double const lineRoom = drawWords(line, base::said(text), papers.width());
        papers.add(line, lineRoom, gap);
        gap = 0.15;
    }
}

// Pictures over a line of music, each over its bar.
void addLine(Papers& papers, MusicLine const& line, std::vector<ShapePicture> const& pictures,
             std::size_t first)
{
    int fingers = 2;
    double high = 0;
    std::size_t const end = std::min(pictures.size(), first + shapesToALine);
    for (std::size_t i = first; i < end; ++i)
        fingers = std::max(fingers, static_cast<int>(pictures[i].dots.size()));
    for (std::size_t i = first; i < end; ++i)
        high = std::max(high, shapePictureBox(pictures[i], fingers, pictureScale).bottom);
    Pen pen(papers.font());
    for (Area const& area : line.areas) {
        auto const index = static_cast<std::size_t>(area.bar);
        if (area.position || index < first || index >= end) continue;
        Box const box = shapePictureBox(pictures[index], fingers, pictureScale);
        double const middle = (area.topLeft.x + area.bottomRight.x) / 2;
        double const left = std::clamp(middle - box.right / 2, 0.0, papers.width() - box.right);
        drawShapePicture(pen, pictures[index], {left, 0}, fingers, pictureScale);
    }
    pen.take(line.pen, high + 0.9);
    papers.add(pen, high + 0.9 + line.height, betweenLines);
}

void addSteps(Papers& papers, tune::Tempo const& goal)
{
    Pen pen(papers.font());
    double y = drawWords(pen,
                         base::said("Steps up to the tempo: move on when a step has gone "
                                    "easily three times; if it will "
                                    "not, go back one. The beats a minute are under each step. "
                                    "Rest for five minutes in "
                                    "every half hour."),
                         papers.width());
    y += 1.0;
    Pen table(papers.font());
    double const height = drawSteps(table, goal, papers.width());
    pen.take(table, y);
    papers.add(pen, y + height, betweenLines);
}

double drawDrillFoot(Pen& pen, tune::Tune const& tune, double width)
{
    double y = 0;
    auto const line = [&](std::string const& text, Ink ink) {
        if (text.empty()) return;
        double const needed = widthOf(text, Face::Italic, footHeight);
        double const height = needed <= width ? footHeight : footHeight * width / needed;
        pen.words(text, {width / 2, y}, height, Face::Italic, Anchor::Centre, ink);
        y -= 1.35 * footHeight;
    };
    line(tune.copyright, Ink::Words);
    line(base::said(care), Ink::Caution);
    return -y + 1.0;
}

} // namespace

std::vector<DrillShape> drillShapes(Arrangement const& arrangement)
{
    std::vector<DrillShape> shapes;
    for (arrange::PlacingGroup const& group : groupsOf(arrangement)) {
        if (group.notes.empty() || !group.notes.front().position) continue;
        auto const& position = arrangement.positions[*group.notes.front().position];
        DrillShape shape{position.position.chord,
                         {position.position.bar},
                         heldBy(group),
                         position.position.played.front().at,
                         true};
        shape.block = isEasy(arrangement, shape.held);
        bool const stays = !shapes.empty() && shapes.back().chord == shape.chord &&
                           sameHold(shapes.back().held, shape.held);
        if (!stays) {
            shapes.push_back(std::move(shape));
        } else if (shapes.back().bars.back() != shape.bars.front()) {
            shapes.back().bars.push_back(shape.bars.front());
        }
    }
    return shapes;
}

std::vector<TempoStep> tempoSteps()
{
    // Slow steps and rests are common practice, no source.
    return {{50, false}, {60, true}, {70, false}, {80, true}, {90, false}, {100, false}};
}

Document drillSheet(Arrangement const& arrangement, MusicFont const& font,
                    SheetStyle const& style)
{
    Papers papers(font, style);
    papers.setRunningTitle(arrangement.tune.title);
    Pen foot(font);
    double const footRoom = drawDrillFoot(foot, arrangement.tune, papers.width());
    papers.setFoot(std::move(foot), footRoom);
    addHead(papers, arrangement);
    std::vector<DrillShape> const shapes = drillShapes(arrangement);
    if (!shapes.empty()) {
        std::vector<ShapePicture> pictures;
        for (DrillShape const& shape : shapes)
            pictures.push_back(pictureOf(shape, arrangement));
        Score score = drillScore(arrangement, shapes);
        spreadOverStaves(score);
        std::size_t first = 0;
        for (MusicLine const& line : musicLines(score, font, papers.width(), shapesToALine)) {
            addLine(papers, line, pictures, first);
            first += shapesToALine;
        }
    }
    addSteps(papers, arrangement.tempo);
    return std::move(papers).document(arrangement.tune.title, arrangement.tune.arranger);
}

} // namespace sheet
