#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace base {

// A row of a table of names.
template<typename T>
struct Named {
    std::string_view name;
    T value;
};

// What has this name; none where no row has it.
template<typename T, std::size_t rows>
constexpr std::optional<T> valueNamed(std::array<Named<T>, rows> const& table,
                                      std::string_view name)
{
    for (Named<T> const& row : table)
        if (row.name == name) return row.value;
    return std::nullopt;
}

// The name of a value that the table has; empty where it has none.
template<typename T, std::size_t rows>
constexpr std::string_view nameOf(std::array<Named<T>, rows> const& table, T value)
{
    for (Named<T> const& row : table)
        if (row.value == value) return row.name;
    return {};
}

} // namespace base
