#pragma once

#include "core/arrange/slider.h"
#include "core/proposal/righthand.h"

#include <optional>
#include <string>
#include <vector>

namespace proposal {

// How the tune is played one time through: a row of shared/forms.json.
struct TimeManner {
    std::string id;                              // "fuller"
    std::string name;                            // for the arranger and the page: "fuller"
    std::vector<arrange::Turned> sliders{};      // of the left hand, on top of the brief's
    std::vector<arrange::Turned> secondStrain{}; // and in every second strain on top of those
    std::optional<RightHand> right{};            // none: as the brief has it
    int octave = 0;    // of the tune: 1 an octave higher, -1 an octave lower
    int mostNotes = 0; // of the left hand in a bar; 0: as level and sliders have it
    arrange::Points noteTooMany = 0; // the cost of each beyond them
    int pairsTo = 0; // up to this level each chord begins with two strings or more at once, for
                     // there the left hand has no more notes to become fuller by; 0: none
    arrange::Points loneString = 0; // the cost of a chord that begins with one, or with a rest
    friend bool operator==(TimeManner const&, TimeManner const&) = default;
};

inline constexpr std::size_t mostTimes = 6;

// A form with a name of its own: the manners of its times through.
struct NamedForm {
    std::string id;
    std::string name;
    std::vector<TimeManner> times;
};

// The whole of what is played: an introduction and an ending made of the tune's last phrase,
// and the times through the whole tune between them [music-7].
struct Form {
    int introduction = 0; // bars: 0 none, 2 or 4
    int ending = 0;
    std::vector<TimeManner> times{}; // empty: once, as the brief has it
    friend bool operator==(Form const&, Form const&) = default;
    bool isPlain() const { return introduction == 0 && ending == 0 && times.empty(); }
};

} // namespace proposal
