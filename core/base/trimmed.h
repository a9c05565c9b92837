#pragma once

#include <string_view>

namespace base {

// The text without the blanks at its ends.
constexpr std::string_view trimmed(std::string_view text, std::string_view blanks = " \t")
{
    std::size_t const first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

} // namespace base
