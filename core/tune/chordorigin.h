#pragma once

#include "core/tune/tune.h"

namespace tune {

// Where a chord comes from: the file, the chord finder, or the arranger.
enum class ChordOrigin { Written, Found, Set };

// Kept in ChordMark::written: as the file spelt it, or one of these words where no file did.
inline constexpr std::string_view foundWord = "found";
inline constexpr std::string_view setWord = "set";

inline ChordOrigin originOf(ChordMark const& mark)
{
    if (mark.written == foundWord) return ChordOrigin::Found;
    return mark.written == setWord ? ChordOrigin::Set : ChordOrigin::Written;
}

// A mark that no file has spelt; or, of origin Written, spelt plainly.
inline ChordMark chordMark(music::Length at, music::Chord chord, ChordOrigin origin)
{
    std::string written = origin == ChordOrigin::Found ? std::string(foundWord)
                          : origin == ChordOrigin::Set ? std::string(setWord)
                                                       : plain(chord);
    return {at, std::move(chord), std::move(written), std::nullopt};
}

} // namespace tune
