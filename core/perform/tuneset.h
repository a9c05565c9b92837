#pragma once

#include "core/arrange/arrangement.h"
#include "core/levers/tuneset.h"
#include "core/perform/course.h"

#include <string>
#include <vector>

namespace perform {

// One tune of a set as it is arranged, with what is done about the levers before it.
struct TuneOfSet {
    arrange::Arrangement arrangement;
    std::vector<levers::LeverChange> changes; // since the tune before; none before the first
    Seconds pause = 0;                        // in which they are flipped, one after another
};

// A set: tunes that are played one after another on one harp.
struct PlayedSet {
    std::string title;
    std::vector<TuneOfSet> tunes;     // in the order of playing
    std::vector<std::string> notes{}; // for the player, about the set
};

// The set in the order given. Flipped between two tunes is every lever that stands otherwise
// than the next tune needs it, up to its highest string; the others stay as they are until a
// tune needs them. With no title it is that of the tunes, joined by strokes.
PlayedSet setOf(std::string title, std::vector<arrange::Arrangement> arrangements);

// "6C 5C 4C up, 5F down": strings with their octaves as harpers count them; empty where no
// lever is flipped.
std::string changesBySide(harp::Harp const& harp,
                          std::vector<levers::LeverChange> const& changes);
// "Flip 6C 5C 4C up (about 3 s)", or "Leave the levers as they are".
std::string changeLine(TuneOfSet const& tune);

// The courses of the tunes as one, with the pauses between them. In a pause each lever is
// flipped in its turn, its string damped before. A tune that needs no flip follows without a
// gap.
Course courseOf(PlayedSet const& set, std::vector<Course> const& tunes);

} // namespace perform
