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
// kept free there by the arranger; the right hand turns where the tune itself pauses. Faults:
// KeyBeyondTuning, NoteOffHarp, NoMomentForFlip, each with its bar.
base::Result<harp::LeverTimeline> leverPlan(harp::Harp const& harp, tune::Tune const& tune,
                                            tune::Playing const& playing, tune::Tempo tempo,
                                            harp::Level const& level);

} // namespace levers
