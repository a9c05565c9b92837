#include "core/files/musicxml/read.h"
#include "tests/fuzz/tuneread.h"

#include <cstddef>
#include <cstdint>
#include <string_view>

// The bytes are a score, plain or zipped, or none.
extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size)
{
    std::string_view const text(reinterpret_cast<char const*>(bytes), size);
    return standsUp(files::readMusicXml(text, "fuzz"));
}
