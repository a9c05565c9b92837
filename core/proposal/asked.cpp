#include "core/proposal/asked.h"

#include "core/base/words.h"
#include "core/explain/whynot.h"
#include "core/pattern/own.h"

#include <fmt/format.h>

#include <algorithm>

namespace proposal {

namespace {

using base::Fault;
using base::FaultCode;

// "bar 5, beat 3, 1-5-10 over G"
std::string placeOf(Proposal const& proposal, arrange::PositionIndex position,
                    std::string_view pattern)
{
    arrange::Position const& p = proposal.lattice.positions[position];
    tune::Tune const& tune = proposal.arrangement.tune;
    tune::Bar const& bar = tune.bars[p.bar];
    auto const beat = music::floorOf((bar.upbeat + p.at) / music::beatLength(bar.meter)) + 1;
    return base::say("{}, beat {}, {} over {}", tune::barName(tune, p.bar), beat, pattern,
                     music::shown(p.chord));
}

std::string lowerFirst(std::string text)
{
    if (!text.empty() && text[0] >= 'A' && text[0] <= 'Z')
        text[0] = static_cast<char>(text[0] - 'A' + 'a');
    return text;
}

// The candidate of this shape with the least regret, ties by number.
std::optional<arrange::CandidateIndex>
bestOf(Proposal const& proposal, arrange::PositionIndex position, std::string_view pattern)
{
    std::optional<arrange::CandidateIndex> best;
    arrange::CandidateList const& candidates = proposal.lattice.candidates[position];
    for (arrange::CandidateIndex const c : candidates.indices()) {
        if (candidates[c].voicing.pattern != pattern) continue;
        arrange::Costs const& regrets = proposal.solution.regrets[position];
        if (!best || regrets[c] < regrets[*best]) best = c;
    }
    return best;
}

bool holdsBeat(arrange::Position const& position, tune::Bar const& bar, std::optional<int> beat)
{
    if (!beat) return true;
    music::Length const at = music::beatLength(bar.meter) * music::Rational(*beat - 1);
    music::Length const from = bar.upbeat + position.at;
    return from <= at && at < from + position.span;
}

} // namespace

std::vector<arrange::PositionIndex> positionsAt(Proposal const& proposal, int bar,
                                                std::optional<int> beat)
{
    std::vector<arrange::PositionIndex> found;
    std::optional<music::Length> first; // where the chord begins that was meant
    for (arrange::PositionIndex const i : proposal.lattice.positions.indices()) {
        arrange::Position const& p = proposal.lattice.positions[i];
        tune::Bar const& here = proposal.arrangement.tune.bars[p.bar];
        if (here.number != bar || !holdsBeat(p, here, beat)) continue;
        if (!first) first = p.at;
        if (p.at == *first) found.push_back(i);
    }
    return found;
}

base::Result<Proposal> withPattern(Proposal proposal, arrange::PositionIndex position,
                                   std::string_view pattern)
{
    std::optional<arrange::CandidateIndex> const candidate =
        bestOf(proposal, position, pattern);
    std::string const place = placeOf(proposal, position, pattern);
    if (candidate) {
        bool const inTime =
            proposal.solution.regrets[position][*candidate] < arrange::unplayablePair;
        if (!inTime)
            return Fault{
                FaultCode::CannotPlayHere, place,
                base::said("the hand has no time to move between this and the shapes you kept: "
                           "let one of them change, or play slower")};
        return withChoice(std::move(proposal), position, *candidate, true);
    }
    pattern::Pattern const* const shape = pattern::named(proposal.brief.book, pattern);
    if (shape == nullptr) return Fault{FaultCode::NoSuchPattern, place, std::string(pattern)};
    auto const why = explain::whyNot(sceneAt(proposal, position),
                                     proposal.lattice.positions[position], *shape);
    return Fault{
        FaultCode::CannotPlayHere, place,
        why ? lowerFirst(why->reason) + ": " + why->remedy
            : base::said("another pattern in the pattern book has the same notes here: choose "
                         "that one")};
}

std::vector<Unplayable> unplayable(Proposal const& proposal, arrange::PositionIndex position)
{
    arrange::Position const& place = proposal.lattice.positions[position];
    arrange::Scene const scene = sceneAt(proposal, position);
    std::vector<Unplayable> hindered;
    std::vector<Unplayable> notMeant;
    for (pattern::Pattern const& shape : proposal.brief.book.patterns) {
        if (bestOf(proposal, position, shape.name)) continue;
        auto const why = explain::whyNot(scene, place, shape);
        if (!why) continue; // its notes are there under another name
        bool const meant = arrange::suitsLevel(shape, scene.level) &&
                           pattern::suits(shape, scene.tune.bars[place.bar].meter);
        (meant ? hindered : notMeant).push_back({shape.name, explain::sentence(*why)});
    }
    hindered.insert(hindered.end(), notMeant.begin(), notMeant.end());
    return hindered;
}

} // namespace proposal
