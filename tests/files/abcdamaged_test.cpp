#include "core/files/abc/read.h"

#include <catch2/catch.hpp>

using namespace files;
using base::FaultCode;

namespace {

std::optional<base::Fault> faultOf(std::string const& text)
{
    auto const entries = abcTunes(text, "t.abc");
    if (!entries) return entries.error();
    auto const tune = readAbc(text, entries->front(), "t.abc");
    if (!tune) return tune.error();
    return std::nullopt;
}

} // namespace

TEST_CASE("Damaged ABC is refused by code and place", "[abc][damaged]")
{
    std::string const head = "X:1\nM:4/4\nL:1/8\nK:C\n";
    auto const [text, code, place] = GENERATE_COPY(table<std::string, FaultCode, std::string>({
        {"", FaultCode::FileEmpty, "t.abc"},
        {" \n\t\r\n", FaultCode::FileEmpty, "t.abc"},
        {"\xEF\xBB\xBF", FaultCode::FileEmpty, "t.abc"},
        {std::string("\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0", 18), FaultCode::FileBinary, "t.abc"},
        {"just words\n", FaultCode::NoTune, "t.abc"},
        {"X:1\nT:no key\n", FaultCode::NoTune, "t.abc, line 1"},
        {head, FaultCode::NoNotes, "t.abc, line 1"},
        {head + "z8|x8|\n", FaultCode::NoNotes, "t.abc, line 1"},
        {"X:1\nM:4/4\nK:Hmaj\nC|\n", FaultCode::BadKey, "t.abc, line 3, column 1"},
        {"X:1\nM:4/0\nK:C\nC|\n", FaultCode::BadMeter, "t.abc, line 2, column 1"},
        {"X:1\nL:-1/8\nK:C\nC|\n", FaultCode::BadLength, "t.abc, line 2, column 1"},
        {head + "CD [K:zz]E|\n", FaultCode::BadKey, "t.abc, line 5, column 4"},
        {head + "CD|\nEF [M:3/4]G|\n", FaultCode::MeterMidBar, "t.abc, line 6, column 4"},
        {head + "CDEF\nM:3/4\nG|\n", FaultCode::MeterMidBar, "t.abc, line 6, column 1"},
        {head + "\"Gxyz7\"C|\n", FaultCode::BadChord, "t.abc, line 5, column 1"},
        {head + "C \"Gxz\"D|\n", FaultCode::BadChord, "t.abc, line 5, column 3"},
        {head + "é \"H7\"D|\n", FaultCode::BadChord, "t.abc, line 5, column 3"},
        {head + "C99999999999|\n", FaultCode::BadLength, "t.abc, line 5, column 1"},
        {head + "C D/8191|\n", FaultCode::BadLength, "t.abc, line 5, column 3"},
        {head + "[CE]9999|\n", FaultCode::BadLength, "t.abc, line 5, column 1"},
        {head + "Z501|\n", FaultCode::BadLength, "t.abc, line 5, column 1"},
        {head + "C,,,,,,,,,|\n", FaultCode::BadNote, "t.abc, line 5, column 1"},
        {head + "c''''''''|\n", FaultCode::BadNote, "t.abc, line 5, column 1"},
        {head + "(9:9:999999CDE|\n", FaultCode::BadTuplet, "t.abc, line 5, column 1"},
        {head + "(1CDE|\n", FaultCode::BadTuplet, "t.abc, line 5, column 1"},
        {head + "|:C|[1-999999999 D:|\n", FaultCode::BadRepeat, "t.abc, line 5, column 5"},
        {head + "C|0 D:|\n", FaultCode::BadRepeat, "t.abc, line 5, column 2"},
    }));
    CAPTURE(text);
    auto const fault = faultOf(text);
    REQUIRE(fault);
    CHECK(fault->code == code);
    CHECK(fault->place == place);
}

TEST_CASE("Slips that leave the tune readable are said and read over", "[abc][damaged]")
{
    std::string const head = "X:1\nM:4/4\nL:1/8\nQ:1/4=0\nK:C\n";
    for (std::string const line :
         {"{abc d|", "!trill A|", "\"Em A|", "[CE A|", "A)B)))c(((d|", "A>>>>>>>B|", ">A|",
          "-A|", "A0B|", "A;B@C|", ":|A|", "(3AB|c|", "[]A|", "^|A|", "A[r:remark]B|", "A&A&A|",
          "[K:]A|"}) {
        CAPTURE(line);
        std::string const text = head + line + "\n";
        auto const tune = readAbc(text, abcTunes(text)->front(), "t.abc");
        REQUIRE(tune);
        CHECK(hasNotes(*tune));
        CHECK_FALSE(tune->said.empty());
    }
}

TEST_CASE("Remarks on a wholly damaged tune stay few", "[abc][damaged]")
{
    std::string text = "X:1\nK:C\nA|\n";
    for (int i = 0; i < 5000; ++i) text += "? A|\n";
    auto const tune = readAbc(text, abcTunes(text)->front(), "t.abc");
    REQUIRE(tune);
    CHECK(tune->said.size() <= 101);
}

TEST_CASE("A tune without end is refused before it fills the memory", "[abc][damaged]")
{
    std::string const head = "X:1\nM:4/4\nL:1/8\nK:C\n";
    CHECK(faultOf(head + std::string(300'000, 'A'))->code == FaultCode::TuneTooLong);
    std::string words;
    for (int i = 0; i < 60'000; ++i) words += "\"a\"";
    CHECK(faultOf(head + words + "A|")->code == FaultCode::TuneTooLong);
}

TEST_CASE("Long runs of one sign are read in time that grows with the line", "[abc][damaged]")
{
    std::string const head = "X:1\nM:4/4\nL:1/8\nK:C\nA";
    for (char sign : std::string("{}[]()\"!+&^_=|:-<>.,'/~yzxZ\\ %$`"))
        for (std::string const& last : {std::string(), std::string("A|")}) {
            CAPTURE(sign, last);
            std::string const text = head + std::string(200'000, sign) + last + "\n";
            auto const fault = faultOf(text);
            if (fault) CHECK(fault->place.starts_with("t.abc, line 5"));
        }
}
