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
bool isPickUp(std::vector<Bar> const& bars, std::size_t i)
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

void markPickUps(std::vector<Bar>& bars)
{
    for (std::size_t i = 0; i < bars.size(); ++i)
        bars[i].upbeat =
            isPickUp(bars, i) ? barLength(bars[i].meter) - bars[i].length : music::Length{};
}

void numberBars(std::vector<Bar>& bars)
{
    int number = 0;
    for (std::size_t i = 0; i < bars.size(); ++i) {
        bool const firstPickUp = i == 0 && bars[i].upbeat.wholes > music::Rational(0);
        bool const counted = !firstPickUp && (i == 0 || !completes(bars[i], bars[i - 1]));
        if (counted) ++number;
        bars[i].number = number;
    }
}

std::string barName(Tune const& tune, int bar)
{
    auto const number = [&tune](int at) {
        return tune.bars.at(static_cast<std::size_t>(at)).number;
    };
    if (number(bar) == 0) return base::said("the pick-up bar");
    bool const completesOther = bar > 0 && number(bar - 1) == number(bar);
    return completesOther ? base::say("the pick-up after bar {}", number(bar))
                          : base::say("bar {}", number(bar));
}

} // namespace tune
