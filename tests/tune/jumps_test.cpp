#include "core/files/abc/read.h"
#include "core/tune/playing.h"

#include <catch2/catch.hpp>

#include <string>

// Where D.C., D.S., Fine and coda send the player: marks of ABC 2.1, section 4.14 (from
// memory); that the way back is played without repeats is common practice, no source.

using namespace tune;

namespace {

// Bars are told by their first note: "C D E" for three bars.
std::string order(std::string const& bars, std::string const& head = "")
{
    std::string const text =
        "X:1\nT:The Ferry Gate\nM:4/4\nL:1/4\n" + head + "K:C\n" + bars + "\n";
    auto const entries = files::abcTunes(text);
    REQUIRE(entries);
    auto const tune = files::readAbc(text, entries->front(), "tune.abc");
    REQUIRE(tune);
    std::string out;
    for (PlayedBar const& bar : played(*tune).bars) {
        Note const& first = tune->bars[bar.bar].notes.front();
        out += (out.empty() ? "" : " ") + music::plain(first.pitches.front()).substr(0, 1);
    }
    return out;
}

} // namespace

TEST_CASE("D.C. goes back to the beginning and ends at the Fine, without repeats", "[jumps]")
{
    CHECK(order("C4|D2 \"Fine\"D2||E4|F4\"D.C.\"|]") == "C D E F C D");
    CHECK(order("|:C4|D2 !fine!D2:|E4|F4!D.C.alfine!|]") == "C D C D E F C D");
    CHECK(order("C4|D4||\"Fine\"E2 E2|F2 \"D.C. al Fine\"F2|]") == "C D E F C D");
}

TEST_CASE("D.S. goes back to the sign", "[jumps]")
{
    CHECK(order("C4|!segno!D4|E2!fine!E2||F2!D.S.!F2|]") == "C D E F D E");
    CHECK(order("C4|\"Segno\"D4|E2 \"Fine\"E2||F2\"Dal Segno al Fine\"F2|]") == "C D E F D E");
}

TEST_CASE("On the way back the last endings are played", "[jumps]")
{
    CHECK(order("|:C4|1 D4:|2 E2 \"Fine\"E2||F4|G2\"D.C.\"G2|]") == "C D C E F G C E");
}

TEST_CASE("To the coda: left at the first sign, taken up at the second", "[jumps]")
{
    CHECK(order("C4|D2 !coda!D2|E4|F2!D.C.alcoda!F2||!coda!G4|A4|]") == "C D E F C D G A");
    CHECK(order("!segno!C4|D2 \"To Coda\"D2|E2 \"D.S. al Coda\"E2||\"Coda\"F4|]") ==
          "C D E C D F");
    CHECK(order("C4|D4\"^<coda>\"||E4|F4\"D.C.\"\"^<coda>\"||G4|]") == "C D E F C D G");
    // The sign on the first note of a bar stands at the bar line before it.
    CHECK(order("C4|D4|!coda!E2E2|F2!D.C.!F2||!coda!G4|]") == "C D E F C D G");
}

TEST_CASE("Without a Fine a hold at the end of a section ends the tune", "[jumps]")
{
    CHECK(order("C4|D2 !fermata!D2:|E4|F2 \"D.C.\"F2|]") == "C D C D E F C D");
    CHECK(order("C4|!fermata!D4|E4|F2 \"D.C.\"F2|]") == "C D E F C D E F");
}

TEST_CASE("D.C. without a Fine plays the tune once more to its end", "[jumps]")
{
    CHECK(order("C4|D4:|E4|F4\"D.C.\"|]") == "C D C D E F C D E F");
}

TEST_CASE("A D.C. inside a repeat waits for the last time", "[jumps]")
{
    CHECK(order("C2 C2|D2\"Fine\"D2||:E4|F2\"D.C.\"F2:|") == "C D E F E F C D");
}

TEST_CASE("What is not clear is played straight through", "[jumps]")
{
    // No sign to go back to, two jumps, bars that would never be played, an order of parts.
    CHECK(order("C4|D4\"D.S.\"|]") == "C D");
    CHECK(order("C4|D2 \"Fine\"D2||E4\"D.C.\"|F4\"D.C.\"|]") == "C D E F");
    CHECK(order("C2 \"Fine\"C2|D2\"D.C.\"D2|E4|]") == "C D E");
    CHECK(order("P:A\nC2 \"Fine\"C2|\nP:B\nD4\"D.C.\"|]", "P:ABA\n") == "C D C");
}
