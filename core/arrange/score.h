#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace arrange {

// Thousandths of a point. Integers, so that ties and totals are the same on every machine and
// an outside solver can compare exactly.
using Points = std::int64_t;

// What a pair of neighbours costs that no hand can play one after the other: more than any sum
// of judgements, so that it is chosen only where locks leave nothing else.
inline constexpr Points unplayablePair = 1'000'000;

// The terms of the score. Those of one voicing come first, those of two neighbours after.
enum class Term {
    Reach,       // stretch beyond comfort
    Rate,        // notes a second against hand and level
    ChordFit,    // degrees that are no chord tone as the levers stand
    MelodyClash, // dissonance against what the tune holds, by beat strength
    Collision,   // hands crowded on neighbouring strings
    Mud,         // roughness of what rings together, low register first
    MeterFit,    // rhythm against meter and the tune's activity
    Cadence,     // last bars close plainly
    Liking,      // pattern and register by style and level
    // of two neighbours
    Travel,    // distance against time
    RingClash, // undamped strings against the next chord
    Variety,   // the same shape again, or a change without need
};
inline constexpr std::size_t termCount = 12;

// The name in lattice.json and shared/weights.json: "reach", "chord_fit" ...
std::string_view termName(Term term);

// Points by term, weights already applied.
using Account = std::array<Points, termCount>;

Points total(Account const& account);

// Weights of one style, by term: a term's raw judgement, in thousandths, times its weight /
// 1000.
struct Weights {
    std::string style;
    std::string name; // in plain words, for the arranger
    std::array<int, termCount> byTerm{};
};

} // namespace arrange
