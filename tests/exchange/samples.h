#pragma once

#include "tests/places.h"
#include "tests/proposal/nottingham.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <set>
#include <string>

// Outside files that the tests of exchange go through; where they are absent, that is said.
namespace samples {

// Does it with every damaged file that has one of these endings; there are to be so many.
template<typename Try>
void eachBroken(std::set<std::string> const& endings, int expected, Try tryIt)
{
    std::filesystem::path const folder =
        std::filesystem::path(places::outside()) / "data" / "broken";
    if (!std::filesystem::exists(folder)) {
        WARN("SKIPPED: absent: broken");
        return;
    }
    int files = 0;
    for (auto const& entry : std::filesystem::directory_iterator(folder)) {
        if (!endings.contains(entry.path().extension().string())) continue;
        ++files;
        CAPTURE(entry.path().filename().string());
        tryIt(entry.path());
    }
    CHECK(files == expected);
}

// Does it with one in so many of the folk tunes with chords; the whole collection is tried by
// hand.
template<typename Try>
void someFolkTunes(std::size_t every, Try tryIt)
{
    auto const tunes = nottingham::tunesWithChords();
    if (!tunes) {
        WARN("SKIPPED: the folk tune collection is absent");
        return;
    }
    for (std::size_t i = 0; i < tunes->size(); i += every) {
        CAPTURE((*tunes)[i].name);
        tryIt((*tunes)[i].tune);
    }
}

} // namespace samples
