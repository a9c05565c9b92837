#pragma once

#include "core/hands/fingers.h"
#include "core/harp/hand.h"
#include "core/harp/harp.h"

#include <array>
#include <compare>
#include <optional>
#include <vector>

// How a hand gets from one pluck to the next. Both hands do it alike: the left mirrors the
// right, the thumb of each is on its highest string [trade-3.3].
namespace hands {

// How much time the hand has before a pluck, counted from the pluck before.
enum class Pause {
    Hurried, // less than the level allows for placing the hand anew
    None,    // less than a beat
    Beat,    // a beat or more
    Rested,  // two beats or more, or the hand rests
};

// What a hand plucks at one moment.
struct Stroke {
    std::vector<harp::StringIndex> strings; // from the lowest, none twice, at most four
    Pause before = Pause::None;
    std::vector<int> usual{};              // the pattern's fingers, one a string; or none
    std::vector<std::optional<int>> set{}; // what the player has set, one a string; or none
};

// Whose hand it is and what it may do.
struct Player {
    harp::Harp const& harp;
    harp::HandModel const& hand;
    bool crosses = true;         // a finger under the thumb, the thumb over a finger
    bool slides = true;          // the thumb down, finger 4 up
    int fingers = harp::fingers; // in use where a chord does not need more; the thumb is first
};

// Where the fingers are after a pluck. Finger f lies on placed[f - 1]; those lifted or never
// placed lie nowhere. A higher finger number is always on a lower string.
struct HandShape {
    std::array<std::optional<harp::StringIndex>, harp::fingers> placed;
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
    Fingers fingers;
    int cost = 0; // points, see moves.cpp
    Join join = Join::Anew;
};

// Every way of a hand to play the next pluck, by the rules of [trade-3.3]: with fingers that
// lie there or are placed beside those that lie; with one finger left on and the others placed
// anew; crossing under or over to a neighbouring string; sliding with the thumb to the next
// lower string or with finger 4 to the next higher one; changing finger on a string that is
// plucked again; or placing the whole hand anew, which is always possible. A chord that no hand
// spans is rolled, at a price. Fingers that the player has set are kept where any fingers in
// their order do.
std::vector<HandMove> movesTo(HandShape const& from, Stroke const& next, Player const& player);

// The same moves for one pluck from many shapes: what does not depend on the shape is worked
// out once. The pluck and the player must outlive it.
class MovesInto {
public:
    MovesInto(Stroke const& next, Player const& player);
    // In place of what stands in `moves`.
    void from(HandShape const& shape, std::vector<HandMove>& moves) const;

private:
    class From;
    struct Choice {
        Fingers fingers;
        int cost = 0;              // of the pluck alone
        bool liesTogether = false; // all its fingers at once
    };
    using Placed = std::array<std::optional<harp::StringIndex>, harp::fingers>;
    bool holds(Placed const& placed) const;
    int pairCost(harp::PlacedFinger low, harp::PlacedFinger high) const;
    int ownCost(Fingers const& fingers) const;

    Stroke const& m_next;
    Player const& m_player;
    std::array<double, harp::fingers * harp::fingers> m_limitMm{}; // by low and high finger
    std::vector<Choice> m_choices;
};

// Whether two fingers can be on two strings together: in their order, and within the hard limit
// of the pair [trade-3.2].
bool lieTogether(harp::Harp const& harp, harp::HandModel const& hand, harp::PlacedFinger a,
                 harp::PlacedFinger b);

// Whether some fingers in their order are those that the player has set for a pluck.
bool canKeepSet(Stroke const& pluck);

} // namespace hands
