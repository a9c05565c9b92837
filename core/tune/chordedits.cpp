#include "core/tune/chordedits.h"

#include "core/tune/playing.h"

#include <algorithm>
#include <array>

namespace tune {

namespace {

using music::Length;
using music::Rational;

bool isIn(Tune const& tune, ChordPlace place)
{
    if (!tune.bars.holds(place.bar)) return false;
    Bar const& bar = tune.bars[place.bar];
    return place.at >= Length{} && place.at < bar.length;
}

Bar& barAt(Tune& tune, BarIndex bar) { return tune.bars[bar]; }
Bar const& barAt(Tune const& tune, BarIndex bar) { return tune.bars[bar]; }

// Which chord is carried over the bar line into each bar, on the first and the second time.
using Carried = base::List<BarIndex, std::array<std::optional<music::Chord>, 2>>;

Carried carriedInto(Tune const& tune)
{
    Carried carried(tune.bars.size(), {});
    for (ChordSpan const& span : chordSpans(tune)) {
        if (span.at != Length{}) continue;
        auto& into = carried[span.bar];
        if (!span.pass || *span.pass == 1) into[0] = span.chord;
        if (!span.pass || *span.pass == 2) into[1] = span.chord;
    }
    return carried;
}

bool beginsWithMark(Bar const& bar)
{
    return std::any_of(bar.chords.begin(), bar.chords.end(),
                       [](ChordMark const& mark) { return mark.at == Length{}; });
}

void sortMarks(Bar& bar)
{
    std::stable_sort(bar.chords.begin(), bar.chords.end(),
                     [](ChordMark const& a, ChordMark const& b) { return a.at < b.at; });
}

// The origin of what a bar begins with: that of the last mark before it.
ChordOrigin originBefore(Tune const& tune, BarIndex bar)
{
    for (BarIndex b = bar - 1; b >= 0; --b)
        if (!barAt(tune, b).chords.empty()) return originOf(barAt(tune, b).chords.back());
    return ChordOrigin::Written;
}

// Gives bars that were not edited, and now begin with another chord than before, a mark of
// their own.
Tune keepingOthers(Tune const& before, Tune after, std::vector<BarIndex> const& edited)
{
    Carried const was = carriedInto(before);
    for (BarIndex const bar : after.bars.indices()) {
        if (std::find(edited.begin(), edited.end(), bar) != edited.end()) continue;
        if (beginsWithMark(after.bars[bar])) continue;
        if (was[bar] == carriedInto(after)[bar]) continue;
        if (!was[bar][0]) continue; // it rested: what is new may go on
        ChordOrigin const origin = originBefore(before, bar);
        auto& marks = after.bars[bar].chords;
        marks.insert(marks.begin(), chordMark({}, *was[bar][0], origin));
        if (was[bar][1] && was[bar][1] != was[bar][0]) {
            marks.front().pass = 1;
            ChordMark second = chordMark({}, *was[bar][1], origin);
            second.pass = 2;
            marks.insert(marks.begin() + 1, std::move(second));
        }
    }
    return after;
}

Tune put(Tune tune, ChordPlace place, music::Chord const& chord)
{
    auto& marks = barAt(tune, place.bar).chords;
    std::erase_if(marks, [&place](ChordMark const& mark) { return mark.at == place.at; });
    marks.push_back(chordMark(place.at, chord, ChordOrigin::Set));
    sortMarks(barAt(tune, place.bar));
    return tune;
}

} // namespace

std::optional<ChordHere> chordHere(Tune const& tune, ChordPlace place)
{
    if (!isIn(tune, place)) return std::nullopt;
    for (ChordSpan const& span : chordSpans(tune)) {
        if (span.bar != place.bar || (span.pass && *span.pass != 1)) continue;
        if (place.at < span.at || place.at >= span.at + span.length) continue;
        ChordHere here{span.chord, {place.bar, span.at}, span.length,
                       originBefore(tune, place.bar), false};
        for (ChordMark const& mark : barAt(tune, place.bar).chords)
            if (mark.at == span.at && mark.pass.value_or(1) == 1) {
                here.begins = true;
                here.origin = originOf(mark);
            }
        return here;
    }
    return std::nullopt;
}

Tune withChord(Tune tune, ChordPlace place, music::Chord const& chord)
{
    if (!isIn(tune, place)) return tune;
    Tune const before = tune;
    return keepingOthers(before, put(std::move(tune), place, chord), {place.bar});
}

Tune withoutChord(Tune tune, ChordPlace place)
{
    if (!isIn(tune, place)) return tune;
    Tune const before = tune;
    std::erase_if(barAt(tune, place.bar).chords,
                  [&place](ChordMark const& mark) { return mark.at == place.at; });
    return keepingOthers(before, std::move(tune), {place.bar});
}

Tune withChordSplit(Tune tune, ChordPlace place)
{
    auto const here = chordHere(tune, place);
    if (!here || here->from.at == place.at) return tune;
    return put(std::move(tune), place, here->chord);
}

std::optional<Tune> withChangeMoved(Tune tune, ChordPlace place, Length by)
{
    if (!isIn(tune, place)) return std::nullopt;
    auto& marks = barAt(tune, place.bar).chords;
    auto const has = [&place](ChordMark const& mark) { return mark.at == place.at; };
    if (std::none_of(marks.begin(), marks.end(), has)) return std::nullopt;

    ChordPlace to{place.bar, place.at + by};
    if (to.at < Length{}) {
        if (--to.bar < 0) return std::nullopt;
        to.at = barAt(tune, to.bar).length + to.at;
    } else if (to.at >= barAt(tune, to.bar).length) {
        to.at = to.at - barAt(tune, to.bar).length;
        ++to.bar;
    }
    if (!isIn(tune, to)) return std::nullopt;
    // Another change between the two places, or at the new one.
    ChordPlace const low = std::min(place, to);
    ChordPlace const high = std::max(place, to);
    for (BarIndex b = low.bar; b <= high.bar; ++b)
        for (ChordMark const& mark : barAt(tune, b).chords) {
            ChordPlace const other{b, mark.at};
            if (other != place && other >= low && other <= high) return std::nullopt;
        }

    Tune const before = tune;
    std::vector<ChordMark> moved;
    for (ChordMark const& mark : marks)
        if (has(mark)) moved.push_back(mark);
    std::erase_if(marks, has);
    for (ChordMark& mark : moved) {
        mark.at = to.at;
        mark.written = setWord;
        barAt(tune, to.bar).chords.push_back(mark);
    }
    sortMarks(barAt(tune, to.bar));
    return keepingOthers(before, std::move(tune), {place.bar, to.bar});
}

std::vector<BarIndex> barsAlike(Tune const& tune, BarIndex bar)
{
    std::vector<BarIndex> alike;
    if (!isIn(tune, {bar, {}})) return alike;
    Bar const& wanted = barAt(tune, bar);
    for (BarIndex const i : tune.bars.indices())
        if (std::equal(wanted.notes.begin(), wanted.notes.end(), tune.bars[i].notes.begin(),
                       tune.bars[i].notes.end(), [](Note const& a, Note const& b) {
                           return a.at == b.at && a.length == b.length && a.pitches == b.pitches;
                       }))
            alike.push_back(i);
    return alike;
}

Tune withChordEverywhere(Tune tune, ChordPlace place, music::Chord const& chord)
{
    if (!isIn(tune, place)) return tune;
    Tune const before = tune;
    std::vector<BarIndex> const alike = barsAlike(tune, place.bar);
    for (BarIndex bar : alike) tune = put(std::move(tune), {bar, place.at}, chord);
    return keepingOthers(before, std::move(tune), alike);
}

ChordRow chordRow(Tune const& tune, BarIndex firstBar, BarIndex lastBar)
{
    ChordRow row;
    for (BarIndex bar = std::max(firstBar, BarIndex(0));
         bar <= lastBar && isIn(tune, {bar, {}}); ++bar)
        row.push_back(barAt(tune, bar).chords);
    if (row.empty() || beginsWithMark(barAt(tune, std::max(firstBar, BarIndex(0))))) return row;
    if (auto const carried = chordHere(tune, {std::max(firstBar, BarIndex(0)), {}}))
        row.front().insert(row.front().begin(),
                           chordMark({}, carried->chord, ChordOrigin::Set));
    return row;
}

Tune withChordRow(Tune tune, BarIndex firstBar, ChordRow const& row)
{
    Tune const before = tune;
    std::vector<BarIndex> edited;
    for (std::size_t i = 0; i < row.size(); ++i) {
        BarIndex const bar = firstBar + static_cast<int>(i);
        if (!isIn(tune, {bar, {}})) break;
        auto& marks = barAt(tune, bar).chords;
        marks = row[i];
        std::erase_if(
            marks, [&](ChordMark const& mark) { return mark.at >= barAt(tune, bar).length; });
        for (ChordMark& mark : marks) mark.written = setWord;
        edited.push_back(bar);
    }
    return keepingOthers(before, std::move(tune), edited);
}

} // namespace tune
