#pragma once

#include "core/arrange/lattice.h"
#include "core/arrange/scene.h"
#include "core/arrange/solve.h"
#include "core/base/result.h"
#include "core/hands/handsof.h"
#include "core/proposal/brief.h"
#include "core/proposal/formed.h"
#include "core/proposal/snag.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace proposal {

// How far a take stands from the best arrangement.
struct TakeNote {
    int number = 0;             // 1 the first after the best
    int otherShapes = 0;        // chords that have another shape than in the best
    int chords = 0;             // of so many
    arrange::Points dearer = 0; // than the best
    friend bool operator==(TakeNote const&, TakeNote const&) = default;
};

// "Take 1: another shape on 9 of 24 chords; 1.3 points more than the best."
std::string takeWords(TakeNote const& note);

// The answer to a brief: the best arrangement, and all that is needed to judge and change it.
struct Proposal {
    Brief brief;           // what was asked; a lock that does not fit here waits in it
    music::Interval moved; // from the written key to the one it is arranged in
    arrange::Arrangement arrangement;
    tune::Kind kind = tune::Kind::Other;
    arrange::Lattice lattice; // positions as in arrangement.positions
    // Costs of neighbours in writing, before the lattice was told what repeats forbid, and the
    // tables made from them: to solve again after a lock.
    base::List<arrange::PositionIndex, arrange::PairTable> writtenPairs;
    arrange::CostTables tables;
    arrange::Solution solution;   // its best is what is arranged: the take that was asked for
    arrange::Weights weights;     // of the brief, with its sliders
    WeightsByBar weightsByBar;    // and with those of each time through
    std::vector<int> octavesLeft; // times through that stay in the octave they are written in
    std::optional<TakeNote> take; // none: the best arrangement itself
    std::optional<hands::PlacedRight> rightHand; // stays while only the left hand changes
    std::vector<int> unkeptFingers; // indices into Brief::fingers that no hand can keep here
    std::vector<Snag> snags;           // in the order of the tune, the left hand's last
    std::vector<std::string> warnings; // sentences for the arranger; each snag has one
};

// The main job: key and set-up, candidates, exact solution, fingers. A tune without chords,
// also one of rests alone, is arranged over a drone of its key. What harp, levers, hand or
// level cannot give as written is a snag with the best way round it. Fault: NoNotes where there
// is no bar; where the brief refuses snags also KeyBeyondTuning, NoteOffHarp, NoMomentForFlip,
// NothingPlayable, each with bar and remedy, and a key that turns out to be impossible gives
// way to the next best.
base::Result<Proposal> propose(Brief const& brief);

// The same proposal with one candidate chosen, solved again on the lattice that is already
// there. Locked: the choice is kept in the brief until it is taken back. Not locked: the best
// arrangement with this candidate, to be heard; the brief stays as it is and so do the regrets.
// Fault: BadLock when there is no such candidate.
base::Result<Proposal> withChoice(Proposal proposal, arrange::PositionIndex position,
                                  arrange::CandidateIndex candidate, bool locked);
Proposal withoutLock(Proposal proposal, arrange::PositionIndex position);

// The same with another take: 0 the best, 1 the first clearly different one, and so on. Where
// there are not so many it is the last there is; the brief then says which.
Proposal withTake(Proposal proposal, int take);
// The same choices with other wishes for the hands: nothing is solved again but the fingers.
Proposal withHands(Proposal proposal, RightHand right, std::vector<arrange::SetFinger> fingers);

// Snags that are alike and share a way in one sentence: "Bars 3 and 7: D♯5 played plain, as D5,
// because there is no time ..."
std::vector<std::string> snagSentences(Proposal const& proposal);

// The ways out that change the whole tune: slower (level 4 and up, where time is what lacks),
// another key, a higher level. Each is tried; `brief` is what to propose next. Never taken
// unasked.
struct WholeTuneWay {
    tune::Way way = tune::Way::Level;
    std::string sentence;
    Brief brief;
    int snagsLeft = 0;
    int cost = 0; // points: what the change itself weighs and what the snags left cost
    std::shared_ptr<Proposal const> tried{}; // the answer to `brief`
};
// `wanted`, asked between one trial and the next: false gives the rest up, with what was found.
std::vector<WholeTuneWay> wholeTuneWays(Proposal const& proposal,
                                        std::vector<harp::Level> const& levels,
                                        std::function<bool()> const& wanted = {});

// The brief with a way taken at a snag (an index into Proposal::snags), for it alone or for all
// that are alike; and with what was decided about it taken back. Only the first six ways.
Brief withSnagWay(Proposal const& proposal, std::size_t snag, tune::Way way, bool alike);
Brief withoutSnagChoice(Proposal const& proposal, std::size_t snag);

// One candidate as the arranger sees it.
struct Variant {
    arrange::CandidateIndex candidate = 0;
    arrange::Points regret = 0;
    bool chosen = false;
    bool locked = false;
    std::vector<std::string> reasons; // sentences, the deciding one first
};

// The candidates of a position, least regret first, ties by number.
std::vector<Variant> variants(Proposal const& proposal, arrange::PositionIndex position);

// What speaks for and against a candidate.
std::vector<std::string> reasons(Proposal const& proposal, arrange::PositionIndex position,
                                 arrange::CandidateIndex candidate);

// What the brief asks of the hands: to place them on an arrangement that is looked at before it
// is chosen. Refers to the brief, which must outlive it.
hands::HandWishes handWishes(Brief const& brief);

// What the score looks at. Refers to the proposal, which must outlive it.
arrange::Scene sceneOf(Proposal const& proposal);
// The same as it is weighed at one position: each time through has its own manner.
arrange::Scene sceneAt(Proposal const& proposal, arrange::PositionIndex position);

} // namespace proposal
