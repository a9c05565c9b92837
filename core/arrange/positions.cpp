#include "core/arrange/positions.h"

#include <algorithm>

namespace arrange {

namespace {

bool soundsOn(tune::ChordSpan const& span, tune::PlayedBar const& bar)
{
    return bar.bar == span.bar && tune::standsOn(span.pass, bar.pass);
}

Occurrence occurrenceIn(tune::Playing const& playing, tune::PlayedBarIndex bar,
                        music::Length at)
{
    tune::PlayedBar const& played = playing.bars[bar];
    return {bar, played.pass, played.at + at};
}

// How long the tune has notes that are no tone of the chord, from this place of the bar on.
music::Length foreignTo(music::Chord const& chord, tune::Bar const& bar, music::Length from)
{
    music::Length sum;
    for (tune::Note const& note : bar.notes)
        if (note.at >= from && !note.pitches.empty() &&
            !music::contains(chord, music::midi(note.pitches.back()) % 12))
            sum = sum + note.length;
    return sum;
}

// The tune comes to rest on a note of the tonic chord as this chord begins, and holds it to the
// end.
bool comesToRestOn(Position const& last, music::Chord const& tonic, tune::Bar const& bar)
{
    return std::ranges::any_of(bar.notes, [&](tune::Note const& note) {
        return note.at == last.at && note.length >= last.span && !note.pitches.empty() &&
               music::contains(tonic, music::midi(note.pitches.back()) % 12);
    });
}

// What follows the last chord on the tonic, where it is there to lead back; and the tonic chord
// itself, where the end says it twice: it is struck once and rings on. Where the tune rests on
// the last chord, or goes on for a beat with notes that the tonic would rub, nothing is
// dropped.
void dropTurnRound(Positions& ends, tune::Tune const& tune)
{
    auto const onTonic = [&tune](Position const& p) {
        return music::pitchClass(p.chord.root) == music::pitchClass(tune.key.tonic);
    };
    auto tonic = std::find_if(ends.rbegin(), ends.rend(), onTonic);
    if (tonic == ends.rend()) return;
    Position const& last = ends.back();
    tune::Bar const& bar = tune.bars[last.bar];
    if (tonic != ends.rbegin()) {
        if (comesToRestOn(last, tonic->chord, bar)) return;
        if (foreignTo(tonic->chord, bar, std::prev(tonic)->at) >= music::beatLength(bar.meter))
            return;
    }
    while (std::next(tonic) != ends.rend() && std::next(tonic)->chord == tonic->chord) ++tonic;
    if (tonic == ends.rbegin()) return;
    music::Length const end = last.at + last.span;
    tonic->span = end - tonic->at;
    ends.erase(tonic.base(), ends.end());
}

} // namespace

Positions positionsAsWritten(tune::Tune const& tune, tune::Playing const& playing)
{
    Positions positions;
    for (tune::ChordSpan const& span : tune::chordSpans(tune)) {
        Position position{span.bar, span.at, span.length, span.chord, {}};
        for (tune::PlayedBarIndex const b : playing.bars.indices())
            if (soundsOn(span, playing.bars[b]))
                position.played.push_back(occurrenceIn(playing, b, span.at));
        if (!position.played.empty()) positions.push_back(std::move(position));
    }
    return positions;
}

Positions positionsByPass(tune::Tune const& tune, tune::Playing const& playing)
{
    Positions positions;
    for (Position const& written : positionsAsWritten(tune, playing)) {
        for (Occurrence const& when : written.played) {
            positions.push_back(written);
            positions.back().played = {when};
        }
    }
    std::ranges::stable_sort(positions, {},
                             [](Position const& p) { return p.played.front().at; });
    return positions;
}

Positions withEndApart(Positions positions, tune::Tune const& tune,
                       tune::Playing const& playing)
{
    if (playing.bars.empty()) return positions;
    // After a jump the page holds the last bar once, in the middle or at the end.
    if (playing.jumps && playing.bars.back().pass > 1) return positions;
    tune::PlayedBarIndex const last = playing.bars.beyond() - 1;
    Positions ends;
    PositionIndex after = positions.beyond();
    for (PositionIndex i = after - 1; i >= 0; --i) {
        auto& played = positions[i].played;
        auto const here = std::ranges::find(played, last, &Occurrence::playedBar);
        if (here == played.end()) continue;
        if (ends.empty()) after = i + 1;
        ends.insert(ends.begin(), positions[i]);
        ends.front().played = {*here};
        played.erase(here);
    }
    dropTurnRound(ends, tune);
    positions.insert(positions.from(after), ends.begin(), ends.end());
    positions.eraseIf([](Position const& p) { return p.played.empty(); });
    return positions;
}

} // namespace arrange
