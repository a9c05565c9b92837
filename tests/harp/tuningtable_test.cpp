#include "core/harp/levers.h"
#include "tests/harp/harps.h"
#include "tests/places.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>
#include <sstream>

using namespace harp;
using music::Key;
using music::Mode;

namespace {

std::vector<std::string> cells(std::string const& line)
{
    std::vector<std::string> all;
    std::istringstream in(line);
    for (std::string cell; std::getline(in, cell, ',');) {
        if (!cell.empty() && cell.back() == '\r') cell.pop_back();
        all.push_back(cell);
    }
    return all;
}

// "CEFAB": letters whose strings are up, of the lowest octave from C.
std::string raisedLetters(LeverSetting const& setting)
{
    std::string letters;
    for (harp::StringIndex i = 0; i < 7; ++i)
        if (setting[i] == Lever::Up) letters += "CDEFGAB"[i];
    return letters.empty() ? "-" : letters;
}

std::string sorted(std::string letters)
{
    std::sort(letters.begin(), letters.end());
    return letters;
}

} // namespace

TEST_CASE("Set-ups and modes agree with the trade's table of tunings and keys", "[levers]")
{
    // trade/tunings_keys.csv: every tuning, lever fit and signature with the letters raised and
    // the tonics of the seven modes (derived outside this program).
    std::ifstream table(places::outside() + "/trade/tunings_keys.csv");
    if (!table) {
        WARN("SKIPPED: the trade's tables are absent");
        return;
    }
    std::string line;
    std::getline(table, line);
    int rows = 0;
    while (std::getline(table, line)) {
        std::vector<std::string> const row = cells(line);
        CAPTURE(line);
        REQUIRE(row.size() == 13);
        std::string const fit = row[1] == "full" ? "CDEFGAB" : row[1] == "none" ? "" : row[1];
        Harp const h =
            example::harp(example::c2, example::a6, *music::pitchNameFrom(row[0]), fit);
        for (std::size_t mode = 0; mode < music::allModes.size(); ++mode) {
            Key const key{*music::pitchNameFrom(row[6 + mode]), music::allModes[mode]};
            CHECK(signature(key) == std::stoi(row[2]));
            auto const setting = settingFor(h, key);
            REQUIRE(setting);
            CHECK(sorted(raisedLetters(*setting)) == sorted(row[4]));
        }
        ++rows;
    }
    CHECK(rows == 81);
}
