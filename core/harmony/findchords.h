#pragma once

#include "core/harmony/chain.h"
#include "core/harmony/findkey.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace harmony {

// Clearly different ways to put chords to a tune.
enum class Way {
    Plainer, // few chords, few changes
    Usual,   // as most players would
    Richer,  // sevenths at closes and a bass that moves by step
    Open,    // fifths, no thirds: the mode is left unsaid
    Drone,   // one open fifth under all
};
inline constexpr std::array allWays{Way::Usual, Way::Plainer, Way::Richer, Way::Open,
                                    Way::Drone};

// "usual" ...: in the command line and in saved work; "Usual", "as most players would".
std::string_view wayId(Way way);
std::optional<Way> wayFrom(std::string_view id);
std::string_view wayName(Way way);
std::string_view wayWords(Way way);

// Everything learned, read from shared/.
struct Learned {
    ChordTable chords;
    KeyTable keys;
};

// A chord that may stand somewhere, how likely it is that a player would put it there, and why.
struct Likely {
    music::Chord chord;
    double probability = 0;
    std::string reason; // "holds D and F♯ of the tune"
};

// The chord found for one unit.
struct FoundChord {
    Unit unit;
    music::Chord chord;        // as the way has it
    std::vector<Likely> likely; // triads, likeliest first; at least one
    bool kept = false;         // the arranger set it, or the file is kept here
    double sure() const { return likely.front().probability; }
};

struct ChordWishes {
    Way way = Way::Usual;
    // Chords of these origins stay as they are, from where they stand to the next chord or the
    // end of their bar; the rest are found round them.
    bool keepWritten = false;
    bool keepSet = true;
};

struct Suggestion {
    std::vector<FoundChord> chords; // one a unit, in order
    std::vector<std::size_t> leastSure; // indices into chords, the least sure first: to settle
                                        // these helps the rest most
    std::optional<FoundKey> key;        // from the notes
    music::Key heardIn;                 // the key whose tonic the chords go by
    bool modeUnsure = false;            // then thirds that nothing in the tune bears out are
                                        // left out
};

// Chords for a tune. Deterministic: sums are whole numbers. Time grows with the length of the
// tune. A tune without full bars gets none.
Suggestion suggestChords(Learned const& learned, tune::Tune const& tune,
                         ChordWishes const& wishes = {});

// The tune with these chords: where one begins or changes, and where a strain or an ending
// begins. Marks that are kept stay as they are.
tune::Tune withChords(tune::Tune tune, Suggestion const& suggestion);

// Bars of a lettered tune that have no letters of their own for at least eight bars on end,
// while eight and half of the others have: a strain that was left to the player. From the first
// to the last of each. A chord that is meant to be silent rests on.
std::vector<std::pair<tune::BarIndex, tune::BarIndex>> unletteredBars(tune::Tune const& tune);

// Where the last bar says no chord, its notes are those of the tonic chord and end on the
// tonic, and the chord before it goes on without that note: the tonic chord. Else none.
std::optional<music::Chord> homeAtEnd(tune::Tune const& tune);

// The tune with that chord in its last bar.
tune::Tune withHomeAtEnd(tune::Tune tune);

// The tune with chords found for those bars and no others.
tune::Tune withUnletteredFilled(Learned const& learned, tune::Tune tune);

// Both at once, for a tune that has no chords or whose own are set aside.
tune::Tune withFoundChords(Learned const& learned, tune::Tune tune,
                           ChordWishes const& wishes = {});

// The degrees that the usual way takes in the key that the tune says, one a unit, nothing kept.
// For measuring.
std::vector<Degree> usualDegrees(ChordTable const& table, tune::Tune const& tune);

// Log likelihoods of the table's degrees, one row a unit, before any way or wish; bars with
// equal notes hear each other. For measuring and training.
std::vector<std::vector<int>> likelihoods(ChordTable const& table, tune::Tune const& tune,
                                          std::vector<Unit> const& units,
                                          std::vector<Heard> const& heard);

} // namespace harmony
