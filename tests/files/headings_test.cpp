// The list of a large tunebook: what the heads of its tunes say.

#include "core/files/abc/headings.h"

#include <catch2/catch.hpp>

using files::tuneHeadings;

namespace {

std::vector<files::AbcEntry> entriesOf(std::string const& text)
{
    return *files::abcTunes(text);
}

} // namespace

TEST_CASE("A tune's heading has its own fields, else the file's", "[abc][headings]")
{
    std::string const book = "R:reel\nM:C\n\n"
                             "X:1\nT:One\nK:Ador clef=treble\nABcd|\n\n"
                             "X:2\nT:Two\nR:jig % quick\nM:6/8\nK:D mix\nABc|\nK:G\nABc|\n";
    auto const heads = tuneHeadings(book, entriesOf(book));
    REQUIRE(heads.size() == 2);
    CHECK(heads[0].kind == "reel");
    CHECK(heads[0].meter == "C");
    CHECK(heads[0].key == "Ador");
    CHECK(heads[1].kind == "jig");
    CHECK(heads[1].meter == "6/8");
    CHECK(heads[1].key == "D mix"); // the first one: later ones change the key within the tune
}

TEST_CASE("A book without a head of its own gives nothing to its tunes", "[abc][headings]")
{
    std::string const book = "X:1\nT:One\nK:G bass\nABcd|\n";
    auto const heads = tuneHeadings(book, entriesOf(book));
    REQUIRE(heads.size() == 1);
    CHECK(heads[0].kind.empty());
    CHECK(heads[0].meter.empty());
    CHECK(heads[0].key == "G");
    CHECK(tuneHeadings("", {}).empty());
}

TEST_CASE("A glance counts whole bars, sees chords, and says why a tune cannot be read",
          "[abc][headings]")
{
    std::string const book = "X:1\nT:One\nM:4/4\nL:1/4\nK:G\nD|\"G\"GABc|\"D\"d4|]\n\n"
                             "X:2\nT:Two\nM:4/4\nL:1/4\nK:G\nGABc|\n\n"
                             "X:3\nT:Torn\nK:G\n\"Gxyz7\"GABc|\n";
    auto const entries = entriesOf(book);
    REQUIRE(entries.size() == 3);
    auto const one = files::glanceAt(book, entries[0], "book.abc");
    CHECK(one.bars == 2); // the pick-up is not counted
    CHECK(one.chords);
    CHECK(one.tune->title == "One");
    CHECK_FALSE(files::glanceAt(book, entries[1], "book.abc").chords);
    auto const torn = files::glanceAt(book, entries[2], "book.abc");
    CHECK_FALSE(torn.tune);
    CHECK(torn.unreadable.find("Gxyz7") != std::string::npos);
}
