#include "core/harp/levers.h"
#include "tests/harp/harps.h"
#include "tests/trade/table.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace harp;
using music::Key;
using music::Mode;

namespace {

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
    // Every tuning, lever fit and signature with the letters raised and the tonics of the seven
    // modes (derived outside this program).
    auto const rows = trade::table("tunings_keys.csv");
    if (!rows) return;
    std::vector<std::string> const tonics{"ionian",     "dorian",  "phrygian", "lydian",
                                          "mixolydian", "aeolian", "locrian"};
    REQUIRE(tonics.size() == music::allModes.size());
    for (trade::Row const& row : *rows) {
        CAPTURE(row.at("tuning"), row.at("levers"), row.at("signature"));
        std::string const& levers = row.at("levers");
        std::string const fit = levers == "full" ? "CDEFGAB" : levers == "none" ? "" : levers;
        Harp const h = example::harp(example::c2, example::a6,
                                     *music::pitchNameFrom(row.at("tuning")), fit);
        for (std::size_t mode = 0; mode < music::allModes.size(); ++mode) {
            Key const key{*music::pitchNameFrom(row.at(tonics[mode])), music::allModes[mode]};
            CHECK(signature(key) == std::stoi(row.at("signature")));
            auto const setting = settingFor(h, key);
            REQUIRE(setting);
            CHECK(sorted(raisedLetters(*setting)) == sorted(row.at("letters_up")));
        }
    }
    CHECK(rows->size() == 81);
}
