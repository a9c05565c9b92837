#include "core/files/abc/write.h"
#include "core/files/check.h"
#include "core/files/midi/read.h"
#include "core/tune/playing.h"

#include <cstddef>
#include <cstdint>
#include <string_view>

// Whatever the bytes are, the reader must come back with a tune or a fault, and the tune must
// stand up to what follows.
extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size)
{
    std::string_view const text(reinterpret_cast<char const*>(bytes), size);
    auto const tune = files::readMidi(text, "fuzz");
    if (!tune) return 0;
    tune::played(*tune);
    tune::chordSpans(*tune);
    files::checkLine(*tune);
    files::abcOfTune(*tune);
    return 0;
}
