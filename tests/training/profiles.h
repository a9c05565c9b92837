#pragma once

#include <array>
#include <string_view>

// Published profiles of keys: how much each degree from the tonic belongs to a major and a
// minor key. For comparison only; nothing that ships is made of them.
namespace profiles {

using Row = std::array<double, 12>;

struct Profile {
    std::string_view name;
    Row major;
    Row minor;
};

inline constexpr std::array all{
    // Krumhansl and Kessler, "Tracing the dynamic changes in perceived tonal organization",
    // 1982.
    Profile{"Krumhansl and Kessler 1982",
            {6.35, 2.23, 3.48, 2.33, 4.38, 4.09, 2.52, 5.19, 2.39, 3.66, 2.29, 2.88},
            {6.33, 2.68, 3.52, 5.38, 2.60, 3.53, 2.54, 4.75, 3.98, 2.69, 3.34, 3.17}},
    // Temperley, "What's key for key?", 1999.
    Profile{"Temperley 1999",
            {5, 2, 3.5, 2, 4.5, 4, 2, 4.5, 2, 3.5, 1.5, 4},
            {5, 2, 3.5, 4.5, 2, 4, 2, 4.5, 3.5, 2, 1.5, 4}},
    // Temperley, "Music and Probability", 2007, from the Kostka-Payne corpus.
    Profile{"Temperley 2007",
            {.748, .060, .488, .082, .670, .460, .096, .715, .104, .366, .057, .400},
            {.712, .084, .474, .618, .049, .460, .105, .747, .404, .067, .133, .330}},
    // Bellman, "About the determination of key of a musical excerpt", 2005, after Budge 1943.
    Profile{"Bellman 2005",
            {16.80, .86, 12.95, 1.41, 13.49, 11.93, 1.25, 20.28, 1.80, 8.04, .62, 10.57},
            {18.16, .69, 12.99, 13.34, 1.07, 11.15, 1.38, 21.07, 7.49, 1.53, .92, 10.21}},
    // Aarden, "Dynamic melodic expectancy", 2003, from the Essen collection.
    Profile{"Aarden 2003",
            {17.766, .1456, 14.927, .1602, 19.805, 11.359, .2912, 22.062, .1456, 8.155, .2330,
             4.951},
            {18.265, .7376, 14.050, 16.860, .7025, 14.436, .7025, 18.616, 4.566, 1.932, 7.376,
             1.756}},
    // Albrecht and Shanahan, "The use of large corpora to train a new type of key-finding
    // algorithm", 2013.
    Profile{"Albrecht and Shanahan 2013",
            {.238, .006, .111, .006, .137, .094, .016, .214, .009, .080, .008, .081},
            {.220, .006, .104, .123, .019, .103, .012, .214, .062, .022, .061, .052}},
    // Sapp, "Computational methods for the analysis of musical structure", 2011.
    Profile{"Sapp 2011",
            {2, 0, 1, 0, 1, 1, 0, 2, 0, 1, 0, 1},
            {2, 0, 1, 1, 0, 1, 0, 2, 1, 0, 1, 0}},
};

} // namespace profiles
