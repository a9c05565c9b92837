#include "core/files/abc/read.h"
#include "core/files/abc/write.h"
#include "core/files/musicxml/read.h"
#include "core/files/musicxml/write.h"
#include "core/files/spoken.h"
#include "tests/exchange/outside.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>
#include <pugixml.hpp>

using notation::Kind;

namespace {

perform::Slowing const half{0.5, 4};

// Invented; the last note is plucked on beat 3, so that the slowing begins on beat 3 of bar 3.
std::string airOf(std::string const& before, std::string const& after)
{
    return "X:1\nT:Reed Bank\nR:air\nM:4/4\nL:1/4\nQ:1/4=60\nK:G\n" + before +
           "\"G\"GABc|\"C\"cBAG|\"D\"AGFA|\"G\"B2G2" + after;
}
arrange::Arrangement once()
{
    return scenario::proposed(scenario::briefFor(airOf("", "|]\n"))).arrangement;
}
arrange::Arrangement twice()
{
    return scenario::proposed(scenario::briefFor(airOf("|:", ":|\n"))).arrangement;
}

bool has(std::string const& text, std::string_view part)
{
    return text.find(part) != std::string::npos;
}

// The bar in which words stand, and where in it; none: they are not there.
std::optional<std::pair<std::size_t, music::Rational>> placeOf(tune::Tune const& tune,
                                                               std::string_view words)
{
    for (tune::BarIndex const i : tune.bars.indices())
        for (tune::Annotation const& one : tune.bars[i].annotations)
            if (one.text == words) return std::pair{i, one.at.wholes};
    return std::nullopt;
}

} // namespace

TEST_CASE("MusicXML says rit. in italics where the slowing begins, and stays valid",
          "[musicxml][slowing]")
{
    auto const piece = once();
    CHECK_FALSE(has(files::musicXml(piece, Kind::Arrangement), "rit."));
    CHECK_FALSE(has(files::musicXml(piece, Kind::Lead, half), "rit."));
    for (Kind kind : {Kind::Arrangement, Kind::Patterns}) {
        std::string const score = files::musicXml(piece, kind, half);
        pugi::xml_document document;
        REQUIRE(document.load_string(score.c_str()));
        CHECK(document
                  .select_nodes("//measure[@number='3']/direction[@placement='above']"
                                "/direction-type/words[@font-style='italic'][.='rit.']")
                  .size() == 1);
        CHECK(document.select_nodes("//sound[@tempo]").size() == 1); // the tune's own
        outside::TemporaryFile const file(score, ".musicxml");
        if (auto const answer = outside::validated(file.path(), "musicxml.xsd")) {
            INFO(answer->text);
            CHECK(answer->status == 0);
        }
        auto const back = files::readMusicXml(score, "score");
        REQUIRE(back);
        CHECK(placeOf(*back, "rit.") == std::pair{std::size_t{2}, music::Rational(1, 2)});
    }
    CHECK(has(files::musicXml(twice(), Kind::Arrangement, half), ">rit. last time<"));
}

TEST_CASE("ABC of both hands says rit. where the slowing begins", "[abc][slowing]")
{
    CHECK_FALSE(has(files::abcOfArrangement(once()), "rit."));
    std::string const abc = files::abcOfArrangement(once(), half);
    CAPTURE(abc);
    CHECK(has(abc, "\"^rit.\""));
    CHECK(has(files::abcOfArrangement(twice(), half), "\"^rit. last time\""));
    auto const back = files::readAbc(abc, files::abcTunes(abc, "").value().at(0), "");
    REQUIRE(back);
    CHECK(placeOf(*back, "rit.") == std::pair{std::size_t{2}, music::Rational(1, 2)});
}

TEST_CASE("The sheet in words says from which beat to slow down", "[spoken][slowing]")
{
    auto const said = [](arrange::Arrangement const& piece, perform::Slowing slowing,
                         Kind kind = Kind::Arrangement) {
        std::string const text = files::spokenText(piece, kind, slowing);
        CHECK(has(text, "low down") ==
              has(files::spokenHtml(piece, kind, slowing), "low down"));
        return text;
    };
    CHECK_FALSE(has(said(once(), {}), "low down"));
    CHECK_FALSE(has(said(once(), half, Kind::Lead), "low down"));
    CHECK(has(said(once(), half), "Bar 3, D. Slow down from beat 3 to the end. Right hand: "));
    CHECK(has(said(once(), {0.7, 2}), "Bar 4, G. Slow down from here to the end. "));
    CHECK(has(said(twice(), half), "The last time, slow down from beat 3 to the end. "));
    auto const set = perform::setOf("", {once(), twice()});
    std::string const both = files::spokenText(set, Kind::Arrangement, half);
    CHECK(both.find("low down") == both.rfind("low down"));
    CHECK(both.find("low down") > both.find("Tune 2 of 2"));
}
