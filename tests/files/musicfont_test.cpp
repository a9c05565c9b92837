#include "core/files/tables/tables.h"
#include "core/sheet/glyphs.h"

#include "core/files/textfile.h"
#include "tests/places.h"

#include <catch2/catch.hpp>

#include <string>

using namespace files;
using sheet::MusicFont;

namespace {

// Small metadata in the form of SMuFL 1.4, figures made up.
constexpr std::string_view smallFont = R"({
  "fontName": "Example",
  "fontVersion": 1.0,
  "engravingDefaults": {"staffLineThickness": 0.13, "textFontFamily": ["Example Text"]},
  "glyphAdvanceWidths": {"noteheadBlack": 1.18, "somethingElse": 9},
  "glyphBBoxes": {
    "noteheadBlack": {"bBoxNE": [1.18, 0.5], "bBoxSW": [0.0, -0.5]}
  },
  "glyphsWithAnchors": {"noteheadBlack": {"stemUpSE": [1.18, 0.168]}}
})";

std::string damaged(std::string_view from, std::string_view to)
{
    std::string json(smallFont);
    return json.replace(json.find(from), from.size(), to);
}

} // namespace

TEST_CASE("Font metadata gives boxes, advances, anchors and engraving by code point", "[font]")
{
    auto const font = musicFontFrom(smallFont);
    REQUIRE(font);
    char32_t const head = 0xE0A4; // noteheadBlack, SMuFL 1.4
    CHECK(font->name == "Example");
    CHECK(font->boxes.at(head).right == 1.18);
    CHECK(font->boxes.at(head).bottom == -0.5);
    CHECK(font->advances.at(head) == 1.18);
    CHECK(font->advances.size() == 1);
    CHECK(font->anchors.at(head).at("stemUpSE") == sheet::Point{1.18, 0.168});
    CHECK(font->engraving.at("staffLineThickness") == 0.13);
    CHECK(font->engraving.size() == 1);
}

TEST_CASE("Damaged font metadata is refused with its place", "[font]")
{
    struct Row {
        std::string json;
        std::string_view place;
    };
    std::vector<Row> const rows{
        {"", "music font metadata, line 1"},
        {damaged("1.18,", "1.18,,"), "music font metadata, line 5"},
        {damaged("\"glyphBBoxes\"", "\"boxes\""), "music font metadata, glyphBBoxes"},
        {damaged("[1.18, 0.5]", "[1.18]"), "music font metadata, glyphBBoxes"},
        {damaged("\"Example\"", "1"), "music font metadata, fontName"}};
    for (Row const& row : rows) {
        auto const font = musicFontFrom(row.json);
        CAPTURE(row.json);
        REQUIRE(!font);
        CHECK(font.error().code == base::FaultCode::TableMalformed);
        CHECK(font.error().place == row.place);
    }
}

TEST_CASE("Glyphs of digits stand in order", "[font]")
{
    // SMuFL 1.4: time signatures U+E080, tuplets U+E880, fingering U+ED10.
    CHECK(sheet::glyph::timeSig(9) == 0xE089);
    CHECK(sheet::glyph::tuplet(3) == 0xE883);
    CHECK(sheet::glyph::fingering(4) == 0xED14);
}

TEST_CASE("Every glyph that the sheets use has a box in the shipped font", "[font]")
{
    auto const json = readTextFile(places::musicFont() + "/metadata.json");
    if (!json) {
        WARN("SKIPPED: the music font's package is absent");
        return;
    }
    auto const font = musicFontFrom(*json);
    REQUIRE(font);
    for (sheet::glyph::Named const& g : sheet::glyph::all) {
        CAPTURE(std::string(g.name));
        CHECK(font->boxes.contains(g.code));
        CHECK(font->advances.contains(g.code));
    }
    // The staff line of this font is 0.13 spaces thick (its own metadata).
    CHECK(font->engraving.at("staffLineThickness") == Approx(0.13));
}
