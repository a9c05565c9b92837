#include "core/harp/hand.h"

#include <algorithm>

namespace harp {

namespace {

// The gap at which reaches are given, and the half gap by which a hand that reaches n whole
// gaps is thought to reach further.
constexpr double tableGapMm = 15;
constexpr double reachMm(int gaps) { return (gaps + 0.5) * tableGapMm; }

// A finger crossed under or over another reaches the next string, at most the one after it.
constexpr PairReach crossed{0, 0, 1, 2};

// None when no hand can do it: one finger for two strings.
PairReach const* reachOf(HandModel const& hand, int lowFinger, int highFinger)
{
    if (lowFinger == highFinger) return nullptr;
    if (lowFinger < highFinger) return &crossed;
    auto const pair = std::find_if(hand.pairs.begin(), hand.pairs.end(), [&](PairReach p) {
        return p.low == lowFinger && p.high == highFinger;
    });
    return pair == hand.pairs.end() ? nullptr : &*pair;
}

PlacedFinger const& lower(PlacedFinger const& a, PlacedFinger const& b)
{
    return b.string < a.string ? b : a;
}
PlacedFinger const& higher(PlacedFinger const& a, PlacedFinger const& b)
{
    return b.string < a.string ? a : b;
}

} // namespace

Ease easeOf(Harp const& harp, HandModel const& hand, PlacedFinger low, PlacedFinger high)
{
    PairReach const* const reach = reachOf(hand, low.finger, high.finger);
    if (!reach) return Ease::Beyond;
    double const mm = distanceMm(harp, low.string, high.string);
    if (mm > std::min(reachMm(reach->hardGaps), hand.limitMm)) return Ease::Beyond;
    return mm > std::min(reachMm(reach->easyGaps), hand.comfortMm) ? Ease::Stretched
                                                                   : Ease::Easy;
}

Ease easeOf(Harp const& harp, HandModel const& hand, std::span<PlacedFinger const> placed)
{
    Ease worst = Ease::Easy;
    for (std::size_t i = 0; i < placed.size(); ++i)
        for (std::size_t j = i + 1; j < placed.size(); ++j) {
            if (placed[i].string == placed[j].string) return Ease::Beyond;
            worst = std::max(worst, easeOf(harp, hand, lower(placed[i], placed[j]),
                                           higher(placed[i], placed[j])));
        }
    return worst;
}

bool rollable(Harp const& harp, HandModel const& hand, std::span<PlacedFinger const> placed)
{
    PairReach const* const widest = reachOf(hand, fingers, 1);
    return widest && spanMm(harp, placed) <= std::min(reachMm(widest->hardGaps), hand.limitMm);
}

bool withinReach(Harp const& harp, HandModel const& hand, StringIndex lowString, int lowFinger,
                 StringIndex highString, int highFinger)
{
    return easeOf(harp, hand, PlacedFinger{lowString, lowFinger},
                  PlacedFinger{highString, highFinger}) != Ease::Beyond;
}

double stretchMm(Harp const& harp, HandModel const& hand, std::span<PlacedFinger const> placed)
{
    double worst = 0;
    for (std::size_t i = 0; i < placed.size(); ++i)
        for (std::size_t j = i + 1; j < placed.size(); ++j) {
            PlacedFinger const& low = lower(placed[i], placed[j]);
            PlacedFinger const& high = higher(placed[i], placed[j]);
            PairReach const* const reach = reachOf(hand, low.finger, high.finger);
            double const easy = reach ? std::min(reachMm(reach->easyGaps), hand.comfortMm) : 0;
            worst = std::max(worst, distanceMm(harp, low.string, high.string) - easy);
        }
    return worst;
}

double spanMm(Harp const& harp, std::span<PlacedFinger const> placed)
{
    if (placed.empty()) return 0;
    auto const [low, high] = std::minmax_element(
        placed.begin(), placed.end(),
        [](PlacedFinger const& a, PlacedFinger const& b) { return a.string < b.string; });
    return distanceMm(harp, low->string, high->string);
}

int stringsWithin(Harp const& harp, double mm, StringIndex fromString)
{
    StringIndex last = fromString;
    while (last < harp.highest() && distanceMm(harp, fromString, last + 1) <= mm) ++last;
    return last - fromString + 1;
}

} // namespace harp
