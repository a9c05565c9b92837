#pragma once

#include "core/harp/hand.h"
#include "core/harp/harp.h"
#include "core/music/key.h"

#include <string_view>

// Harps and hands for tests, made by hand so that they do not depend on shared/.
namespace example {

// Strings from one pitch to another in a major tuning, 15 mm apart, levers on the named
// letters.
inline harp::Harp harp(music::Pitch lowest, music::Pitch highest, music::PitchName tuning,
                       std::string_view leverLetters = "CDEFGAB")
{
    int const signature = music::signature({tuning, music::Mode::Ionian});
    harp::HarpStrings strings;
    for (int step = diatonicStep(lowest); step <= diatonicStep(highest); ++step) {
        music::Pitch open = music::naturalAt(step);
        open.alter = music::alterIn(signature, open.letter);
        bool const hasLever =
            leverLetters.find("CDEFGAB"[music::index(open.letter)]) != std::string_view::npos;
        strings.push_back({open, hasLever, 15, midi(open) < 48});
    }
    return *harp::Harp::make("example", "Example", tuning, std::move(strings));
}

inline constexpr music::Pitch c2{music::Letter::C, 0, 2};
inline constexpr music::Pitch a6{music::Letter::A, 0, 6};
inline constexpr music::PitchName eFlat{music::Letter::E, -1};

// 34 strings, C2 to A6, tuned in E flat.
inline harp::Harp floor34(std::string_view leverLetters = "CDEFGAB")
{
    return harp(c2, a6, eFlat, leverLetters);
}

// The trade's reaches of a medium hand [trade-3.2].
inline harp::HandModel mediumHand()
{
    return {
        "medium",
        "medium",
        148,
        185,
        {{2, 1, 4, 7}, {3, 1, 6, 9}, {4, 1, 9, 11}, {3, 2, 2, 4}, {4, 2, 4, 6}, {4, 3, 2, 4}}};
}

} // namespace example
