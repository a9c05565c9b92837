#pragma once

#include "core/arrange/laid.h"
#include "core/arrange/lattice.h"
#include "core/arrange/scene.h"
#include "core/arrange/view.h"

#include <optional>
#include <string>

// One sentence for each judgement, with the strings and beats it is about.
namespace explain {

// A voicing in its place, and the chords on either side of it.
struct Told {
    arrange::Scene const& scene;
    arrange::Position const& position;
    arrange::Position const* before = nullptr; // none at the ends
    arrange::Position const* after = nullptr;
    arrange::View view;
    arrange::Laid laid;
    arrange::Voicing const* voicedBefore = nullptr; // what the best choice has on either side
    arrange::Voicing const* voicedAfter = nullptr;
    // Earlier bars with the same tune and chord, and here the same left hand, or another.
    std::optional<tune::BarIndex> likeBar{};
    std::optional<tune::BarIndex> unlikeBar{};
};

// What the term holds against the voicing. Empty where there is nothing to point at.
std::string against(arrange::Term term, Told const& told);

// What the term likes in it.
std::string inFavour(arrange::Term term, Told const& told);

// What the shape is, before anything is compared: "Open fifth and octave on G2: clear in any
// mode." A rest says what the hand does meanwhile.
std::string character(Told const& told);

} // namespace explain
