#pragma once

#include "core/music/time.h"

#include <cstddef>
#include <cstdint>

// What a reader takes of one tune before it says that it is too much: far beyond any tune that
// a harp plays, and little enough that a damaged file does no harm. The same for every format.
namespace files::limits {

inline constexpr std::size_t mostNotes = 200'000;
inline constexpr std::size_t mostTexts = 50'000;
inline constexpr std::size_t mostPitchesAtOnce = 20; // no hand plucks more
inline constexpr std::size_t mostMarks = 16;         // of a note
inline constexpr std::size_t mostVerses = 20;        // under one line
// All lengths of a tune share a denominator of at most this, and it lasts no more whole notes,
// so that every sum stays far inside 64 bits.
inline constexpr std::int64_t largestCommonDenominator = std::int64_t{1} << 20;
inline constexpr music::Rational longestTune{std::int64_t{1} << 20};
inline constexpr music::Rational longestNote{256};

} // namespace files::limits
