#include "core/music/typedchord.h"
#include "tests/fuzz/outside.h"

#include <cstddef>
#include <cstdint>
#include <string_view>

// A chord symbol, as a file spells it and as it is typed: a chord or a fault, and what is printed
// of a chord is read as that chord.
extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size)
{
    std::string_view const text(reinterpret_cast<char const*>(bytes), size);
    for (auto const& chord : {music::chordFrom(text), music::typedChordFrom(text)}) {
        if (!chord) continue;
        for (std::string const& printed : {music::plain(*chord), music::shown(*chord)}) {
            auto const again = music::typedChordFrom(printed);
            fuzz::demand(again && *again == *chord, "a printed chord is read as that chord");
        }
        for (int step = -7; step <= 7; ++step)
            (void)music::shown(music::transposed(*chord, music::Interval{step, step * 12 / 7}));
    }
    return 0;
}
