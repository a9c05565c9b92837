#pragma once

#include "core/tune/tune.h"

#include <string_view>

namespace tune {

// Where a chord comes from: the file, the chord finder, or the arranger.
enum class ChordOrigin { Written, Found, Set };

// Kept in ChordMark::written: as the file spelt it, or one of these words where no file did.
inline constexpr std::string_view foundWord = "found";
inline constexpr std::string_view setWord = "set";

ChordOrigin originOf(ChordMark const& mark);

// A mark that no file has spelt; or, of origin Written, spelt plainly.
ChordMark chordMark(music::Length at, music::Chord chord, ChordOrigin origin);

} // namespace tune
