// Words to sing under the tune, as engravers set them [gould11].

#include "core/files/abc/read.h"
#include "core/sheet/sheet.h"
#include "tests/sheet/boxes.h"
#include "tests/sheet/examples.h"
#include "tests/sheet/measure.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using sheet::Words;

namespace {

sheet::Page pageOf(std::string const& words, sheet::MusicFont const& font)
{
    std::string const abc = "X:1\nT:Sung\nM:4/4\nL:1/4\nK:G\nGABc|d2B2|G4|]\n" + words;
    auto const tune = files::readAbc(abc, files::abcTunes(abc)->front(), "t");
    REQUIRE(tune);
    return sheet::leadSheet(*tune, font, {}).pages.front();
}

std::vector<Words> saying(sheet::Page const& page, std::string const& text)
{
    std::vector<Words> found;
    for (Words const& words : measure::allOf<Words>(page))
        if (words.text == text) found.push_back(words);
    return found;
}

} // namespace

TEST_CASE("Syllables of a word are joined by hyphens, none on a bar line", "[sheet][verses]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    sheet::Page const page = pageOf("w: wil-low by wa- ter flows now\n", *font);
    for (char const* syllable : {"wil", "low", "by", "wa", "ter", "flows", "now"}) {
        CAPTURE(syllable);
        REQUIRE(saying(page, syllable).size() == 1);
    }
    auto const hyphens = saying(page, "-");
    CHECK(hyphens.size() >= 2);
    double const first = saying(page, "wil").front().at.x;
    CHECK(std::any_of(hyphens.begin(), hyphens.end(), [&](Words const& hyphen) {
        return hyphen.at.x > first && hyphen.at.x < saying(page, "low").front().at.x;
    }));
    double const baseline = saying(page, "wil").front().at.y;
    for (Words const& hyphen : hyphens) CHECK(hyphen.at.y == Approx(baseline));
    for (sheet::Line const& line : measure::allOf<sheet::Line>(page)) {
        if (line.from.x != line.to.x) continue; // a bar line or a stem
        for (Words const& hyphen : hyphens) CHECK(std::abs(line.from.x - hyphen.at.x) > 0.3);
    }
}

TEST_CASE("A syllable that is sung on has a line to its last note", "[sheet][verses]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    sheet::Page const page = pageOf("w: flow _ _ _ down * here\n", *font);
    double const baseline = saying(page, "flow").front().at.y;
    double const from = saying(page, "flow").front().at.x;
    auto const lines = measure::allOf<sheet::Line>(page);
    CHECK(std::any_of(lines.begin(), lines.end(), [&](sheet::Line const& line) {
        return std::abs(line.from.y - baseline) < 0.01 && line.from.x > from &&
               line.to.x - line.from.x > 10;
    }));
}

TEST_CASE("Verses stand below one another, in their order", "[sheet][verses]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    sheet::Page const page = pageOf("w: one a b c d e f\nw: two a b c d e f\n", *font);
    CHECK(saying(page, "one").front().at.y < saying(page, "two").front().at.y);
}

TEST_CASE("Between the staves of a grand staff no bar line runs through a syllable",
          "[sheet][verses]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    std::string const abc =
        "X:1\nT:Sung\nM:3/4\nL:1/4\nK:G\nD|\"G\"G2A|\"C\"c2B|\"D\"A2D|\"G\"G3|]\n"
        "w: O bring through strength thought breadth lengths stretched "
        "straight\n";
    auto const tune = files::readAbc(abc, files::abcTunes(abc)->front(), "t");
    REQUIRE(tune);
    auto const document = sheet::arrangementSheet(example::arrangementOf(*tune), *font, {});
    std::set<std::string> const sung{"O",       "bring",   "through",   "strength", "thought",
                                     "breadth", "lengths", "stretched", "straight"};
    int words = 0;
    int crossed = 0;
    for (sheet::Page const& page : document.pages)
        for (sheet::Words const& syllable : measure::allOf<Words>(page)) {
            if (sung.count(syllable.text) == 0) continue;
            ++words;
            sheet::Box const box = measure::BoxOf{*font}(syllable);
            for (sheet::Line const& line : measure::allOf<sheet::Line>(page))
                crossed += line.from.x == line.to.x && line.from.y < box.top &&
                           line.to.y > box.bottom && line.from.x > box.left - 0.2 &&
                           line.from.x < box.right + 0.2;
        }
    CHECK(words >= 8);
    CHECK(crossed == 0);
}
