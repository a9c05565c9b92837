#include "core/notation/durations.h"

#include <algorithm>

namespace notation {

using music::Length;
using music::Meter;
using music::Rational;

namespace {

constexpr int mostDots = 2;
constexpr int longest = -1; // breve
constexpr int shortest = 7; // 1/128

Rational wholesOf(int halvings)
{
    return halvings < 0 ? Rational(2) : Rational(1, std::int64_t{1} << halvings);
}

bool isMultiple(Length length, Length unit) { return (length / unit).denominator() == 1; }

// The next smaller grid below a beat: its third in compound meters, its half otherwise.
Length halfBeat(Meter meter)
{
    return music::isCompound(meter) ? Length{Rational(1, meter.unit)}
                                    : music::beatLength(meter) * Rational(1, 2);
}

// A note longer than a compound beat must fill whole beats: a minim in 6/8 hides the second.
bool hidesCompoundBeat(Meter meter, Length length)
{
    return music::isCompound(meter) && length > music::beatLength(meter) &&
           !isMultiple(length, music::beatLength(meter));
}

enum class Among { First, Last };

// The heaviest place strictly inside a stretch, the first or last of equals; none if nothing
// lies inside that the meter knows.
std::optional<Length> heaviestInside(Length from, Length to, Meter meter, Among equals)
{
    Length const grid = halfBeat(meter);
    std::optional<Length> best;
    int bestDepth = 0;
    Length at = grid * Rational(floorOf(from / grid) + 1);
    for (; at < to; at = at + grid) {
        int const depth = metricDepth(meter, at);
        if (depth > bestDepth || (equals == Among::Last && depth > 0 && depth == bestDepth)) {
            bestDepth = depth;
            best = at;
        }
    }
    return best;
}

// Where an unprintable stretch is cut. A note that begins on a place as heavy as any inside
// keeps its long part first: five quavers in 3/4 are a minim and a quaver.
std::optional<Length> cutInside(Length from, Length to, Meter meter)
{
    auto const first = heaviestInside(from, to, meter, Among::First);
    if (!first || metricDepth(meter, from) < metricDepth(meter, *first)) return first;
    return heaviestInside(from, to, meter, Among::Last);
}

using Fits = bool (*)(Length at, NoteValue value, Meter meter);
using Cut = std::optional<Length> (*)(Length from, Length to, Meter meter);

std::optional<Length> restCut(Length from, Length to, Meter meter)
{
    return heaviestInside(from, to, meter, Among::First);
}

bool noteFits(Length at, NoteValue value, Meter meter)
{
    Length const length = lengthOf(value);
    if (hidesCompoundBeat(meter, length)) return false;
    auto const inside = heaviestInside(at, at + length, meter, Among::First);
    return !inside || metricDepth(meter, *inside) <= metricDepth(meter, at) ||
           (metricDepth(meter, *inside) == 2 && metricDepth(meter, at) == 1 &&
            value.dots == 0 && !music::isCompound(meter)); // quaver crotchet quaver
}

bool restFits(Length at, NoteValue value, Meter meter)
{
    Length const length = lengthOf(value);
    bool const compound = music::isCompound(meter);
    Length const beat = music::beatLength(meter);
    if (length > beat && music::beatsInBar(meter) % 2 != 0) return false;
    if (compound) {
        if (value.dots > 1 || !noteFits(at, value, meter)) return false;
        if (length <= halfBeat(meter)) return isMultiple(at, length);
        return isMultiple(at, length <= beat ? beat : length);
    }
    return value.dots == 0 && isMultiple(at, length);
}

// Cuts at the heaviest place inside until every piece fits; below the grid of the meter the
// longest value that fits is taken first.
void spell(Length from, Length to, Meter meter, Fits fits, Cut cutAt, std::vector<Piece>& into)
{
    if (from >= to) return;
    if (auto const value = valueOf(to - from); value && fits(from, *value, meter)) {
        into.push_back({from, *value});
        return;
    }
    if (auto const cut = cutAt(from, to, meter)) {
        spell(from, *cut, meter, fits, cutAt, into);
        spell(*cut, to, meter, fits, cutAt, into);
        return;
    }
    NoteValue value = nearestValue(to - from);
    value.dots = 0;
    into.push_back({from, value});
    if (lengthOf(value) < to - from)
        spell(from + lengthOf(value), to, meter, fits, cutAt, into);
}

} // namespace

Length lengthOf(NoteValue value)
{
    Rational const plain = wholesOf(value.halvings);
    std::int64_t const parts = std::int64_t{1} << value.dots; // 1, 2, 4
    return {plain * Rational(2 * parts - 1, parts)};
}

std::optional<NoteValue> valueOf(Length length)
{
    for (int halvings = longest; halvings <= shortest; ++halvings)
        for (int dots = 0; dots <= mostDots; ++dots)
            if (NoteValue const value{halvings, dots}; lengthOf(value) == length) return value;
    return std::nullopt;
}

NoteValue nearestValue(Length length)
{
    NoteValue best{shortest, 0};
    for (int halvings = longest; halvings <= shortest; ++halvings)
        for (int dots = 0; dots <= 1; ++dots) {
            NoteValue const value{halvings, dots};
            if (lengthOf(value) <= length && lengthOf(value) > lengthOf(best)) best = value;
        }
    return best;
}

int metricDepth(Meter meter, Length at)
{
    if (isMultiple(at, music::barLength(meter))) return 4;
    if (isMultiple(at, music::beatLength(meter))) {
        int const beats = music::beatsInBar(meter);
        bool const halved = beats >= 4 && beats % 2 == 0;
        return halved && isMultiple(at, music::barLength(meter) * Rational(1, 2)) ? 3 : 2;
    }
    return isMultiple(at, halfBeat(meter)) ? 1 : 0;
}

std::vector<Piece> notePieces(Length at, Length length, Meter meter)
{
    std::vector<Piece> pieces;
    spell(at, at + length, meter, noteFits, cutInside, pieces);
    return pieces;
}

std::vector<Piece> ringingPieces(Length at, Length length, Meter meter)
{
    Length const beat = music::beatLength(meter);
    auto const value = valueOf(length);
    bool const onBeats = isMultiple(at, beat) && isMultiple(length, beat);
    if (value && value->dots <= 1 && onBeats && !music::isCompound(meter))
        return {{at, *value}};
    return notePieces(at, length, meter);
}

std::vector<Piece> restPieces(Length at, Length length, Meter meter)
{
    std::vector<Piece> pieces;
    spell(at, at + length, meter, restFits, restCut, pieces);
    return pieces;
}

} // namespace notation
