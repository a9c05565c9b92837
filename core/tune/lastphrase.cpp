#include "core/tune/lastphrase.h"

#include "core/tune/jumps.h"

#include <algorithm>

namespace tune {

namespace {

using music::Length;

Length endOf(Note const& note) { return note.at + note.length; }

// From here to the end of the playing are the bars of the phrase.
PlayedBarIndex phraseBegins(Tune const& tune, Playing const& playing, int bars)
{
    PlayedBarIndex first = playing.bars.beyond();
    for (int counted = 0; first > 0 && counted < bars;) {
        --first;
        if (tune.bars[playing.bars[first].bar].upbeat == Length{}) ++counted;
    }
    return first;
}

// Whether a tuplet lies on both sides of a note.
bool cutsTuplet(Bar const& bar, NoteIndex note)
{
    return std::ranges::any_of(bar.tuplets, [note](Tuplet const& tuplet) {
        return tuplet.first < note && note <= tuplet.last;
    });
}

// The end of a bar from one note on, as a pick-up.
Bar endAsPickUp(Bar bar, NoteIndex first)
{
    Length const from = bar.notes[first].at;
    bar.notes.erase(bar.notes.begin(), bar.notes.from(first));
    std::erase_if(bar.tuplets, [first](Tuplet const& tuplet) { return tuplet.last < first; });
    for (Tuplet& tuplet : bar.tuplets) {
        tuplet.first -= first;
        tuplet.last -= first;
    }
    for (Note& note : bar.notes) note.at = note.at - from;
    std::erase_if(bar.annotations, [from](Annotation const& a) { return a.at < from; });
    for (Annotation& words : bar.annotations) words.at = words.at - from;
    bar.chords.clear();
    bar.length = bar.length - from;
    bar.upbeat = music::barLength(bar.meter) - bar.length;
    return bar;
}

// What leads into the phrase out of the full bar before it: a note that begins where the
// tune's own pick-up would, after another.
std::optional<MadeBar> leadIn(Tune const& tune, PlayedBar const& before)
{
    Bar const& first = tune.bars.front();
    Bar const& bar = tune.bars[before.bar];
    if (bar.upbeat != Length{}) return MadeBar{asPlayed(bar, before.pass), before.bar, 0};
    if (first.upbeat == Length{} || bar.length != music::barLength(bar.meter)) return {};
    Length const from = bar.length - first.length;
    auto const note = std::ranges::find(bar.notes, from, &Note::at);
    if (note == bar.notes.begin() || note == bar.notes.end() || note->pitches.empty() ||
        std::prev(note)->tied)
        return {};
    NoteIndex const index = bar.notes.indexOf(note);
    if (cutsTuplet(bar, index)) return {};
    return MadeBar{endAsPickUp(asPlayed(bar, before.pass), index), before.bar, index};
}

// Nothing is sung, and no slur or tie goes beyond the phrase.
void closeOff(MadeBars& phrase)
{
    int open = 0;
    bool crossed = false;
    for (MadeBar& made : phrase) {
        made.bar.part.clear();
        for (Note& note : made.bar.notes) {
            note.verses.clear();
            open += note.slursOpen - note.slursClose;
            crossed = crossed || open < 0;
        }
    }
    if (crossed || open != 0)
        for (MadeBar& made : phrase)
            for (Note& note : made.bar.notes) note.slursOpen = note.slursClose = 0;
    if (!phrase.empty() && !phrase.back().bar.notes.empty())
        phrase.back().bar.notes.back().tied = false;
}

} // namespace

Bar asPlayed(Bar bar, int pass)
{
    bar.repeatOpens = false;
    bar.repeatCloses = false;
    bar.endings.clear();
    bar.endingCloses = false;
    dropWayMarks(bar);
    std::erase_if(bar.chords,
                  [pass](ChordMark const& mark) { return !standsOn(mark.pass, pass); });
    for (ChordMark& mark : bar.chords) mark.pass.reset();
    return bar;
}

Bar lasting(Bar bar, Length length)
{
    if (bar.notes.empty() || bar.length == length) return bar;
    Bar out = bar;
    if (length > bar.length) {
        Note const last = out.notes.back();
        bool const inTuplet =
            !out.tuplets.empty() && out.tuplets.back().last + 1 == out.notes.beyond();
        if (inTuplet) {
            Note rest;
            rest.at = endOf(last);
            rest.length = length - rest.at;
            out.notes.push_back(rest);
        } else {
            out.notes.back().length = length - last.at;
        }
    } else {
        while (!out.notes.empty() && out.notes.back().at >= length) out.notes.pop_back();
        if (cutsTuplet(bar, out.notes.beyond())) return bar;
        if (!out.notes.empty() && endOf(out.notes.back()) > length) {
            if (!out.tuplets.empty() && out.tuplets.back().last + 1 >= out.notes.beyond())
                return bar;
            out.notes.back().length = length - out.notes.back().at;
        }
        if (out.notes.empty()) return bar;
        out.notes.back().tied = false;
        std::erase_if(out.tuplets,
                      [&](Tuplet const& tuplet) { return tuplet.last >= out.notes.beyond(); });
        std::erase_if(out.chords,
                      [length](ChordMark const& mark) { return mark.at >= length; });
        std::erase_if(out.annotations,
                      [length](Annotation const& words) { return words.at >= length; });
    }
    out.length = length;
    return out;
}

std::optional<music::Chord> chordEntering(std::vector<ChordSpan> const& spans, BarIndex bar,
                                          int pass)
{
    auto const span = std::ranges::find_if(spans, [&](ChordSpan const& s) {
        return s.bar == bar && s.at == Length{} && standsOn(s.pass, pass);
    });
    if (span == spans.end()) return std::nullopt;
    return span->chord;
}

MadeBars lastPhrase(Tune const& tune, Playing const& playing, int bars)
{
    MadeBars out;
    PlayedBarIndex const first = phraseBegins(tune, playing, bars);
    if (first > 0)
        if (auto lead = leadIn(tune, playing.bars[first - 1])) out.push_back(*std::move(lead));
    for (PlayedBarIndex i = first; i < playing.bars.size(); ++i) {
        PlayedBar const& played = playing.bars[i];
        Bar const& bar = tune.bars[played.bar];
        out.push_back({asPlayed(bar, played.pass), played.bar, 0});
    }
    closeOff(out);
    return out;
}

} // namespace tune
