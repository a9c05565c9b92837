#include "core/files/tables/patternfile.h"

#include "core/pattern/own.h"

#include <catch2/catch.hpp>

using files::patternFileText;
using files::readPatternFile;
using pattern::ownPatternFrom;

TEST_CASE("Own patterns come back from their file with fingers and notes", "[patternfile]")
{
    std::vector<pattern::Pattern> own{*ownPatternFrom("1 5 8 10 8"),
                                      *ownPatternFrom("1-5-8 (4-3-1)"),
                                      *ownPatternFrom("1~5~10"), *ownPatternFrom("1-low5")};
    own.front().feel = "For \"slow\" airs: \u00e9.";
    auto const again = readPatternFile(patternFileText(own), "mine.json");
    REQUIRE(again);
    CHECK(*again == own);
}

TEST_CASE("A damaged file of patterns is refused with its place", "[patternfile]")
{
    struct Row {
        std::string text;
        base::FaultCode code;
        std::string place;
    };
    Row const row = GENERATE(
        Row{"", base::FaultCode::Malformed, "mine.json, line 1"},
        Row{"{\n \"sallow_patterns\": 1,\n \"patterns\": [", base::FaultCode::Malformed,
            "mine.json, line 3"},
        Row{"{\"sallow_patterns\": 2, \"patterns\": []}", base::FaultCode::Malformed,
            "mine.json"},
        Row{"{\"patterns\": []}", base::FaultCode::Malformed, "mine.json"},
        Row{R"({"sallow_patterns": 1, "patterns": [{"pattern": "1-5"}, {"pattern": "1-x"}]})",
            base::FaultCode::BadPattern, "mine.json, pattern 2, note 2"},
        Row{R"~({"sallow_patterns": 1, "patterns": [{"pattern": "1-5-8 (1-2-4)"}]})~",
            base::FaultCode::PatternFingers, "mine.json, pattern 1, note 2"});
    CAPTURE(row.text);
    auto const read = readPatternFile(row.text, "mine.json");
    REQUIRE(!read);
    CHECK(read.error().code == row.code);
    CHECK(read.error().place == row.place);
}
