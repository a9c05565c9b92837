#pragma once

#include <array>
#include <cstddef>
#include <string_view>

namespace base {

// The name that a member or a value has in the tables of shared/: small letters, "_" before each
// that was a capital, but for the first: `pointEveryMm` is point_every_mm there, `ChordFit` chord_fit.
template<std::size_t size>
struct TableName {
    std::array<char, 2 * size> text{};
    std::size_t length = 0;

    consteval explicit TableName(char const (&name)[size])
    {
        for (std::size_t i = 0; i + 1 < size; ++i) {
            bool const capital = name[i] >= 'A' && name[i] <= 'Z';
            if (capital && i > 0) text[length++] = '_';
            text[length++] = capital ? static_cast<char>(name[i] - 'A' + 'a') : name[i];
        }
    }
    constexpr std::string_view view() const { return {text.data(), length}; }
};

} // namespace base
