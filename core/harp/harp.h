#pragma once

#include "core/base/list.h"
#include "core/base/result.h"
#include "core/harp/stringindex.h"
#include "core/music/pitch.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace harp {

// A lever is either down (the open string) or up (the string sounds a semitone higher).
enum class Lever { Down, Up };

struct HarpString {
    music::Pitch open; // with the lever down
    bool hasLever = true;
    double gapMm = 15;  // to the next higher string
    bool wound = false; // stiff lever, longer ring
    friend bool operator==(HarpString const&, HarpString const&) = default;
};

enum class StringColour { Red, Blue, White }; // C, F (black or blue), all others [trade-1.3]
constexpr StringColour colourOf(HarpString const& s)
{
    return s.open.letter == music::Letter::C   ? StringColour::Red
           : s.open.letter == music::Letter::F ? StringColour::Blue
                                               : StringColour::White;
}

// How the reader wants strings named: by the scientific pitch and the number from the lowest;
// by harp octaves, which count from the top ("4C" is middle C) [trade-1.2]; or by their numbers
// as makers count, from the shortest. Usual: sentences as the first, the set-up line as the
// second.
enum class Naming { Usual, Scientific, HarpOctave, FromTop };

using HarpStrings = base::List<StringIndex, HarpString>;

// One lever harp as its owner tunes it. The reader counts strings from 1.
class Harp {
public:
    // Faults: StringsOutOfOrder, naming the string, unless there is at least one string, each
    // is one letter above the one before and every gap is positive.
    static base::Result<Harp> make(std::string id, std::string name, music::PitchName tuning,
                                   HarpStrings strings);

    std::string const& id() const { return m_id; }
    std::string const& name() const { return m_name; }
    music::PitchName tuning() const { return m_tuning; } // the major key of all levers down
    Naming naming() const { return m_naming; }
    HarpStrings const& strings() const& { return m_strings; }
    HarpStrings const& strings() const&& = delete; // they end with the harp
    int count() const { return m_strings.size(); }
    base::Indices<StringIndex> indices() const { return m_strings.indices(); }
    StringIndex highest() const { return m_strings.beyond() - 1; }
    HarpString const& string(StringIndex index) const { return m_strings[index]; }
    // Distance in mm of a string from the lowest one.
    double placeMm(StringIndex index) const { return m_placesMm[index]; }

    friend bool operator==(Harp const&, Harp const&) = default;
    friend Harp withNaming(Harp harp, Naming naming);

private:
    std::string m_id;
    std::string m_name;
    music::PitchName m_tuning;
    HarpStrings m_strings;
    base::List<StringIndex, double> m_placesMm; // follows from the gaps
    Naming m_naming = Naming::Usual;
};

// The same harp, its strings named otherwise.
Harp withNaming(Harp harp, Naming naming);

// "usual", "scientific", "harp", "number": for files and the command line; none for other
// words.
std::string_view namingId(Naming naming);
std::optional<Naming> namingFrom(std::string_view id);

// What a string sounds.
constexpr music::Pitch sounding(HarpString const& s, Lever lever)
{
    return {s.open.letter, s.open.alter + (lever == Lever::Up ? 1 : 0), s.open.octave};
}

// The string on which a written pitch lies (its letter and octave); none beyond the ends.
std::optional<StringIndex> stringFor(Harp const& harp, music::Pitch pitch);

// Lever position that sounds the pitch on this string; none if it cannot be had there.
std::optional<Lever> leverFor(HarpString const& string, music::Pitch pitch);

// Distance in mm between two strings, always positive.
double distanceMm(Harp const& harp, StringIndex from, StringIndex to);

// Seconds in which the ring of a string falls by 60 dB: the working model of plain and wound
// strings [trade-2.2].
double ringSeconds(HarpString const& string);

// Harp octaves count from the top and change between E and F: middle C is 4, C2 is 6
// [trade-1.2].
int harpOctave(music::Pitch pitch);

// "E♭3 (string 10)", "5E♭ (string 10)", "E♭, string 25 from the top": a string by its open
// pitch, as the harp's owner names strings.
std::string stringName(Harp const& harp, StringIndex index);

} // namespace harp
