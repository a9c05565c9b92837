#include "core/files/abc/read.h"
#include "core/files/check.h"
#include "core/tune/playing.h"

#include <cstddef>
#include <cstdint>
#include <string_view>

// One input of a fuzzer: whatever the bytes are, the reader must come back with tunes or
// faults, and what it gives must stand up to what follows.
extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size)
{
    std::string_view const text(reinterpret_cast<char const*>(bytes), size);
    auto const entries = files::abcTunes(text);
    if (!entries) return 0;
    for (files::AbcEntry const& entry : *entries) {
        auto const tune = files::readAbc(text, entry, "fuzz");
        if (!tune) continue;
        tune::played(*tune);
        tune::chordSpans(*tune);
        files::checkLine(*tune);
    }
    return 0;
}
