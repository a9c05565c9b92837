#include "core/tune/tune.h"

#include "core/base/words.h"

#include <algorithm>

namespace tune {

namespace {

using music::Interval;

void transpose(Bar& bar, Interval by)
{
    bar.key.tonic = transposed(bar.key.tonic, by);
    for (Note& note : bar.notes) {
        for (music::Pitch& pitch : note.pitches) pitch = transposed(pitch, by);
        for (music::Pitch& grace : note.graces) grace = transposed(grace, by);
    }
    for (ChordMark& mark : bar.chords) mark.chord = transposed(std::move(mark.chord), by);
}

bool endsSection(Bar const& bar)
{
    return bar.repeatCloses || bar.closes == BarLine::Double || bar.closes == BarLine::Final;
}

bool opensSection(Bar const& bar) { return bar.repeatOpens || !bar.part.empty(); }

// A short bar at the start of the tune or of a section is a pick-up; the short bar of a second
// ending is not, its missing end is the next pick-up.
bool isPickUp(Bars const& bars, BarIndex i)
{
    Bar const& bar = bars[i];
    if (bar.length >= barLength(bar.meter) || i + 1 == bars.size()) return false;
    if (i == 0) return true;
    return bar.endings.empty() && (endsSection(bars[i - 1]) || opensSection(bar));
}

// A pick-up inside the tune that completes the short bar before it is counted with that bar.
bool completes(Bar const& pickUp, Bar const& before)
{
    return pickUp.upbeat.wholes > music::Rational(0) &&
           before.length + pickUp.length <= barLength(before.meter);
}

// Where the tune itself begins, for the first or another time.
bool beginsTime(Bars const& bars, BarIndex i)
{
    return i == 0 || bars[i - 1].role == Role::Introduction || bars[i - 1].time != bars[i].time;
}

std::string introductionName(Tune const& tune, BarIndex bar)
{
    int count = 0;
    for (BarIndex i = 0; i <= bar; ++i)
        if (tune.bars[i].upbeat == music::Length{}) ++count;
    if (count == 0) return base::said("the pick-up of the introduction");
    return base::say("bar {} of the introduction", count);
}

} // namespace

bool hasChords(Tune const& tune)
{
    return std::any_of(tune.bars.begin(), tune.bars.end(),
                       [](Bar const& bar) { return !bar.chords.empty(); });
}

bool hasNotes(Tune const& tune)
{
    auto const sounds = [](Note const& note) { return !note.pitches.empty(); };
    return std::any_of(tune.bars.begin(), tune.bars.end(), [sounds](Bar const& bar) {
        return std::any_of(bar.notes.begin(), bar.notes.end(), sounds);
    });
}

Tune transposed(Tune tune, Interval by)
{
    tune.key.tonic = transposed(tune.key.tonic, by);
    for (Bar& bar : tune.bars) transpose(bar, by);
    return tune;
}

void markPickUps(Bars& bars)
{
    for (BarIndex const i : bars.indices())
        bars[i].upbeat =
            isPickUp(bars, i) ? barLength(bars[i].meter) - bars[i].length : music::Length{};
}

void numberBars(Bars& bars)
{
    int number = -static_cast<int>(std::ranges::count(bars, Role::Introduction, &Bar::role));
    for (BarIndex const i : bars.indices()) {
        if (bars[i].role == Role::Introduction) {
            bars[i].number = number++;
            continue;
        }
        bool const begins = beginsTime(bars, i);
        if (begins) number = 0;
        bool const firstPickUp = begins && bars[i].upbeat.wholes > music::Rational(0);
        bool const counted = !firstPickUp && (begins || !completes(bars[i], bars[i - 1]));
        if (counted) ++number;
        bars[i].number = number;
    }
}

std::string barName(Tune const& tune, BarIndex bar)
{
    Bar const& here = tune.bars.at(bar);
    auto const number = [&tune](BarIndex at) { return tune.bars.at(at).number; };
    if (here.role == Role::Introduction) return introductionName(tune, bar);
    if (number(bar) == 0) return base::said("the pick-up bar");
    bool const completesOther = bar > 0 && number(bar - 1) == number(bar);
    if (completesOther) return base::say("the pick-up after bar {}", number(bar));
    return tune.bars.back().time == 1 ? base::say("bar {}", number(bar))
                                      : base::say("bar {}, time {}", number(bar), here.time);
}

} // namespace tune
