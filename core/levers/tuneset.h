#pragma once

#include "core/levers/keyfit.h"

#include <string>
#include <vector>

namespace levers {

// A tune of a set: its keys that can be played, the best first.
struct SetTune {
    std::string title;
    std::vector<KeyFit> keys;
    harp::StringIndex highestString =
        0; // of the tune as written, index from the lowest; moved with the key
};

// A lever turned between two tunes.
struct LeverChange {
    harp::StringIndex string = 0;
    harp::Lever to = harp::Lever::Up;
    friend bool operator==(LeverChange const&, LeverChange const&) = default;
};

// One tune of a set in its place.
struct SetStep {
    int tune = 0; // index into the tunes given
    KeyFit fit;
    std::vector<LeverChange> changes; // before it; none before the first, which is set up
    double seconds = 0;               // that they take
};

enum class SetOrder { AsGiven, Free };

// Seconds for each lever turned between tunes: half a second to a second. Common practice, no
// source [trade-7].
inline constexpr double secondsALever = 0.75;

// The set in the order and keys that ask least of the levers: each lever turned between tunes
// counts like a third of one turned in play, against what each key is worth by itself
// (KeyFit::rank). Only strings up to the highest note of the tune are set; the others stay as
// they are until a tune wants them. Exact for the keys given: every order and choice is tried,
// those passed over that already cost more than the best. Empty when some tune has no key.
std::vector<SetStep> setPlan(harp::Harp const& harp, std::vector<SetTune> const& tunes,
                             SetOrder order);

// A tune with its first `most` possible keys.
SetTune setTune(harp::Harp const& harp, tune::Tune const& tune, tune::Tempo tempo,
                harp::Level const& level, std::size_t most = 5,
                std::optional<tune::WayPrices> const& prices = std::nullopt);

// "Turn 5 levers, about 4 s: C♯ up on 6C 5C 4C 3C 2C": what is done before a tune of a set;
// "Leave the levers as they are" where nothing is.
std::string changesInWords(harp::Harp const& harp, SetStep const& step);

} // namespace levers
