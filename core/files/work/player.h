#pragma once

#include "core/base/result.h"
#include "core/files/tables/tables.h"
#include "core/proposal/brief.h"

#include <string>
#include <string_view>
#include <vector>

namespace files {

// Who plays: the harp, the hand and the level that a tune is arranged for. `name` is empty for
// the arranger herself.
struct Player {
    std::string name;
    harp::Harp harp;
    harp::HandModel hand;
    harp::Level level;
    friend bool operator==(Player const&, Player const&) = default;
};

// What new tunes are met with: the arranger's own player, manner, right hand, and whether the
// key is to be the best one or the written one. JSON, read back over what is known already;
// what the tables no longer have stays as it is there.
std::string standingText(proposal::Brief const& standing, Tables const& tables);
proposal::Brief withStanding(proposal::Brief known, std::string_view text, Tables const& tables);

// The list of pupils, in the order of the text. Faults: Malformed with the line; newerForm.
// A pupil whose harp, hand or level the tables do not have is left out of `players` and named
// in `leftOut`.
struct Pupils {
    std::vector<Player> players;
    std::vector<std::string> leftOut;
};
std::string pupilsText(std::vector<Player> const& pupils, Tables const& tables);
base::Result<Pupils> readPupils(std::string_view text, Tables const& tables,
                                std::string const& file);

// The list with this pupil in the place of the one of the same name, or at its end.
std::vector<Player> withPupil(std::vector<Player> pupils, Player pupil);

} // namespace files
