#pragma once

#include "core/base/list.h"

#include <algorithm>
#include <limits>
#include <vector>

namespace sheet {

// The cheapest division of a row of things, of bars into lines or of lines into pages, found
// from the front: for each place the least cost to end a run there, and where that run begins.
// Places are indices into the row, the one beyond its end included.
template<class Place>
class Division {
public:
    explicit Division(Place beyond)
        : m_best(beyond.value() + 1, std::numeric_limits<double>::infinity()),
          m_from(beyond.value() + 1, Place(0))
    {
        m_best[0] = 0;
    }

    // Of all before that place. Final once every run that ends there has been offered.
    double cost(Place place) const { return m_best[place]; }

    // A run from `first` to before `end`, with which all before `end` costs so much. Of equally
    // cheap ones the first that is offered stays.
    void offer(Place first, Place end, double cost)
    {
        if (!(cost < m_best[end])) return;
        m_best[end] = cost;
        m_from[end] = first;
    }

    // Where the runs of the cheapest division begin, in order.
    std::vector<Place> starts() const
    {
        std::vector<Place> out;
        for (Place end = m_from.beyond() - 1; end > 0; end = m_from[end])
            out.push_back(m_from[end]);
        std::ranges::reverse(out);
        return out;
    }

private:
    base::List<Place, double> m_best;
    base::List<Place, Place> m_from;
};

} // namespace sheet
