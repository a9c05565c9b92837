#pragma once

#include "core/base/result.h"
#include "core/proposal/brief.h"

#include <optional>
#include <vector>

namespace proposal {

// The moves from the written key that a brief's wish allows, the best first and never more than
// `keysTried`. A named key takes the tune's own mode with its tonic: moving a tune does not
// change its mode. Faults: tooLong; those of the key fit that lies nearest to the wish.
inline constexpr std::size_t keysTried = 6;
base::Result<std::vector<music::Interval>> movesWished(Brief const& brief);

// What a tune may be: twenty times the longest that we know of. A thousand bars take a third of a
// gigabyte, three thousand more than two. Fault: TuneTooLong.
inline constexpr int mostBars = 3000;
inline constexpr std::size_t mostNotes = 50'000;
inline constexpr int mostInBar = 500; // notes
inline constexpr std::size_t mostChords = 6000;
std::optional<base::Fault> tooLong(tune::Tune const& tune);

// The tempo a brief asks for, else the tune's own, else the usual one of its rhythm.
tune::Tempo tempoWished(Brief const& brief);

// What the ways round a snag cost for a brief; none where it refuses snags.
std::optional<tune::WayPrices> pricesOf(Brief const& brief);

} // namespace proposal
