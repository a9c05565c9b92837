#pragma once

#include "core/files/abc/read.h"
#include "core/files/tables/tables.h"
#include "tests/places.h"

#include <string>

namespace scenes {

inline tune::Tune tuneOf(std::string const& abc)
{
    auto const entries = *files::abcTunes(abc);
    return *files::readAbc(abc, entries.front(), "test");
}

// Invented.
inline tune::Tune jig()
{
    return tuneOf("X:1\nT:The Reed Cutter\nM:6/8\nL:1/8\nK:G\n"
                  "|:D|GAB d2B|ABc e2c|dBG ABA|GED E2D|GAB d2B|ABc e2c|dBd cAF|G3 G2:|\n"
                  "|:d|gfg dBd|ece dBd|gfg dBG|ABA A2d|gfg dBd|ece dBd|cBA dcA|G3 G2:|\n");
}

inline harmony::Learned const& learned()
{
    static files::Tables const tables = *files::readTables(places::shared());
    return tables.harmony;
}

} // namespace scenes
