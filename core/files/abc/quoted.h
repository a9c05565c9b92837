#pragma once

#include "core/music/chord.h"

#include <string_view>
#include <variant>

namespace files {

// A text in quotes that is no chord symbol: a fingering, a direction, a word.
struct Words {};

// Starts like a chord symbol and is no word, yet no spelling explains it.
struct Unexplained {};

// What a text in quotes over a tune is meant as. Tune books put fingerings ("4"), directions
// ("D.C.", "tr"), dynamics ("p") and sentences there; only a single word that begins with a
// capital and holds a number or a chord sign, or that nobody could pronounce ("Gxz"), is taken
// for a chord symbol gone wrong.
std::variant<music::Chord, Words, Unexplained> quotedMeaning(std::string_view text);

} // namespace files
