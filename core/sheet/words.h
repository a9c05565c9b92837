#pragma once

#include "core/sheet/drawing.h"

#include <optional>
#include <string_view>

namespace sheet {

// Accidentals inside running words are drawn from the music font, so that they look alike in
// every text face. Painter and layout share these sizes, in parts of the words' em.
enum class AccidentalSign { Flat, Natural, Sharp };
inline constexpr double accidentalSignScale = 0.29;   // staff space of the sign
inline constexpr double accidentalSignWidth = 0.35;   // advance
inline constexpr double accidentalSignRise = 0.30;    // of its origin above the baseline
inline constexpr std::size_t accidentalSignBytes = 3; // in UTF-8

// The accidental with which a text begins.
std::optional<AccidentalSign> accidentalSignAt(std::string_view text);

// Width of one line of UTF-8 words, in the unit of the height (that of the em). Exact for ASCII
// in the fonts the sheet is set in, near enough elsewhere.
double widthOf(std::string_view text, Face face, double height);

// Parts of the em above and below the baseline that words reach.
inline constexpr double wordsRise = 0.74;
inline constexpr double wordsFall = 0.22;

} // namespace sheet
