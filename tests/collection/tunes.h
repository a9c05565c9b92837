#pragma once

#include "core/collection/entry.h"
#include "core/files/abc/read.h"

#include <string>

// Invented tunes for a list.
namespace tunes {

inline collection::TuneEntry entry(std::string const& abc)
{
    auto const read = files::readAbc(abc, files::abcTunes(abc)->front(), "test");
    return collection::entryOf(*read);
}

inline std::string const reel = "X:3\nT:The Basket Maker\nT:Willow Rods\nR:reel\nM:4/4\nL:1/8\n"
                                "K:G\n\"G\"GABd g2fg|edBd e2dB|\"D\"A2FA dAFA|G2BG G4|]\n";
// The same melody in D, with a pick-up, and its crotchets as two quavers.
inline std::string const inD = "X:4\nT:Another Setting\nM:4/4\nL:1/8\nK:D\n"
                               "AB|DEFA ddcd|BAFA BBAF|EECE AECE|D2FD D4|]\n";
inline std::string const waltz = "X:7\nT:Séan's Lantern\nM:3/4\nL:1/4\nK:Ador\n"
                                 "A|e2d|cBA|G2B|A2|]\n";

} // namespace tunes
