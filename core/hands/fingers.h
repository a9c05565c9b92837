#pragma once

#include "core/harp/hand.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <initializer_list>
#include <vector>

namespace hands {

// The fingers of one pluck, one for each of its strings from the lowest: 4-2-1. At most as many as
// a hand has. It owns no memory elsewhere: searches make very many of them.
class Fingers {
public:
    Fingers() = default;
    Fingers(std::initializer_list<int> fingers)
    {
        for (int const finger : fingers) push_back(finger);
    }

    // Beyond the fingers of a hand nothing is taken.
    void push_back(int finger)
    {
        if (m_count < m_at.size()) m_at[m_count++] = finger;
    }
    std::size_t size() const { return m_count; }
    bool empty() const { return m_count == 0; }
    int operator[](std::size_t index) const { return m_at[index]; }
    int front() const { return m_at[0]; }
    int back() const { return m_at[m_count - 1]; }
    int const* begin() const { return m_at.data(); }
    int const* end() const { return m_at.data() + m_count; }

    friend bool operator==(Fingers const& a, Fingers const& b)
    {
        return std::equal(a.begin(), a.end(), b.begin(), b.end());
    }
    friend bool operator==(Fingers const& a, std::vector<int> const& b)
    {
        return std::equal(a.begin(), a.end(), b.begin(), b.end());
    }

private:
    std::array<int, harp::fingers> m_at{};
    std::size_t m_count = 0;
};

} // namespace hands
