#include "ui/lanenotes.h"

#include "core/perform/schedule.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace ui {

namespace {

music::Length lengthOf(double seconds, tune::Tempo tempo)
{
    // Whole notes to a 1/960 of a crotchet: finer than any screen.
    double const wholeSeconds = perform::secondsOf({music::Rational(1)}, tempo);
    return {music::Rational(std::lround(seconds / wholeSeconds * 3840), 3840)};
}

// The first time a written bar is played.
std::map<int, tune::PlayedBarIndex> firstPlayedBars(tune::Playing const& playing)
{
    std::map<int, tune::PlayedBarIndex> out;
    for (tune::PlayedBarIndex const i : playing.bars.indices())
        out.emplace(playing.bars[i].bar, i);
    return out;
}

// When each string stops by another's doing: plucked anew, or its lever turned.
using Stops = std::map<int, std::vector<music::Moment>>;

Stops stopsOf(arrange::Arrangement const& arrangement,
              std::vector<arrange::HandNote> const& notes)
{
    Stops stops;
    for (arrange::HandNote const& note : notes) stops[note.string].push_back(note.at);
    for (harp::Flip const& flip : arrangement.levers.flips)
        stops[flip.string].push_back(flip.at);
    for (auto& [string, moments] : stops) std::ranges::sort(moments);
    return stops;
}

std::vector<tune::BarIndex> barsBehind(tune::Playing const& playing,
                                       tune::PlayedBarIndex playedBar, music::Moment until)
{
    std::vector<tune::BarIndex> out;
    for (tune::PlayedBarIndex i = playedBar + 1; i < playing.bars.size(); ++i) {
        if (playing.bars[i].at >= until) break;
        if (playing.bars[i].bar != playing.bars[i - 1].bar + 1) break; // a jump
        out.push_back(playing.bars[i].bar);
    }
    return out;
}

} // namespace

bool drawnAt(arrange::Arrangement const& arrangement, arrange::PositionIndex position,
             std::optional<arrange::PositionIndex> selected)
{
    auto const& positions = arrangement.positions;
    auto const& here = positions[position].position;
    auto const shares = [&](arrange::PositionIndex other) {
        auto const& there = positions[other].position;
        return there.bar == here.bar && there.at == here.at;
    };
    if (selected && positions.holds(*selected) && shares(*selected))
        return *selected == position;
    return position == 0 || !shares(position - 1);
}

std::vector<LaneNote> laneNotes(arrange::Arrangement const& arrangement,
                                std::optional<arrange::PositionIndex> selected)
{
    auto const notes = arrange::handNotes(arrangement);
    auto const played = arrange::playedPositions(arrangement);
    auto const firstPlayed = firstPlayedBars(arrangement.playing);
    Stops const stops = stopsOf(arrangement, notes);
    std::vector<LaneNote> out;
    for (arrange::HandNote const& note : notes) {
        auto const& playedBar = arrangement.playing.bars[note.playedBar];
        std::optional<arrange::PositionIndex> position;
        if (note.position) {
            auto const& of = played[*note.position];
            auto const& first = arrangement.positions[of.position].position.played.front();
            if (of.when.playedBar != first.playedBar) continue;
            if (!drawnAt(arrangement, of.position, selected)) continue;
            position = of.position;
        } else if (firstPlayed.at(playedBar.bar) != note.playedBar) {
            continue;
        }
        LaneNote lane;
        lane.bar = playedBar.bar;
        lane.at = note.at - playedBar.at;
        lane.held = note.held;
        lane.fades = lengthOf(harp::ringSeconds(arrangement.harp.string(note.string)),
                              arrangement.tempo);
        lane.rings = lane.fades;
        auto const& moments = stops.at(note.string);
        auto const next = std::ranges::upper_bound(moments, note.at);
        if (next != moments.end()) lane.rings = std::min(lane.rings, *next - note.at);
        lane.string = note.string;
        lane.hand = note.hand;
        lane.fromTune = note.fromTune;
        lane.rollOrder = note.rollOrder;
        lane.position = position;
        lane.barsBehind =
            barsBehind(arrangement.playing, note.playedBar, note.at + lane.rings);
        out.push_back(std::move(lane));
    }
    return out;
}

} // namespace ui
