#pragma once

#include "core/music/key.h"
#include "core/notation/staff.h"
#include "core/tune/tune.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <vector>

// One voice of ABC music as text, bar by bar. For the .cpp files of this folder.
namespace files {

// A text in quotes before a note: `quoted` is a chord symbol, or begins with the sign of its
// place.
struct AbcWord {
    music::Length at;
    std::string quoted;
};

// The notes of a bar one by one as the tune has them, no length spelt out.
notation::StaffBar signsOf(tune::Bar const& bar);

// Where words stand inside a note, it becomes two that are tied.
notation::StaffBar withCuts(notation::StaffBar bar, std::vector<AbcWord> const& words);

// The unit length of all that is written: L:1/8.
inline constexpr music::Length abcUnit{music::Rational(1, 8)};

// Remembers the accidentals of the bar and the tie that comes into it.
class AbcVoice {
public:
    void setKey(music::Key key);
    // The notes of one bar without its bar lines.
    std::string notes(notation::StaffBar const& bar, std::vector<AbcWord> const& words);

private:
    std::string pitch(music::Pitch pitch);
    std::string graces(notation::StaffNote const& sign);
    std::string sign(notation::StaffNote const& sign, music::Rational ratio);

    std::array<int, 7> m_signature{};
    std::map<music::Letter, int> m_inBar;
    std::vector<music::Pitch> m_tiedOver;
};

// The w: lines under a line of music, one a verse (ABC 2.1, section 5).
std::string abcVerses(std::vector<notation::StaffNote> const& signsOfLine);

// A text string with the signs escaped that ABC gives a meaning (ABC 2.1, section 8.2).
std::string abcEscaped(std::string_view text);
std::string abcQuoted(std::string_view text);

// The bar line behind a bar, and what stands before its first note: "|:", "[1".
std::string abcLineAfter(tune::Bars const& bars, tune::BarIndex i);
std::string abcSignsBefore(tune::Bar const& bar);

std::string abcMeterText(music::Meter meter);

} // namespace files
