#include "core/proposal/formed.h"

#include "core/base/words.h"
#include "core/tune/drone.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace proposal {

namespace {

// "First time: plain": what the page says where a time through begins.
std::string timeWords(std::size_t time, TimeManner const& manner)
{
    std::string const number = time == 0   ? base::said("First time")
                               : time == 1 ? base::said("Second time")
                               : time == 2 ? base::said("Third time")
                                           : base::say("Time {}", time + 1);
    return number + ": " + manner.name;
}

tune::FormWish wishOf(Form const& form)
{
    tune::FormWish wish{form.introduction, form.ending, {}};
    for (std::size_t time = 0; time < form.times.size(); ++time)
        wish.times.push_back(timeWords(time, form.times[time]));
    return wish;
}

TimeManner const* mannerOf(Form const& form, tune::Bar const& bar)
{
    auto const time = static_cast<std::size_t>(bar.time - 1);
    return time < form.times.size() ? &form.times[time] : nullptr;
}

bool beginsStrain(tune::Bar const& before, tune::Bar const& bar)
{
    if (bar.repeatOpens || !bar.part.empty()) return true;
    return bar.endings.empty() &&
           (before.repeatCloses || before.endingCloses ||
            before.closes == tune::BarLine::Double || before.closes == tune::BarLine::Final);
}

// Which strain of its time each bar stands in, from 0.
base::List<tune::BarIndex, int> strainsOf(tune::Tune const& tune)
{
    base::List<tune::BarIndex, int> strains;
    int strain = 0;
    for (tune::BarIndex const i : tune.bars.indices()) {
        if (i == 0 || tune.bars[i - 1].time != tune.bars[i].time ||
            tune.bars[i - 1].role != tune.bars[i].role)
            strain = 0;
        else if (beginsStrain(tune.bars[i - 1], tune.bars[i]))
            ++strain;
        strains.push_back(strain);
    }
    return strains;
}

arrange::Weights turnedTwice(arrange::Weights weights,
                             std::vector<arrange::Turned> const& first,
                             std::vector<arrange::Turned> const& then)
{
    return arrange::turned(arrange::turned(std::move(weights), first), then);
}

bool fits(tune::Tune const& tune, int time, int octave, harp::Harp const& harp)
{
    // Under an octave of strings below the tune the left hand has no shape of its own.
    constexpr int roomBelow = 9;
    for (tune::Bar const& bar : tune.bars) {
        if (bar.time != time || bar.role != tune::Role::Tune) continue;
        for (tune::Note const& note : bar.notes)
            for (music::Pitch pitch : note.pitches) {
                pitch.octave += octave;
                auto const string = harp::stringFor(harp, pitch);
                if (!string || (octave < 0 && *string < roomBelow)) return false;
            }
    }
    return true;
}

} // namespace

tune::Formed formOf(Brief const& brief)
{
    return tune::formed(tune::overDrone(tune::changed(brief.tune, brief.changes)),
                        wishOf(brief.form));
}

tune::BarIndex writtenBar(Brief const& brief, tune::BarIndex bar)
{
    if (brief.form.isPlain()) return bar;
    auto const from = formOf(brief).from;
    return from.holds(bar) ? from[bar].bar : tune::BarIndex(0);
}

std::vector<int> inOctaves(tune::Tune& tune, Form const& form, harp::Harp const& harp)
{
    std::vector<int> stay;
    for (std::size_t time = 0; time < form.times.size(); ++time) {
        int const octave = form.times[time].octave;
        int const number = static_cast<int>(time) + 1;
        if (octave == 0) continue;
        if (!fits(tune, number, octave, harp)) {
            stay.push_back(number);
            continue;
        }
        for (tune::Bar& bar : tune.bars) {
            if (bar.time != number || bar.role != tune::Role::Tune) continue;
            for (tune::Note& note : bar.notes) {
                for (music::Pitch& pitch : note.pitches) pitch.octave += octave;
                for (music::Pitch& grace : note.graces) grace.octave += octave;
            }
        }
    }
    return stay;
}

WeightsByBar weightsByBar(Brief const& brief, tune::Tune const& formed)
{
    arrange::Weights const own =
        arrange::turned(arrange::leant(brief.weights, brief.leaning), brief.sliders);
    WeightsByBar out{{own}, {}};
    if (brief.form.times.empty()) return out;
    std::map<std::pair<int, bool>, int> known; // time, second strain
    auto const strains = strainsOf(formed);
    for (tune::BarIndex const bar : formed.bars.indices()) {
        TimeManner const* const manner = mannerOf(brief.form, formed.bars[bar]);
        bool const second = strains[bar] % 2 == 1;
        auto const [at, isNew] = known.try_emplace({formed.bars[bar].time, second},
                                                   static_cast<int>(out.all.size()));
        if (isNew)
            out.all.push_back(manner == nullptr
                                  ? own
                                  : turnedTwice(own, manner->sliders,
                                                second ? manner->secondStrain
                                                       : std::vector<arrange::Turned>{}));
        out.ofBar.push_back(at->second);
    }
    return out;
}

namespace {

// Strings that are plucked at the beginning.
int pluckedFirst(arrange::Voicing const& voicing)
{
    if (voicing.notes.empty()) return 0;
    music::Length const first = voicing.notes.front().at;
    return static_cast<int>(std::ranges::count(voicing.notes, first, &arrange::VoicedNote::at));
}

// What a manner has against a candidate, beyond its sliders.
arrange::Points against(TimeManner const& manner, arrange::Voicing const& voicing, int most,
                        bool inPairs)
{
    arrange::Points sum = 0;
    int const over = static_cast<int>(voicing.notes.size()) - most;
    if (manner.mostNotes > 0 && over > 0) sum += over * manner.noteTooMany;
    if (inPairs && pluckedFirst(voicing) < 2) sum += manner.loneString;
    return sum;
}

} // namespace

void keepToManners(arrange::Lattice& lattice, Brief const& brief, tune::Tune const& formed)
{
    if (brief.form.times.empty()) return;
    for (arrange::PositionIndex const i : lattice.positions.indices()) {
        arrange::Position const& position = lattice.positions[i];
        tune::Bar const& bar = formed.bars[position.bar];
        TimeManner const* const manner = mannerOf(brief.form, bar);
        if (manner == nullptr) continue;
        bool const inPairs =
            brief.level.number <= manner->pairsTo && bar.upbeat == music::Length{};
        if (manner->mostNotes == 0 && !inPairs) continue;
        double const share = (position.span / music::barLength(bar.meter)).toDouble();
        int const most = std::max(1, static_cast<int>(std::lround(manner->mostNotes * share)));
        arrange::Candidates list = lattice.candidates[i].copy();
        for (arrange::Candidate& candidate : list) {
            arrange::Points const cost = against(*manner, candidate.voicing, most, inPairs);
            if (cost == 0) continue;
            candidate.account[static_cast<std::size_t>(arrange::Term::Passes)] += cost;
            candidate.cost += cost;
        }
        lattice.candidates[i] = std::move(list);
    }
}

base::List<tune::BarIndex, RightHand> rightByBar(Brief const& brief, tune::Tune const& formed)
{
    base::List<tune::BarIndex, RightHand> out;
    if (brief.form.times.empty()) return out;
    for (tune::Bar const& bar : formed.bars) {
        TimeManner const* const manner = mannerOf(brief.form, bar);
        out.push_back(manner != nullptr && manner->right ? *manner->right : brief.right);
    }
    return out;
}

} // namespace proposal
