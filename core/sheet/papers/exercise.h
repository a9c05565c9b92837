#pragma once

#include "core/arrange/arrangement.h"
#include "core/base/result.h"
#include "core/music/chord.h"
#include "core/music/key.h"
#include "core/pattern/pattern.h"
#include "core/sheet/score.h"

#include <optional>
#include <string>
#include <vector>

namespace sheet {

// The major and minor triads of a key, in the order in which they are learnt: on its first,
// fourth, fifth, sixth, second and third degree, then the seventh; diminished ones are left
// out. C major gives C F G Am Dm Em. At most six.
struct Triad {
    music::Chord chord;
    std::string numeral; // "I", "vi": upper case for major
};
std::vector<Triad> triadsOf(music::Key key);

// The string on which a chord's root lies for a pattern: the lowest from G2 up (E2 for shapes
// wider than a tenth, and never below the pattern's own limit) from which the whole shape lies
// on the harp; on a small harp the highest below that. None where the harp has no room.
std::optional<harp::StringIndex> rootStringFor(harp::Harp const& harp,
                                               harp::LeverSetting const& setup,
                                               pattern::Pattern const& pattern,
                                               music::PitchName root);

// What is practised: one pattern on a row of chords, a bar each.
struct Exercise {
    harp::Harp const& harp;
    harp::HandModel const& hand;
    harp::Level const& level;
    pattern::PatternBook const& book;
    music::Key key;
};

// The left hand of a row of bars, the right hand silent: in the pattern's first rhythm for the
// meter. Chords that find no room on the harp are left out. Fault: KeyBeyondTuning.
base::Result<arrange::Arrangement> exerciseOf(Exercise const& exercise,
                                              pattern::Pattern const& pattern,
                                              music::Meter meter,
                                              std::vector<music::Chord> const& chords);

// Its bars with chord symbols and fingers, spread over staves as below.
Score exerciseScore(arrange::Arrangement const& arrangement);

// Bars that stand on one bass staff are set on two where notes lie more than four ledger lines
// above it; then those from middle C up stand on the upper one.
void spreadOverStaves(Score& score);

} // namespace sheet
