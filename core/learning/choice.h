#pragma once

#include "core/arrange/score.h"
#include "core/proposal/proposal.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace learning {

// One of the shapes that the arranger could have had at a chord.
struct Offer {
    std::string shape; // its pattern
    // What each term says of it in its place, among the neighbours as they were, at the weights
    // of the manner: in points (not thousandths), lower is better.
    std::array<double, arrange::termCount> judged{};
    friend bool operator==(Offer const&, Offer const&) = default;
};

// A shape that the arranger took, among those that were offered. Her preference, and nothing of
// the tune.
struct Choice {
    std::string manner;
    int level = 1;
    std::string kind;  // of tune: "jig", "air" ...
    std::string place; // names tune and chord, so that a later choice there takes its place
    std::vector<Offer> offers;
    std::size_t taken = 0;    // index into offers
    std::size_t proposed = 0; // likewise: what stood there
    friend bool operator==(Choice const&, Choice const&) = default;
};

// So many offers at most are kept of a choice: the best, the one taken and the one proposed.
inline constexpr std::size_t offersKept = 8;

// What is learned when a candidate is taken at a position of a proposal, before it is; none
// where there is only one to take.
std::optional<Choice> choiceOf(proposal::Proposal const& proposal,
                               arrange::PositionIndex position,
                               arrange::CandidateIndex candidate);

// With one more; a choice at the same place goes, and the oldest ones beyond what is kept.
inline constexpr std::size_t choicesKept = 2000;
std::vector<Choice> withChoice(std::vector<Choice> choices, Choice choice);

} // namespace learning
