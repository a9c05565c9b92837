#include "core/pattern/own.h"
#include "tests/fuzz/outside.h"

#include <cstddef>
#include <cstdint>
#include <string_view>

// A shape as it is typed: a pattern or a fault, and a pattern's own name is read as the same.
extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size)
{
    std::string_view const text(reinterpret_cast<char const*>(bytes), size);
    auto const typed = pattern::ownPatternFrom(text);
    if (!typed) return 0;
    auto const again = pattern::ownPatternFrom(typed->name);
    fuzz::demand(again && *again == *typed, "a pattern's name is read as that pattern");
    fuzz::demand(pattern::stringsSpanned(*typed) >= 1, "a pattern has strings");
    return 0;
}
