#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace tune {

// What a harper does with a note that her harp, its levers, her hand or her level cannot give
// as it is written. The first six are ways for one note; the others change the whole tune, so
// that they are offered and never taken unasked.
enum class Way {
    Plain,         // the other pitch of the note's own string: no lever flip
    Held,          // the note before rings on through it
    LeaveOut,      // a rest
    Octave,        // the same note in the nearest octave that the harp can give
    OtherString,   // the string beside it, which sounds the same
    LeftLightened, // as written: the left hand plays one low note, then flips the lever
    Slower,
    Key,
    Level,
};
inline constexpr std::size_t noteWays = 6;

// "plain", "held", "leave-out", "octave", "other-string", "left-lightened", "slower", "key",
// "level"; and back, none for other words.
std::string_view wayId(Way way);
std::optional<Way> wayFrom(std::string_view id);

// What a note does in its line: the ways out are ranked by it.
enum class NoteFunction {
    Neighbour,       // a step away and back
    Passing,         // a step between two steps in one direction
    Leading,         // a semitone up into the home note or the root of the next chord
    ArpeggioThird,   // the third of its chord, reached or left by a leap
    ChromaticPhrase, // one of several notes that change the scale for a phrase
    Ornament,        // a short slide into a part
    Other,
};
inline constexpr std::size_t noteFunctions = 7;
std::string_view functionId(NoteFunction function); // "neighbour" ... "arpeggio_third" ...

// What else counts for or against a way.
enum class Circumstance {
    OnBeat,      // any beat but the first of the bar
    FirstBeat,   // of the bar
    Long,        // a beat or more
    Quick,       // plain would pluck one string twice in less time than it takes
    PartEnd,     // off the beat, before a rest or at the end of a part
    LineApart,   // the note before is a leap away: a pedal, or another line
    Sung,        // a syllable begins on it
    PlainInKey,  // without its accidental it is a note of the key
    InKey,       // it is a note of the key itself
    Opening,     // in the first bar
    ChordRoot,   // the root or the bass of its chord, which plain would put out of tune with it
    ChordThird,  // the third of its chord and of the key: plain would turn major into minor
    LeapsAround, // a fourth or more on both sides
    OffHarp,     // beyond the strings of the harp, or on no string at all
};
inline constexpr std::size_t circumstances = 14;
std::string_view circumstanceId(Circumstance circumstance); // "on_beat" ...

// Prices of the ways for one note each time it is played: points, lower is better, ten of them
// as bad as one lever flip. A way costs what its function says and what each circumstance adds
// (shared/snags.json).
using WayRow = std::array<int, noteWays>;
struct WayPrices {
    std::array<WayRow, noteFunctions> byFunction{};
    std::array<WayRow, circumstances> added{};
    int least = 0;               // no way costs less
    int graceLeftOut = 0;        // of a grace note
    double pluckedAgainSeconds = 0; // below this one string is not plucked twice
    friend bool operator==(WayPrices const&, WayPrices const&) = default;
};

} // namespace tune
