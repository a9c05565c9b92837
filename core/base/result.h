#pragma once

#include "core/base/fault.h"

#include <utility>
#include <variant>

namespace base {

// A value or the Fault that stood in its way, with the member names of std::expected.
// The caller writes: if (!harp) return harp.error();
template<typename T>
class [[nodiscard]] Result {
public:
    Result(T value) : m_either(std::in_place_index<0>, std::move(value)) {}
    Result(Fault fault) : m_either(std::in_place_index<1>, std::move(fault)) {}

    explicit operator bool() const { return m_either.index() == 0; }
    bool has_value() const { return m_either.index() == 0; }

    T& operator*() & { return std::get<0>(m_either); }
    T const& operator*() const& { return std::get<0>(m_either); }
    T&& operator*() && { return std::get<0>(std::move(m_either)); }
    T* operator->() { return &std::get<0>(m_either); }
    T const* operator->() const { return &std::get<0>(m_either); }
    T const& value() const& { return std::get<0>(m_either); }
    T&& value() && { return std::get<0>(std::move(m_either)); }
    Fault const& error() const { return std::get<1>(m_either); }

private:
    std::variant<T, Fault> m_either;
};

// A result that carries nothing but success.
struct Done {};

} // namespace base
