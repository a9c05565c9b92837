#pragma once

#include "core/music/rational.h"

namespace music {

// How long something lasts, in whole notes: a crotchet is 1/4.
struct Length {
    Rational wholes;
    friend constexpr auto operator<=>(Length const&, Length const&) = default;
};

// A place in a tune, in whole notes from its first written or played note, as the context says.
struct Moment {
    Rational wholes;
    friend constexpr auto operator<=>(Moment const&, Moment const&) = default;
};

constexpr Length operator+(Length a, Length b) { return {a.wholes + b.wholes}; }
constexpr Length operator-(Length a, Length b) { return {a.wholes - b.wholes}; }
constexpr Length operator*(Length a, Rational times) { return {a.wholes * times}; }
constexpr Rational operator/(Length a, Length b) { return a.wholes / b.wholes; }
constexpr Moment operator+(Moment m, Length l) { return {m.wholes + l.wholes}; }
constexpr Moment operator-(Moment m, Length l) { return {m.wholes - l.wholes}; }
constexpr Length operator-(Moment a, Moment b) { return {a.wholes - b.wholes}; }
// There is no Moment + Moment: two places in a tune have no sum.

} // namespace music
