#include "core/files/textfile.h"
#include "tests/places.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <map>
#include <regex>
#include <set>
#include <sstream>
#include <vector>

// Which test holds which of the trade's 75 check values.

namespace {

namespace fs = std::filesystem;

struct Claim {
    std::vector<int> rows;
    char const* test; // its name
};

std::vector<Claim> const claims{
    {{1, 3, 4}, "Middle C is string 15 of 34 from C2, 17 of 36 from A1 and 8 of 26 from C3"},
    {{2}, "C2 to A6 are 34 strings and middle C is the 20th from the top"},
    {{5, 6}, "22 strings lie between C3 and C6 and 38 between A1 and C7"},
    {{7, 8, 9, 10}, "Harp octaves count from the top and change between E and F"},
    {{11}, "C strings are red, F strings are blue and all others white"},
    {{12, 13, 14, 15},
     "A fully levered harp reaches eight major keys from its tuning upwards"},
    {{16}, "Any tuning of no to seven flats reaches eight signatures with full levers"},
    {{17, 18, 19, 20},
     "Partly levered harps reach the keys whose raised letters have levers"},
    {{21, 22, 23, 24, 25, 26},
     "From E flat, C major raises E A B, G major also F and D major also C"},
    {{27, 28, 29}, "Full levers give twelve pitch classes, two of them on two strings"},
    {{30, 31, 32},
     "E flat tuning has no string of their own for C flat, D flat, E sharp, F flat, G flat, "
     "A sharp and B sharp"},
    {{33}, "In E flat tuning five harmonic minors have a string for the raised seventh"},
    {{34}, "A lever gives its own string a semitone more and nothing else"},
    {{35, 36}, "A lever shortens its string by 5.61 per cent, 29.7 mm of 530"},
    {{37}, "Degree d lies d - 1 strings above the root string"},
    {{38, 39, 40, 41, 42, 43, 45}, "Patterns sound what the levers give"},
    {{44, 46}, "1-5-8 lies 0 7 12 semitones above its root and a tenth 16 or 15"},
    {{47}, "The usual fingers of 1-5-8 are 4-2-1"},
    {{48, 50}, "Patterns use fingers 1 to 4 and blocks wider than a tenth are rolled"},
    {{49}, "Two notes take 2-1 up to a fourth, 3-1 up to a sixth and 4-1 beyond"},
    {{51}, "A span of 201 mm has 10 strings in comfort at 15 mm"},
    {{52}, "Ten strings at 15 mm are a stretch of 135 mm"},
    {{53}, "Thumb slides go down and slides of finger 4 go up, to the next string"},
    {{54, 55}, "The critical band of the score lies between the published bands at 1000 Hz"},
    {{56}, "The band of Hutchinson and Knopoff is 97.7 Hz wide at 500 Hz"},
    {{57, 58}, "Two tones over 440 Hz are roughest 25.8 Hz apart and smooth in unison"},
    {{59}, "On C3 the octave is smoothest, then fifth, fourth, thirds and the second"},
    {{60}, "A minor third gets rougher below C3, the lowest where books allow it"},
    {{61}, "On C2 the close triad is rougher than 1-5-8"},
    {{62, 63}, "A plain string at middle C rings 5.8 s and the ring shortens as pitch rises"},
    {{64, 65}, "A string plucked at its half has no even partials, at a third no third one"},
    {{66}, "A harmonic at half the string sounds an octave up: one octave string above"},
    {{67}, "C4 is 261.63 Hz and MIDI key 60"},
    {{68}, "AABB of eight-bar parts is 32 bars and 33.1 s at 58 bars a minute"},
    {{69, 70}, "A reel at minim 112 has 7.47 quavers a second and a jig at dotted crotchet 120 "
               "has six"},
    {{71, 72}, "185 session tunes: D 83, G 47, A 28, E 24 and B 3, all in one or two sharps, "
               "which F and C levers give from C"},
    {{73, 74}, "Modes that share a signature share a set-up"},
    {{75}, "Sheets are A4, 210 by 297 mm, or Letter, 215.9 by 279.4 mm"}};

// Names of all test cases under tests/, string literals that follow each other joined.
std::multiset<std::string> testNames()
{
    static std::regex const begins(R"rx(TEST_CASE\(\s*((?:"(?:[^"\\]|\\.)*"\s*)+))rx");
    static std::regex const literal(R"rx("((?:[^"\\]|\\.)*)")rx");
    std::multiset<std::string> names;
    for (auto const& entry : fs::recursive_directory_iterator(places::tests())) {
        if (entry.path().extension() != ".cpp") continue;
        auto const read = files::readTextFile(entry.path());
        if (!read) continue;
        for (std::sregex_iterator test(read->begin(), read->end(), begins), end; test != end;
             ++test) {
            std::string const parts = test->str(1);
            std::string name;
            for (std::sregex_iterator part(parts.begin(), parts.end(), literal); part != end;
                 ++part)
                name += part->str(1);
            names.insert(name);
        }
    }
    return names;
}

} // namespace

TEST_CASE("Each of the 75 check values of the trade is held by exactly one test", "[trade]")
{
    auto const names = testNames();
    CHECK(names.size() > 300);
    std::map<int, int> held;
    for (Claim const& claim : claims) {
        CAPTURE(claim.test);
        CHECK(names.count(claim.test) == 1);
        for (int row : claim.rows) ++held[row];
    }
    CHECK(held.size() == 75);
    for (auto const& [row, tests] : held) {
        CAPTURE(row);
        CHECK(row >= 1);
        CHECK(row <= 75);
        CHECK(tests == 1);
    }
}

TEST_CASE("The list of check values has no row that no test holds", "[trade]")
{
    auto const read = files::readTextFile(places::outside() + "/trade/checks.csv");
    if (!read) {
        WARN("SKIPPED: the trade's check values are absent");
        return;
    }
    std::set<int> held;
    for (Claim const& claim : claims) held.insert(claim.rows.begin(), claim.rows.end());
    std::istringstream lines(*read);
    std::string line;
    std::getline(lines, line);
    int rows = 0;
    while (std::getline(lines, line)) {
        CAPTURE(line);
        CHECK(held.contains(std::stoi(line)));
        ++rows;
    }
    CHECK(rows == 75);
}
