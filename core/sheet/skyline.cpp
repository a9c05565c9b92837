#include "core/sheet/skyline.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sheet {

namespace {

constexpr double stripsPerSpace = 16;
constexpr double furthest = 1e5; // spaces from the origin: no line is so long
constexpr double touching = 1e-6;
constexpr double none = std::numeric_limits<double>::infinity();

long stripOf(double x)
{
    return static_cast<long>(std::floor(std::clamp(x, -furthest, furthest) * stripsPerSpace));
}

} // namespace

void Skyline::reserve(long first, long end)
{
    constexpr long spare = 64;
    Strip const white{none, -none};
    if (m_strips.empty()) m_first = first;
    if (first < m_first) {
        auto const more = static_cast<std::size_t>(m_first - first + spare);
        m_strips.insert(m_strips.begin(), more, white);
        m_first -= static_cast<long>(more);
    }
    auto const needed = static_cast<std::size_t>(end - m_first);
    if (needed > m_strips.size()) m_strips.resize(needed, white);
}

Skyline::Stretch Skyline::stretch(double left, double right) const
{
    long const last = m_first + static_cast<long>(m_strips.size());
    return {std::max(stripOf(left + touching), m_first),
            std::min(stripOf(right - touching) + 1, last)};
}

void Skyline::add(Box box)
{
    long const first = stripOf(box.left + touching);
    long const end = std::max(stripOf(box.right - touching), first) + 1;
    reserve(first, end);
    for (long i = first; i < end; ++i) {
        Strip& strip = m_strips[static_cast<std::size_t>(i - m_first)];
        strip.top = std::min(strip.top, box.top);
        strip.bottom = std::max(strip.bottom, box.bottom);
    }
}

void Skyline::add(Skyline const& other, double dy)
{
    if (other.m_strips.empty()) return;
    reserve(other.m_first, other.m_first + static_cast<long>(other.m_strips.size()));
    auto const shift = static_cast<std::size_t>(other.m_first - m_first);
    for (std::size_t i = 0; i < other.m_strips.size(); ++i) {
        Strip& strip = m_strips[i + shift];
        strip.top = std::min(strip.top, other.m_strips[i].top + dy);
        strip.bottom = std::max(strip.bottom, other.m_strips[i].bottom + dy);
    }
}

double Skyline::top(double left, double right, double otherwise) const
{
    Stretch const over = stretch(left, right);
    double best = otherwise;
    for (long i = over.first; i < over.end; ++i) best = std::min(best, at(i).top);
    return best;
}

double Skyline::bottom(double left, double right, double otherwise) const
{
    Stretch const over = stretch(left, right);
    double best = otherwise;
    for (long i = over.first; i < over.end; ++i) best = std::max(best, at(i).bottom);
    return best;
}

double Skyline::top(double otherwise) const { return top(-furthest, furthest, otherwise); }
double Skyline::bottom(double otherwise) const
{
    return bottom(-furthest, furthest, otherwise);
}

double distanceBetween(Skyline const& above, Skyline const& below, double clear)
{
    double distance = 0;
    auto const reach = static_cast<long>(std::ceil(clear / 2 * stripsPerSpace));
    long const end = above.m_first + static_cast<long>(above.m_strips.size());
    for (long i = above.m_first; i < end; ++i) {
        double const foot = above.at(i).bottom;
        if (foot == -none) continue;
        double const left = static_cast<double>(i - reach) / stripsPerSpace;
        double const right = static_cast<double>(i + 1 + reach) / stripsPerSpace;
        double const roof = below.top(left, right, none);
        if (roof != none) distance = std::max(distance, foot - roof + clear);
    }
    return distance;
}

} // namespace sheet
