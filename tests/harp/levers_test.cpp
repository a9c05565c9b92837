#include "core/harp/levers.h"
#include "tests/harp/harps.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace harp;
using music::Key;
using music::Letter;
using music::Mode;
using music::Moment;
using music::Pitch;
using music::Rational;

namespace {

Key major(std::string_view tonic) { return {*music::pitchNameFrom(tonic), Mode::Ionian}; }

// Plain names of the major keys that a harp reaches, from the flattest.
std::vector<std::string> majorKeys(std::string_view tuning, std::string_view leverLetters)
{
    Harp const h =
        example::harp(example::c2, example::a6, *music::pitchNameFrom(tuning), leverLetters);
    std::vector<std::string> keys;
    for (int s = -8; s <= 8; ++s)
        if (Key const key = music::keyOf(s, Mode::Ionian); settingFor(h, key))
            keys.push_back(plain(key.tonic));
    return keys;
}

std::string lettersRaised(std::string_view key)
{
    Harp const h = example::floor34();
    LeverSetting const setting = *settingFor(h, major(key));
    std::string letters;
    for (harp::StringIndex i = 0; i < 7; ++i)
        if (setting[i] == Lever::Up) letters += "CDEFGAB"[i];
    return letters;
}

auto leversUp(std::string_view key)
{
    LeverSetting const setting = *settingFor(example::floor34(), major(key));
    return std::count(setting.begin(), setting.end(), Lever::Up);
}

using Keys = std::vector<std::string>;

} // namespace

TEST_CASE("A fully levered harp reaches eight major keys from its tuning upwards", "[levers]")
{
    // Trade checks 12 to 15 (derived; open teacher pages agree for E flat).
    CHECK(majorKeys("Eb", "CDEFGAB") == Keys{"Eb", "Bb", "F", "C", "G", "D", "A", "E"});
    CHECK(majorKeys("C", "CDEFGAB") == Keys{"C", "G", "D", "A", "E", "B", "F#", "C#"});
    CHECK(majorKeys("F", "CDEFGAB") == Keys{"F", "C", "G", "D", "A", "E", "B", "F#"});
    // Trade section 1.4.
    CHECK(majorKeys("Ab", "CDEFGAB") == Keys{"Ab", "Eb", "Bb", "F", "C", "G", "D", "A"});
    CHECK(majorKeys("Bb", "CDEFGAB") == Keys{"Bb", "F", "C", "G", "D", "A", "E", "B"});
}

TEST_CASE("Any tuning of no to seven flats reaches eight signatures with full levers",
          "[levers]")
{
    // Trade check 16 (derived).
    for (int k = -7; k <= 0; ++k) {
        Harp const h =
            example::harp(example::c2, example::a6, music::keyOf(k, Mode::Ionian).tonic);
        for (int s = -8; s <= 8; ++s)
            CHECK(settingFor(h, music::keyOf(s, Mode::Ionian)).has_value() ==
                  (s >= k && s <= k + 7));
    }
}

TEST_CASE("Partly levered harps reach the keys whose raised letters have levers", "[levers]")
{
    // Trade checks 17 to 20 (open teacher pages; the E flat row derived).
    CHECK(majorKeys("C", "F") == Keys{"C", "G"});
    CHECK(majorKeys("C", "CF") == Keys{"C", "G", "D"});
    CHECK(majorKeys("F", "CFB") == Keys{"F", "C", "G", "D"});
    CHECK(majorKeys("Eb", "CFB") == Keys{"Eb"});
    CHECK(majorKeys("Eb", "") == Keys{"Eb"});
}

TEST_CASE("From E flat, C major raises E A B, G major also F and D major also C", "[levers]")
{
    // Trade checks 21 to 26 (open teacher page for C; the rest derived).
    CHECK(lettersRaised("C") == "EAB");
    CHECK(lettersRaised("G") == "EFAB");
    CHECK(lettersRaised("D") == "CEFAB");
    CHECK(leversUp("Eb") == 0);
    CHECK(leversUp("C") == 14);
    CHECK(leversUp("G") == 19);
    CHECK(leversUp("D") == 24);
    CHECK(leversUp("E") == 34);
}

TEST_CASE("Modes that share a signature share a set-up", "[levers]")
{
    // Trade checks 73 and 74 (derived).
    Harp const h = example::floor34();
    CHECK(*settingFor(h, *music::keyFrom("Edor")) == *settingFor(h, major("D")));
    CHECK(*settingFor(h, *music::keyFrom("Amix")) == *settingFor(h, major("D")));
    CHECK(*settingFor(h, *music::keyFrom("Ador")) == *settingFor(h, major("G")));
    CHECK(*settingFor(h, *music::keyFrom("Em")) == *settingFor(h, major("G")));
}

TEST_CASE("Full levers give twelve pitch classes, two of them on two strings", "[levers]")
{
    // Trade checks 27 to 29 (derived): in E flat these are E flat and A flat, in C they are C
    // and F.
    auto const onTwoStrings = [](music::PitchName tuning) {
        Harp const h = example::harp(example::c2, {Letter::B, 0, 2}, tuning);
        std::multiset<int> classes;
        for (HarpString const& s : h.strings())
            for (Lever lever : {Lever::Down, Lever::Up})
                classes.insert(pitchClass(sounding(s, lever)));
        std::set<int> twice;
        for (int pc = 0; pc < 12; ++pc) {
            CHECK(classes.count(pc) >= 1);
            if (classes.count(pc) == 2) twice.insert(pc);
        }
        return twice;
    };
    CHECK(onTwoStrings(example::eFlat) == std::set{3, 8});
    CHECK(onTwoStrings({Letter::C, 0}) == std::set{0, 5});
}

TEST_CASE(
    "E flat tuning has no string of their own for C flat, D flat, E sharp, F flat, G flat, "
    "A sharp and B sharp",
    "[levers]")
{
    // Trade checks 30 to 32 (derived; open composer notes agree).
    Harp const h = example::floor34();
    std::set<std::string> homeless;
    for (Letter letter : music::allLetters)
        for (int alter : {-1, 0, 1}) {
            Pitch const pitch{letter, alter, 4};
            if (!leverFor(h.string(*stringFor(h, pitch)), pitch))
                homeless.insert(plain(nameOf(pitch)));
        }
    CHECK(homeless == std::set<std::string>{"Cb", "Db", "E#", "Fb", "Gb", "A#", "B#"});
    auto const lever = [&](Pitch p) { return leverFor(h.string(*stringFor(h, p)), p); };
    CHECK(lever({Letter::B, -1, 4}) == Lever::Down); // in place of A sharp
    CHECK(lever({Letter::C, 1, 4}) == Lever::Up);    // in place of D flat
}

TEST_CASE("In E flat tuning five harmonic minors have a string for the raised seventh",
          "[levers]")
{
    // Trade check 33 (derived): C, G, D, A and E minor, but not B, F sharp and C sharp minor,
    // where the seventh already stands on a raised lever.
    Harp const h = example::floor34();
    for (std::string_view tonic : {"C", "G", "D", "A", "E", "B", "F#", "C#"}) {
        CAPTURE(tonic);
        music::PitchName const seventh =
            transposed(*music::pitchNameFrom(tonic), music::Interval{6, 11});
        Pitch const pitch{seventh.letter, seventh.alter, 4};
        bool const expected = tonic.size() == 1 && tonic != "B";
        CHECK(leverFor(h.string(*stringFor(h, pitch)), pitch).has_value() == expected);
    }
}

TEST_CASE("A key out of reach is refused with its first letter and the reason", "[levers]")
{
    auto const refusal = [](std::string_view key, std::string_view levers = "CDEFGAB") {
        return settingFor(example::floor34(levers), major(key)).error();
    };
    base::Fault const lower = refusal("Db"); // needs D flat and G flat, G flat comes last
    CHECK(lower.code == base::FaultCode::KeyBeyondTuning);
    CHECK(lower.place == "D♭ major");
    CHECK(lower.detail == "needs D♭ on D2 (string 2), and a lever cannot lower a string");
    CHECK(refusal("B").detail ==
          "needs A♯ on A♭2 (string 6), and a lever raises a string by only one semitone");
    CHECK(refusal("G", "CDEGAB").detail == "needs F♯ on F2 (string 4), and that string has no "
                                           "lever");
}

TEST_CASE("A flip counts from its own moment on and for its own string", "[levers]")
{
    Harp const h = example::floor34();
    auto const at = [](int quarters) { return Moment{Rational(quarters, 4)}; };
    auto const flip = [&](int quarters, harp::StringIndex string, Lever to) {
        return Flip{
            at(quarters), at(quarters - 1), at(quarters + 1), string, to, Side::Left, 0};
    };
    LeverTimeline const levers{LeverSetting(34, Lever::Down),
                               {flip(4, 3, Lever::Up), flip(4, 10, Lever::Up),
                                flip(8, 3, Lever::Down), flip(9, 17, Lever::Up)}};
    CHECK(leverAt(levers, 3, at(3)) == Lever::Down);
    CHECK(leverAt(levers, 3, at(4)) == Lever::Up);
    CHECK(leverAt(levers, 3, at(7)) == Lever::Up);
    CHECK(leverAt(levers, 3, at(8)) == Lever::Down);
    CHECK(leverAt(levers, 10, at(100)) == Lever::Up);
    CHECK(leverAt(levers, 17, at(8)) == Lever::Down);
    CHECK(leverAt(levers, 5, at(100)) == Lever::Down);
    CHECK(pitchAt(h, levers, 3, at(4)) == Pitch{Letter::F, 1, 2});
    CHECK(pitchAt(h, levers, 3, at(0)) == Pitch{Letter::F, 0, 2});
}

TEST_CASE("The set-up line names raised letters in the order of raising", "[levers]")
{
    // Trade section 1.4: from E flat the order is A, E, B, F, C, G, D.
    Harp const h = example::floor34();
    CHECK(setupLine(h, *settingFor(h, major("Eb"))) == "All levers down");
    CHECK(setupLine(h, *settingFor(h, major("C"))) == "Set levers: A♮, E♮, B♮");
    CHECK(setupLine(h, *settingFor(h, major("A"))) == "Set levers: A♮, E♮, B♮, F♯, C♯, G♯");
    Harp const inC = example::harp(example::c2, example::a6, {});
    CHECK(setupLine(inC, *settingFor(inC, major("D"))) == "Set levers: F♯, C♯");
}

TEST_CASE("The set-up line names single strings by their harp octave", "[levers]")
{
    // Trade section 6: exceptions by octave. Middle C is 4C.
    Harp const h = example::floor34();
    LeverSetting setting = *settingFor(h, major("Eb"));
    setting[14] = Lever::Up;
    CHECK(setupLine(h, setting) == "Set levers: only 4C♯");
    setting = *settingFor(h, major("D"));
    setting[14] = Lever::Down;
    CHECK(setupLine(h, setting) == "Set levers: A♮, E♮, B♮, F♯, C♯ but not 4C");
}
