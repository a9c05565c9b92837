#include "core/files/textfile.h"
#include "tests/places.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <regex>
#include <set>
#include <string>

namespace {

namespace fs = std::filesystem;

// Keys that a text cites in square brackets, "[trade-3.2]" or "[hk78, trade-5]".
std::set<std::string> keysCited(std::string const& text)
{
    static std::regex const brackets(R"(\[([a-z0-9.\-]+(, [a-z0-9.\-]+)*)\])");
    static std::regex const key(
        R"((trade|science|own|smufl|iso)-[a-z0-9.]+|[a-z]{2,}[0-9]{2})");
    std::set<std::string> keys;
    for (std::sregex_iterator group(text.begin(), text.end(), brackets), end; group != end;
         ++group) {
        std::string const inside = group->str(1);
        std::string rest = inside;
        for (std::smatch m; std::regex_search(rest, m, key); rest = m.suffix())
            keys.insert(m.str());
    }
    return keys;
}

} // namespace

TEST_CASE("Every source that a comment cites is a line of the list of sources", "[sources]")
{
    std::string const listed = *files::readTextFile(places::shared() + "/sources.md");
    int cited = 0;
    for (char const* folder : {"core", "ui", "app"})
        for (auto const& entry : fs::recursive_directory_iterator(
                 fs::path(places::shared()).parent_path() / folder)) {
            std::string const ending = entry.path().extension().string();
            if (ending != ".h" && ending != ".cpp") continue;
            for (std::string const& key : keysCited(*files::readTextFile(entry.path()))) {
                CAPTURE(entry.path().filename().string(), key);
                CHECK(listed.find("- [" + key + "]") != std::string::npos);
                ++cited;
            }
        }
    CHECK(cited > 0);
}

TEST_CASE("Citations are told from other brackets", "[sources]")
{
    CHECK(keysCited("a [trade-3.2] and [hk78, trade-5].") ==
          std::set<std::string>{"hk78", "trade-3.2", "trade-5"});
    CHECK(keysCited("table[index], [midi], m[7], [this].").empty());
}
