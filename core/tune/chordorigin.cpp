#include "core/tune/chordorigin.h"

#include <string>
#include <utility>

namespace tune {

ChordOrigin originOf(ChordMark const& mark)
{
    if (mark.written == foundWord) return ChordOrigin::Found;
    return mark.written == setWord ? ChordOrigin::Set : ChordOrigin::Written;
}

ChordMark chordMark(music::Length at, music::Chord chord, ChordOrigin origin)
{
    std::string written = origin == ChordOrigin::Found ? std::string(foundWord)
                          : origin == ChordOrigin::Set ? std::string(setWord)
                                                       : plain(chord);
    return {at, std::move(chord), std::move(written), std::nullopt};
}

} // namespace tune
