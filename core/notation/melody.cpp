#include "core/notation/melody.h"

#include <algorithm>

namespace notation {

using music::Length;
using music::Rational;

namespace {

tune::Tuplet const* tupletAt(tune::Bar const& bar, tune::NoteIndex note)
{
    auto const found =
        std::find_if(bar.tuplets.begin(), bar.tuplets.end(),
                     [note](tune::Tuplet t) { return t.first <= note && note <= t.last; });
    return found == bar.tuplets.end() ? nullptr : &*found;
}

// The signs of one note: one where a single value shows its length, else several, tied.
std::vector<StaffNote> signs(tune::Bar const& bar, tune::NoteIndex index)
{
    tune::Note const& note = bar.notes[index];
    StaffNote whole = asWritten(note);
    if (tune::Tuplet const* const tuplet = tupletAt(bar, index)) {
        Length const written = note.length * Rational(tuplet->actual, tuplet->normal);
        whole.value = valueOf(written).value_or(nearestValue(written));
        return {whole};
    }
    if (whole.isRest() && note.length >= music::barLength(bar.meter)) {
        whole.value = {0, 0};
        whole.fillsBar = true;
        return {whole};
    }
    if (auto const value = valueOf(note.length)) {
        whole.value = *value;
        return {whole};
    }
    auto const pieces = whole.isRest()
                            ? restPieces(bar.upbeat + note.at, note.length, bar.meter)
                            : notePieces(bar.upbeat + note.at, note.length, bar.meter);
    std::vector<StaffNote> out;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        StaffNote part = whole;
        part.at = pieces[i].at - bar.upbeat;
        part.value = pieces[i].value;
        part.length = lengthOf(part.value);
        part.tied = whole.tied || (!whole.isRest() && i + 1 < pieces.size());
        if (i > 0) {
            part.graces.clear();
            part.marks.clear();
            part.beamBroken = false;
            part.slursOpen = 0;
            part.verses.clear();
        }
        if (i + 1 < pieces.size()) part.slursClose = 0;
        out.push_back(std::move(part));
    }
    return out;
}

// Strings that the right hand plucks with the tune's: one chord with it. Fingers only where
// both have them.
void addBelow(StaffNote& sign, arrange::AddedBelow const& below, bool first)
{
    bool const fingered = first && sign.fingers.size() == sign.pitches.size() &&
                          below.fingers.size() == below.pitches.size();
    sign.pitches.insert(sign.pitches.begin(), below.pitches.begin(), below.pitches.end());
    if (fingered)
        sign.fingers.insert(sign.fingers.begin(), below.fingers.begin(), below.fingers.end());
}

// Fingers that the tune brings with it stand where no others are worked out: one for each
// string, and such as a harper has.
void takeFingers(StaffNote& sign)
{
    auto const isFinger = [](std::string const& mark) {
        return mark.size() == 1 && mark[0] >= '1' && mark[0] <= '4';
    };
    std::vector<int> own;
    for (std::string const& mark : sign.marks)
        if (isFinger(mark)) own.push_back(mark[0] - '0');
    if (own.empty() || (sign.fingers.empty() && own.size() != sign.pitches.size())) return;
    if (sign.fingers.empty()) sign.fingers = own;
    std::erase_if(sign.marks, isFinger);
}

} // namespace

StaffNote asWritten(tune::Note const& note)
{
    StaffNote out;
    out.at = note.at;
    out.length = note.length;
    out.pitches = note.pitches;
    out.graces = note.graces;
    out.marks = note.marks;
    out.tied = note.tied;
    out.hidden = note.hidden;
    out.beamBroken = note.beamBroken;
    out.slursOpen = note.slursOpen;
    out.slursClose = note.slursClose;
    out.verses = note.verses;
    return out;
}

StaffBar melodyBar(tune::Tune const& tune, tune::BarIndex index,
                   std::vector<arrange::NoteFingers> const& fingers,
                   std::vector<arrange::AddedBelow> const& added)
{
    tune::Bar const& bar = tune.bars[index];
    StaffBar out;
    base::List<tune::NoteIndex, StaffNoteIndex> firstSign;
    for (tune::NoteIndex const note : bar.notes.indices()) {
        firstSign.push_back(out.notes.beyond());
        for (StaffNote& sign : signs(bar, note)) out.notes.push_back(std::move(sign));
    }
    for (tune::Tuplet const& tuplet : bar.tuplets)
        out.tuplets.push_back(
            {firstSign[tuplet.first], firstSign[tuplet.last], tuplet.actual, tuplet.normal});
    for (arrange::NoteFingers const& note : fingers)
        if (note.bar == index && firstSign.holds(note.note))
            out.notes[firstSign[note.note]].fingers = note.fingers;
    for (StaffNote& sign : out.notes) takeFingers(sign);
    for (arrange::AddedBelow const& below : added) {
        if (below.bar != index || !firstSign.holds(below.note)) continue;
        StaffNoteIndex const first = firstSign[below.note];
        StaffNoteIndex const end =
            firstSign.holds(below.note + 1) ? firstSign[below.note + 1] : out.notes.beyond();
        for (StaffNoteIndex sign = first; sign < end; ++sign)
            addBelow(out.notes[sign], below, sign == first);
    }
    return out;
}

} // namespace notation
