#include "core/sheet/spacing.h"

#include "core/sheet/geometry.h"

#include <algorithm>
#include <cmath>

namespace sheet {

double spaceFor(music::Length duration)
{
    double const crotchets = 4 * duration.wholes.toDouble();
    return geometry::crotchetSpace * std::pow(crotchets, geometry::spacingPower);
}

namespace {

// The row made ready for being measured again and again: its struts by the column they end at.
class Springs {
public:
    explicit Springs(ColumnRow const& row) : m_row(row), m_first(row.springs.size() + 2, 0)
    {
        for (Strut const& strut : row.struts) ++m_first[static_cast<std::size_t>(strut.to) + 1];
        for (std::size_t i = 1; i < m_first.size(); ++i) m_first[i] += m_first[i - 1];
        m_struts.resize(row.struts.size());
        std::vector<std::size_t> next(m_first.begin(), m_first.end() - 1);
        for (Strut const& strut : row.struts)
            m_struts[next[static_cast<std::size_t>(strut.to)]++] = strut;
    }

    std::vector<double> const& at(double stretch)
    {
        m_x.assign(1, 0.0);
        for (std::size_t i = 0; i < m_row.springs.size(); ++i) {
            Spring const spring = m_row.springs[i];
            double next = m_x[i] + spring.fixed + stretch * spring.elastic;
            for (std::size_t s = m_first[i + 1]; s < m_first[i + 2]; ++s)
                next = std::max(next, m_x[static_cast<std::size_t>(m_struts[s].from)] +
                                          m_struts[s].least);
            m_x.push_back(next);
        }
        return m_x;
    }
    double width(double stretch) { return at(stretch).back(); }

private:
    ColumnRow const& m_row;
    std::vector<std::size_t> m_first; // of the struts that end at a column
    std::vector<Strut> m_struts;
    std::vector<double> m_x;
};

} // namespace

std::vector<double> columnsAt(ColumnRow const& row, double stretch)
{
    return Springs(row).at(stretch);
}

double widthAt(ColumnRow const& row, double stretch) { return Springs(row).width(stretch); }

// Over the stretch the width is convex and made of straight pieces: a chord finds the answer as
// soon as both its ends lie on the answer's piece, and a halving now and then gets them there.
double stretchFor(ColumnRow const& row, double width)
{
    constexpr double exact = 1e-9; // of the width
    constexpr int mostSteps = 100;
    Springs springs(row);
    double low = leastStretch;
    double lowWidth = springs.width(low);
    if (lowWidth >= width) return low;
    double high = 2;
    double highWidth = springs.width(high);
    while (highWidth < width && high < 1e6) {
        low = high;
        lowWidth = highWidth;
        high *= 2;
        highWidth = springs.width(high);
    }
    for (int step = 0; step < mostSteps && highWidth - width > exact * width; ++step) {
        double const share = (width - lowWidth) / (highWidth - lowWidth);
        double const middle =
            step % 3 == 2 ? (low + high) / 2 : low + std::min(share, 1.0) * (high - low);
        double const middleWidth = springs.width(middle);
        if (middleWidth < width) {
            // Close enough from below counts as filled.
            if (width - middleWidth <= exact * width) return middle;
            low = middle;
            lowWidth = middleWidth;
        } else {
            high = middle;
            highWidth = middleWidth;
        }
    }
    return high;
}

} // namespace sheet
