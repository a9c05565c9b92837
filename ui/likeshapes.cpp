#include "ui/likeshapes.h"

#include "core/arrange/view.h"

#include <algorithm>
#include <cstdlib>
#include <tuple>

namespace ui {

std::optional<arrange::CandidateIndex> candidateLike(proposal::Proposal const& proposal,
                                                     arrange::PositionIndex position,
                                                     arrange::Voicing const& shape)
{
    auto const& candidates = proposal.lattice.candidates[position];
    std::optional<arrange::CandidateIndex> best;
    std::tuple<bool, bool, int> bestAway;
    for (arrange::CandidateIndex const i : candidates.indices()) {
        arrange::Voicing const& voicing = candidates[i].voicing;
        if (voicing.pattern != shape.pattern) continue;
        std::tuple const away{voicing.rhythm != shape.rhythm, voicing.rolled != shape.rolled,
                              std::abs(voicing.rootString - shape.rootString)};
        if (best && away >= bestAway) continue;
        best = i;
        bestAway = away;
    }
    return best;
}

namespace {

// The tune's notes and the chord in the position's own time, as they are written.
struct Written {
    music::Chord chord;
    music::Length span;
    std::vector<std::pair<music::Length, tune::Note>> notes;
};

Written writtenAt(arrange::Arrangement const& arrangement, arrange::Position const& position)
{
    Written out{position.chord, position.span, {}};
    tune::Bar const& bar = arrangement.tune.bars[position.bar];
    for (tune::Note const& note : bar.notes)
        if (note.at >= position.at && note.at < position.at + position.span)
            out.notes.emplace_back(note.at - position.at, note);
    return out;
}

bool sameNotes(Written const& a, Written const& b)
{
    return a.chord == b.chord && a.span == b.span &&
           std::ranges::equal(a.notes, b.notes, [](auto const& x, auto const& y) {
               return x.first == y.first && x.second.length == y.second.length &&
                      x.second.pitches == y.second.pitches;
           });
}

bool isLike(proposal::Proposal const& proposal, arrange::PositionIndex here,
            arrange::PositionIndex other, Like like)
{
    arrange::Arrangement const& arrangement = proposal.arrangement;
    arrange::Position const& a = arrangement.positions[here].position;
    arrange::Position const& b = arrangement.positions[other].position;
    switch (like) {
    case Like::Chord:
        return a.chord == b.chord && a.span == b.span;
    case Like::Notes:
        return sameNotes(writtenAt(arrangement, a), writtenAt(arrangement, b));
    case Like::Close:
        break;
    }
    return arrange::viewOf(sceneOf(proposal), b, arrange::longestNote(arrangement.playing))
               .close != arrange::Close::None;
}

} // namespace

std::vector<ShapeAt> atEveryPlaceLike(proposal::Proposal const& proposal,
                                      arrange::PositionIndex position,
                                      arrange::Voicing const& shape, Like like)
{
    std::vector<ShapeAt> out;
    auto const& positions = proposal.arrangement.positions;
    for (arrange::PositionIndex const other : positions.indices()) {
        if (other == position || !isLike(proposal, position, other, like)) continue;
        auto const candidate = candidateLike(proposal, other, shape);
        if (!candidate || proposal.lattice.locks[other] == candidate) continue;
        out.push_back({other, *candidate});
    }
    return out;
}

std::optional<std::vector<ShapeAt>> swapped(proposal::Proposal const& proposal,
                                            arrange::PositionIndex position,
                                            arrange::PositionIndex other)
{
    auto const& positions = proposal.arrangement.positions;
    auto const here = candidateLike(proposal, position, positions[other].voicing);
    auto const there = candidateLike(proposal, other, positions[position].voicing);
    if (!here || !there) return std::nullopt;
    return std::vector<ShapeAt>{{position, *here}, {other, *there}};
}

} // namespace ui
