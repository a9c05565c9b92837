#pragma once

#include "core/base/result.h"
#include "core/tune/kind.h"
#include "core/tune/tune.h"

namespace tune {

// Edits of the whole tune.

// Every note and chord to the key of another home note, by the nearest way; the mode stays.
music::Interval wayTo(Tune const& tune, music::PitchName tonic);

// Another signature from the first bar on to where the key changes: notes keep their letters,
// those without an accidental follow the signature. Chords stay.
Tune withSignature(Tune tune, music::Key key);

// Another time signature to where it changes. Bars of rest get its length; the others keep
// their notes, whether they add up or not.
Tune withMeter(Tune tune, music::Meter meter);

// All notes so many octaves higher; a tune that would leave C0 to B8 stays as it is.
Tune withAllOctave(Tune tune, int octaves);

// How long the notes before bar 1 last; none: no pick-up. A longer one begins with a rest, a
// shorter one loses what it began with. Fault: BadLength where it is not shorter than a bar.
base::Result<Tune> withPickUp(Tune tune, std::optional<music::Length> length);
std::optional<music::Length> pickUpOf(Tune const& tune);

// What stands over the tune. An empty kind: the tune says none.
Tune withHead(Tune tune, std::string title, std::string kind, std::optional<Tempo> tempo);

// The time signature that a kind of tune usually has.
music::Meter usualMeter(Kind kind);

// A tune of rests, to be written.
struct NewTune {
    std::string title;
    Kind kind = Kind::Jig;
    music::Key key;
    music::Meter meter{6, 8, false};
    int bars = 8;
    std::optional<music::Length> pickUp; // none, or shorter than a bar
};
Tune newTune(NewTune const& wish);

} // namespace tune
