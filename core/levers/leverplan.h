#pragma once

#include "core/base/result.h"
#include "core/harp/hand.h"
#include "core/harp/harp.h"
#include "core/harp/levers.h"
#include "core/tune/playing.h"
#include "core/tune/tune.h"

namespace levers {

// Set-up and flips that give every note of the tune on this harp: each string starts as its
// first note wants it (else as the key has it), and is turned between two notes that differ, at
// a moment when a hand is free long enough for the level. The left hand is asked first and is
// kept free there by the arranger; the right hand turns where the tune itself pauses.
// What holds of every plan: each note sounds on harp::stringAtMoment; a lever is turned after
// its old note is counted out, or half of it where time is short; no hand is wanted at two
// levers at once, but stays where it turns one to and fro, so that those flips may overlap; the
// free time of a flip near the first note may begin before the tune does. There are as few
// flips as the tune allows. Faults: KeyBeyondTuning, NoteOffHarp, NoMomentForFlip, each with
// its bar.
base::Result<harp::LeverTimeline> leverPlan(harp::Harp const& harp, tune::Tune const& tune,
                                            tune::Playing const& playing, tune::Tempo tempo,
                                            harp::Level const& level);

} // namespace levers
