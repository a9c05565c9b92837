#include "core/levers/leverplan.h"

#include "core/levers/moments.h"
#include "core/levers/planned.h"

#include <fmt/format.h>

#include <algorithm>

namespace levers {

namespace {

using Notes = std::span<tune::PlayedNote const>;

// The bar that sounds at a moment.
int playedBarAt(std::vector<tune::PlayedBar> const& bars, music::Moment at)
{
    auto const next = std::upper_bound(
        bars.begin(), bars.end(), at,
        [](music::Moment m, tune::PlayedBar const& bar) { return m < bar.at; });
    return std::max(0, static_cast<int>(next - bars.begin()) - 1);
}

// The refusal of turns that have each their moment but not all of them together: names the
// first that finds no room beside those before it.
base::Fault tooManyAtOnce(std::vector<Turn> const& turns,
                          std::vector<std::vector<Window>> const& choices, Notes notes,
                          Performance const& performance)
{
    std::size_t fit = 0; // as many turns go together, seen from the first
    std::size_t fail = turns.size();
    while (fail - fit > 1) {
        std::size_t const middle = fit + (fail - fit) / 2;
        std::vector<std::vector<Window>> const first(choices.begin(),
                                                     choices.begin() + std::ptrdiff_t(middle));
        (chosenWindows(first).empty() ? fail : fit) = middle;
    }
    int const note = turns[fail - 1].before;
    return {base::FaultCode::NoMomentForFlip, placeOfNote(note, notes, performance),
            fmt::format("the lever for {} has no turn of its own beside the other levers that "
                        "are turned about here",
                        shown(notes[static_cast<std::size_t>(note)].pitch))};
}

} // namespace

base::Result<harp::LeverTimeline> planned(harp::Harp const& harp, music::Key key, Notes notes,
                                          Performance const& performance)
{
    auto setup = harp::settingFor(harp, key);
    if (!setup) return setup.error();
    auto const seating = seated(harp, notes, performance);
    if (!seating) return seating.error();

    harp::LeverTimeline timeline{*std::move(setup), {}};
    for (std::size_t string = 0; string < seating->starts.size(); ++string)
        if (seating->starts[string]) timeline.setup[string] = *seating->starts[string];

    std::vector<std::vector<Window>> choices;
    for (Turn const& turn : seating->turns)
        choices.push_back(performance.clock.windows(gapOf(turn, notes, harp)));
    std::vector<Window> const windows = chosenWindows(choices);
    if (windows.size() != choices.size())
        return tooManyAtOnce(seating->turns, choices, notes, performance);

    for (std::size_t i = 0; i < windows.size(); ++i)
        timeline.flips.push_back({windows[i].at, windows[i].freeFrom, windows[i].freeTo,
                                  seating->turns[i].string, seating->turns[i].to,
                                  windows[i].hand,
                                  playedBarAt(performance.bars, windows[i].at)});
    std::sort(timeline.flips.begin(), timeline.flips.end(),
              [](harp::Flip const& a, harp::Flip const& b) {
                  return std::pair(a.at, a.string) < std::pair(b.at, b.string);
              });
    return timeline;
}

base::Result<harp::LeverTimeline> leverPlan(harp::Harp const& harp, tune::Tune const& tune,
                                            tune::Playing const& playing, tune::Tempo tempo,
                                            harp::Level const& level)
{
    Performance const performance{tune, playing.bars, tempo, level,
                                  Clock(tune, playing, tempo, level)};
    return planned(harp, tune.key, playing.notes, performance);
}

} // namespace levers
