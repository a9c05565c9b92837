#pragma once

// Before <compare>, which the moc of Qt 6.4 cannot read as the first of all headers.
#include <cstddef>

#include <compare>
#include <concepts>

namespace base {

// A place in one kind of list, from 0; the kind is named after what the list holds. Indices of
// different kinds cannot be compared, subtracted or put in each other's place, so that an index
// does not come into the wrong list. A number written in the source is an index by itself, a
// computed one is made an index by name:
//     tune::PlayedBarIndex bar = 0;
//     tune::PlayedBarIndex last = tune::PlayedBarIndex(count - 1);
template<class Of>
class Index {
public:
    constexpr Index() = default;
    explicit constexpr Index(int value) : m_value(value) {}
    template<std::same_as<int> Written>
    consteval Index(Written value) : m_value(value)
    {}

    constexpr int value() const { return m_value; }
    constexpr operator int() const { return m_value; }
    explicit operator bool() const = delete; // 0 is an index like others

    constexpr Index& operator++() { return *this += 1; }
    constexpr Index& operator--() { return *this += -1; }
    constexpr Index operator++(int)
    {
        Index const before = *this;
        ++*this;
        return before;
    }
    constexpr Index& operator+=(int places)
    {
        m_value += places;
        return *this;
    }
    constexpr Index& operator-=(int places) { return *this += -places; }

    friend constexpr bool operator==(Index, Index) = default;
    friend constexpr std::strong_ordering operator<=>(Index, Index) = default;
    friend constexpr bool operator==(Index a, int b) { return a.m_value == b; }
    friend constexpr std::strong_ordering operator<=>(Index a, int b)
    {
        return a.m_value <=> b;
    }
    friend constexpr Index operator+(Index index, int places)
    {
        return Index(index.m_value + places);
    }
    friend constexpr Index operator-(Index index, int places)
    {
        return Index(index.m_value - places);
    }
    friend constexpr int operator-(Index a, Index b) { return a.m_value - b.m_value; }
    friend constexpr int operator-(int count, Index b) { return count - b.m_value; }

private:
    int m_value = 0;
};

template<class A, class B>
    requires(!std::same_as<A, B>)
bool operator==(Index<A>, Index<B>) = delete;
template<class A, class B>
    requires(!std::same_as<A, B>)
std::strong_ordering operator<=>(Index<A>, Index<B>) = delete;
template<class A, class B>
    requires(!std::same_as<A, B>)
int operator-(Index<A>, Index<B>) = delete;
template<class A, class B>
int operator+(Index<A>, Index<B>) = delete; // two places have no sum

// Indices from one up to but not including another, to go through in order.
template<class I>
class Indices {
public:
    constexpr Indices(I from, I to) : m_from(from), m_to(from < to ? to : from) {}

    class Iterator {
    public:
        using value_type = I;
        using difference_type = int;

        constexpr Iterator() = default;
        explicit constexpr Iterator(I at) : m_at(at) {}
        constexpr I operator*() const { return m_at; }
        constexpr Iterator& operator++()
        {
            ++m_at;
            return *this;
        }
        constexpr Iterator operator++(int) { return Iterator(m_at++); }
        friend constexpr bool operator==(Iterator, Iterator) = default;

    private:
        I m_at;
    };

    constexpr Iterator begin() const { return Iterator(m_from); }
    constexpr Iterator end() const { return Iterator(m_to); }

private:
    I m_from;
    I m_to;
};

} // namespace base
