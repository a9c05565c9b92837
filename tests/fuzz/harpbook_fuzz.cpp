#include "core/files/tables/harpbook.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

// One input of a fuzzer: whatever the bytes are, the reader comes back with harps or a fault,
// and harps that it gives can be strung, written and read again.
extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size)
{
    std::string_view const text(reinterpret_cast<char const*>(bytes), size);
    auto const harps = files::readHarpBook(text, "fuzz");
    if (!harps) return 0;
    for (harp::HarpModel const& model : *harps)
        if (!harpOf(model)) std::abort();
    auto const again = files::readHarpBook(files::harpBookText(*harps), "again");
    if (!again || *again != *harps) std::abort();
    return 0;
}
