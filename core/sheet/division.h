#pragma once

#include <cstddef>
#include <limits>
#include <vector>

namespace sheet {

// The cheapest division of a row of things, of bars into lines or of lines into pages, found
// from the front: for each place the least cost to end a run there, and where that run begins.
class Division {
public:
    explicit Division(std::size_t count)
        : m_best(count + 1, std::numeric_limits<double>::infinity()), m_from(count + 1, 0)
    {
        m_best[0] = 0;
    }

    // Of all before that place. Final once every run that ends there has been offered.
    double cost(std::size_t place) const { return m_best[place]; }

    // A run from `first` to before `end`, with which all before `end` costs so much. Of equally
    // cheap ones the first that is offered stays.
    void offer(std::size_t first, std::size_t end, double cost)
    {
        if (!(cost < m_best[end])) return;
        m_best[end] = cost;
        m_from[end] = first;
    }

    // Where the runs of the cheapest division begin, in order.
    std::vector<int> starts() const
    {
        std::vector<int> out;
        for (std::size_t end = m_from.size() - 1; end > 0; end = m_from[end])
            out.insert(out.begin(), static_cast<int>(m_from[end]));
        return out;
    }

private:
    std::vector<double> m_best;
    std::vector<std::size_t> m_from;
};

} // namespace sheet
