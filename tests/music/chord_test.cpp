#include "core/music/chord.h"
#include "core/music/typedchord.h"
#include "tests/places.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>

using namespace music;

namespace {

std::string toneText(Chord const& chord)
{
    std::string out;
    for (PitchName name : toneNames(chord)) out += (out.empty() ? "" : " ") + plain(name);
    return out;
}

} // namespace

TEST_CASE("Chord symbols of the trade give their tones, spelt", "[chord]")
{
    // Common practice, no source.
    auto const [symbol, tones] = GENERATE(table<std::string, std::string>({
        {"G", "G B D"},
        {"Em7", "E G B D"},
        {"Bbmaj7", "Bb D F A"},
        {"F#m7b5", "F# A C E"},
        {"Csus4", "C F G"},
        {"A7sus", "A D E G"},
        {"C6/9", "C E G A D"},
        {"Edim7", "E G Bb Db"},
        {"Am(maj7)", "A C E G#"},
        {"D5", "D A"},
    }));
    CAPTURE(symbol);
    auto const chord = chordFrom(symbol);
    REQUIRE(chord);
    CHECK(toneText(*chord) == tones);
}

TEST_CASE("Old spellings of folk tune files are understood", "[chord]")
{
    // The spellings of an old folk tune collection: d diminished, a augmented, lower-case bass.
    auto const [symbol, meant] = GENERATE(table<std::string, std::string>({
        {"Gd", "Gdim"},    {"C#d", "C#dim"},  {"Bbd", "Bbdim"},   {"Ca", "Caug"},
        {"C/dim", "Cdim"}, {"D/f+", "D/F#"},  {"A7/c+", "A7/C#"}, {"Gm/bb", "Gm/Bb"},
        {"E7/b", "E7/B"},  {"D7/b9", "D7b9"}, {"D/nF", "D/F"},    {"(D7)", "D7"},
        {"(A7", "A7"},     {"D)", "D"},       {"C(7)", "C7"},     {"G7(Em)", "G7"},
        {" B7", "B7"},     {"F♯m", "F#m"},    {"G/G", "G"},
    }));
    CAPTURE(symbol);
    auto const chord = chordFrom(symbol);
    REQUIRE(chord);
    CHECK(plain(*chord) == meant);
}

TEST_CASE("What no spelling explains is refused with the symbol", "[chord]")
{
    for (std::string const symbol : {"", "Gxyz7", "H7", "g", "G minor", "Fine", "D.C.", "4",
                                     "G/", "G/x", "()", "(", "C//E"}) {
        CAPTURE(symbol);
        auto const chord = chordFrom(symbol);
        REQUIRE_FALSE(chord);
        CHECK(chord.error().code == base::FaultCode::BadChord);
        CHECK(chord.error().detail == symbol);
    }
}

TEST_CASE("The bass of a slash chord is the lowest note and belongs to the chord", "[chord]")
{
    Chord const chord = *chordFrom("C/Bb");
    CHECK(lowest(chord) == PitchName{Letter::B, -1});
    CHECK(contains(chord, 10));
    CHECK(contains(chord, 7));
    CHECK_FALSE(contains(chord, 9));
    CHECK(toneText(chord) == "C E G");
}

TEST_CASE("A transposed chord keeps its kind and is read back from its own name", "[chord]")
{
    Chord const chord = transposed(*chordFrom("F#m7/A"), {1, 1});
    CHECK(plain(chord) == "Gm7/Bb");
    CHECK(*chordFrom(plain(chord)) == chord);
}

TEST_CASE("Every symbol of the outside chord table has its notes, bass and aliases",
          "[chord][data]")
{
    // shared/data/chords-dev.json: computed with an independent library of music theory.
    std::filesystem::path const path =
        std::filesystem::path(places::outside()) / "data" / "chords-dev.json";
    std::ifstream file(path);
    if (!file) {
        WARN("SKIPPED: absent: outside chord table");
        return;
    }
    auto const data = nlohmann::json::parse(file);
    for (auto const& row : data["chords"]) {
        std::string const symbol = row["symbol"];
        CAPTURE(symbol);
        auto const chord = chordFrom(symbol);
        REQUIRE(chord);
        std::vector<std::string> names;
        for (PitchName name : toneNames(*chord)) names.push_back(plain(name));
        CHECK(names == row["notes"].get<std::vector<std::string>>());
        CHECK(plain(lowest(*chord)) == row["bass"].get<std::string>());
        CHECK(pitchClass(lowest(*chord)) == row["bassPc"].get<int>());
        CHECK(*chordFrom(plain(*chord)) == *chord);
    }
    for (auto const& [suffix, aliases] : data["suffix_aliases"].items())
        for (std::string const alias : aliases) {
            CAPTURE(suffix, alias);
            auto const chord = chordFrom("D" + alias);
            REQUIRE(chord);
            CHECK(*chord == *chordFrom("D" + suffix));
        }
}

TEST_CASE("Chords are read as an arranger types them", "[chord]")
{
    // Common practice, no source: a small letter is a minor chord, as in many song sheets.
    auto const [typed, meant] = GENERATE(table<std::string, std::string>({
        {"Am7", "Am7"},      {"A-7", "Am7"},        {"a-7", "Am7"},     {"F#m7b5", "F#m7b5"},
        {"F♯m7♭5", "F#m7b5"}, {"f♯ø", "F#m7b5"},     {"D/F#", "D/F#"},   {"D / F♯", "D/F#"},
        {"N.C.", "N.C."},    {"nc", "N.C."},        {"n.c", "N.C."},    {"e", "Em"},
        {"em", "Em"},        {"am7", "Am7"},        {"bb", "Bbm"},      {"B♭", "Bb"},
        {"G7sus", "G7sus4"}, {"dsus4", "Dsus4"},    {"E5", "E5"},       {"Eno3", "E5"},
        {"D–7", "Dm7"},      {"C△", "?"},           {"cmaj7", "Cmaj7"}, {"G/b", "G/B"},
    }));
    CAPTURE(typed);
    auto const chord = typedChordFrom(typed);
    if (meant == "?") {
        REQUIRE_FALSE(chord);
        CHECK(chord.error().detail == typed);
    } else {
        REQUIRE(chord);
        CHECK(plain(*chord) == meant);
    }
}

TEST_CASE("No chord has no tones and stays as it is when the tune moves", "[chord]")
{
    Chord const none = *chordFrom("N.C.");
    CHECK(isNoChord(none));
    CHECK(shown(none) == "N.C.");
    CHECK(transposed(none, {1, 2}) == none);
    CHECK_FALSE(isNoChord(*chordFrom("C")));
}

TEST_CASE("A flat fifth alone is written in brackets, so that it is no flat root", "[chord]")
{
    auto const flatFifth = music::chordFrom("F(b5)");
    REQUIRE(flatFifth);
    CHECK(plain(*flatFifth) == "F(b5)");
    CHECK(*music::chordFrom(plain(*flatFifth)) == *flatFifth);
    CHECK(plain(*music::chordFrom("Fb5")) == "Fb5"); // F flat, and its fifth
    CHECK_FALSE(*music::chordFrom("Fb5") == *flatFifth);
    CHECK(plain(*music::chordFrom("Cm7b5")) == "Cm7b5");
}
