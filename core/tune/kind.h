#pragma once

#include "core/tune/tune.h"

#include <array>
#include <optional>
#include <string_view>

namespace tune {

// What a tune is danced or sung as: how its left hand lilts and how fast it goes.
enum class Kind {
    Waltz,
    Jig,       // double jig
    SingleJig, // and slide
    SlipJig,
    Reel,
    Hornpipe,
    Polka,
    March,
    Strathspey,
    Air, // and lament, lullaby, song
    Mazurka,
    TripleHornpipe, // in 3/2
    Other,          // meters in groups: 5/4, 7/8
};

inline constexpr std::array allKinds{
    Kind::Waltz,   Kind::Jig,        Kind::SingleJig, Kind::SlipJig, Kind::Reel,
    Kind::Hornpipe, Kind::Polka,     Kind::March,     Kind::Strathspey, Kind::Air,
    Kind::Mazurka, Kind::TripleHornpipe, Kind::Other};

// "jig", "slip_jig": the name in tables.
std::string_view kindName(Kind kind);

// By the rhythm field; else by a word of the title that fits the meter; else by meter and
// notes: how many there are in a bar, and how pairs within a beat are dotted. A hornpipe closes
// its strains on three even crotchets. Where the notes leave it open, the slower kind: a pupil
// can always go faster. [music-1.3]
Kind kindOf(Tune const& tune);

// The pulse that a left hand keeps in dances: beats, or half bars where beats go by twos. None
// in airs, which breathe.
std::optional<music::Length> pulseOf(Kind kind, music::Meter meter);

// A tempo for a tune that names none, as a player of this level (1 to 5) takes it: learning
// speed at 1 and 2, from there in steps to the speed of a harp setting of the dance at 5, which
// lies below that for dancers. [music-1.1]
Tempo tempoFor(Kind kind, music::Meter meter, int level);

} // namespace tune
