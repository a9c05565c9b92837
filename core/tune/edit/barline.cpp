#include "core/tune/edit/barline.h"

#include <algorithm>

namespace tune {

using music::Length;

namespace {

bool isRest(Note const& note) { return note.pitches.empty(); }

Length sum(Bar const& bar)
{
    Length out;
    for (Note const& note : bar.notes) out = out + note.length;
    return out;
}

// A chord whose beat is no longer there goes over the last note, where none stands.
void keepChordsInside(Bar& bar)
{
    for (ChordMark& mark : bar.chords) {
        if (mark.at < bar.length) continue;
        mark.at = bar.notes.back().at;
        auto const others =
            std::count_if(bar.chords.begin(), bar.chords.end(),
                          [&mark](ChordMark const& other) { return other.at == mark.at; });
        if (others > 1) mark.at = bar.length; // to be taken out
    }
    std::erase_if(bar.chords, [&bar](ChordMark const& mark) { return mark.at >= bar.length; });
    for (Annotation& words : bar.annotations) words.at = std::min(words.at, bar.length);
}

} // namespace

Note restOf(Length length)
{
    Note rest;
    rest.length = length;
    return rest;
}

std::optional<std::size_t> tupletOver(Bar const& bar, NoteIndex note)
{
    for (std::size_t i = 0; i < bar.tuplets.size(); ++i)
        if (bar.tuplets[i].first <= note && note <= bar.tuplets[i].last) return i;
    return std::nullopt;
}

void exchange(Bar& bar, NoteIndex first, NoteIndex past, Notes const& by)
{
    int const more = by.size() - (past - first);
    std::vector<Tuplet> kept;
    for (Tuplet tuplet : bar.tuplets) {
        bool const gone = first <= tuplet.first && tuplet.last < past && past > first;
        bool const inside = tuplet.first <= first && past - 1 <= tuplet.last && !gone;
        if (inside && first <= tuplet.last) {
            bool const before = first == tuplet.first && past == first; // put in before it
            if (before) tuplet.first += more;
            tuplet.last += more;
        } else if (tuplet.first >= past) {
            tuplet.first += more;
            tuplet.last += more;
        }
        if (!gone && tuplet.first <= tuplet.last) kept.push_back(tuplet);
    }
    bar.tuplets = std::move(kept);
    auto const at = bar.notes.erase(bar.notes.from(first), bar.notes.from(past));
    bar.notes.insert(at, by.begin(), by.end());
}

void dissolve(Bar& bar, std::size_t tuplet)
{
    Tuplet const which = bar.tuplets[tuplet];
    Length whole;
    for (NoteIndex i = which.first; i <= which.last; ++i) whole = whole + bar.notes[i].length;
    exchange(bar, which.first, which.last + 1, {restOf(whole)});
}

void settle(Bar& bar, Length due)
{
    auto const lastIsFree = [&bar] {
        return !bar.notes.empty() && isRest(bar.notes.back()) &&
               !tupletOver(bar, bar.notes.beyond() - 1);
    };
    Length off = sum(bar) - due;
    while (off > Length{} && lastIsFree() && bar.notes.size() > 1) {
        Note& last = bar.notes.back();
        if (last.length > off) {
            last.length = last.length - off;
            break;
        }
        off = off - last.length;
        bar.notes.pop_back();
    }
    if (off > Length{} && lastIsFree() && bar.notes.size() == 1) bar.notes[0].length = due;
    if (off < Length{} && lastIsFree())
        bar.notes.back().length = bar.notes.back().length - off;
    else if (off < Length{})
        bar.notes.push_back(restOf(Length{} - off));
    addUp(bar);
}

void addUp(Bar& bar)
{
    Length at;
    for (Note& note : bar.notes) {
        note.at = at;
        at = at + note.length;
        if (isRest(note)) {
            note.tied = false;
            note.verses.clear();
        }
    }
    bar.notes.front().beamBroken = true; // a bar line is a gap
    bar.length = at;
    keepChordsInside(bar);
}

void renumber(Tune& tune)
{
    markPickUps(tune.bars);
    numberBars(tune.bars);
    tune.key = tune.bars.front().key;
    tune.meter = tune.bars.front().meter;
}

} // namespace tune
