#include "core/files/work/versions.h"

#include "core/files/textfile.h"
#include "userfolder.h"

#include <catch2/catch.hpp>

#include <fstream>

using keeping::UserFolder;

TEST_CASE("The last ten versions are kept, the newest first", "[keeping]")
{
    UserFolder const user;
    auto const folder = files::versionsFolder(user.path(), "/tunes/The Weir.sallow");
    CHECK(files::versionsIn(folder).empty());
    for (int i = 10; i < 24; ++i)
        REQUIRE(files::keepVersion(folder, "2026-03-01T18:22:" + std::to_string(i) + ".000",
                                   i != 20, "document " + std::to_string(i)));
    auto const versions = files::versionsIn(folder);
    REQUIRE(versions.size() == 10);
    CHECK(versions.front().when == "2026-03-01T18:22:23.000");
    CHECK(*files::readTextFile(versions.front().file) == "document 23");
    CHECK(*files::readTextFile(versions.back().file) == "document 14");
    CHECK_FALSE(versions[3].saved); // that of second 20
    CHECK(versions[2].saved);
}

TEST_CASE("Saving twice without a change makes one version", "[keeping]")
{
    UserFolder const user;
    REQUIRE(files::keepVersion(user.at("v"), "2026-03-01T10:00:00.000", true, "same"));
    REQUIRE(files::keepVersion(user.at("v"), "2026-03-01T10:05:00.000", true, "same"));
    CHECK(files::versionsIn(user.at("v")).size() == 1);
}

TEST_CASE("A clock that is set back does not hide the newest version", "[keeping]")
{
    UserFolder const user;
    REQUIRE(files::keepVersion(user.at("v"), "2026-03-01T10:00:00.000", true, "first"));
    REQUIRE(files::keepVersion(user.at("v"), "2026-02-01T10:00:00.000", true, "second"));
    auto const versions = files::versionsIn(user.at("v"));
    REQUIRE(versions.size() == 2);
    CHECK(*files::readTextFile(versions.front().file) == "second");
}

TEST_CASE("Each piece of work has versions of its own", "[keeping]")
{
    CHECK(files::versionsFolder("v", "/a/Weir.sallow") !=
          files::versionsFolder("v", "/b/Weir.sallow"));
    CHECK(files::versionsFolder("v", "/a/Weir.sallow") ==
          files::versionsFolder("v", "/a/Weir.sallow"));
    CHECK(files::versionsFolder("v", "/a/../../x:y*.sallow").parent_path() == "v");
}
