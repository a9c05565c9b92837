#pragma once

#include "core/arrange/points.h"
#include "core/arrange/taste.h"
#include "core/tune/ways.h"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace arrange {

// What a pair of neighbours costs that no hand can play one after the other: more than any sum
// of judgements, so that it is chosen only where locks leave nothing else.
inline constexpr Points unplayablePair = 1'000'000;

// The terms of the score. Those of one voicing come first, those of two neighbours after.
enum class Term {
    Reach,         // stretch beyond comfort
    Rate,          // notes a second against hand and level
    ChordFit,      // degrees that are no chord tone as the levers stand
    Quality,       // the third stated, missing or wrong; fifths and sevenths that are wrong
    MelodyClash,   // dissonance against what the tune holds, by beat strength
    MelodyCompany, // thirds, sixths and tenths with the tune, and which way both go
    Collision,     // hands crowded on neighbouring strings
    Mud,           // roughness of what rings together, low register first
    MeterFit,      // rhythm against meter
    Activity,      // plain where the tune is busy, moving where it holds
    Levers,        // flips that the shape would need, and time for those that there are
    Cadence,       // last bars close plainly
    Liking,        // pattern and register by style and level
    Passes,        // thin on the first pass and fuller on later ones, where passes vary
    // of two neighbours
    Travel,    // distance against time
    Link,      // strings in common, and those plucked anew while they are loud
    RingClash, // undamped strings against the next chord
    ThumbLine, // the line of the top notes, and where the last note leads
    BassLine,  // the line of the lowest notes
    Variety,   // the same shape again, or a change without need
};
inline constexpr std::size_t termCount = 20;
inline constexpr Term firstOfNeighbours = Term::Travel;

// The name in lattice.json and shared/weights.json: "reach", "chord_fit" ...
std::string_view termName(Term term);

// Points by term, weights already applied.
using Account = std::array<Points, termCount>;

Points total(Account const& account);

// Weights of one style, by term: a term's raw judgement, in thousandths, times its weight /
// 1000; and the figures by which the terms judge in this style.
struct Weights {
    std::string style;
    std::string name; // in plain words, for the arranger
    std::array<int, termCount> byTerm{};
    Taste taste{};
    tune::WayPrices ways{}; // what each way round a snag costs
};

} // namespace arrange
