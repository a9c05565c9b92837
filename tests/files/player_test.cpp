#include "core/files/work/player.h"

#include "tests/places.h"

#include <catch2/catch.hpp>

using namespace files;

namespace {

Tables const& shelf()
{
    static Tables const tables = *readTables(places::shared());
    return tables;
}

Player player(char const* name, char const* harp, char const* hand, int level)
{
    return {name, *harpFrom(shelf(), harp), *handFrom(shelf(), hand), *levelFrom(shelf(), level)};
}

proposal::Brief standing()
{
    return {{},
            *harpFrom(shelf(), "floor34"),
            *handFrom(shelf(), "medium"),
            *levelFrom(shelf(), 3),
            shelf().book,
            *styleFrom(shelf(), "plain")};
}

} // namespace

TEST_CASE("Pupils read back with harp, hand and level", "[document]")
{
    std::vector<Player> const pupils{player("Mira", "lap26", "small", 1),
                                     player("Oskar \"O.\"", "floor36", "large", 4)};
    auto const again = readPupils(pupilsText(pupils, shelf()), shelf(), "pupils.json");
    REQUIRE(again);
    CHECK(again->players == pupils);
    CHECK(again->leftOut.empty());
}

TEST_CASE("A pupil whose harp is gone is named and costs no other", "[document]")
{
    std::string text = pupilsText({player("Mira", "lap26", "small", 1),
                                   player("Oskar", "floor36", "large", 4)},
                                  shelf());
    text.replace(text.find("lap26"), 5, "lap99");
    auto const read = readPupils(text, shelf(), "pupils.json");
    REQUIRE(read);
    CHECK(read->players.size() == 1);
    CHECK(read->leftOut == std::vector<std::string>{"Mira"});
    CHECK_FALSE(readPupils(text.substr(0, 60), shelf(), "pupils.json"));
    text.replace(text.find("\"sallow_pupils\": 1"), 18, "\"sallow_pupils\": 2");
    CHECK(readPupils(text, shelf(), "x").error().code == base::FaultCode::FileUnreadable);
}

TEST_CASE("A pupil of the same name takes the place of the one before", "[document]")
{
    std::vector<Player> list{player("Mira", "lap26", "small", 1)};
    list = withPupil(std::move(list), player("Oskar", "floor36", "large", 4));
    list = withPupil(std::move(list), player("Mira", "floor34", "small", 2));
    REQUIRE(list.size() == 2);
    CHECK(list[0].level.number == 2);
}

TEST_CASE("What is standing reads back part by part", "[document]")
{
    proposal::Brief mine = standing();
    mine.harp = *harpFrom(shelf(), "lap26", "C", "CF");
    mine.hand = *handFrom(shelf(), "large");
    mine.level = *levelFrom(shelf(), 5);
    mine.weights = *styleFrom(shelf(), "open");
    mine.key = proposal::AsWritten{};
    mine.right = proposal::RightHand::Closes;
    std::string text = standingText(mine, shelf());
    proposal::Brief again = withStanding(standing(), text, shelf());
    CHECK(again.harp == mine.harp);
    CHECK(again.hand == mine.hand);
    CHECK(again.level == mine.level);
    CHECK(again.weights.style == "open");
    CHECK(again.key == mine.key);
    CHECK(again.right == mine.right);
    // A harp that is no longer there leaves the rest.
    text.replace(text.find("lap26"), 5, "lap99");
    again = withStanding(standing(), text, shelf());
    CHECK(again.harp.id() == "floor34");
    CHECK(again.level.number == 5);
    for (char const* damaged : {"", "{", "[]", "{\"level\": \"x\"}", "{\"harp\": 3}"})
        CHECK(withStanding(standing(), damaged, shelf()).harp == standing().harp);
}
