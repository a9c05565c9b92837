#include "core/tune/edit/whole.h"

#include "core/tune/edit/barline.h"

#include <algorithm>

namespace tune {

using base::Fault;
using base::FaultCode;
using base::Result;
using music::Interval;
using music::Length;

namespace {

bool isSilent(Bar const& bar)
{
    return std::all_of(bar.notes.begin(), bar.notes.end(),
                       [](Note const& note) { return note.pitches.empty(); });
}

// Bars from the first on that have the same value there.
template<typename Value>
BarIndex sameFromStart(Tune const& tune, Value value)
{
    auto const other = std::find_if(tune.bars.begin(), tune.bars.end(), [&](Bar const& bar) {
        return bar.*value != tune.bars.front().*value;
    });
    return tune.bars.indexOf(other);
}

// Cuts so much off the front of a bar.
void cutFront(Bar& bar, Length off)
{
    while (off > Length{}) {
        if (auto const tuplet = tupletOver(bar, 0)) dissolve(bar, *tuplet);
        Note& first = bar.notes.front();
        if (first.length > off) {
            first.length = first.length - off;
            off = {};
        } else {
            off = off - first.length;
            exchange(bar, 0, 1, {});
        }
    }
    addUp(bar);
}

} // namespace

Interval wayTo(Tune const& tune, music::PitchName tonic)
{
    constexpr int octave = 7;
    constexpr int semitones = 12;
    music::PitchName const from = tune.key.tonic;
    Interval by = between(music::Pitch{from.letter, from.alter, 4},
                          music::Pitch{tonic.letter, tonic.alter, 4});
    if (by.semitones > semitones / 2) by = {by.steps - octave, by.semitones - semitones};
    if (by.semitones < -semitones / 2) by = {by.steps + octave, by.semitones + semitones};
    return by;
}

Tune withSignature(Tune tune, music::Key key)
{
    int const before = signature(tune.key);
    int const after = signature(key);
    auto const follow = [before, after](music::Pitch& pitch) {
        if (pitch.alter == alterIn(before, pitch.letter))
            pitch.alter = alterIn(after, pitch.letter);
    };
    BarIndex const beyond = sameFromStart(tune, &Bar::key);
    for (BarIndex i = 0; i < beyond; ++i) {
        tune.bars[i].key = key;
        for (Note& note : tune.bars[i].notes) {
            std::for_each(note.pitches.begin(), note.pitches.end(), follow);
            std::for_each(note.graces.begin(), note.graces.end(), follow);
        }
    }
    tune.key = key;
    return tune;
}

Tune withMeter(Tune tune, music::Meter meter)
{
    BarIndex const beyond = sameFromStart(tune, &Bar::meter);
    for (BarIndex i = 0; i < beyond; ++i) {
        Bar& bar = tune.bars[i];
        bool const wasFull = bar.length == barLength(bar.meter);
        bar.meter = meter;
        if (!wasFull || !isSilent(bar)) continue;
        bar.notes = {restOf(barLength(meter))};
        bar.tuplets.clear();
        addUp(bar);
    }
    renumber(tune);
    return tune;
}

Tune withAllOctave(Tune tune, int octaves)
{
    constexpr int highest = 8;
    Tune const before = tune;
    bool leaves = false;
    auto const move = [octaves, &leaves](music::Pitch& pitch) {
        pitch.octave += octaves;
        leaves = leaves || pitch.octave < 0 || pitch.octave > highest;
    };
    for (Bar& bar : tune.bars)
        for (Note& note : bar.notes) {
            std::for_each(note.pitches.begin(), note.pitches.end(), move);
            std::for_each(note.graces.begin(), note.graces.end(), move);
        }
    return leaves ? before : tune;
}

std::optional<Length> pickUpOf(Tune const& tune)
{
    Bar const& first = tune.bars.front();
    return first.upbeat > Length{} ? std::optional(first.length) : std::nullopt;
}

Result<Tune> withPickUp(Tune tune, std::optional<Length> length)
{
    auto const now = pickUpOf(tune);
    if (now == length) return tune;
    if (length && (*length <= Length{} || *length >= barLength(tune.meter)))
        return Fault{FaultCode::BadLength, "pick-up", text(length->wholes)};
    if (!length) {
        if (tune.bars.size() < 2) return tune;
        Bar const gone = tune.bars.front();
        Bar& first = tune.bars[1];
        if (first.part.empty()) first.part = gone.part;
        first.repeatOpens = first.repeatOpens || gone.repeatOpens;
        tune.bars.erase(tune.bars.begin());
        renumber(tune);
        return tune;
    }
    if (!now) {
        Bar bar;
        bar.meter = tune.meter;
        bar.key = tune.key;
        bar.notes = {restOf(*length)};
        std::swap(bar.part, tune.bars.front().part);
        std::swap(bar.repeatOpens, tune.bars.front().repeatOpens);
        addUp(bar);
        tune.bars.insert(tune.bars.begin(), std::move(bar));
    } else if (*length > *now) {
        exchange(tune.bars.front(), 0, 0, {restOf(*length - *now)});
        addUp(tune.bars.front());
    } else {
        cutFront(tune.bars.front(), *now - *length);
    }
    renumber(tune);
    return tune;
}

Tune withHead(Tune tune, std::string title, std::string kind, std::optional<Tempo> tempo)
{
    tune.title = std::move(title);
    tune.rhythm = std::move(kind);
    tune.tempo = tempo;
    return tune;
}

music::Meter usualMeter(Kind kind)
{
    switch (kind) {
    case Kind::Waltz:
    case Kind::Mazurka:
    case Kind::Air:
        return {3, 4, false};
    case Kind::Jig:
    case Kind::SingleJig:
        return {6, 8, false};
    case Kind::SlipJig:
        return {9, 8, false};
    case Kind::Polka:
        return {2, 4, false};
    case Kind::TripleHornpipe:
        return {3, 2, false};
    case Kind::Other:
        return {5, 4, false};
    case Kind::Reel:
    case Kind::Hornpipe:
    case Kind::March:
    case Kind::Strathspey:
        break;
    }
    return {4, 4, false};
}

Tune newTune(NewTune const& wish)
{
    Tune tune;
    tune.title = wish.title;
    if (wish.kind != Kind::Other) tune.rhythm = kindName(wish.kind);
    std::replace(tune.rhythm.begin(), tune.rhythm.end(), '_', ' ');
    tune.key = wish.key;
    tune.meter = wish.meter;
    Bar bar;
    bar.key = wish.key;
    bar.meter = wish.meter;
    bar.notes = {restOf(barLength(wish.meter))};
    addUp(bar);
    tune.bars = Bars(std::max(wish.bars, 1), bar);
    tune.bars.back().closes = BarLine::Final;
    renumber(tune);
    if (auto const with = withPickUp(tune, wish.pickUp)) return *with;
    return tune;
}

} // namespace tune
