#include "core/pattern/layout.h"

#include "core/base/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

namespace pattern {

namespace {

using music::Length;
using music::Meter;
using music::Rational;

bool sameSignature(Meter a, Meter b) { return a.beats == b.beats && a.unit == b.unit; }

bool sameBeat(Meter a, Meter b)
{
    return isCompound(a) == isCompound(b) && beatLength(a) == beatLength(b);
}

bool holds(std::vector<int> const& played, int note)
{
    return std::find(played.begin(), played.end(), note) != played.end();
}

// Notes that are plucked at one time, as the pattern has them: indices into Pattern::notes.
std::vector<std::vector<int>> plucks(Pattern const& pattern)
{
    std::vector<std::vector<int>> all;
    for (std::size_t i = 0; i < pattern.notes.size(); ++i) {
        if (!pattern.notes[i].withPrevious || all.empty()) all.emplace_back();
        all.back().push_back(static_cast<int>(i));
    }
    return all;
}

// Places in a span, so far apart, from its start on.
int placesIn(Length span, Length step)
{
    Rational const steps = span / step;
    auto const whole = floorOf(steps);
    bool const exact = steps == Rational(whole);
    return std::max(1, static_cast<int>(exact ? whole : whole + 1));
}

// The beat where it has room for so many plucks, else its half (in compound meters its third);
// the half of that only where the arranger has asked for the shape herself.
Length stepFor(int wanted, Meter meter, Length span, bool own)
{
    Length const beat = beatLength(meter);
    Length const division = beat * Rational(1, isCompound(meter) ? 3 : 2);
    if (placesIn(span, beat) >= wanted) return beat;
    return !own || placesIn(span, division) >= wanted ? division : division * Rational(1, 2);
}

Rhythm onTheBeats(Pattern const& pattern, Meter meter, Length span)
{
    std::vector<std::vector<int>> all = plucks(pattern);
    Length const step = stepFor(static_cast<int>(all.size()), meter, span, pattern.own);
    int const room = std::min(placesIn(span, step), static_cast<int>(all.size()));
    bool const cut = room < static_cast<int>(all.size());
    Rhythm rhythm{cut && room == 1            ? base::marked("first note")
                  : cut                       ? fmt::format("first {} notes", room)
                  : step == beatLength(meter) ? base::marked("on the beats")
                                              : base::marked("even notes, then ring"),
                  meter,
                  span,
                  static_cast<int>(pattern.notes.size()),
                  {},
                  {}};
    for (int i = 0; i < room; ++i) {
        rhythm.onsets.push_back(step * Rational(i));
        rhythm.plays.push_back(std::move(all[static_cast<std::size_t>(i)]));
    }
    return rhythm;
}

} // namespace

int penaltyFor(Rhythm const& rhythm, std::string_view kind)
{
    int penalty = rhythm.penalty;
    for (ForKind const& row : rhythm.kinds)
        if (row.kind == kind) penalty += row.penalty;
    return penalty;
}

bool fits(Rhythm const& rhythm, Pattern const& pattern)
{
    if (rhythm.notes != static_cast<int>(pattern.notes.size())) return false;
    for (std::vector<int> const& played : rhythm.plays) {
        bool const isBlock =
            rhythm.notes > 1 && static_cast<int>(played.size()) == rhythm.notes;
        if (isBlock && !pattern.together) return false;
        for (int note = 1; note < rhythm.notes; ++note) {
            bool const isJoined = pattern.notes[static_cast<std::size_t>(note)].withPrevious;
            if (isJoined && holds(played, note) != holds(played, note - 1)) return false;
        }
    }
    return true;
}

std::vector<Rhythm> rhythmsFor(PatternBook const& book, Pattern const& pattern, Meter meter,
                               Length span)
{
    std::vector<Rhythm> found;
    for (Rhythm const& r : book.rhythms)
        if (sameSignature(r.meter, meter) && r.span == span && fits(r, pattern))
            found.push_back(r);
    if (!found.empty()) return found;

    for (Rhythm const& r : book.rhythms) {
        bool const wholeBar = r.span == span && barLength(r.meter) == span;
        if (!wholeBar || !sameBeat(r.meter, meter) || !fits(r, pattern)) continue;
        found.push_back(r);
        found.back().meter = meter;
    }
    if (!found.empty()) return found;
    return {onTheBeats(pattern, meter, span)};
}

std::string rhythmWords(std::string_view name)
{
    constexpr std::string_view late = ", after a flip"; // as candidates name them
    constexpr std::string_view first = "first ";
    if (name.ends_with(late))
        return base::say("{}, after a flip",
                         rhythmWords(name.substr(0, name.size() - late.size())));
    int notes = 0;
    if (name.starts_with(first) && name.ends_with(" notes")) {
        char const* const from = name.data() + first.size();
        if (std::from_chars(from, name.data() + name.size(), notes).ec == std::errc())
            return base::say("first {} notes", notes);
    }
    return base::said(name);
}

} // namespace pattern
