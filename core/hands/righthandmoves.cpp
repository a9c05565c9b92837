#include "core/hands/righthandmoves.h"

#include <algorithm>
#include <cstdlib>

namespace hands {

namespace {

using harp::PlacedFinger;
using Placed = std::array<std::optional<int>, harp::fingers>;

// What a pair of fingers is for: the gaps between strings that it takes by custom. Thirds and
// fourths go to neighbours, fifths and sixths to 1 and 3, wider ones to 1 and 4 [trade-3.2].
struct CustomaryGaps {
    int low = 2; // the finger on the lower string
    int high = 1;
    int least = 1;
    int most = 1;
};
constexpr std::array customary{CustomaryGaps{2, 1, 1, 3}, CustomaryGaps{3, 2, 1, 2},
                               CustomaryGaps{4, 3, 1, 1}, CustomaryGaps{3, 1, 4, 5},
                               CustomaryGaps{4, 2, 3, 4}, CustomaryGaps{4, 1, 6, 9}};

// Points, added up over the tune. The rules are the trade's [trade-3.3]; how much each weighs
// against the others is common practice, no source.
constexpr int offCustom = 4;     // a gap by which a pair is closer or wider than its custom
constexpr int stretched = 10;    // two fingers farther apart than is easy
constexpr int placedAnew = 30;   // others placed anew while one finger stays on
constexpr int handAnew = 60;     // the whole hand lifted and placed anew
constexpr int shiftAGap = 5;     // ... and so many strings along
constexpr int crossing = 40;     // under or over, to the next string
constexpr int crossingFar = 55;  // ... to the one after
constexpr int crossingShort = 4; // with finger 3, twice that with 2: fewer are left to play on
constexpr int slide = 55;        // the thumb from one string to the next lower one
constexpr int nextFinger = 0;    // a string again with the next finger: 2-1, 3-2-1
constexpr int otherFinger = 15;  // ... with another
constexpr int sameFinger = 30;   // ... with the same, which must come back in time
constexpr int rolledChord = 100; // a chord wider than the hand

// Where nothing else decides: the strong fingers before 3 and 4, each time they pluck. A single
// note goes to finger 2 [trade-3.2].
constexpr std::array weakFinger{0, 0, 1, 2};

// How much placing anew costs where there is time for it, in percent.
constexpr std::array placingPercent{100, 60, 20};

int afterPause(int cost, Pause pause)
{
    return cost * placingPercent[static_cast<std::size_t>(pause)] / 100;
}

std::optional<int>& slot(Placed& placed, int finger)
{
    return placed[static_cast<std::size_t>(finger - 1)];
}
std::optional<int> slot(Placed const& placed, int finger)
{
    return placed[static_cast<std::size_t>(finger - 1)];
}

// Every choice of fingers for so many strings, from the lowest: 4-2-1, 4-3-1 ...
std::vector<std::vector<int>> fingerings(std::size_t strings)
{
    std::vector<std::vector<int>> out;
    constexpr unsigned hands = 1U << harp::fingers;
    for (unsigned set = hands - 1; set > 0; --set) {
        std::vector<int> chosen;
        for (int finger = harp::fingers; finger >= 1; --finger)
            if (set >> (finger - 1) & 1U) chosen.push_back(finger);
        if (chosen.size() == strings) out.push_back(chosen);
    }
    return out;
}

class Moves {
public:
    Moves(HandShape const& from, Pluck const& next, harp::Harp const& harp,
          harp::HandModel const& hand)
        : m_from(from), m_next(next), m_harp(harp), m_hand(hand)
    {}

    std::vector<HandMove> all()
    {
        for (auto const& fingers : fingerings(m_next.strings.size())) {
            stay(fingers);
            keepOne(fingers);
            placeAnew(fingers);
            if (fingers.size() == 1 && m_from.played != 0) {
                changeFinger(fingers.front());
                cross(fingers.front());
                slideThumb(fingers.front());
            }
        }
        return std::move(m_moves);
    }

private:
    // The string last plucked, the highest of a chord.
    int lastString() const { return *slot(m_from.placed, m_from.played); }

    bool isAgain() const
    {
        return m_from.played != 0 && m_next.strings.size() == 1 &&
               m_next.strings.front() == lastString();
    }

    static Placed onto(Placed placed, std::vector<int> const& fingers,
                       std::vector<int> const& strings)
    {
        for (std::size_t i = 0; i < fingers.size(); ++i) slot(placed, fingers[i]) = strings[i];
        return placed;
    }

    // Fingers lie in their order and no two of them too far apart.
    bool holds(Placed const& placed) const
    {
        for (int low = harp::fingers; low > 1; --low)
            for (int high = low - 1; high >= 1; --high) {
                auto const a = slot(placed, low);
                auto const b = slot(placed, high);
                if (!a || !b) continue;
                if (*a >= *b) return false;
                if (!withinReach(m_harp, m_hand, *a, low, *b, high)) return false;
            }
        return true;
    }

    int pairCost(PlacedFinger low, PlacedFinger high) const
    {
        auto const pair =
            std::find_if(customary.begin(), customary.end(), [&](CustomaryGaps const& c) {
                return c.low == low.finger && c.high == high.finger;
            });
        int const gaps = high.string - low.string;
        int const off = std::max({pair->least - gaps, gaps - pair->most, 0});
        bool const far = easeOf(m_harp, m_hand, low, high) != harp::Ease::Easy;
        return offCustom * off + (far ? stretched : 0);
    }

    // Of the pluck alone.
    int ownCost(std::vector<int> const& fingers) const
    {
        int cost = 0;
        for (int const finger : fingers)
            cost += weakFinger[static_cast<std::size_t>(finger - 1)];
        for (std::size_t i = 1; i < fingers.size(); ++i)
            cost += pairCost({m_next.strings[i - 1], fingers[i - 1]},
                             {m_next.strings[i], fingers[i]});
        return cost;
    }

    // From the last pluck's highest string to this one's.
    int joinCost(int finger) const
    {
        PlacedFinger const last{lastString(), m_from.played};
        PlacedFinger const now{m_next.strings.back(), finger};
        if (last.string == now.string) return 0;
        return last.string < now.string ? pairCost(last, now) : pairCost(now, last);
    }

    void add(Placed placed, std::vector<int> const& fingers, int cost, Join join)
    {
        m_moves.push_back({{placed, fingers.back()}, fingers, cost + ownCost(fingers), join});
    }

    // With fingers that lie on their strings or are placed beside those that lie.
    void stay(std::vector<int> const& fingers)
    {
        if (m_from.played == 0) return;
        for (std::size_t i = 0; i < fingers.size(); ++i)
            if (slot(m_from.placed, fingers[i]).value_or(m_next.strings[i]) !=
                m_next.strings[i])
                return;
        Placed const placed = onto(m_from.placed, fingers, m_next.strings);
        if (!holds(placed)) return;
        bool const again = isAgain();
        add(placed, fingers,
            again ? afterPause(sameFinger, m_next.before) : joinCost(fingers.back()),
            Join::Stays);
    }

    // The finger that played stays on, the others are placed anew beside it.
    void keepOne(std::vector<int> const& fingers)
    {
        if (m_from.played == 0) return;
        if (std::find(fingers.begin(), fingers.end(), m_from.played) != fingers.end()) return;
        Placed kept;
        slot(kept, m_from.played) = lastString();
        Placed const placed = onto(kept, fingers, m_next.strings);
        if (!holds(placed)) return;
        add(placed, fingers, joinCost(fingers.back()) + afterPause(placedAnew, m_next.before),
            Join::Linked);
    }

    void placeAnew(std::vector<int> const& fingers)
    {
        Placed const placed = onto({}, fingers, m_next.strings);
        int cost = holds(placed) ? 0 : rolledChord;
        if (m_from.played != 0) {
            // Where the thumb would lie if fingers lay on neighbouring strings.
            int const before = lastString() + m_from.played;
            int const now = m_next.strings.back() + fingers.back();
            cost += afterPause(handAnew + shiftAGap * std::abs(now - before), m_next.before);
        }
        add(placed, fingers, cost, Join::Anew);
    }

    void changeFinger(int finger)
    {
        if (!isAgain() || finger == m_from.played) return;
        add(onto({}, {finger}, m_next.strings), {finger},
            finger == m_from.played - 1 ? nextFinger : otherFinger, Join::Again);
    }

    // Under the thumb to a higher string, or with the thumb over to a lower one, while the
    // finger that played still holds [trade-3.3].
    void cross(int finger)
    {
        int const gaps = m_next.strings.front() - lastString();
        bool const under = m_from.played == 1 && finger != 1 && gaps > 0;
        bool const over = m_from.played != 1 && finger == 1 && gaps < 0;
        if ((!under && !over) || std::abs(gaps) > 2) return;
        int const crossed = under ? finger : m_from.played;
        add(onto({}, {finger}, m_next.strings), {finger},
            (std::abs(gaps) == 1 ? crossing : crossingFar) +
                crossingShort * (harp::fingers - crossed),
            Join::Linked);
    }

    void slideThumb(int finger)
    {
        if (finger != 1 || m_from.played != 1) return;
        if (m_next.strings.front() != lastString() - 1) return;
        Placed placed = m_from.placed;
        slot(placed, 1) = m_next.strings.front();
        if (holds(placed)) add(placed, {1}, slide, Join::Slides);
    }

    HandShape const& m_from;
    Pluck const& m_next;
    harp::Harp const& m_harp;
    harp::HandModel const& m_hand;
    std::vector<HandMove> m_moves;
};

} // namespace

std::vector<HandMove> movesTo(HandShape const& from, Pluck const& next, harp::Harp const& harp,
                              harp::HandModel const& hand)
{
    return Moves(from, next, harp, hand).all();
}

} // namespace hands
