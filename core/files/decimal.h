#pragma once

#include <array>
#include <charconv>
#include <string>

namespace files {

// The shortest decimal that reads back as the same number, with a point in any language. Of
// what music counts: less than 10^20.
inline std::string decimal(double value)
{
    std::array<char, 32> text{};
    auto const end =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed)
            .ptr;
    return {text.data(), end};
}

} // namespace files
