#pragma once

#include "core/base/index.h"

#include <utility>
#include <vector>

namespace base {

// Values in a row that are counted by plain numbers and refuse the indices of lists: a place in a list
// is no place here.
template<class T>
class Row : public std::vector<T> {
    using Values = std::vector<T>;

public:
    using Values::Values;
    Row() = default;
    Row(Values values) : Values(std::move(values)) {}

    using Values::operator[];
    using Values::at;
    template<class Of>
    T& operator[](Index<Of> place) = delete;
    template<class Of>
    T const& operator[](Index<Of> place) const = delete;
    template<class Of>
    T& at(Index<Of> place) = delete;
    template<class Of>
    T const& at(Index<Of> place) const = delete;
};

} // namespace base
