#include "core/tune/edit/rebar.h"

#include "core/tune/edit/barline.h"

#include <algorithm>
#include <span>
#include <utility>

namespace tune {

using music::Length;

namespace {

// Bars from the first on that are in the time signature of the first.
std::size_t barsInMeter(Tune const& tune)
{
    auto const other = std::ranges::find_if(
        tune.bars, [&](Bar const& bar) { return bar.meter != tune.bars.front().meter; });
    return static_cast<std::size_t>(other - tune.bars.begin());
}

// Whether something stands on the bar line before a bar that keeps it where it is.
bool keepsItsLine(Bar const& before, Bar const& bar)
{
    return before.repeatCloses || bar.repeatOpens || !bar.part.empty() ||
           !bar.endings.empty() || before.endingCloses || before.key != bar.key ||
           before.closes == BarLine::Double || before.closes == BarLine::Final;
}

// Bars between two lines that stay, as one row of notes.
struct Stretch {
    Bar first; // for what stands at its beginning
    Bar last;  // and at its end
    Notes notes;
    std::vector<Tuplet> tuplets; // indices into the row
    std::vector<ChordMark> chords;
    std::vector<Annotation> annotations;
    Length length;
};

Stretch stretchOf(std::span<Bar const> bars)
{
    Stretch row{bars.front(), bars.back(), {}, {}, {}, {}, {}};
    for (Bar const& bar : bars) {
        int const before = row.notes.size();
        for (Note note : bar.notes) {
            note.at = row.length + note.at;
            row.notes.push_back(std::move(note));
        }
        for (Tuplet tuplet : bar.tuplets) {
            tuplet.first += before;
            tuplet.last += before;
            row.tuplets.push_back(tuplet);
        }
        for (ChordMark mark : bar.chords) {
            mark.at = row.length + mark.at;
            row.chords.push_back(std::move(mark));
        }
        for (Annotation word : bar.annotations) {
            word.at = row.length + word.at;
            row.annotations.push_back(std::move(word));
        }
        row.length = row.length + bar.length;
    }
    return row;
}

// The part of a note that lies between two moments of its row.
Note pieceOf(Note const& note, Length from, Length to)
{
    Note piece = note;
    Length const end = note.at + note.length;
    bool const isFirst = note.at >= from;
    bool const isLast = end <= to;
    piece.at = std::max(note.at, from);
    piece.length = std::min(end, to) - piece.at;
    piece.at = piece.at - from;
    if (!isLast) {
        piece.tied = !note.pitches.empty();
        piece.slursClose = 0;
    }
    if (!isFirst) {
        piece.graces.clear();
        piece.marks.clear();
        piece.verses.clear();
        piece.slursOpen = 0;
    }
    return piece;
}

// A bar of the row; none where it would cut a tuplet.
std::optional<Bar> cut(Stretch const& row, Length from, Length to, music::Meter meter)
{
    Bar bar;
    bar.meter = meter;
    bar.key = row.first.key;
    std::optional<NoteIndex> begin; // of the row's notes
    for (NoteIndex const n : row.notes.indices()) {
        Note const& note = row.notes[n];
        if (note.at + note.length <= from || note.at >= to) continue;
        if (!begin) begin = n;
        bar.notes.push_back(pieceOf(note, from, to));
    }
    NoteIndex const first = begin.value_or(NoteIndex(0));
    NoteIndex const past = first + bar.notes.size();
    for (Tuplet tuplet : row.tuplets) {
        if (tuplet.last < first || tuplet.first >= past) continue;
        Note const& begins = row.notes[tuplet.first];
        Note const& ends = row.notes[tuplet.last];
        if (begins.at < from || ends.at + ends.length > to) return std::nullopt;
        tuplet.first -= first;
        tuplet.last -= first;
        bar.tuplets.push_back(tuplet);
    }
    auto const take = [&](auto const& all, auto& into) {
        for (auto one : all)
            if (one.at >= from && one.at < to) {
                one.at = one.at - from;
                into.push_back(std::move(one));
            }
    };
    take(row.chords, bar.chords);
    take(row.annotations, bar.annotations);
    if (bar.notes.empty()) bar.notes = {restOf(to - from)};
    addUp(bar);
    return bar;
}

// A pick-up begins with what is left when its last bars are full.
Length firstLength(Stretch const& row, Length full)
{
    if (row.first.upbeat <= Length{} || row.notes.empty()) return full;
    Length left = row.first.length;
    while (left > full) left = left - full;
    return left;
}

bool rebar(Stretch const& row, music::Meter meter, Bars& out)
{
    BarIndex const begin = out.beyond();
    Length const full = barLength(meter);
    Length at;
    Length next = firstLength(row, full);
    while (at < row.length) {
        Length const to = std::min(next, row.length);
        auto bar = cut(row, at, to, meter);
        if (!bar) return false;
        out.push_back(*std::move(bar));
        at = to;
        next = at + full;
    }
    Bar& first = out[begin];
    first.part = row.first.part;
    first.repeatOpens = row.first.repeatOpens;
    first.endings = row.first.endings;
    Bar& last = out.back();
    last.repeatCloses = row.last.repeatCloses;
    last.timesPlayed = row.last.timesPlayed;
    last.endingCloses = row.last.endingCloses;
    last.closes = row.last.closes;
    return true;
}

} // namespace

std::optional<Tune> rebarred(Tune const& tune, music::Meter meter)
{
    Tune out = tune;
    out.bars.clear();
    std::size_t const bars = barsInMeter(tune);
    std::span<Bar const> const all(tune.bars);
    for (std::size_t from = 0; from < bars;) {
        std::size_t to = from + 1;
        // A pick-up is no part of the bar after it.
        bool const pickUp = all[from].upbeat > Length{} && all[from].length < barLength(meter);
        while (!pickUp && to < bars && !keepsItsLine(all[to - 1], all[to])) ++to;
        if (!rebar(stretchOf(all.subspan(from, to - from)), meter, out.bars))
            return std::nullopt;
        from = to;
    }
    out.bars.insert(out.bars.end(), tune.bars.begin() + static_cast<std::ptrdiff_t>(bars),
                    tune.bars.end());
    renumber(out);
    return out;
}

bool needsNewBars(Tune const& tune, music::Meter meter)
{
    std::size_t const bars = barsInMeter(tune);
    Length const full = barLength(meter);
    auto const ofMeter = std::span<Bar const>(tune.bars).first(bars);
    auto const count = [&](Length length) {
        return std::ranges::count_if(ofMeter,
                                     [&](Bar const& bar) { return bar.length == length; });
    };
    return full != barLength(tune.meter) && count(full) <= count(barLength(tune.meter));
}

} // namespace tune
