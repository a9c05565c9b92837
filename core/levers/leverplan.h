#pragma once

#include "core/base/result.h"
#include "core/harp/hand.h"
#include "core/harp/harp.h"
#include "core/harp/levers.h"
#include "core/levers/clock.h"
#include "core/tune/changes.h"
#include "core/tune/playing.h"
#include "core/tune/tune.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

namespace levers {

// Set-up and flips that give every note of a tune on a harp.
struct Plan {
    harp::LeverTimeline timeline;
    std::vector<Gap> gaps;                    // of each flip, in the order of the flips
    std::vector<tune::NotePlace> gracesLeft; // grace notes for which no lever turns in time
    std::int64_t cost = 0; // what no plan undercuts: a million for each flip, then its moments,
                           // then 30 for each note away from the string of its own letter
};

// Why there is no plan: the fault with its bar, and the note that cannot be had with the note
// before it on the same string, where it is the time between these two that is lacking.
struct Refusal {
    base::Fault fault;
    std::optional<tune::NotePlace> note{};
    std::optional<tune::NotePlace> after{};
};

// One of the two.
struct Planning {
    std::optional<Plan> plan;
    std::optional<Refusal> refusal;
};

// Set-up and flips that give every note of the tune on this harp: each string starts as its
// first note wants it (else as the arranger wishes, else as the key has it), and is turned
// between two notes that differ, at a moment when a hand is free long enough for the level. The
// left hand is asked first and is kept free there by the arranger; the right hand turns where
// the tune itself pauses. Grace notes are served like other notes, but one that no lever can
// serve is left out, not the tune refused for it.
// What holds of every plan: each note sounds on harp::stringAtMoment; a lever is turned after
// its old note is counted out, or half of it where time is short; no hand is wanted at two
// levers at once, but stays where it turns one to and fro, so that those flips may overlap; the
// free time of a flip near the first note may begin before the tune does. No plan has fewer
// flips, and none with as many has better moments (clock.h) and fewer notes away from the
// string of their own letter: seatings are taken from the cheapest on (seating.h), each with
// its best moments beside one another (moments.h), until none that is left can be cheaper. A
// tune whose levers crowd so much that `seatingsTried` seatings do not settle it gets the best
// of these, or is refused. Faults: KeyBeyondTuning, NoteOffHarp, NoMomentForFlip, each with its
// bar.
inline constexpr int seatingsTried = 200;

// What a plan may do beyond that: flips that hurry before these notes (see Clock::windows), and
// a key that the levers cannot give, set as near as they can.
struct Leave {
    std::vector<tune::NotePlace> quick{};
    bool anyKey = false;
};
Planning leverPlanFor(harp::Harp const& harp, tune::Tune const& tune,
                      tune::Playing const& playing, tune::Tempo tempo,
                      harp::Level const& level, std::vector<harp::LeverWish> wishes = {},
                      Leave leave = {});

// The same flips at the moments that suit a left hand whose part is known: `lost` says what it
// gives up when it plucks nothing strictly between two moments, in points of the plan. Exact
// among the windows of the flips; seating and number of flips stay.
using LeftLoss = std::function<int(music::Moment from, music::Moment to)>;
Plan retimed(Plan plan, Clock const& clock, tune::PlayedBars const& bars, LeftLoss const& lost);

} // namespace levers
