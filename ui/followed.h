#pragma once

#include "core/proposal/proposal.h"

#include <QString>

#include <set>
#include <vector>

namespace ui {

// What each position had at one time: to be compared with what it has after a choice.
struct ShapesThen {
    template<class T>
    using PerPosition = base::List<arrange::PositionIndex, T>;
    arrange::Positions positions;
    PerPosition<arrange::CandidateIndex> candidates;
    PerPosition<arrange::Voicing> voicings;
    std::set<arrange::PositionIndex> kept;
};
ShapesThen shapesOf(proposal::Proposal const& proposal);

// A position that changed because another was chosen.
struct Followed {
    arrange::PositionIndex position = 0;
    arrange::CandidateIndex before = 0; // the candidate it had
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
