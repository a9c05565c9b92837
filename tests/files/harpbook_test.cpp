#include "core/files/work/document.h"
#include "core/files/abc/read.h"
#include "core/files/tables/harpbook.h"
#include "tests/places.h"

#include <catch2/catch.hpp>

using namespace files;
using harp::HarpModel;

namespace {

Tables const& shelf()
{
    static Tables const tables = *readTables(places::shared());
    return tables;
}

HarpModel willow()
{
    HarpModel model = harp::modelOf(*harpFrom(shelf(), "floor30"));
    model = withName(std::move(model), "Willow, thirty");
    model = withLever(std::move(model), 3, false);
    model = withGap(std::move(model), 5, 15.25);
    model.naming = harp::Naming::HarpOctave;
    return model;
}

} // namespace

TEST_CASE("A book of harps reads back as it was written", "[harpbook]")
{
    std::vector<HarpModel> const harps{
        willow(), withName(harp::modelOf(*harpFrom(shelf(), "lap22", "C", "CF")), "Small one")};
    std::string const text = harpBookText(harps);
    auto const again = readHarpBook(text, "harps.json");
    REQUIRE(again);
    CHECK(*again == harps);
    CHECK(harpBookText(*again) == text);
}

TEST_CASE("A harp that is kept again takes the place of the one with its name", "[harpbook]")
{
    auto harps = withHarp({}, willow());
    harps = withHarp(std::move(harps), withStrings(willow(), 31));
    REQUIRE(harps.size() == 1);
    CHECK(harps.front().strings() == 31);
    CHECK(withHarp(harps, withName(willow(), "Another")).size() == 2);
}

TEST_CASE("A damaged book of harps is refused with its line", "[harpbook]")
{
    std::string const good = harpBookText({willow()});
    auto const damagedAt = [&](std::string const& from, std::string const& to) {
        std::string text = good;
        auto const at = text.find(from);
        REQUIRE(at != std::string::npos);
        text.replace(at, from.size(), to);
        auto const read = readHarpBook(text, "h.json");
        REQUIRE_FALSE(read);
        CHECK(read.error().code == base::FaultCode::Malformed);
        return read.error().place;
    };
    CHECK(damagedAt("\"sallow_harps\": 1", "\"sallow_harps\": 2") == "h.json, line 2");
    CHECK(damagedAt("\"G2\"", "\"H2\"") == "h.json, line 7");
    CHECK(damagedAt("\"strings\": 30", "\"strings\": 3") == "h.json, line 8");
    CHECK(damagedAt("15.25", "1500") == "h.json, line 4");
    CHECK(damagedAt("\"tuning\"", "\"tunning\"") == "h.json, line 4");
    CHECK_FALSE(readHarpBook("[1, 2", "h.json"));
    CHECK_FALSE(readHarpBook("[1, 2]", "h.json"));
    CHECK_FALSE(readHarpBook("", "h.json"));
    auto const twice = readHarpBook(harpBookText({willow(), willow()}), "h.json");
    REQUIRE_FALSE(twice);
    CHECK(twice.error().detail.find("second time") != std::string::npos);
}

TEST_CASE("A harp of one's own goes before the tables, with its own tuning and levers",
          "[harpbook]")
{
    Tables tables = shelf();
    tables.ownHarps = {willow()};
    auto const harp = harpFrom(tables, "willow-thirty");
    REQUIRE(harp);
    CHECK(*harp == *harpOf(willow()));
    auto const inC = harpFrom(tables, "willow-thirty", "C");
    REQUIRE(inC);
    CHECK(inC->tuning() == music::PitchName{music::Letter::C, 0});
    CHECK_FALSE(inC->string(3).hasLever);
    auto const full = harpFrom(tables, "willow-thirty", "", "full");
    REQUIRE(full);
    CHECK(full->string(3).hasLever);
    CHECK(harpFrom(tables, "floor34")->count() == 34);
}

TEST_CASE("A saved arrangement keeps a harp of one's own whole", "[harpbook]")
{
    std::string const abc = "X:4\nT:The Sluice\nM:3/4\nL:1/4\nQ:1/4=80\nK:G\n"
                            "\"G\"GBd|\"C\"ceg|\"D\"fed|\"G\"g3|]\n";
    SavedWork const work{abc,
                         {*readAbc(abc, abcTunes(abc)->front(), "test"), *harpOf(willow()),
                          *handFrom(shelf(), "small"), *levelFrom(shelf(), 2), shelf().book,
                          *styleFrom(shelf(), "open")}};
    // Read where nobody knows the harp.
    auto const again = readDocument(documentText(work, shelf()), shelf(), "a.sallow");
    REQUIRE(again);
    CHECK(again->brief.harp == work.brief.harp);
    Tables withIt = shelf();
    withIt.ownHarps = {willow()};
    CHECK(documentText(work, withIt) == documentText(work, shelf()));
}

TEST_CASE("A saved arrangement keeps how strings are named", "[harpbook]")
{
    std::string const abc = "X:4\nT:The Sluice\nM:3/4\nL:1/4\nQ:1/4=80\nK:G\n\"G\"GBd|]\n";
    SavedWork const work{abc,
                         {*readAbc(abc, abcTunes(abc)->front(), "test"),
                          withNaming(*harpFrom(shelf(), "lap22"), harp::Naming::FromTop),
                          *handFrom(shelf(), "small"), *levelFrom(shelf(), 2), shelf().book,
                          *styleFrom(shelf(), "open")}};
    auto const again = readDocument(documentText(work, shelf()), shelf(), "a.sallow");
    REQUIRE(again);
    CHECK(again->brief.harp == work.brief.harp);
}
