#include "core/files/midi/read.h"
#include "tests/fuzz/tuneread.h"

#include <cstddef>
#include <cstdint>
#include <string_view>

// The bytes are a MIDI file, or none.
extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size)
{
    std::string_view const text(reinterpret_cast<char const*>(bytes), size);
    return standsUp(files::readMidi(text, "fuzz"));
}
