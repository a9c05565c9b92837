#pragma once

#include "core/arrange/arrangement.h"
#include "core/harp/harp.h"
#include "ui/box.h"

#include <optional>
#include <vector>

namespace ui {

// Where the strings of a harp stand on the screen: seen by the player, low strings left.
struct BankString {
    double x = 0;
    double top = 0;    // at the neck
    double bottom = 0; // at the soundboard
    double thickness = 1;
};

struct StringBankLayout {
    base::List<harp::StringIndex, BankString> strings; // lowest first
    Box area;
    double leverUpY = 0;   // middle of a lever block that is up
    double leverDownY = 0; // and of one that is down
    double rightHandY = 0; // middle of the finger discs of each hand
    double leftHandY = 0;
    double bracketY = 0; // line of the reach bracket
    double reachY = 0;   // middle of its words
    double discRadius = 10;
};

// Gaps between strings are to scale; lengths shorten towards the top as on a harp, but less, so
// that the high strings can still be read.
// `letters`: how many times as large as usual they are.
StringBankLayout layOutBank(harp::Harp const& harp, Box area, double letters = 1);

// The string nearest to a point, if the point is in the area.
std::optional<harp::StringIndex> stringNear(StringBankLayout const& layout, double x, double y);

// The string whose lever stands at a point, up or down; whether it has one is not asked.
std::optional<harp::StringIndex> leverNear(StringBankLayout const& layout, double x, double y);

// One finger on one string.
struct FingerDisc {
    harp::Side hand = harp::Side::Left;
    harp::StringIndex string = 0;
    int finger = 1;
    int order = 0; // in which it first plays in its hand, 0 first
    friend bool operator==(FingerDisc const&, FingerDisc const&) = default;
};

// Fingers of both hands while a position sounds, one for each string and hand: the first that
// plays there.
std::vector<FingerDisc> fingersAt(arrange::Arrangement const& arrangement,
                                  arrange::PositionIndex position);

// Every lever as it stands at a moment of the performance.
harp::LeverSetting leversAt(arrange::Arrangement const& arrangement, music::Moment at);

// Lowest and highest string of the left hand; none with fewer than two strings.
struct Reach {
    harp::StringIndex lowest = 0;
    harp::StringIndex highest = 0;
    int strings() const { return highest - lowest + 1; }
    friend bool operator==(Reach const&, Reach const&) = default;
};
std::optional<Reach> reachOf(std::vector<FingerDisc> const& fingers);

} // namespace ui
