#pragma once

#include "core/tune/tune.h"

#include <array>

namespace harmony {

// What is heard of a tune to find its key: histograms over the twelve pitch classes.
enum class KeyHeard {
    Sounding,       // how long each sounds
    Present,        // whether it sounds at all
    Often,          // whether it sounds a tenth of the time; less counts in part
    NowAndThen,     // the same for a thirtieth: what is rarer is a passing note
    Last,           // the last note
    EndsOfStrains,  // the last notes of strains
    FirstStrainEnd, // of the first strain
    AgreedEnd,      // the last note, if the first strain ends on it, too
    EndsOfPhrases,  // the last notes of phrases of four bars
    HalfWay,        // of the first four of eight bars
    First,          // the first note on a bar line
    StartsOfStrains,
    StartsOfPhrases,
    BarLines,    // notes on bar lines
    FirstStrain, // how long each sounds in the first strain
    FirstStrainOften,
    LastStrain,
    FirstBar, // in the first full bar
    FirstBarAtAll,
    FinalBar, // in the last bar of the last strain
    FinalBarAtAll,
    LastBars,   // in the last bars of strains
    LastButOne, // in the bars before those
    Moves,      // moves to it from one semitone below; then from two ... eleven
};
inline constexpr int keyMoves = 11;
inline constexpr int keyHistograms = static_cast<int>(KeyHeard::Moves) + keyMoves;

// [histogram][pitch class], shares of the whole in units of 1/featureOne.
using KeyHistogram = std::array<int, 12>;
using KeyHistograms = std::array<KeyHistogram, keyHistograms>;
KeyHistograms keyHistogramsOf(tune::Tune const& tune);

KeyHistogram const& of(KeyHistograms const& heard, KeyHeard what);

} // namespace harmony
