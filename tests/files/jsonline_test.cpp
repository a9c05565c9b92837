#include "core/files/jsonline.h"

#include <catch2/catch.hpp>

using files::lineOf;

TEST_CASE("A value of a JSON text is found by its line", "[jsonline]")
{
    constexpr std::string_view json = "{\n"
                                      " \"a\": [1,\n"
                                      "  {\"b\": \"}],\\\"\",\n"
                                      "   \"c\": [],\n"
                                      "   \"d\": true},\n"
                                      "  3\n"
                                      " ], \"e\":\n"
                                      " -1.5e3\n"
                                      "}\n";
    CHECK(lineOf(json, "") == 1);
    CHECK(lineOf(json, "/a") == 2);
    CHECK(lineOf(json, "/a/0") == 2);
    CHECK(lineOf(json, "/a/1") == 3);
    CHECK(lineOf(json, "/a/1/b") == 3);
    CHECK(lineOf(json, "/a/1/c") == 4);
    CHECK(lineOf(json, "/a/1/d") == 5);
    CHECK(lineOf(json, "/a/2") == 6);
    CHECK(lineOf(json, "/e") == 8);
}

TEST_CASE("Where a step leads nowhere the line before it counts", "[jsonline]")
{
    constexpr std::string_view json = "{\n \"a\": [1,\n 2]\n}";
    CHECK(lineOf(json, "/b") == 1);
    CHECK(lineOf(json, "/a/7") == 2);
    CHECK(lineOf(json, "/a/1/x") == 3);
    CHECK(lineOf("", "/a") == 1);
    CHECK(lineOf("{\"a", "/a/b") == 1);
}
