#include "core/tune/notefunction.h"

#include "core/tune/playing.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <tuple>

namespace tune {

namespace {

using music::Length;

constexpr int step = 2;     // semitones: a tone
constexpr int line = 4;     // a third is still the same line
constexpr int fourth = 5;
constexpr int manyAltered = 3; // notes with one accidental in three bars make a phrase of it

// One sounding place of the line: the top pitch where there are several.
struct Event {
    BarIndex bar = 0;
    NoteIndex note = 0;
    int midi = 0;
    Length length;
    bool joined = false; // no rest, no end of a part between it and the event before
    bool begins = true;  // not tied over from the event before
};

bool endsPart(Tune const& tune, BarIndex bar)
{
    Bar const& here = tune.bars[bar];
    if (bar + 1 == tune.bars.size()) return true;
    Bar const& next = tune.bars[bar + 1];
    return here.repeatCloses || here.endingCloses || next.repeatOpens || !next.endings.empty() ||
           !next.part.empty() || here.closes == BarLine::Double || here.closes == BarLine::Final;
}

std::vector<Event> eventsOf(Tune const& tune)
{
    std::vector<Event> events;
    bool joined = false;
    bool tied = false;
    for (BarIndex const b : tune.bars.indices()) {
        Bar const& bar = tune.bars[b];
        for (NoteIndex const n : bar.notes.indices()) {
            Note const& note = bar.notes[n];
            if (note.pitches.empty()) {
                joined = tied = false;
                continue;
            }
            int const top = midi(note.pitches.back());
            events.push_back({b, n, top, note.length, joined,
                              !(tied && !events.empty() && events.back().midi == top)});
            joined = true;
            tied = note.tied;
        }
        if (endsPart(tune, b)) joined = false;
    }
    return events;
}

bool altered(music::Pitch pitch, music::Key key)
{
    return pitch.alter != music::alterIn(music::signature(key), pitch.letter);
}

// How many notes of the bars around have this letter and accidental.
int alikeAround(Tune const& tune, BarIndex bar, music::Pitch pitch)
{
    int count = 0;
    BarIndex const last = std::min(bar + 1, tune.bars.beyond() - 1);
    for (BarIndex b = std::max(BarIndex(0), bar - 1); b <= last; ++b)
        for (Note const& note : tune.bars[b].notes)
            for (music::Pitch const& other : note.pitches)
                if (nameOf(other) == nameOf(pitch)) ++count;
    return count;
}

std::optional<music::Chord> chordAt(std::vector<ChordSpan> const& spans, BarIndex bar,
                                    Length at)
{
    for (ChordSpan const& span : spans)
        if (span.bar == bar && span.at <= at && at < span.at + span.length) return span.chord;
    return std::nullopt;
}

bool isThird(music::Chord const& chord, int midi)
{
    for (music::Interval const& tone : chord.tones)
        if (tone.steps == 2)
            return (music::pitchClass(chord.root) + tone.semitones) % 12 == midi % 12;
    return false;
}

// The line around one event.
struct Around {
    Tune const& tune;
    std::vector<ChordSpan> const& spans;
    std::vector<Event> const& events;
    std::size_t i = 0;

    Event const& here() const { return events[i]; }
    Event const* before() const { return i > 0 ? &events[i - 1] : nullptr; }
    Event const* after() const { return i + 1 < events.size() ? &events[i + 1] : nullptr; }
    Bar const& bar() const { return tune.bars[here().bar]; }
    Note const& note() const { return bar().notes[here().note]; }
    int strength() const { return beatStrength(bar().meter, bar().upbeat + note().at); }
    std::optional<music::Chord> chord(Event const& event) const
    {
        Bar const& b = tune.bars[event.bar];
        return chordAt(spans, event.bar, b.notes[event.note].at);
    }
};

NoteFunction functionOf(Around const& around, music::Pitch pitch)
{
    int const here = midi(pitch);
    Event const* const before = around.here().joined ? around.before() : nullptr;
    Event const* const next = around.after();
    Event const* const after = next && next->joined ? next : nullptr;
    int const in = before ? here - before->midi : 0;
    int const out = after ? after->midi - here : 0;
    bool const stepIn = before && in != 0 && std::abs(in) <= step;
    bool const stepOut = after && out != 0 && std::abs(out) <= step;
    Length const beat = music::beatLength(around.bar().meter);

    bool const isShort = around.note().length * music::Rational(4) <= beat;
    if (!before && stepOut && isShort) return NoteFunction::Ornament;
    if (stepIn && stepOut && in + out == 0) return NoteFunction::Neighbour;
    bool const onward = stepIn && stepOut && (in > 0) == (out > 0);
    if (onward && std::abs(in) == 1 && std::abs(out) == 1) return NoteFunction::Passing;
    bool const isAltered = altered(pitch, around.bar().key);
    if (isAltered && alikeAround(around.tune, around.here().bar, pitch) >= manyAltered)
        return NoteFunction::ChromaticPhrase;
    if (onward) return NoteFunction::Passing;
    auto const chord = around.chord(around.here());
    if (chord && isThird(*chord, here) && (!stepIn || !stepOut)) return NoteFunction::ArpeggioThird;
    if (after && out == 1) {
        auto const nextChord = around.chord(*after);
        int const home = music::pitchClass(around.bar().key.tonic);
        if (after->midi % 12 == home ||
            (nextChord && after->midi % 12 == music::pitchClass(nextChord->root)))
            return NoteFunction::Leading;
    }
    return NoteFunction::Other;
}

bool sung(Note const& note)
{
    return std::any_of(note.verses.begin(), note.verses.end(), [](Syllable const& syllable) {
        return !syllable.held && !syllable.text.empty();
    });
}

void judge(NoteInLine& out, Around const& around, double secondsAWhole, WayPrices const& prices)
{
    auto const set = [&out](Circumstance c, bool holds) {
        out.when.set(static_cast<std::size_t>(c), holds);
    };
    int const here = midi(out.pitch);
    Event const* const before = around.here().joined ? around.before() : nullptr;
    Event const* const next = around.after();
    Event const* const after = next && next->joined ? next : nullptr;
    int const strength = around.strength();
    set(Circumstance::OnBeat, strength == 1 || strength == 2);
    set(Circumstance::FirstBeat, strength == 3);
    set(Circumstance::Long,
        around.note().length >= music::beatLength(around.bar().meter));
    set(Circumstance::PartEnd, strength == 0 && !after);
    set(Circumstance::LineApart, before && std::abs(here - before->midi) > line);
    set(Circumstance::Sung, sung(around.note()));
    set(Circumstance::InKey, !altered(out.pitch, around.bar().key));
    set(Circumstance::Opening, around.bar().number <= 1);
    auto const chord = around.chord(around.here());
    set(Circumstance::ChordRoot,
        chord && (here % 12 == music::pitchClass(chord->root) ||
                  (chord->bass && here % 12 == music::pitchClass(*chord->bass))));
    set(Circumstance::ChordThird,
        chord && isThird(*chord, here) && !altered(out.pitch, around.bar().key));
    set(Circumstance::LeapsAround, before && after && std::abs(here - before->midi) >= fourth &&
                                       std::abs(after->midi - here) >= fourth);
    // A note a semitone away on the same letter: plain plucks its string again.
    auto const again = [&](Event const* other, Length time) {
        if (!other || std::abs(other->midi - here) != 1) return false;
        auto const& pitches = around.tune.bars[other->bar].notes[other->note].pitches;
        return pitches.back().letter == out.pitch.letter &&
               time.wholes.toDouble() * secondsAWhole < prices.pluckedAgainSeconds;
    };
    set(Circumstance::Quick, again(before, before ? before->length : Length{}) ||
                                 again(after, around.note().length));
}

} // namespace

std::vector<NoteInLine> notesInLine(Tune const& tune, Tempo tempo, WayPrices const& prices)
{
    double const secondsAWhole = 240 / quartersPerMinute(tempo);
    std::vector<ChordSpan> const spans = chordSpans(tune);
    std::vector<Event> const events = eventsOf(tune);
    std::vector<NoteInLine> out;
    // Pitch, length, neighbours, whether a note may be held on: what makes notes alike.
    using Alike = std::tuple<int, int, Length, int, int, bool, NoteFunction>;
    std::map<Alike, int> figures;
    for (std::size_t i = 0; i < events.size(); ++i) {
        Around const around{tune, spans, events, i};
        Event const& event = events[i];
        if (!event.begins) continue;
        Note const& note = around.note();
        for (std::size_t p = 0; p < note.pitches.size(); ++p) {
            NoteInLine here;
            here.place = {event.bar, event.note, static_cast<int>(p), false};
            here.pitch = note.pitches[p];
            here.function = functionOf(around, here.pitch);
            judge(here, around, secondsAWhole, prices);
            Event const* const before = around.before();
            if (event.joined && before && note.pitches.size() == 1) {
                Bar const& bar = tune.bars[before->bar];
                Note const& earlier = bar.notes[before->note];
                if (earlier.pitches.size() == 1 && !earlier.tied && before->begins)
                    here.before = NotePlace{before->bar, before->note, 0, false};
            }
            Event const* const after = around.after();
            auto const [known, isNew] = figures.try_emplace(
                Alike{midi(here.pitch), music::diatonicStep(here.pitch), note.length,
                      event.joined && before ? before->midi : -1,
                      after && after->joined ? after->midi : -1, here.before.has_value(),
                      here.function},
                static_cast<int>(figures.size()));
            here.figure = known->second;
            out.push_back(here);
        }
    }
    return out;
}

int priceOf(NoteInLine const& note, Way way, WayPrices const& prices)
{
    auto const column = static_cast<std::size_t>(way);
    int price = prices.byFunction[static_cast<std::size_t>(note.function)][column];
    for (std::size_t c = 0; c < circumstances; ++c)
        if (note.when.test(c)) price += prices.added[c][column];
    return std::max(price, prices.least);
}

} // namespace tune
