#pragma once

#include "core/base/result.h"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace perform {

// How the twelve keys of an octave are tuned: cents above equal temperament, from C upwards. A
// is where it was, so that 440 Hz stay 440.
struct Temperament {
    std::string id; // "meantone"
    std::string name;
    std::array<double, 12> cents{};
    friend bool operator==(Temperament const&, Temperament const&) = default;
};

// One of the list by its id, or one's own: "E=-14,B=-12,F#=-10", letters with # or b and cents up
// to 50 either way. Fault: BadCall.
base::Result<Temperament> temperamentFrom(std::vector<Temperament> const& all,
                                          std::string_view text);

} // namespace perform
