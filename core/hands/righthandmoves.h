#pragma once

#include "core/harp/hand.h"
#include "core/harp/harp.h"

#include <array>
#include <compare>
#include <optional>
#include <vector>

namespace hands {

// How much time the hand has before a pluck, counted from the pluck before.
enum class Pause {
    None,   // less than a beat
    Beat,   // a beat or more
    Rested, // two beats or more, or the tune rests
};

// What the right hand plucks at one moment of the tune.
struct Pluck {
    std::vector<int> strings; // from the lowest, none twice, at most four
    Pause before = Pause::None;
};

// Where the fingers are after a pluck. Finger f lies on placed[f - 1]; those lifted or never
// placed lie nowhere. A higher finger number is always on a lower string.
struct HandShape {
    std::array<std::optional<int>, harp::fingers> placed;
    int played = 0; // the highest-lying finger of the last pluck; 0: nothing played yet
    friend auto operator<=>(HandShape const&, HandShape const&) = default;
};

// How the fingers of a pluck come to their strings.
enum class Join {
    Anew,   // the whole hand is placed
    Stays,  // they lie there, or are placed beside those that lie
    Linked, // placed while the finger that played last stays on, beside it or across it
    Again,  // another finger comes to the string just plucked
    Slides, // a finger goes on to the neighbouring string
};

// One way to play the next pluck.
struct HandMove {
    HandShape to;
    std::vector<int> fingers; // one for each string of the pluck, from the lowest
    int cost = 0;             // points, see righthandmoves.cpp
    Join join = Join::Anew;
};

// Every way of the right hand to play the next pluck, by the rules of [trade-3.3]: with fingers
// that lie there or are placed beside those that lie; with one finger left on and the others
// placed anew; crossing under or over to a neighbouring string; sliding with the thumb to the
// next lower string; changing finger on a string that is plucked again; or placing the whole
// hand anew, which is always possible. A chord that no hand spans is rolled, at a price.
std::vector<HandMove> movesTo(HandShape const& from, Pluck const& next, harp::Harp const& harp,
                              harp::HandModel const& hand);

} // namespace hands
