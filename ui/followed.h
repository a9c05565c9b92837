#pragma once

#include "core/proposal/proposal.h"

#include <QString>

#include <vector>

namespace ui {

// What each position had at one time: to be compared with what it has after a choice.
struct ShapesThen {
    base::List<arrange::PositionIndex, arrange::Position> positions;
    std::vector<int> candidates;
    std::vector<arrange::Voicing> voicings;
    std::vector<bool> kept;
};
ShapesThen shapesOf(proposal::Proposal const& proposal);

// A position that changed because another was chosen.
struct Followed {
    arrange::PositionIndex position = 0;
    int before = 0; // the candidate it had
    arrange::Voicing shapeBefore;
};

// What followed so far, brought up to date by an edit: positions that are kept now have not
// followed, nor have those that are again as they were; `chosen` was the arranger's own doing.
// Nothing, where the two are of different lattices: of another tune, harp, key or level.
std::vector<Followed> followedAfter(std::vector<Followed> const& soFar, ShapesThen const& then,
                                    proposal::Proposal const& now,
                                    std::optional<arrange::PositionIndex> chosen);

// "Bar 8: 1-5 where 1-5-8 was"
QString followedWords(arrange::Arrangement const& arrangement, Followed const& followed);

} // namespace ui
