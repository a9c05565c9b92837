#include "ui/lanelayout.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace ui {

namespace {

bool isPickUp(tune::Bar const& bar) { return bar.upbeat.wholes > music::Rational(0); }

bool namesParts(tune::Tune const& tune)
{
    return std::any_of(tune.bars.begin(), tune.bars.end(),
                       [](tune::Bar const& bar) { return !bar.part.empty(); });
}

// The number of the ending that begins at a bar; 0 where none does.
int beginsEnding(tune::Tune const& tune, tune::BarIndex bar)
{
    auto const& endings = tune.bars[bar].endings;
    return endings.empty() ? 0 : endings.front();
}

// Whether a part of a tune without part letters begins at a bar.
bool beginsPart(tune::Tune const& tune, tune::BarIndex bar)
{
    if (tune.bars[bar].repeatOpens) return true;
    if (bar == 0) return true;
    tune::Bar const& before = tune.bars[bar - 1];
    bool const moreEndings = !tune.bars[bar].endings.empty();
    return !moreEndings && (before.repeatCloses || before.closes == tune::BarLine::Double ||
                            before.closes == tune::BarLine::Final);
}

// A note on the first beat stands so far behind the bar line.
constexpr double lead = 8;

// The strings from the lowest left-hand note to the highest of the tune, and one more at each
// end.
void findStrings(LaneLayout& layout, harp::Harp const& harp, std::vector<LaneNote> const& notes)
{
    layout.lowestString = harp.highest();
    layout.highestString = 0;
    for (LaneNote const& note : notes) {
        layout.lowestString = std::min(layout.lowestString, note.string - 1);
        layout.highestString = std::max(layout.highestString, note.string + 1);
    }
    layout.lowestString = std::clamp(layout.lowestString, harp::StringIndex(0), harp.highest());
    layout.highestString =
        std::clamp(layout.highestString, layout.lowestString, harp.highest());
}

int barsPerLane(double width, LaneMeasure const& measure)
{
    auto const fits = [&](int bars) { return width / bars >= measure.narrowestBar; };
    if (width / 8 >= 1.45 * measure.narrowestBar) return 8;
    return fits(4) ? 4 : fits(2) ? 2 : 1;
}

// Strings as far from each other as lets three lanes be seen, or two, or one; never so close
// that they cannot be told apart.
double stringsApart(LaneLayout const& layout, LaneMeasure const& measure)
{
    constexpr double widest = 7;
    constexpr double good = 4.6;
    constexpr double closest = 3.6;
    double const spaces = std::max(1, layout.highestString - layout.lowestString);
    double apart = closest;
    for (int const lanes : {3, 2, 1}) {
        double const each = (measure.height - measure.margin) / lanes - measure.nameHeight -
                            measure.footHeight - measure.gap;
        apart = std::max(apart, each / spaces);
        if (apart >= good) break;
    }
    return std::clamp(apart, closest, widest);
}

void addChords(LaneBar& bar, arrange::Arrangement const& arrangement,
               LaneMeasure const& measure)
{
    music::Length const length = arrangement.tune.bars[bar.bar].length;
    auto const across = [&](music::Length at) {
        return bar.box.x + bar.box.width * std::min(1.0, (at / length).toDouble());
    };
    auto const& positions = arrangement.positions;
    for (arrange::PositionIndex i = 0; i < positions.size();) {
        arrange::Position const& position = positions[i].position;
        if (position.bar != bar.bar) {
            ++i;
            continue;
        }
        arrange::PositionIndex last = i + 1; // behind the times through that share the stretch
        while (last < positions.size() && positions[last].position.bar == bar.bar &&
               positions[last].position.at == position.at)
            ++last;
        double const left = across(position.at);
        Box const stretch{left, bar.box.y, across(position.at + position.span) - left,
                          bar.box.height};
        double const share = stretch.width / (last - i);
        for (arrange::PositionIndex k = i; k < last; ++k)
            bar.chords.push_back(
                {k, {left + share * (k - i), bar.box.y, share, measure.nameHeight}, stretch});
        i = last;
    }
}

// The tail of one pluck, bar by bar and lane by lane.
void addTails(LaneLayout& layout, tune::Tune const& tune, LaneNote const& note)
{
    double const fades = note.fades.wholes.toDouble();
    music::Length gone; // since the pluck, at the left end of a piece
    music::Length from = note.at;
    auto const piece = [&](tune::BarIndex bar, music::Length begin, music::Length end,
                           bool held) {
        LaneBar const& place = layout.bars[bar];
        Lane& lane = layout.lanes[static_cast<std::size_t>(place.lane)];
        music::Length const whole = tune.bars[bar].length;
        double const x = xAt(place, begin, whole);
        double const to = xAt(place, end, whole);
        auto const loud = [&](music::Length since) {
            return std::max(0.0, 1 - since.wholes.toDouble() / fades);
        };
        lane.tails.push_back({yAt(layout, lane, note.string), x,
                              std::min(to, lane.strings.right()), loud(gone),
                              loud(gone + (end - begin)), held, note.hand});
    };
    auto const bar = [&](tune::BarIndex index) {
        music::Length const whole = tune.bars[index].length;
        music::Length const end = std::min(whole, from + (note.rings - gone));
        // Within a bar: as counted first, then what rings on.
        music::Length const counted = std::min(note.held, note.rings);
        if (gone < counted) {
            music::Length const heldTo = std::min(end, from + (counted - gone));
            piece(index, from, heldTo, true);
            gone = gone + (heldTo - from);
            from = heldTo;
        }
        if (from < end) {
            piece(index, from, end, false);
            gone = gone + (end - from);
        }
        from = {};
    };
    bar(note.bar);
    for (tune::BarIndex const index : note.barsBehind) {
        if (gone >= note.rings) break;
        bar(index);
    }
}

void addNotes(LaneLayout& layout, arrange::Arrangement const& arrangement,
              std::vector<LaneNote> const& notes)
{
    constexpr double rollShift = 4;
    struct Drawn {
        double x, y;
        music::Length at;
        bool afterBlock;
    };
    base::List<arrange::PositionIndex, std::optional<Drawn>> before(
        arrangement.positions.size(), {});
    for (LaneNote const& note : notes) {
        addTails(layout, arrangement.tune, note);
        LaneBar const& bar = layout.bars[note.bar];
        Lane& lane = layout.lanes[static_cast<std::size_t>(bar.lane)];
        music::Length const whole = arrangement.tune.bars[note.bar].length;
        PluckDot const pluck{xAt(bar, note.at, whole) + rollShift * note.rollOrder,
                             yAt(layout, lane, note.string), note.hand, note.fromTune,
                             note.position};
        lane.plucks.push_back(pluck);
        if (!note.position) continue;
        // Together: a stem. One after the other: a thread, but none from a block to the next.
        auto& last = before[*note.position];
        bool const together = last && last->at == note.at;
        if (last && (together || !last->afterBlock))
            lane.threads.push_back({last->x, last->y, pluck.x, pluck.y, together});
        last = Drawn{pluck.x, pluck.y, note.at, together};
    }
}

} // namespace

std::vector<LaneSection> laneSections(tune::Tune const& tune)
{
    bool const named = namesParts(tune);
    std::vector<LaneSection> sections;
    int letter = 0; // of the next part without a name, in its time through
    for (tune::BarIndex const i : tune.bars.indices()) {
        bool const other = i > 0 && (tune.bars[i].role != tune.bars[i - 1].role ||
                                     tune.bars[i].time != tune.bars[i - 1].time);
        bool const begins = other || (named ? !tune.bars[i].part.empty() : beginsPart(tune, i));
        bool const ofTune = tune.bars[i].role == tune::Role::Tune;
        if (other && ofTune) letter = 0;
        // A pick-up alone is no part: it belongs to the bars behind it.
        bool const afterPickUp = !named && i > 0 && isPickUp(tune.bars[i - 1]);
        if (sections.empty() || other || (begins && !afterPickUp)) {
            LaneSection section;
            section.firstBar = i;
            section.part = named    ? tune.bars[i].part
                           : ofTune ? std::string(1, static_cast<char>('A' + letter++ % 26))
                                    : std::string();
            sections.push_back(section);
        }
        sections.back().lastBar = i;
        if (tune.bars[i].repeatCloses)
            sections.back().timesPlayed =
                std::max(sections.back().timesPlayed, tune.bars[i].timesPlayed);
    }
    auto const lettered = std::ranges::count_if(
        sections, [](LaneSection const& section) { return !section.part.empty(); });
    if (!named && lettered == 1)
        for (LaneSection& section : sections) section.part.clear();
    return sections;
}

LaneLayout layOutLanes(arrange::Arrangement const& arrangement, LaneMeasure const& measure,
                       std::optional<arrange::PositionIndex> selected)
{
    LaneLayout layout;
    auto const notes = laneNotes(arrangement, selected);
    findStrings(layout, arrangement.harp, notes);
    layout.apart = stringsApart(layout, measure);
    double const left = measure.margin + measure.gutter;
    double const width = measure.width - left - measure.margin - lead;
    layout.barsPerLane = barsPerLane(width, measure);
    double const column = width / layout.barsPerLane;
    double const strings = layout.apart * (layout.highestString - layout.lowestString);
    double const laneHeight = measure.nameHeight + strings + measure.footHeight;
    auto const& bars = arrangement.tune.bars;
    double y = measure.margin / 2;
    for (LaneSection const& section : laneSections(arrangement.tune)) {
        int inLane = layout.barsPerLane; // full: the first bar opens a lane
        double pickUpWidth = 0;
        int firstEnding = 0; // the column of the latest first ending
        for (tune::BarIndex bar = section.firstBar; bar <= section.lastBar; ++bar) {
            if (inLane == layout.barsPerLane) {
                // Second endings stand below first ones.
                inLane = beginsEnding(arrangement.tune, bar) > 1 ? firstEnding : 0;
                double const x = left + inLane * column;
                Lane lane;
                lane.firstBar = bar;
                lane.box = {x, y, lead, laneHeight};
                lane.strings = {x, y + measure.nameHeight, lead, strings};
                if (bar == section.firstBar) {
                    lane.part = section.part;
                    lane.timesPlayed = section.timesPlayed;
                }
                layout.lanes.push_back(lane);
                y += laneHeight + measure.gap;
            }
            if (beginsEnding(arrangement.tune, bar) == 1) firstEnding = inLane;
            Lane& lane = layout.lanes.back();
            LaneBar place;
            place.bar = bar;
            place.lane = static_cast<int>(layout.lanes.size()) - 1;
            double const x = left + inLane * column;
            bool const pickUp = isPickUp(bars[bar]);
            // A pick-up shares the column of the bar it leads to.
            if (pickUp && pickUpWidth == 0 && bar < section.lastBar) {
                pickUpWidth = 0.3 * column;
                place.box = {x, lane.box.y, pickUpWidth, laneHeight};
            } else {
                place.box = {x + pickUpWidth, lane.box.y, column - pickUpWidth, laneHeight};
                pickUpWidth = 0;
                ++inLane;
            }
            lane.lastBar = bar;
            lane.box.width = place.box.right() + lead - lane.box.x;
            lane.strings.width = lane.box.width;
            addChords(place, arrangement, measure);
            layout.bars.push_back(std::move(place));
        }
    }
    layout.height = y + measure.margin / 2 - measure.gap;
    addNotes(layout, arrangement, notes);
    return layout;
}

double xAt(LaneBar const& bar, music::Length fromBarStart, music::Length barLength)
{
    return bar.box.x + lead + bar.box.width * (fromBarStart / barLength).toDouble();
}

double yAt(LaneLayout const& layout, Lane const& lane, harp::StringIndex string)
{
    return lane.strings.bottom() - layout.apart * (string - layout.lowestString);
}

LaneBar const* barOf(LaneLayout const& layout, arrange::PositionIndex position)
{
    for (LaneBar const& bar : layout.bars)
        for (LaneChord const& chord : bar.chords)
            if (chord.position == position) return &bar;
    return nullptr;
}

LaneChord const* chordOf(LaneLayout const& layout, arrange::PositionIndex position)
{
    for (LaneBar const& bar : layout.bars)
        for (LaneChord const& chord : bar.chords)
            if (chord.position == position) return &chord;
    return nullptr;
}

std::optional<arrange::PositionIndex> positionAt(LaneLayout const& layout, double x, double y,
                                                 std::optional<arrange::PositionIndex> selected)
{
    for (LaneBar const& bar : layout.bars) {
        if (!bar.box.contains(x, y)) continue;
        for (LaneChord const& chord : bar.chords)
            if (chord.name.contains(x, y)) return chord.position;
        std::optional<arrange::PositionIndex> first;
        for (LaneChord const& chord : bar.chords) {
            if (!chord.stretch.contains(x, y)) continue;
            if (chord.position == selected) return selected;
            if (!first) first = chord.position;
        }
        if (!first && !bar.chords.empty()) return bar.chords.front().position;
        return first;
    }
    return std::nullopt;
}

std::optional<tune::BarIndex> barAt(LaneLayout const& layout, double x, double y)
{
    std::optional<tune::BarIndex> nearest;
    double nearestAway = std::numeric_limits<double>::max();
    for (LaneBar const& bar : layout.bars) {
        if (bar.box.contains(x, y)) return bar.bar;
        if (y < bar.box.y || y >= bar.box.bottom()) continue;
        double const away = std::max(bar.box.x - x, x - bar.box.right());
        if (away < nearestAway) nearest = bar.bar;
        nearestAway = std::min(nearestAway, away);
    }
    return nearest;
}

namespace {

// The position of the nearest lane above (-1) or below (+1) that lies closest across.
arrange::PositionIndex inLaneBeside(LaneLayout const& layout, arrange::PositionIndex position,
                                    int direction)
{
    LaneBar const* from = barOf(layout, position);
    LaneChord const* here = chordOf(layout, position);
    double const middle = here->name.x + here->name.width / 2;
    arrange::PositionIndex best = position;
    int bestLanes = std::numeric_limits<int>::max();
    double bestAway = 0;
    for (LaneBar const& bar : layout.bars)
        for (LaneChord const& chord : bar.chords) {
            int const lanes = (bar.lane - from->lane) * direction;
            if (lanes < 1 || lanes > bestLanes) continue;
            double const away = std::abs(chord.name.x + chord.name.width / 2 - middle);
            if (lanes == bestLanes && away >= bestAway) continue;
            best = chord.position;
            bestLanes = lanes;
            bestAway = away;
        }
    return best;
}

} // namespace

arrange::PositionIndex neighbour(LaneLayout const& layout, arrange::PositionIndex position,
                                 Step step)
{
    if (!chordOf(layout, position)) return position;
    arrange::PositionIndex last = 0;
    for (LaneBar const& bar : layout.bars)
        for (LaneChord const& chord : bar.chords) last = std::max(last, chord.position);
    switch (step) {
    case Step::Left:
        return std::max(arrange::PositionIndex(0), position - 1);
    case Step::Right:
        return std::min(last, position + 1);
    case Step::Up:
        return inLaneBeside(layout, position, -1);
    case Step::Down:
        return inLaneBeside(layout, position, +1);
    case Step::First:
        return 0;
    case Step::Last:
        return last;
    }
    return position;
}

} // namespace ui
