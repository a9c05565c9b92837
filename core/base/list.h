#pragma once

#include "core/base/index.h"

#include <cstddef>
#include <initializer_list>
#include <iterator>
#include <utility>
#include <vector>

namespace base {

// Values in a row that only indices of its own kind lead into. Where there is something for
// each value of a list, it is a List of the same indices.
template<class I, class T>
class List {
public:
    using value_type = T;
    using iterator = typename std::vector<T>::iterator;
    using const_iterator = typename std::vector<T>::const_iterator;

    List() = default;
    List(std::initializer_list<T> values) : m_values(values) {}
    explicit List(std::vector<T> values) : m_values(std::move(values)) {}
    List(int count, T const& value) : m_values(static_cast<std::size_t>(count), value) {}
    template<std::forward_iterator From>
    List(From from, From to) : m_values(from, to)
    {}

    int size() const { return static_cast<int>(m_values.size()); }
    bool empty() const { return m_values.empty(); }
    bool holds(I index) const { return index >= 0 && index < size(); }
    Indices<I> indices() const { return {I(0), I(size())}; }
    I beyond() const { return I(size()); } // the first index after the last value

    // The index must be one of the list's; `at` throws std::out_of_range where it is not.
    T& operator[](I index) { return m_values[static_cast<std::size_t>(index.value())]; }
    T const& operator[](I index) const
    {
        return m_values[static_cast<std::size_t>(index.value())];
    }
    T& at(I index) { return m_values.at(static_cast<std::size_t>(index.value())); }
    T const& at(I index) const { return m_values.at(static_cast<std::size_t>(index.value())); }
    T& front() { return m_values.front(); }
    T const& front() const { return m_values.front(); }
    T& back() { return m_values.back(); }
    T const& back() const { return m_values.back(); }

    iterator begin() { return m_values.begin(); }
    iterator end() { return m_values.end(); }
    const_iterator begin() const { return m_values.begin(); }
    const_iterator end() const { return m_values.end(); }
    auto rbegin() { return m_values.rbegin(); }
    auto rend() { return m_values.rend(); }
    auto rbegin() const { return m_values.rbegin(); }
    auto rend() const { return m_values.rend(); }
    iterator from(I index) { return begin() + index.value(); }
    const_iterator from(I index) const { return begin() + index.value(); }
    I indexOf(const_iterator place) const { return I(static_cast<int>(place - begin())); }

    void push_back(T value) { m_values.push_back(std::move(value)); }
    template<class... Values>
    T& emplace_back(Values&&... values)
    {
        return m_values.emplace_back(std::forward<Values>(values)...);
    }
    void append(List more)
    {
        m_values.insert(m_values.end(), std::move_iterator(more.begin()),
                        std::move_iterator(more.end()));
    }
    void pop_back() { m_values.pop_back(); }
    void clear() { m_values.clear(); }
    void reserve(int count) { m_values.reserve(static_cast<std::size_t>(count)); }
    void resize(int count) { m_values.resize(static_cast<std::size_t>(count)); }
    template<class... Values>
    iterator insert(const_iterator before, Values&&... values)
    {
        return m_values.insert(before, std::forward<Values>(values)...);
    }
    iterator erase(const_iterator place) { return m_values.erase(place); }
    iterator erase(const_iterator from, const_iterator to) { return m_values.erase(from, to); }
    template<class Unwanted>
    void eraseIf(Unwanted unwanted)
    {
        std::erase_if(m_values, unwanted);
    }

    // What is in it without its indices, for what goes through any values in a row.
    std::vector<T> const& values() const { return m_values; }

    friend bool operator==(List const&, List const&) = default;
    friend auto operator<=>(List const& a, List const& b)
        requires std::three_way_comparable<T>
    {
        return a.m_values <=> b.m_values;
    }

private:
    std::vector<T> m_values;
};

} // namespace base
