#include "core/levers/leverplan.h"

#include "core/base/words.h"
#include "core/levers/moments.h"
#include "core/levers/planned.h"
#include "core/levers/uses.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>
#include <optional>
#include <set>
#include <utility>
#include <variant>

namespace levers {

namespace {


// The bar that sounds at a moment.
tune::PlayedBarIndex playedBarAt(tune::PlayedBars const& bars, music::Moment at)
{
    auto const next = std::upper_bound(
        bars.begin(), bars.end(), at,
        [](music::Moment m, tune::PlayedBar const& bar) { return m < bar.at; });
    return std::max(bars.indexOf(next) - 1, tune::PlayedBarIndex(0));
}

// The refusal of turns that have each their moment but not all of them together: names the
// first that finds no room beside those before it.
Refused tooManyAtOnce(std::vector<Turn> const& turns, std::vector<Gap> const& gaps,
                      std::vector<std::vector<Window>> const& choices, Moments& moments,
                      Uses const& notes, Performance const& performance)
{
    std::size_t fit = 0; // as many turns go together, seen from the first
    std::size_t fail = turns.size();
    while (fail - fit > 1) {
        std::size_t const middle = fit + (fail - fit) / 2;
        auto const last = std::ptrdiff_t(middle);
        std::vector<Gap> const firstGaps(gaps.begin(), gaps.begin() + last);
        std::vector<std::vector<Window>> const first(choices.begin(), choices.begin() + last);
        (moments.chosen(firstGaps, first).empty() ? fail : fit) = middle;
    }
    Turn const& turn = turns[fail - 1];
    UseIndex const note = turn.before;
    return {{base::FaultCode::NoMomentForFlip, placeOfNote(note, notes, performance),
             base::say("so many levers are flipped near here that there is no time for the "
                       "lever of {}",
                       shown(notes[note].pitch))},
            note,
            turn.after};
}

// A seating with its moments.
struct Timed {
    Seating seating;
    std::vector<Gap> gaps;
    std::vector<Window> windows;
    std::int64_t cost = 0;
};

using Outcome = std::variant<Timed, Refused>;

Outcome bestTimed(harp::Harp const& harp, Uses const& notes, Performance const& performance,
                  NoteChoices const& choices = {}, int most = seatingsTried)
{
    Seatings seatings(harp, notes, performance, choices);
    if (seatings.refused()) return *seatings.refused();
    Moments moments;
    std::optional<Timed> best;
    std::optional<Refused> crowded; // of the seating that would be best
    // Notes between which levers turn, and the notes that are not as written.
    std::set<std::pair<std::vector<std::tuple<int, int, bool>>, std::vector<std::pair<int, int>>>>
        known;
    for (int tried = 0; tried < most; ++tried) {
        // Nothing later costs less than what its own best windows cost.
        if (best && best->cost <= best->seating.leastCost) break;
        auto seating = seatings.next();
        if (!seating || (best && seating->leastCost >= best->cost)) break;
        std::vector<std::tuple<int, int, bool>> turns;
        for (Turn const& turn : seating->turns)
            turns.emplace_back(turn.after, turn.by, turn.quick);
        std::vector<std::pair<int, int>> taken;
        for (TakenWay const& way : seating->taken)
            taken.emplace_back(way.note, static_cast<int>(way.way.way));
        // The same, on more neighbours.
        if (!known.insert({std::move(turns), std::move(taken)}).second) continue;
        std::vector<Gap> gaps;
        std::vector<std::vector<Window>> windowsOf;
        for (Turn const& turn : seating->turns) {
            gaps.push_back(gapOf(turn, notes, harp));
            windowsOf.push_back(performance.clock.windows(gaps.back()));
        }
        std::vector<Window> windows = moments.chosen(gaps, windowsOf);
        if (windows.size() != windowsOf.size()) {
            if (!crowded && !best)
                crowded = tooManyAtOnce(seating->turns, gaps, windowsOf, moments, notes,
                                        performance);
            continue;
        }
        std::int64_t const cost = costOf(*seating, windowsOf, windows);
        if (!best || cost < best->cost)
            best = Timed{*std::move(seating), std::move(gaps), std::move(windows), cost};
    }
    if (best) return *std::move(best);
    return *crowded;
}

harp::Flip flipOf(Window const& window, harp::Lever to, tune::PlayedBars const& bars)
{
    return {window.at,     window.freeFrom, window.freeTo,
            window.string, to,              window.hand,
            playedBarAt(bars, window.at),   window.cost - window.leftCost};
}

// Flips and their gaps in the order of time.
void order(Plan& plan)
{
    std::vector<std::size_t> places(plan.gaps.size());
    std::iota(places.begin(), places.end(), std::size_t(0));
    auto const& flips = plan.timeline.flips;
    std::sort(places.begin(), places.end(), [&flips](std::size_t a, std::size_t b) {
        return std::pair(flips[a].at, flips[a].string) <
               std::pair(flips[b].at, flips[b].string);
    });
    Plan sorted = plan;
    for (std::size_t i = 0; i < places.size(); ++i) {
        sorted.timeline.flips[i] = plan.timeline.flips[places[i]];
        sorted.gaps[i] = plan.gaps[places[i]];
    }
    plan = std::move(sorted);
}

void setWishes(harp::LeverSetting& setup, harp::Harp const& harp,
               std::vector<harp::LeverWish> const& wishes)
{
    for (harp::LeverWish const& wish : wishes) {
        auto const string = stringFor(harp, {wish.letter, 0, wish.octave});
        if (string && harp.string(*string).hasLever) setup[*string] = wish.lever;
    }
}

Plan planOf(Timed const& timed, harp::LeverSetting setup, tune::PlayedBars const& bars)
{
    Plan plan{{std::move(setup), {}}, timed.gaps, {}, timed.cost};
    for (harp::StringIndex string = 0; string < timed.seating.starts.size(); ++string)
        if (timed.seating.starts[string])
            plan.timeline.setup[string] = *timed.seating.starts[string];
    for (std::size_t i = 0; i < timed.windows.size(); ++i)
        plan.timeline.flips.push_back(
            flipOf(timed.windows[i], timed.seating.turns[i].to, bars));
    order(plan);
    return plan;
}

// The grace note that stands in the way, if it is one; of levers that crowd, any that is there.
std::optional<tune::PlayedNote> graceInTheWay(Refused const& refused, Uses const& notes)
{
    for (std::optional<UseIndex> const index : {std::optional(refused.note), refused.after})
        if (index && isGrace(notes[*index])) return notes[*index];
    return std::nullopt;
}

// Leave to flip quickly at some notes.
NoteChoices quickChoices(Uses const& uses, Performance const& performance)
{
    NoteChoices choices(uses.size(), {});
    for (UseIndex const i : uses.indices()) {
        choices[i].figure = i;
        if (!isGrace(uses[i]) &&
            std::ranges::find(performance.quick, placeOf(uses[i], performance.bars)) !=
                performance.quick.end())
            choices[i].ways.push_back({tune::Way::LeftLightened, uses[i].pitch, 0});
    }
    return choices;
}

} // namespace

Planning planned(harp::Harp const& harp, music::Key key, Uses uses,
                 Performance const& performance)
{
    auto setup = harp::settingFor(harp, key);
    if (!setup && performance.anyKey) setup = harp::nearestSetting(harp, key);
    if (!setup) return {std::nullopt, Refusal{setup.error()}};
    setWishes(*setup, harp, performance.wishes);
    std::vector<tune::NotePlace> left;
    while (true) {
        NoteChoices choices;
        if (!performance.quick.empty()) choices = quickChoices(uses, performance);
        Outcome const outcome = bestTimed(harp, uses, performance, choices);
        if (auto const* timed = std::get_if<Timed>(&outcome)) {
            Plan plan = planOf(*timed, *std::move(setup), performance.bars);
            plan.gracesLeft = std::move(left);
            return {std::move(plan), std::nullopt};
        }
        auto const& refused = std::get<Refused>(outcome);
        auto const placed = [&](UseIndex note) {
            return placeOf(uses[note], performance.bars);
        };
        auto const grace = graceInTheWay(refused, uses);
        if (!grace) {
            Refusal refusal{refused.fault, placed(refused.note), std::nullopt};
            if (refused.after) refusal.after = placed(*refused.after);
            return {std::nullopt, std::move(refusal)};
        }
        tune::NotePlace const place = placeOf(*grace, performance.bars);
        left.push_back(place);
        uses.eraseIf([&](tune::PlayedNote const& use) {
            return isGrace(use) && placeOf(use, performance.bars) == place;
        });
    }
}

Planning leverPlanFor(harp::Harp const& harp, tune::Tune const& tune,
                      tune::Playing const& playing, tune::Tempo tempo,
                      harp::Level const& level, std::vector<harp::LeverWish> wishes,
                      Leave leave)
{
    Performance const performance{
        tune,  playing.bars, tempo, level, Clock(tune, playing, tempo, level),
        std::move(wishes), std::move(leave.quick), leave.anyKey};
    return planned(harp, tune.key, usesOf(tune, playing), performance);
}

MendedSeating mendedSeating(harp::Harp const& harp, Uses const& notes,
                            Performance const& performance, NoteChoices const& choices,
                            int most, std::optional<std::int64_t> dearest)
{
    if (most == 0) {
        Seatings seatings(harp, notes, performance, choices, dearest);
        if (seatings.tooDear()) return {{}, std::nullopt, 0, true};
        if (seatings.refused()) return {{}, seatings.refused(), 0, false};
        Seating first = *seatings.next();
        std::int64_t const cost = first.leastCost;
        return {std::move(first), std::nullopt, cost, false};
    }
    Outcome outcome = bestTimed(harp, notes, performance, choices, most);
    if (auto const* refused = std::get_if<Refused>(&outcome)) return {{}, *refused, 0, false};
    Timed& timed = std::get<Timed>(outcome);
    return {std::move(timed.seating), std::nullopt, timed.cost, false};
}

Plan retimed(Plan plan, Clock const& clock, tune::PlayedBars const& bars, LeftLoss const& lost)
{
    std::vector<std::vector<Window>> choices;
    for (Gap const& gap : plan.gaps) {
        choices.push_back(clock.windows(gap));
        for (Window& window : choices.back())
            if (window.hand == harp::Side::Left) {
                int const loss = lost(window.freeFrom, window.freeTo);
                window.cost += loss - window.leftCost;
                window.leftCost = loss;
            }
    }
    std::vector<Window> const windows = Moments().chosen(plan.gaps, choices);
    for (std::size_t i = 0; i < windows.size(); ++i)
        plan.timeline.flips[i] = flipOf(windows[i], plan.timeline.flips[i].to, bars);
    order(plan);
    return plan;
}

} // namespace levers
