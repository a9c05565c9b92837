#include "core/levers/refused.h"

#include "core/base/at.h"
#include "core/base/words.h"

#include <fmt/format.h>

#include <algorithm>

namespace levers {

namespace {

using harp::Lever;

// Why no string sounds the pitch.
base::Fault noString(harp::Harp const& harp, UseIndex note, Uses const& notes,
                     Performance const& performance)
{
    music::Pitch const pitch = notes[note].pitch;
    auto const string = harp::stringFor(harp, pitch);
    if (!string)
        return {base::FaultCode::NoteOffHarp, placeOfNote(note, notes, performance),
                base::say("{}, the harp goes from {} to {}", shown(pitch),
                          shown(harp.string(0).open), shown(harp.string(harp.highest()).open))};
    harp::HarpString const& near = harp.string(*string);
    return {
        base::FaultCode::KeyBeyondTuning, placeOfNote(note, notes, performance),
        near.hasLever
            ? base::say("no string gives {}: the string of that letter gives {} and {}",
                        shown(pitch), shown(near.open), shown(sounding(near, Lever::Up)))
            : base::say("no string gives {}: the string of that letter gives {} only, as it "
                        "has no lever",
                        shown(pitch), shown(near.open))};
}

// What would let a lever turn in so short a silence, as far as tempo goes.
std::string tempoThatHelps(music::Length silent, music::Length beat,
                           Performance const& performance)
{
    harp::Level const& level = performance.level;
    // The same shares as in Clock::turningTime.
    double const beats = (silent / beat).toDouble();
    if (beats <= 0 || beats < level.flipFreeBeats / 4) return {};
    double const quarters = silent.wholes.toDouble() * 240 / (level.flipFreeSeconds / 2);
    return base::say("; {} would be slow enough", tune::tempoWords(beat, quarters));
}

// The refusal of a turn that finds no window: what follows what, the silence there is between
// them and the silence that turning asks for.
base::Fault noTime(Uses const& notes, Turn const& turn, Performance const& performance)
{
    tune::PlayedNote const& old = notes[turn.after];
    tune::PlayedNote const& next = notes[turn.before];
    std::string const where = placeOfNote(turn.before, notes, performance);
    if (old.at == next.at)
        return {base::FaultCode::NoMomentForFlip, where,
                base::say("{} and {} together, both on string {}", shown(old.pitch),
                          shown(next.pitch), turn.string + 1)};
    std::string const change = base::say("{} after {}, both on string {}", shown(next.pitch),
                                         shown(old.pitch), turn.string + 1);
    if (!performance.level.flips)
        return {base::FaultCode::NoMomentForFlip, where,
                base::say("{}; at level {} no lever is flipped while playing", change,
                          performance.level.number)};

    tune::Bar const& bar = performance.tune.bars[performance.bars[next.playedBar].bar];
    music::Length const beat = music::beatLength(bar.meter);
    double const secondsAWhole = 240 / tune::quartersPerMinute(performance.tempo);
    auto const inWords = [&](music::Length length) {
        return base::say("{:.2g} beats or {:.2f} s", (length / beat).toDouble(),
                         length.wholes.toDouble() * secondsAWhole);
    };
    music::Length const silent = std::max(
        music::Length{}, notes[turn.by].at - old.at - old.held * music::Rational(1, 2));
    return {base::FaultCode::NoMomentForFlip, where,
            base::say("{}, with at most {} between them; level {} needs {}{}", change,
                      inWords(silent), performance.level.number,
                      inWords(performance.clock.turningTime(next.playedBar)),
                      tempoThatHelps(silent, beat, performance))};
}

} // namespace

std::string placeOfNote(UseIndex note, Uses const& notes, Performance const& performance)
{
    tune::PlayedBar const& bar = performance.bars[notes[note].playedBar];
    std::string const name = tune::barName(performance.tune, bar.bar);
    return bar.pass == 1 ? name : base::say("{}, time {}", name, bar.pass);
}

Refused cannotBeHad(harp::Harp const& harp, UseIndex note, Uses const& notes,
                    Performance const& performance)
{
    return {noString(harp, note, notes, performance), note, {}};
}

Refused noMoment(Uses const& notes, Turn const& turn, Performance const& performance)
{
    return {noTime(notes, turn, performance), turn.before, turn.after};
}

} // namespace levers
