#pragma once

#include "core/arrange/score.h"
#include "core/harp/hand.h"
#include "core/harp/harp.h"
#include "core/harp/levers.h"
#include "core/pattern/pattern.h"
#include "core/tune/kind.h"
#include "core/tune/playing.h"
#include "core/tune/tune.h"

namespace arrange {

// All that building and scoring may look at. Refers to values that the caller keeps alive.
struct Scene {
    tune::Tune const& tune; // as arranged, in the key it is played in
    tune::Playing const& playing;
    harp::Harp const& harp;
    harp::HandModel const& hand;
    harp::Level const& level;
    harp::LeverTimeline const& levers;
    tune::Tempo tempo;
    pattern::PatternBook const& book;
    Weights const& weights;
    tune::Kind kind = tune::kindOf(tune);
};

} // namespace arrange
