#include "core/pattern/layout.h"
#include "core/pattern/own.h"

#include <catch2/catch.hpp>

using namespace pattern;

TEST_CASE("An arranger's shape is read with its usual fingers", "[own]")
{
    // Fingers by width and placing: trade sections 3.2 and 3.3.
    Pattern const p = *ownPatternFrom("1 5 8 10 8");
    CHECK(p.name == "1-5-8-10-8");
    CHECK(p.own);
    CHECK(fingersText(p.notes) == "4-3-2-1-2");
    CHECK(ownPatternFrom("1-5-8-10-8")->notes == p.notes);
}

TEST_CASE("Fingers that the arranger gives are part of the name", "[own]")
{
    CHECK(ownPatternFrom("1 5 8 (4 3 1)")->name == "1-5-8 (4-3-1)");
    CHECK(*ownPatternFrom(ownPatternFrom("1 5 8 (4 3 1)")->name) ==
          *ownPatternFrom("1 5 8 (4 3 1)"));
}

TEST_CASE("Fingers that no hand can have are refused with the note and a remedy", "[own]")
{
    struct Row {
        std::string_view text, place, detail;
    };
    Row const row = GENERATE(
        // one finger on two strings at once
        Row{"1+5+8 (4+2+2)", "note 3", "finger 2 on degree 8 after finger 2 on degree 5"},
        // the thumb below
        Row{"1-5-8 (1-2-4)", "note 2", "finger 2 on degree 5 after finger 1 on degree 1"},
        Row{"8-5-1 (4-2-1)", "note 2", "finger 2 on degree 5 after finger 4 on degree 8"},
        // seen beside the first note of the block, not only the last
        Row{"5+8+1 (3+1+2)", "note 3", "finger 2 on degree 1 after finger 3 on degree 5"});
    CAPTURE(row.text);
    auto const read = ownPatternFrom(row.text);
    REQUIRE(!read);
    CHECK(read.error() == base::Fault{base::FaultCode::PatternFingers, std::string(row.place),
                                      std::string(row.detail)});
    CHECK(base::sentence(read.error()).find("thumb (1) goes on the highest string") !=
          std::string::npos);
}

TEST_CASE("A finger may move along, cross with its mark, and slide", "[own]")
{
    for (std::string_view text : {"1-low5 (4-4)", "1-5-8-9 (4-2-1-2u)", "1-5-10-9 (4-2-1-1s)",
                                  "9-8-5-4 (1-2-4-1o)", "1-5-8-1-5-8 (4-2-1-4-2-1)"}) {
        CAPTURE(text);
        CHECK(ownPatternFrom(text));
    }
}

TEST_CASE("More than eight notes are refused", "[own]")
{
    CHECK(ownPatternFrom("1-5-8-5-8-5-8-5"));
    auto const read = ownPatternFrom("1-5-8-5-8-5-8-5-1");
    REQUIRE(!read);
    CHECK(read.error() == base::Fault{base::FaultCode::PatternTooLong, "note 9", "9 notes"});
}

TEST_CASE("A book takes an own pattern once, and keeps its own where it has the shape", "[own]")
{
    PatternBook book;
    book.patterns.push_back(*patternFrom("1-5 (4-2)"));
    CHECK(withOwn(book, *ownPatternFrom("1 5")).book.patterns.size() == 1);
    CHECK(withOwn(book, *ownPatternFrom("1 5 (4 2)")).name == "1-5");
    WithOwn const other = withOwn(book, *ownPatternFrom("1 5 (3 1)"));
    CHECK(other.name == "1-5 (3-1)");
    REQUIRE(other.book.patterns.size() == 2);
    CHECK(ownPatterns(other.book).front().name == "1-5 (3-1)");
    CHECK(withOwn(other.book, *ownPatternFrom("1 5 (3 1)")).book.patterns.size() == 2);
    CHECK(named(other.book, "1-5 (3-1)")->own);
    CHECK(named(other.book, "1-9") == nullptr);
}

TEST_CASE("An own shape of many notes is laid evenly on quarters of the beat", "[own]")
{
    // By count: half a bar of 4/4 has two beats, so eight quarters of a beat, each a
    // semiquaver.
    Pattern const own = *ownPatternFrom("1-5-8-9-10-8");
    music::Length const half{{1, 2}};
    auto const rhythms = rhythmsFor({}, own, {4, 4}, half);
    REQUIRE(rhythms.size() == 1);
    REQUIRE(rhythms.front().onsets.size() == 6);
    CHECK(rhythms.front().onsets[1] == music::Length{{1, 16}});
    // The program's book does not hurry so: there the last notes are left out.
    Pattern const notOwn = *patternFrom("1-5-8-9-10-8");
    CHECK(rhythmsFor({}, notOwn, {4, 4}, half).front().onsets.size() == 4);
}

TEST_CASE("What the book gives for some times only is anyone's own once it is typed", "[pattern]")
{
    PatternBook book;
    book.patterns.push_back(*patternFrom("1-5-8-5"));
    book.patterns.back().meters = {"4/4"};
    WithOwn const with = withOwn(book, *ownPatternFrom("1 5 8 5"));
    REQUIRE(with.book.patterns.size() == 1);
    CHECK(with.name == "1-5-8-5");
    CHECK(with.book.patterns.front().meters.empty());
    CHECK(ownPatterns(with.book).size() == 1); // and is saved with her work
}
