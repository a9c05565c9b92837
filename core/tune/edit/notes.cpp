#include "core/tune/edit/notes.h"

#include "core/tune/edit/barline.h"
#include "core/tune/edit/barsums.h"

#include <algorithm>

namespace tune {

using music::Length;
using music::Pitch;
using music::Rational;

namespace {

Bar& barAt(Tune& tune, BarIndex bar) { return tune.bars[bar]; }
Note& noteOf(Bar& bar, NoteIndex note) { return bar.notes[note]; }

Rational ratioAt(Bar const& bar, NoteIndex note)
{
    auto const tuplet = tupletOver(bar, note);
    if (!tuplet) return 1;
    return {bar.tuplets[*tuplet].normal, bar.tuplets[*tuplet].actual};
}

// The notes that an edit replaces: [first, past), and by how much they last longer than asked.
struct Stretch {
    NoteIndex past = 0;
    Length over;
};
Stretch stretchFrom(Bar const& bar, NoteIndex first, NoteIndex end, Length length)
{
    Stretch out{first, Length{} - length};
    while (out.past < end && out.over < Length{})
        out.over = out.over + bar.notes[out.past++].length;
    return out;
}

// What is played and sung at a note stays where another pitch or length takes its place.
Note inPlaceOf(Note const* before, std::vector<Pitch> pitches, Length length)
{
    Note note;
    if (before != nullptr) {
        note.verses = before->verses;
        note.beamBroken = before->beamBroken;
    }
    note.pitches = std::move(pitches);
    note.length = length;
    return note;
}

void replace(Bar& bar, NoteIndex first, NoteIndex past, Notes by, Length over)
{
    if (over > Length{}) by.push_back(restOf(over));
    exchange(bar, first, past, by);
}

// Puts one note into a tuplet, not beyond its end.
void putInside(Bar& bar, NoteIndex first, Note note, Tuplet const& tuplet)
{
    Stretch stretch = stretchFrom(bar, first, tuplet.last + 1, note.length);
    if (stretch.over < Length{}) {
        note.length = note.length + stretch.over;
        stretch.over = {};
    }
    replace(bar, first, stretch.past, {std::move(note)}, stretch.over);
}

// Puts notes of so long together outside of tuplets; those that they reach are dissolved.
void putFrom(Bar& bar, NoteIndex first, Notes notes, Length length)
{
    for (bool again = true; again;) {
        again = false;
        Stretch const stretch = stretchFrom(bar, first, bar.notes.beyond(), length);
        for (NoteIndex i = first; i < stretch.past && !again; ++i)
            if (auto const tuplet = tupletOver(bar, i)) {
                dissolve(bar, *tuplet);
                again = true;
            }
        if (again) continue;
        replace(bar, first, stretch.past, std::move(notes), stretch.over);
        return;
    }
}

// A tie leads to a note of the same pitch in its bar or at the head of the next one.
void dropLooseTies(Tune& tune, BarIndex bar)
{
    for (BarIndex b = std::max(bar - 1, BarIndex(0)); b <= bar; ++b) {
        Bar& here = barAt(tune, b);
        for (NoteIndex const i : here.notes.indices()) {
            Note& note = here.notes[i];
            bool const last = i + 1 == here.notes.size();
            if (!note.tied || (last && b + 1 == tune.bars.size())) continue;
            if (last && (here.repeatCloses || !barAt(tune, b + 1).endings.empty())) continue;
            Note const& next = last ? barAt(tune, b + 1).notes.front() : here.notes[i + 1];
            note.tied = std::any_of(
                note.pitches.begin(), note.pitches.end(), [&next](Pitch const& pitch) {
                    return std::find(next.pitches.begin(), next.pitches.end(), pitch) !=
                           next.pitches.end();
                });
        }
    }
}

template<typename Edit>
Tune edited(Tune tune, BarIndex bar, Edit edit)
{
    Length const due = dueLength(tune.bars, bar);
    edit(barAt(tune, bar));
    settle(barAt(tune, bar), due);
    dropLooseTies(tune, bar);
    renumber(tune);
    return tune;
}

} // namespace

bool isOpenIn(Tune const& tune, NoteAt at)
{
    return tune.bars.holds(at.bar) && at.note >= 0 &&
           at.note <= tune.bars[at.bar].notes.beyond();
}

bool isIn(Tune const& tune, NoteAt at) { return noteAt(tune, at) != nullptr; }

Note const* noteAt(Tune const& tune, NoteAt at)
{
    if (!isOpenIn(tune, at)) return nullptr;
    Bar const& bar = tune.bars[at.bar];
    return bar.notes.holds(at.note) ? &bar.notes[at.note] : nullptr;
}

Length writtenLength(Bar const& bar, NoteIndex note)
{
    Rational const ratio = ratioAt(bar, note);
    return {bar.notes[note].length.wholes / ratio};
}

Tune withNote(Tune tune, NoteAt at, std::vector<Pitch> pitches, Length length)
{
    if (!isOpenIn(tune, at) || length <= Length{}) return tune;
    Note const* const before = noteAt(tune, at);
    Note note = inPlaceOf(before, std::move(pitches), length);
    return edited(std::move(tune), at.bar, [&](Bar& bar) {
        auto const tuplet = tupletOver(bar, at.note);
        note.length = note.length * ratioAt(bar, at.note);
        if (tuplet)
            putInside(bar, at.note, std::move(note), bar.tuplets[*tuplet]);
        else
            putFrom(bar, at.note, {std::move(note)}, length);
    });
}

Tune withTriplet(Tune tune, NoteAt at, std::vector<Pitch> pitches, Length length)
{
    if (!isOpenIn(tune, at) || length <= Length{}) return tune;
    if (tupletOver(tune.bars[at.bar], at.note)) return tune;
    constexpr int actual = 3;
    constexpr int normal = 2;
    Length const each{length.wholes * Rational(normal, actual)};
    Note first = inPlaceOf(noteAt(tune, at), std::move(pitches), each);
    return edited(std::move(tune), at.bar, [&](Bar& bar) {
        putFrom(bar, at.note, {std::move(first), restOf(each), restOf(each)},
                length * Rational(normal));
        bar.tuplets.push_back({at.note, at.note + actual - 1, actual, normal});
        std::sort(bar.tuplets.begin(), bar.tuplets.end(),
                  [](Tuplet const& a, Tuplet const& b) { return a.first < b.first; });
    });
}

Tune silenced(Tune tune, NoteAt at)
{
    if (!isIn(tune, at)) return tune;
    return edited(std::move(tune), at.bar, [&](Bar& bar) {
        noteOf(bar, at.note) = restOf(noteOf(bar, at.note).length);
    });
}

Tune withoutNote(Tune tune, NoteAt at)
{
    if (!isIn(tune, at)) return tune;
    return edited(std::move(tune), at.bar, [&](Bar& bar) {
        auto const tuplet = tupletOver(bar, at.note);
        if (!tuplet) return exchange(bar, at.note, at.note + 1, {});
        noteOf(bar, at.note) = restOf(noteOf(bar, at.note).length);
        Tuplet const& which = bar.tuplets[*tuplet];
        bool const silent =
            std::all_of(bar.notes.from(which.first), bar.notes.from(which.last + 1),
                        [](Note const& note) { return note.pitches.empty(); });
        if (silent) dissolve(bar, *tuplet);
    });
}

Tune withLength(Tune tune, NoteAt at, Length length)
{
    if (!isIn(tune, at) || length <= Length{}) return tune;
    return edited(std::move(tune), at.bar, [&](Bar& bar) {
        Note note = noteOf(bar, at.note);
        note.length = length * ratioAt(bar, at.note);
        if (auto const tuplet = tupletOver(bar, at.note))
            putInside(bar, at.note, std::move(note), bar.tuplets[*tuplet]);
        else
            noteOf(bar, at.note) = std::move(note);
    });
}

Tune withBarNotes(Tune tune, BarIndex bar, Notes notes, std::vector<Tuplet> tuplets)
{
    if (bar < 0 || bar >= tune.bars.size() || notes.empty()) return tune;
    Bar& here = barAt(tune, bar);
    here.notes = std::move(notes);
    here.tuplets = std::move(tuplets);
    addUp(here);
    dropLooseTies(tune, bar);
    renumber(tune);
    return tune;
}

} // namespace tune
