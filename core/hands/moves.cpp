#include "core/hands/moves.h"

#include <algorithm>
#include <cstdlib>
#include <utility>

namespace hands {

namespace {

using harp::PlacedFinger;
using Placed = std::array<std::optional<harp::StringIndex>, harp::fingers>;

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
constexpr int slide = 55;     // the thumb to the next lower string, finger 4 to the next higher
constexpr int nextFinger = 0; // a string again with the next finger: 2-1, 3-2-1
constexpr int otherFinger = 15;  // ... with another
constexpr int sameFinger = 30;   // ... with the same, which must come back in time
constexpr int rolledChord = 100; // a chord wider than the hand

// Where nothing else decides: the strong fingers before 3 and 4, each time they pluck. A single
// note goes to finger 2 [trade-3.2].
constexpr std::array weakFinger{0, 0, 1, 2};

// A finger other than the pattern has: the same pattern, the same fingers, every time.
constexpr int offUsual = 50;

// How much placing anew costs where there is little time for it, or much, in percent.
constexpr std::array placingPercent{150, 100, 60, 20};

int afterPause(int cost, Pause pause)
{
    return cost * placingPercent[static_cast<std::size_t>(pause)] / 100;
}

std::optional<harp::StringIndex>& slot(Placed& placed, int finger)
{
    return placed[static_cast<std::size_t>(finger - 1)];
}
std::optional<harp::StringIndex> slot(Placed const& placed, int finger)
{
    return placed[static_cast<std::size_t>(finger - 1)];
}

// Every choice of fingers for so many strings, from the lowest: 4-2-1, 4-3-1 ...
std::vector<Fingers> fingerings(std::size_t strings)
{
    std::vector<Fingers> out;
    constexpr unsigned hands = 1U << harp::fingers;
    for (unsigned set = hands - 1; set > 0; --set) {
        Fingers chosen;
        for (int finger = harp::fingers; finger >= 1; --finger)
            if (set >> (finger - 1) & 1U) chosen.push_back(finger);
        if (chosen.size() == strings) out.push_back(chosen);
    }
    return out;
}

bool keepsSet(Fingers const& fingers, Stroke const& pluck)
{
    for (std::size_t i = 0; i < pluck.set.size(); ++i)
        if (pluck.set[i] && *pluck.set[i] != fingers[i]) return false;
    return true;
}

// The choices that a pluck has: as set, with the fingers in use where they are enough.
std::vector<Fingers> fingeringsOf(Stroke const& pluck, Player const& player)
{
    std::vector<Fingers> all = fingerings(pluck.strings.size());
    bool const set = canKeepSet(pluck);
    std::erase_if(all, [&](Fingers const& fingers) {
        bool const beyondUse = fingers.front() > player.fingers &&
                               static_cast<int>(fingers.size()) <= player.fingers &&
                               fingers != pluck.usual && pluck.set.empty();
        return beyondUse || (set && !keepsSet(fingers, pluck));
    });
    return all;
}

Placed onto(Placed placed, Fingers const& fingers,
            std::vector<harp::StringIndex> const& strings)
{
    for (std::size_t i = 0; i < fingers.size(); ++i) slot(placed, fingers[i]) = strings[i];
    return placed;
}

std::size_t pairIndex(int low, int high)
{
    return static_cast<std::size_t>((low - 1) * harp::fingers + high - 1);
}

double limitMm(harp::HandModel const& hand, harp::PairReach const& pair)
{
    constexpr double gapMm = 15; // of the table
    return std::min(hand.limitMm, pair.hardGaps * gapMm);
}

} // namespace

MovesInto::MovesInto(Stroke const& next, Player const& player) : m_next(next), m_player(player)
{
    m_limitMm.fill(-1); // no pair of fingers, no reach
    for (harp::PairReach const& pair : player.hand.pairs)
        if (double& limit = m_limitMm[pairIndex(pair.low, pair.high)]; limit < 0)
            limit = limitMm(player.hand, pair);
    for (Fingers const& fingers : fingeringsOf(next, player))
        m_choices.push_back(
            {fingers, ownCost(fingers), holds(onto({}, fingers, next.strings))});
}

// Fingers lie in their order and no two of them too far apart.
bool MovesInto::holds(Placed const& placed) const
{
    for (int low = harp::fingers; low > 1; --low) {
        auto const a = slot(placed, low);
        if (!a) continue;
        for (int high = low - 1; high >= 1; --high) {
            auto const b = slot(placed, high);
            if (!b) continue;
            // A higher finger number on a lower string, else they lie crossed.
            bool const inOrder = *a < *b;
            double const limit =
                m_limitMm[inOrder ? pairIndex(low, high) : pairIndex(high, low)];
            if (*a == *b || distanceMm(m_player.harp, *a, *b) > limit) return false;
        }
    }
    return true;
}

int MovesInto::pairCost(PlacedFinger low, PlacedFinger high) const
{
    auto const pair =
        std::find_if(customary.begin(), customary.end(), [&](CustomaryGaps const& c) {
            return c.low == low.finger && c.high == high.finger;
        });
    int const gaps = high.string - low.string;
    int const off = std::max({pair->least - gaps, gaps - pair->most, 0});
    bool const far = easeOf(m_player.harp, m_player.hand, low, high) != harp::Ease::Easy;
    return offCustom * off + (far ? stretched : 0);
}

int MovesInto::ownCost(Fingers const& fingers) const
{
    int cost = 0;
    for (int const finger : fingers) cost += weakFinger[static_cast<std::size_t>(finger - 1)];
    for (std::size_t i = 0; i < m_next.usual.size(); ++i)
        if (fingers[i] != m_next.usual[i]) cost += offUsual;
    for (std::size_t i = 1; i < fingers.size(); ++i)
        cost +=
            pairCost({m_next.strings[i - 1], fingers[i - 1]}, {m_next.strings[i], fingers[i]});
    return cost;
}

// The moves from one shape.
class MovesInto::From {
public:
    From(MovesInto const& into, HandShape const& shape, std::vector<HandMove>& moves)
        : m_into(into), m_from(shape), m_next(into.m_next), m_player(into.m_player),
          m_moves(moves)
    {}

    void add()
    {
        for (Choice const& choice : m_into.m_choices) {
            stay(choice);
            keepOne(choice);
            placeAnew(choice);
            if (choice.fingers.size() == 1 && m_from.played != 0) {
                changeFinger(choice);
                if (m_player.crosses || choice.fingers == m_next.usual) cross(choice);
                if (m_player.slides) slideOn(choice);
            }
        }
    }

private:
    // The string last plucked, the highest of a chord.
    harp::StringIndex lastString() const { return *slot(m_from.placed, m_from.played); }

    bool isAgain() const
    {
        return m_from.played != 0 && m_next.strings.size() == 1 &&
               m_next.strings.front() == lastString();
    }

    // From the last pluck's highest string to this one's.
    int joinCost(int finger) const
    {
        PlacedFinger const last{lastString(), m_from.played};
        PlacedFinger const now{m_next.strings.back(), finger};
        if (last.string == now.string) return 0;
        return last.string < now.string ? m_into.pairCost(last, now)
                                        : m_into.pairCost(now, last);
    }

    void add(Placed const& placed, Choice const& choice, int cost, Join join)
    {
        m_moves.push_back(
            {{placed, choice.fingers.back()}, choice.fingers, cost + choice.cost, join});
    }

    // With fingers that lie on their strings or are placed beside those that lie.
    void stay(Choice const& choice)
    {
        if (m_from.played == 0) return;
        for (std::size_t i = 0; i < choice.fingers.size(); ++i)
            if (slot(m_from.placed, choice.fingers[i]).value_or(m_next.strings[i]) !=
                m_next.strings[i])
                return;
        Placed const placed = onto(m_from.placed, choice.fingers, m_next.strings);
        if (!m_into.holds(placed)) return;
        add(placed, choice,
            isAgain() ? afterPause(sameFinger, m_next.before) : joinCost(choice.fingers.back()),
            Join::Stays);
    }

    // The finger that played stays on, the others are placed anew beside it.
    void keepOne(Choice const& choice)
    {
        auto const& fingers = choice.fingers;
        if (m_from.played == 0) return;
        if (std::find(fingers.begin(), fingers.end(), m_from.played) != fingers.end()) return;
        Placed kept;
        slot(kept, m_from.played) = lastString();
        Placed const placed = onto(kept, fingers, m_next.strings);
        if (!m_into.holds(placed)) return;
        add(placed, choice, joinCost(fingers.back()) + afterPause(placedAnew, m_next.before),
            Join::Linked);
    }

    void placeAnew(Choice const& choice)
    {
        int cost = choice.liesTogether ? 0 : rolledChord;
        if (m_from.played != 0) {
            // Where the thumb would lie if fingers lay on neighbouring strings.
            int const before = lastString() + m_from.played;
            int const now = m_next.strings.back() + choice.fingers.back();
            cost += afterPause(handAnew + shiftAGap * std::abs(now - before), m_next.before);
        }
        add(onto({}, choice.fingers, m_next.strings), choice, cost, Join::Anew);
    }

    void changeFinger(Choice const& choice)
    {
        int const finger = choice.fingers.front();
        if (!isAgain() || finger == m_from.played) return;
        add(onto({}, choice.fingers, m_next.strings), choice,
            finger == m_from.played - 1 ? nextFinger : otherFinger, Join::Again);
    }

    // Under the thumb to a higher string, or with the thumb over to a lower one, while the
    // finger that played still holds [trade-3.3].
    void cross(Choice const& choice)
    {
        int const finger = choice.fingers.front();
        int const gaps = m_next.strings.front() - lastString();
        bool const under = m_from.played == 1 && finger != 1 && gaps > 0;
        bool const over = m_from.played != 1 && finger == 1 && gaps < 0;
        if ((!under && !over) || std::abs(gaps) > 2) return;
        int const crossed = under ? finger : m_from.played;
        add(onto({}, choice.fingers, m_next.strings), choice,
            (std::abs(gaps) == 1 ? crossing : crossingFar) +
                crossingShort * (harp::fingers - crossed),
            Join::Linked);
    }

    // The thumb pushes to the next lower string, finger 4 pulls to the next higher one.
    void slideOn(Choice const& choice)
    {
        int const finger = choice.fingers.front();
        if (finger != m_from.played || (finger != 1 && finger != harp::fingers)) return;
        if (m_next.strings.front() != lastString() + (finger == 1 ? -1 : 1)) return;
        Placed placed = m_from.placed;
        slot(placed, finger) = m_next.strings.front();
        if (m_into.holds(placed)) add(placed, choice, slide, Join::Slides);
    }

    MovesInto const& m_into;
    HandShape const& m_from;
    Stroke const& m_next;
    Player const& m_player;
    std::vector<HandMove>& m_moves;
};

void MovesInto::from(HandShape const& shape, std::vector<HandMove>& moves) const
{
    moves.clear();
    From(*this, shape, moves).add();
}

bool lieTogether(harp::Harp const& harp, harp::HandModel const& hand, PlacedFinger a,
                 PlacedFinger b)
{
    if (a.string > b.string) std::swap(a, b);
    auto const pair =
        std::find_if(hand.pairs.begin(), hand.pairs.end(), [&](harp::PairReach const& p) {
            return p.low == a.finger && p.high == b.finger;
        });
    return pair != hand.pairs.end() && a.string < b.string &&
           distanceMm(harp, a.string, b.string) <= limitMm(hand, *pair);
}

bool canKeepSet(Stroke const& pluck)
{
    auto const all = fingerings(pluck.strings.size());
    return std::any_of(all.begin(), all.end(),
                       [&](Fingers const& fingers) { return keepsSet(fingers, pluck); });
}

std::vector<HandMove> movesTo(HandShape const& from, Stroke const& next, Player const& player)
{
    std::vector<HandMove> moves;
    MovesInto(next, player).from(from, moves);
    return moves;
}

} // namespace hands
