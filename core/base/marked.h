#pragma once

#include <array>

namespace base {

// Marks the words of a table that are said later by said() (core/base/words.h).
constexpr char const* marked(char const* english) { return english; }
template<typename... Text>
constexpr std::array<char const*, sizeof...(Text)> markedList(Text... english)
{
    return {english...};
}

} // namespace base
