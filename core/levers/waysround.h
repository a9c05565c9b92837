#pragma once

#include "core/harp/hand.h"
#include "core/levers/leverplan.h"
#include "core/tune/notefunction.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace levers {

// A note of the tune that cannot be had as written, and the way taken.
struct MendedNote {
    tune::NotePlace place; // a grace note is only ever left out
    music::Pitch written;
    tune::Way way = tune::Way::Plain;
    std::optional<music::Pitch> sounds; // none: nothing is plucked
    int figure = 0;                     // alike notes have one number and one way
    int price = 0; // points, each time it is played
};

// The cheapest set of ways round, and what it costs.
struct WaysRound {
    std::vector<MendedNote> notes; // by place
    int price = 0; // of all of them, each written note once, grace notes aside
    int flips = 0; // that remain
    bool found = true; // false: given up, see WaysAsked::briefly
};

// What a search for ways may do.
struct WaysAsked {
    tune::WayPrices const& prices;
    std::optional<tune::Way> only{};       // this way, for every note that can go it
    std::vector<tune::NotePlace> quick{};  // notes whose flips may be quick, decided before
    // To compare many keys: levers that crowd are not looked at, and a long search is given up
    // (WaysRound::found false).
    bool briefly = false;
    // Then also given up where flips and ways, each time they are played, come to more points.
    std::optional<int> mostPoints{};
};

// The notes of a tune that must give way so that levers can serve the others, and how. The plan
// takes each note's ways as priced choices beside its seats (seating.h) and finds the cheapest
// set at once. Ways are open to the notes that stand in each other's way on a string (no window
// between them, or linked to such by notes as close), to notes without a string, and to all
// that are alike. Empty where every note can be had as written.
WaysRound waysRound(harp::Harp const& harp, tune::Tune const& tune,
                    tune::Playing const& playing, tune::Tempo tempo,
                    harp::Level const& level, std::vector<harp::LeverWish> const& wishes,
                    WaysAsked const& asked);

// The tune with its notes changed as the ways say, and the places whose flips may be quick.
struct MendedTune {
    std::vector<tune::NoteChange> changes;
    std::vector<tune::NotePlace> quick;
};
MendedTune changesFor(std::vector<MendedNote> const& notes);

// Every note of the tune in its line, with what the harp's strings give instead.
std::vector<tune::NoteInLine> notesOnHarp(harp::Harp const& harp, tune::Tune const& tune,
                                          tune::Tempo tempo, tune::WayPrices const& prices);

// Which of the six ways a note could go at all on this harp at this level, and what would sound.
struct OpenWay {
    tune::Way way = tune::Way::Plain;
    std::optional<music::Pitch> sounds;
    int price = 0;
};
std::vector<OpenWay> openWays(tune::NoteInLine const& note, harp::Harp const& harp,
                              harp::Level const& level, tune::WayPrices const& prices);

} // namespace levers
