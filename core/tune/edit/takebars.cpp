#include "core/tune/edit/take.h"

#include "core/music/spelling.h"
#include "core/tune/edit/bars.h"
#include "core/tune/edit/notes.h"
#include "core/tune/edit/whole.h"

#include <algorithm>

namespace tune {

using music::Length;
using music::Rational;

namespace {

Length beatOf(music::Meter meter)
{
    if (meter.unit == 8 && meter.beats % 3 == 0) return {Rational(3, 8)};
    return {Rational(1, std::max(meter.unit, 4))};
}

bool isThird(Length length) { return length.wholes.denominator() % 3 == 0; }

// A length that one note, dotted or not, can have.
bool isOneNote(Length length)
{
    auto const of = length.wholes.numerator();
    return of == 1 || of == 2 || of == 3 || of == 4;
}

// A part of a note or of the silence, inside one bar.
struct Piece {
    Length at;
    Length end;
    std::optional<int> midi; // none: silence
    bool tied = false;
};

// The beats of a bar that are divided in three, as their indices.
std::vector<int> thirdsOf(std::vector<Piece> const& pieces, Length beat)
{
    std::vector<int> out;
    for (Piece const& piece : pieces)
        for (Length const place : {piece.at, piece.end})
            if (isThird({place.wholes / beat.wholes}))
                out.push_back(static_cast<int>(floorOf(place.wholes / beat.wholes)));
    return out;
}

// Cut at the borders of such beats, and at beats where no single note is so long.
std::vector<Piece> cut(std::vector<Piece> const& pieces, Length beat, bool compound)
{
    std::vector<int> const thirds = compound ? std::vector<int>{} : thirdsOf(pieces, beat);
    std::vector<Piece> out;
    for (Piece piece : pieces) {
        while (piece.at < piece.end) {
            auto const here = static_cast<int>(floorOf(piece.at.wholes / beat.wholes));
            Length stop = piece.end;
            // The border of the first beat in thirds that it lies in or runs into.
            for (int b = here; beat * Rational(b) < piece.end; ++b) {
                if (std::ranges::count(thirds, b) == 0) continue;
                stop = std::min(stop, beat * Rational(b > here || piece.at == beat * Rational(b)
                                                          ? (b > here ? b : b + 1)
                                                          : b + 1));
                break;
            }
            Length const next = beat * Rational(here + 1);
            if (!isThird(stop - piece.at) && !isOneNote(stop - piece.at) && next < stop)
                stop = next;
            out.push_back({piece.at, stop, piece.midi, piece.tied || stop < piece.end});
            piece.at = stop;
        }
    }
    return out;
}

struct BarOf {
    Notes notes;
    std::vector<Tuplet> tuplets;
};

BarOf written(std::vector<Piece> const& pieces, Length beat, music::Key key, bool compound)
{
    BarOf out;
    std::optional<int> inBeat;
    for (Piece const& piece : cut(pieces, beat, compound)) {
        Note note;
        note.at = piece.at;
        note.length = piece.end - piece.at;
        if (piece.midi) note.pitches = {music::spelt(*piece.midi, signature(key))};
        note.tied = piece.midi && piece.tied;
        NoteIndex const index = out.notes.beyond();
        bool const third = !compound && isThird(note.length);
        auto const here = static_cast<int>(floorOf(piece.at.wholes / beat.wholes));
        if (third && inBeat == here)
            out.tuplets.back().last = index;
        else if (third)
            out.tuplets.push_back({index, index, 3, 2});
        inBeat = third ? std::optional(here) : std::nullopt;
        out.notes.push_back(std::move(note));
    }
    return out;
}

// What of the notes lies between two places, counted from the first of them.
std::vector<Piece> piecesIn(std::vector<TakenNote> const& notes, Length from, Length to)
{
    std::vector<Piece> out;
    Length at = from;
    for (TakenNote const& note : notes) {
        Length const begin = std::max(note.at, from);
        Length const end = std::min(note.at + note.length, to);
        if (end <= begin) continue;
        if (begin > at) out.push_back({at - from, begin - from, std::nullopt, false});
        out.push_back({begin - from, end - from, note.midi, note.at + note.length > to});
        at = end;
    }
    if (at < to) out.push_back({at - from, to - from, std::nullopt, false});
    return out;
}

// The bar before has its own notes up to where these begin.
Notes upTo(Bar const& bar, Length place)
{
    Notes out;
    for (Note note : bar.notes) {
        if (note.at >= place) break;
        note.length = std::min(note.length, place - note.at);
        if (note.at + note.length == place) note.tied = false;
        out.push_back(std::move(note));
    }
    return out;
}

Tune withUpbeat(Tune tune, BarIndex bar, std::vector<TakenNote> const& notes, Length beat,
                bool compound)
{
    Length const upbeat = Length{} - notes.front().at;
    Bar const& before = tune.bars[bar - 1];
    Length const length = before.length;
    Length const place = length > upbeat ? length - upbeat : Length{};
    auto pieces = piecesIn(notes, Length{} - (length - place), Length{});
    for (Piece& piece : pieces) {
        piece.at = piece.at + place;
        piece.end = piece.end + place;
    }
    Notes all = upTo(before, place);
    int const kept = all.size();
    BarOf more = written(pieces, beat, before.key, compound);
    std::vector<Tuplet> tuplets;
    for (Tuplet const& tuplet : before.tuplets)
        if (tuplet.last < kept) tuplets.push_back(tuplet);
    for (Tuplet tuplet : more.tuplets)
        tuplets.push_back(
            {tuplet.first + kept, tuplet.last + kept, tuplet.actual, tuplet.normal});
    all.append(std::move(more.notes));
    return withBarNotes(std::move(tune), bar - 1, std::move(all), std::move(tuplets));
}

} // namespace

Tune withTaken(Tune tune, BarIndex bar, Taken const& taken)
{
    auto const beyond = [&tune] { return tune.bars.beyond(); };
    if (taken.notes.empty() || bar < 0 || bar >= beyond()) return tune;
    bool const fresh = !hasNotes(tune);
    std::vector<TakenNote> notes = taken.notes;
    Length const upbeat = notes.front().at < Length{} ? Length{} - notes.front().at : Length{};
    if (upbeat > Length{}) {
        auto const now = pickUpOf(tune);
        bool const first = bar == 0 || (bar == 1 && now);
        if (first && (!now || *now < upbeat)) {
            auto longer = withPickUp(tune, upbeat);
            if (longer && !now) ++bar;
            if (longer) tune = *std::move(longer);
        }
    }
    // Where each bar begins, until the notes are used up.
    Length const end = notes.back().at + notes.back().length;
    std::vector<Length> starts{Length{}};
    BarIndex last = bar;
    for (;; ++last) {
        if (last == beyond()) tune = withBars(std::move(tune), last);
        Bar const& here = tune.bars[last];
        starts.push_back(starts.back() + std::max(here.length, Length{Rational(1, 64)}));
        if (starts.back() >= end) break;
    }
    // The last bar of a new tune is as short as its pick-up asks for.
    bool const rings = notes.back().at + notes.back().length == starts.back();
    if (fresh && upbeat > Length{} && rings && notes.back().length > upbeat &&
        starts.back() - upbeat > starts[starts.size() - 2]) {
        notes.back().length = notes.back().length - upbeat;
        starts.back() = starts.back() - upbeat;
    }
    if (fresh && last + 1 < beyond())
        tune = withoutBars(std::move(tune), last + 1, beyond() - 1);
    // From the last on, so that a tie finds the note that it leads to.
    for (BarIndex b = last; b >= bar; --b) {
        Bar const& here = tune.bars[b];
        auto const index = static_cast<std::size_t>(b - bar);
        bool const compound = here.meter.unit == 8 && here.meter.beats % 3 == 0;
        BarOf of = written(piecesIn(notes, starts[index], starts[index + 1]),
                           beatOf(here.meter), here.key, compound);
        tune = withBarNotes(std::move(tune), b, std::move(of.notes), std::move(of.tuplets));
    }
    if (upbeat > Length{} && bar > 0) {
        music::Meter const meter = tune.bars[bar - 1].meter;
        tune = withUpbeat(std::move(tune), bar, notes, beatOf(meter),
                          meter.unit == 8 && meter.beats % 3 == 0);
    }
    return tune;
}

} // namespace tune
