#pragma once

#include "core/harp/harp.h"
#include "core/harp/levers.h"

#include <optional>
#include <vector>

namespace harp {

// A place where a pitch can be had: a string, and how its lever must stand.
struct Seat {
    StringIndex string = 0;
    Lever lever = Lever::Down;
    friend bool operator==(Seat const&, Seat const&) = default;
};

// Every seat that sounds like the pitch, the string of its own letter first, then the string
// below, then the one above. On an E flat harp D flat has no string of its own and sits on the
// C string with the lever up [trade-1.4]. Empty when the harp cannot give it.
std::vector<Seat> seats(Harp const& harp, music::Pitch pitch);

// The first of the seats.
std::optional<Seat> seatOf(Harp const& harp, music::Pitch pitch);

// The string on which the pitch lies as the levers stand at a moment: its own letter before a
// neighbour that sounds the same. None when no string sounds it then. This is the one answer to
// "which string does the tune pluck here", for hands, sound, sheet and files alike.
std::optional<StringIndex> stringAtMoment(Harp const& harp, LeverTimeline const& levers,
                                          music::Pitch pitch, music::Moment at);

// The string that sounds a key as the levers stand, for a player at a keyboard; of two that
// sound alike the one with its lever down. None when no string does.
std::optional<StringIndex> stringForKey(Harp const& harp, LeverSetting const& levers,
                                        int midiKey);

} // namespace harp
