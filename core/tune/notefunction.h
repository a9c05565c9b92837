#pragma once

#include "core/tune/changes.h"
#include "core/tune/tune.h"
#include "core/tune/ways.h"

#include <bitset>
#include <optional>
#include <vector>

namespace tune {

// A note of the tune in its line: what a harper weighs when she cannot have it as written.
struct NoteInLine {
    NotePlace place;
    music::Pitch pitch;
    NoteFunction function = NoteFunction::Other;
    std::bitset<circumstances> when;
    // The note that may ring on through this one: one pitch before one pitch, straight before it
    // each time it is played.
    std::optional<NotePlace> before;
    std::optional<music::Pitch> plain; // what its own string gives with the lever the other way
    int figure = 0; // notes that are alike (pitch, length, neighbours) have one number

    bool is(Circumstance c) const { return when.test(static_cast<std::size_t>(c)); }
};

// Every pitch of the tune that begins a note, in written order, grace notes left aside. What
// depends on a harp (plain, off the harp) is not filled in.
std::vector<NoteInLine> notesInLine(Tune const& tune, Tempo tempo, WayPrices const& prices);

// What a way costs for a note each time it is played; never below the least price.
int priceOf(NoteInLine const& note, Way way, WayPrices const& prices);

} // namespace tune
