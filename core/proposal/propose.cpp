#include "core/proposal/proposal.h"

#include "core/arrange/alike.h"
#include "core/arrange/build.h"
#include "core/arrange/positions.h"
#include "core/base/words.h"
#include "core/explain/reasons.h"
#include "core/hands/handsof.h"
#include "core/levers/leverplan.h"
#include "core/proposal/flipmoments.h"
#include "core/proposal/formed.h"
#include "core/proposal/keywish.h"
#include "core/proposal/locks.h"
#include "core/proposal/mendedlevers.h"
#include "core/proposal/repeats.h"
#include "core/proposal/silence.h"
#include "core/proposal/solveat.h"
#include "core/proposal/warnings.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>

namespace proposal {

namespace {

using base::Fault;
using base::FaultCode;
using base::Result;

arrange::Scene sceneWith(Proposal const& proposal, arrange::Weights const& weights)
{
    arrange::Arrangement const& a = proposal.arrangement;
    return {a.tune,  a.playing,           a.harp,  a.hand,       a.level, a.levers,
            a.tempo, proposal.brief.book, weights, proposal.kind};
}

arrange::Positions positionsOf(Brief const& brief, arrange::Arrangement const& arrangement)
{
    return arrange::withEndApart(
        brief.passes == Passes::Varied
            ? arrange::positionsByPass(arrangement.tune, arrangement.playing)
            : arrange::positionsAsWritten(arrangement.tune, arrangement.playing),
        arrangement.tune, arrangement.playing);
}

bool onlyRests(arrange::Lattice const& lattice)
{
    return std::all_of(lattice.candidates.begin(), lattice.candidates.end(),
                       [](arrange::CandidateList const& list) {
                           return std::all_of(list.begin(), list.end(),
                                              [](arrange::Candidate const& candidate) {
                                                  return candidate.voicing.notes.empty();
                                              });
                       });
}

int shapesApart(arrange::Lattice const& lattice, arrange::Choice const& a,
                arrange::Choice const& b)
{
    int apart = 0;
    for (arrange::PositionIndex const i : lattice.candidates.indices()) {
        auto const shape = [&](arrange::Choice const& c) {
            return lattice.candidates[i][c.candidates[i]].voicing.pattern;
        };
        if (shape(a) != shape(b)) ++apart;
    }
    return apart;
}

// Puts the take that the brief asks for in the place of the best, which has just been found.
void takeAnother(Proposal& proposal)
{
    proposal.take.reset();
    std::vector<arrange::Choice> takes{proposal.solution.best};
    while (static_cast<int>(takes.size()) <= proposal.brief.take) {
        auto next = anotherTakeAsPlayed(proposal, takes);
        if (!next) break;
        takes.push_back(*std::move(next));
    }
    proposal.brief.take = static_cast<int>(takes.size()) - 1;
    if (proposal.brief.take == 0) return;
    proposal.take = TakeNote{
        proposal.brief.take, shapesApart(proposal.lattice, takes.front(), takes.back()),
        proposal.lattice.positions.size(), takes.back().cost - takes.front().cost};
    proposal.solution.best = std::move(takes.back());
}

// The arrangement has the voicings that the solution has chosen.
void carryVoicings(Proposal& proposal)
{
    auto& arranged = proposal.arrangement.positions;
    arranged.clear();
    for (arrange::PositionIndex const i : proposal.lattice.positions.indices()) {
        arrange::CandidateIndex const chosen = proposal.solution.best.candidates[i];
        arranged.push_back({proposal.lattice.positions[i],
                            proposal.lattice.candidates[i][chosen].voicing,
                            proposal.lattice.locks[i].has_value()});
    }
}

// The arrangement says what the solution has chosen.
void carryOut(Proposal& proposal)
{
    carryVoicings(proposal);
    proposal.unkeptFingers =
        hands::placeHands(proposal.arrangement, handWishes(proposal.brief), proposal.rightHand);
    proposal.warnings = warningsFor(proposal);
}

void solveAgain(Proposal& proposal, arrange::PositionIndex changedLock)
{
    proposal.lattice.pairs = proposal.writtenPairs;
    proposal.tables =
        arrange::tablesAfterLock(proposal.lattice, std::move(proposal.tables), changedLock);
    solveAsPlayed(proposal);
    takeAnother(proposal);
    carryOut(proposal);
}

// The tune in its key, before levers and left hand.
Proposal inKey(Brief const& brief, music::Interval moved)
{
    Proposal out;
    out.brief = brief;
    out.moved = moved;
    arrange::Arrangement& arrangement = out.arrangement;
    arrangement.tune = tune::transposed(formOf(brief).tune, moved);
    out.octavesLeft = inOctaves(arrangement.tune, brief.form, brief.harp);
    out.weightsByBar = weightsByBar(brief, arrangement.tune);
    out.weights = out.weightsByBar.all.front();
    arrangement.transposedSemitones = moved.semitones;
    arrangement.harp = brief.harp;
    arrangement.hand = brief.hand;
    arrangement.level = brief.level;
    arrangement.tempo = tempoWished(brief);
    arrangement.playing = tune::played(arrangement.tune);
    out.kind = tune::kindOf(brief.form.isPlain() ? arrangement.tune : brief.tune);
    return out;
}

// A lattice for each stretch of positions that is weighed in one way, and all of them joined.
arrange::Lattice latticeByManner(Proposal& out, arrange::Positions const& positions)
{
    std::optional<arrange::Lattice> whole;
    for (auto from = positions.begin(); from != positions.end();) {
        arrange::Weights const& weights = out.weightsByBar.at(from->bar);
        auto const to = std::find_if(from, positions.end(), [&](arrange::Position const& p) {
            return &out.weightsByBar.at(p.bar) != &weights;
        });
        arrange::Scene const scene = sceneWith(out, weights);
        out.lattice = arrange::latticeFor(scene, {from, to});
        if (positions.size() == 1) removeSelfConflicts(out);
        keepToManners(out.lattice, out.brief, out.arrangement.tune);
        arrange::drawLikeTogether(out.lattice, scene);
        whole = whole ? arrange::joined(scene, *std::move(whole), std::move(out.lattice))
                      : std::move(out.lattice);
        from = to;
    }
    return *std::move(whole);
}

// The left hand for the levers as they are planned; the builder is for the same tune and
// player, and serves where all bars are weighed alike.
Result<base::Done> solve(Proposal& out, arrange::LatticeBuilder& builder)
{
    arrange::Positions positions = positionsOf(out.brief, out.arrangement);
    if (positions.empty()) return Fault{FaultCode::NoChords, {}, {}};
    if (out.weightsByBar.all.size() > 1) {
        out.lattice = latticeByManner(out, positions);
    } else {
        out.lattice = builder.lattice(out.arrangement.levers, std::move(positions));
        removeSelfConflicts(out);
        arrange::drawLikeTogether(out.lattice, sceneOf(out));
    }
    if (out.brief.mending.refuse && onlyRests(out.lattice))
        return Fault{FaultCode::NothingPlayable,
                     tune::barName(out.arrangement.tune, out.lattice.positions.front().bar),
                     {}};
    out.lattice.locks =
        placed(out.brief.locks, out.lattice, out.brief.harp, out.moved).byPosition;
    out.writtenPairs = out.lattice.pairs;
    out.tables = arrange::tables(out.lattice);
    solveAsPlayed(out);
    return base::Done{};
}

Result<base::Done> solve(Proposal& out)
{
    Proposal const asked = out;
    arrange::LatticeBuilder builder(sceneOf(asked));
    return solve(out, builder);
}

arrange::Points costWithFlips(Proposal const& proposal)
{
    return proposal.solution.best.cost + effortOf(proposal.arrangement.levers);
}

// Solves for the plan as it was made without knowing the left hand's part, and for the plan
// whose flips suit that part; keeps what costs less.
Result<base::Done> solveAround(levers::Plan const& plan, Proposal& out)
{
    out.arrangement.levers = plan.timeline;
    if (plan.timeline.flips.empty()) return solve(out);
    Proposal suited = out;
    Proposal const asked = out;
    arrange::LatticeBuilder builder(sceneOf(asked));
    out.arrangement.levers = withIdleFlips(plan.timeline);
    if (auto unhindered = solve(out, builder); !unhindered) return unhindered;
    suited.arrangement.levers = suitedToLeft(plan, out).timeline;
    out.arrangement.levers = plan.timeline;
    auto const asPlanned = solve(out, builder);
    if (suited.arrangement.levers == plan.timeline) return asPlanned;
    auto const asSuited = solve(suited, builder);
    if (!asSuited) return asPlanned;
    if (!asPlanned || costWithFlips(suited) < costWithFlips(out)) out = std::move(suited);
    return base::Done{};
}

// Levers and left hand together, before takes and fingers. `eased`: notes that give way so that
// the left hand need not rest for a flip.
Result<Proposal> solvedAround(Brief const& brief, music::Interval moved,
                              std::vector<SnagChoice> const& eased)
{
    Proposal out = inKey(brief, moved);
    auto const plan = mendedLevers(out, eased);
    if (!plan) return plan.error();
    if (auto solved = solveAround(*plan, out); !solved) return solved.error();
    carryVoicings(out);
    return out;
}

Result<Proposal> proposedAt(Brief const& brief, music::Interval moved)
{
    Result<Proposal> made = solvedAround(brief, moved, {});
    if (!made) return made.error();
    Proposal out = *std::move(made);
    if (!brief.mending.refuse) {
        auto flips = silencingFlips(out);
        auto const eased = easedChoices(out, flips);
        if (!eased.empty())
            if (auto other = solvedAround(brief, moved, eased)) {
                auto left = silencingFlips(*other);
                if (left.size() < flips.size()) {
                    out = *std::move(other);
                    flips = std::move(left);
                }
            }
        addRestSnags(out, addSilenceSnags(out, flips));
    }
    takeAnother(out);
    carryOut(out);
    return out;
}

bool hasCandidate(Proposal const& proposal, arrange::PositionIndex position,
                  arrange::CandidateIndex candidate)
{
    auto const& lists = proposal.lattice.candidates;
    return lists.holds(position) && lists[position].holds(candidate);
}

void forgetLocksOf(Proposal& proposal, arrange::PositionIndex position)
{
    std::erase_if(proposal.brief.locks, [&](Lock const& lock) {
        return positionOf(lock, proposal.lattice) == position;
    });
}

// The best with one candidate held, the rest of the proposal as it was.
Proposal heard(Proposal proposal, arrange::PositionIndex position,
               arrange::CandidateIndex candidate)
{
    Proposal held = proposal;
    held.lattice.locks[position] = candidate;
    held.lattice.pairs = held.writtenPairs;
    held.tables = arrange::tablesAfterLock(held.lattice, std::move(held.tables), position);
    solveAsPlayed(held);
    proposal.solution.best = held.solution.best;
    carryOut(proposal);
    return proposal;
}

} // namespace

hands::HandWishes handWishes(Brief const& brief)
{
    auto const fullness = [](RightHand right) {
        return hands::Fullness{right != RightHand::Bare, right == RightHand::Full};
    };
    hands::HandWishes wishes{brief.book, fullness(brief.right), brief.fingers};
    if (brief.form.times.empty()) return wishes;
    for (RightHand right : rightByBar(brief, formOf(brief).tune))
        wishes.rightByBar.push_back(fullness(right));
    return wishes;
}

arrange::Scene sceneOf(Proposal const& proposal)
{
    return sceneWith(proposal, proposal.weights);
}

arrange::Scene sceneAt(Proposal const& proposal, arrange::PositionIndex position)
{
    tune::BarIndex const bar = proposal.lattice.positions[position].bar;
    return sceneWith(proposal, proposal.weightsByBar.at(bar));
}

Result<Proposal> solvedAt(Brief const& brief, music::Interval moved)
{
    Proposal out = inKey(brief, moved);
    auto plan = mendedLevers(out);
    if (!plan) return plan.error();
    out.arrangement.levers = std::move(plan->timeline);
    if (auto solved = solve(out); !solved) return solved.error();
    return out;
}

Result<Proposal> propose(Brief const& brief)
{
    if (brief.tune.bars.empty()) return Fault{FaultCode::NoNotes, {}, {}};
    auto const moves = movesWished(brief);
    if (!moves) return moves.error();
    Result<Proposal> first = proposedAt(brief, moves.value().front());
    if (first) return first;
    for (std::size_t next = 1; next < moves.value().size(); ++next)
        if (Result<Proposal> other = proposedAt(brief, moves.value()[next])) return other;
    return first.error();
}

Result<Proposal> withChoice(Proposal proposal, arrange::PositionIndex position,
                            arrange::CandidateIndex candidate, bool locked)
{
    if (!hasCandidate(proposal, position, candidate))
        return Fault{FaultCode::BadLock, base::say("chord {}", position + 1), {}};
    if (!locked) return heard(std::move(proposal), position, candidate);
    forgetLocksOf(proposal, position);
    proposal.brief.locks.push_back(
        lockFor(proposal.lattice, position, candidate, proposal.brief.harp, proposal.moved));
    proposal.lattice.locks[position] = candidate;
    solveAgain(proposal, position);
    return proposal;
}

Proposal withHands(Proposal proposal, RightHand right, std::vector<arrange::SetFinger> fingers)
{
    proposal.brief.right = right;
    proposal.brief.fingers = std::move(fingers);
    proposal.rightHand.reset();
    carryOut(proposal);
    return proposal;
}

Proposal withoutLock(Proposal proposal, arrange::PositionIndex position)
{
    assert(proposal.lattice.locks.holds(position));
    forgetLocksOf(proposal, position);
    proposal.lattice.locks[position].reset();
    solveAgain(proposal, position);
    return proposal;
}

Proposal withTake(Proposal proposal, int take)
{
    proposal.brief.take = std::max(0, take);
    proposal.lattice.pairs = proposal.writtenPairs;
    solveAsPlayed(proposal);
    takeAnother(proposal);
    carryOut(proposal);
    return proposal;
}

std::string takeWords(TakeNote const& note)
{
    return base::say("Setting {}: another shape on {} of {} chords; its score is {:.1f} "
                     "higher than the best (lower is better).",
                     note.number, note.otherShapes, note.chords,
                     static_cast<double>(note.dearer) / 1000);
}

std::vector<Variant> variants(Proposal const& proposal, arrange::PositionIndex position)
{
    assert(proposal.lattice.candidates.holds(position));
    arrange::Scene const scene = sceneAt(proposal, position);
    explain::ReasonsAt const reasons(scene, proposal.lattice, proposal.solution, position);
    std::vector<Variant> out;
    out.reserve(static_cast<std::size_t>(proposal.lattice.candidates[position].size()));
    for (arrange::CandidateIndex const c : proposal.lattice.candidates[position].indices())
        out.push_back({c, proposal.solution.regrets[position][c],
                       proposal.solution.best.candidates[position] == c,
                       proposal.lattice.locks[position] == c, reasons.of(c)});
    std::stable_sort(out.begin(), out.end(),
                     [](Variant const& a, Variant const& b) { return a.regret < b.regret; });
    return out;
}

std::vector<std::string> reasons(Proposal const& proposal, arrange::PositionIndex position,
                                 arrange::CandidateIndex candidate)
{
    return explain::reasonsFor(sceneAt(proposal, position), proposal.lattice, proposal.solution,
                               position, candidate);
}

} // namespace proposal
