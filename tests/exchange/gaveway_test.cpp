// What gives way to a harp is told on the page and in every file that shows the notes; the lead
// sheet keeps the tune as it is written.

#include "core/files/abc/write.h"
#include "core/files/musicxml/write.h"
#include "core/files/spoken.h"
#include "core/sheet/sheet.h"
#include "tests/proposal/scenario.h"
#include "tests/sheet/measure.h"

#include <catch2/catch.hpp>
#include <pugixml.hpp>

#include <algorithm>

namespace {

// A lower neighbour of D in bars 1 and 3 whose lever nobody can flip in time. Invented.
arrange::Arrangement arrangement()
{
    auto const proposal = scenario::proposed(scenario::briefFor(
        "X:1\nT:The Lowered Gate\nM:4/4\nL:1/8\nQ:1/4=100\nK:G\n"
        "\"G\"dcd^c dBGB|\"C\"e2cB \"D\"A2f2|\"G\"dcd^c dBGB|\"D\"A2c2 \"G\"G4|]\n",
        2));
    REQUIRE(proposal.snags.size() == 2);
    return proposal.arrangement;
}

constexpr char const* words = "C♯5 played plain, as C5";

std::vector<std::string> wordsOn(sheet::Document const& document)
{
    std::vector<std::string> out;
    for (sheet::Page const& page : document.pages)
        for (sheet::Words const& one : measure::allOf<sheet::Words>(page))
            out.push_back(one.text);
    return out;
}

auto times(std::vector<std::string> const& all, std::string const& text)
{
    return std::count(all.begin(), all.end(), text);
}

std::size_t count(std::string const& score, std::string const& path)
{
    pugi::xml_document document;
    REQUIRE(document.load_buffer(score.data(), score.size()));
    return document.select_nodes(path.c_str()).size();
}

} // namespace

TEST_CASE("A note that gives way has a star on the sheet and a line at its foot", "[gaveway]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    auto const a = arrangement();
    for (auto const& document :
         {sheet::arrangementSheet(a, *font, {}), sheet::patternSheet(a, *font, {})}) {
        auto const all = wordsOn(document);
        CHECK(times(all, "*") == 2);
        CHECK(times(all, std::string("* Bars 1, 3: ") + words + ".") == 1);
    }
}

TEST_CASE("The lead sheet keeps the tune as it is written", "[gaveway]")
{
    auto const a = arrangement();
    REQUIRE(a.asWritten);
    CHECK(writtenTune(a).bars[0].notes[3].pitches.front().alter == 1);
    CHECK(a.tune.bars[0].notes[3].pitches.front().alter == 0);
    auto const lead = notation::of(a, notation::Kind::Lead);
    CHECK(lead.bars[0].upper.notes[3].pitches.front().alter == 1);
    CHECK(lead.bars[0].gaveWay.empty());
    auto const font = measure::musicFont();
    if (!font) return;
    CHECK(times(wordsOn(sheet::leadSheet(writtenTune(a), *font, {})), "*") == 0);
}

TEST_CASE("Scores, ABC and the sheet in words say what gives way, each at its note", "[gaveway]")
{
    auto const a = arrangement();
    std::string const path = std::string("//direction//words[.='") + words + "']";
    CHECK(count(files::musicXml(a, notation::Kind::Arrangement), path) == 2);
    CHECK(count(files::musicXml(a, notation::Kind::Patterns), path) == 2);
    CHECK(count(files::musicXml(a, notation::Kind::Lead), path) == 0);
    CHECK(files::abcOfArrangement(a).find(words) != std::string::npos);
    CHECK(files::spokenText(a, notation::Kind::Arrangement).find("For the levers: ") !=
          std::string::npos);
}
