#include "core/files/musicxml/words.h"

#include <catch2/catch.hpp>

using namespace files::musicxml;

TEST_CASE("Every chord suffix that is read has a kind in MusicXML and comes back from it",
          "[musicxml]")
{
    // The suffixes of music::Chord, and what the standard calls them (MusicXML 4.0, kind-value
    // and degree): spot checks by hand, then every suffix there and back.
    CHECK(kindOf("m7b5").name == "half-diminished");
    CHECK(kindOf("6").name == "major-sixth");
    CHECK(kindOf("7b9").name == "dominant");
    CHECK(kindOf("7b9").degrees == std::vector<Degree>{{9, -1, "add"}});
    CHECK(kindOf("maj7#5").degrees == std::vector<Degree>{{5, 1, "alter"}});
    for (char const* suffix :
         {"",       "m",      "5",    "6",       "m6",      "6/9",   "m6/9",  "7",    "m7",
          "maj7",   "mMaj7",  "9",    "m9",      "maj9",    "mMaj9", "11",    "m11",  "13",
          "m13",    "maj13",  "add9", "m(add9)", "add11",   "dim",   "dim7",  "m7b5", "aug",
          "7#5",    "maj7#5", "sus2", "sus4",    "7sus2",   "7sus4", "9sus4", "b5",   "7b5",
          "maj7b5", "7b9",    "7#9",  "7#11",    "maj7#11", "7b13",  "9#11",  "13b9"}) {
        CAPTURE(suffix);
        auto const chord = music::chordFrom("C" + std::string(suffix));
        REQUIRE(chord);
        Kind const kind = kindOf(chord->suffix);
        CHECK(kind.name != "other");
        CHECK(suffixOf(kind.name, kind.degrees) == chord->suffix);
    }
}

TEST_CASE("A chord kind is known by its tones, however it is spelt", "[musicxml]")
{
    // A minor seventh with a lowered fifth is half-diminished; a dominant without its seventh
    // is a triad; one with the fourth for the third is suspended.
    CHECK(suffixOf("minor-seventh", {{5, -1, "alter"}}) == "m7b5");
    CHECK(suffixOf("dominant", {{7, 0, "subtract"}}) == "");
    CHECK(suffixOf("dominant", {{3, 0, "subtract"}, {4, 0, "add"}}) == "7sus4");
    CHECK(suffixOf("major", {{7, 0, "add"}}) == "7"); // added tones count as in a dominant
    CHECK_FALSE(suffixOf("Tristan", {}));
    CHECK_FALSE(suffixOf("major", {{2, -1, "add"}}));
}

TEST_CASE("Note values go by the names of the standard", "[musicxml]")
{
    // MusicXML 4.0, note-type-value.
    CHECK(typeName({-1, 0}) == "breve");
    CHECK(typeName({2, 1}) == "quarter");
    CHECK(typeName({5, 0}) == "32nd");
    CHECK(halvingsOf("eighth") == 3);
    CHECK_FALSE(halvingsOf("quaver"));
}
