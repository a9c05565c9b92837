#pragma once

#include "core/arrange/handwork.h"
#include "core/arrange/indices.h"
#include "core/arrange/voicing.h"
#include "core/base/list.h"
#include "core/harp/hand.h"
#include "core/harp/harp.h"
#include "core/harp/levers.h"
#include "core/tune/playing.h"
#include "core/tune/tune.h"

#include <optional>
#include <vector>

namespace arrange {

// One time a position is played.
struct Occurrence {
    tune::PlayedBarIndex playedBar = 0;
    int pass = 1;
    music::Moment at; // where the position begins, in played time
    friend bool operator==(Occurrence const&, Occurrence const&) = default;
};

// One chord span that carries one voicing. With passes as written a position is played on every
// pass of its bar; with varied passes each pass is a position of its own.
struct Position {
    tune::BarIndex bar = 0;
    music::Length at; // from the start of that bar
    music::Length span;
    music::Chord chord;
    std::vector<Occurrence> played; // at least one
    friend bool operator==(Position const&, Position const&) = default;
};

using Positions = base::List<PositionIndex, Position>;

struct ArrangedPosition {
    Position position;
    Voicing voicing;
    bool locked = false;
    friend bool operator==(ArrangedPosition const&, ArrangedPosition const&) = default;
};

// The one value behind sound, screen, sheet and exports.
struct Arrangement {
    tune::Tune tune; // as arranged: moved to the key it is played in
    int transposedSemitones = 0;
    harp::Harp harp;
    harp::HandModel hand;
    harp::Level level;
    harp::LeverTimeline levers;
    tune::Tempo tempo;
    tune::Playing playing;                   // of `tune`
    base::List<PositionIndex, ArrangedPosition> positions; // in written order
    std::vector<NoteFingers> rightFingers; // in written order, every sounding note that begins
    // Of both hands. The left hand's fingers stand in the voicings themselves, changed where
    // the hand or the place asks for others than the pattern's; why is among the remarks.
    std::vector<PlacingGroup> groups{}; // of each hand in written order, the right hand first
    std::vector<AddedBelow> added{};    // in written order
    std::vector<GivenNote> given{};     // by position, then note
    std::vector<HandRemark> handRemarks{}; // in written order
    std::vector<GaveWay> gaveWay{};        // in written order
    std::optional<tune::Tune> asWritten{}; // `tune` before any note of it gave way; none: it is
};

// The tune as it is written, in the key it is played in: what a lead sheet shows.
inline tune::Tune const& writtenTune(Arrangement const& arrangement)
{
    return arrangement.asWritten ? *arrangement.asWritten : arrangement.tune;
}

// The bar of the tune that is played there.
inline tune::Bar const& barPlayed(Arrangement const& arrangement,
                                  tune::PlayedBarIndex playedBar)
{
    auto const& played = arrangement.playing.bars[playedBar];
    return arrangement.tune.bars[played.bar];
}

// One note of either hand in played time: what the plan file lists and the sound plays.
struct HandNote {
    music::Moment at;
    music::Length held;
    harp::Side hand = harp::Side::Right;
    harp::StringIndex string = 0;
    music::Pitch pitch; // what sounds as the levers stand
    int finger = 1;
    std::optional<PlayedPositionIndex> position; // none: of the tune or added to it
    int rollOrder = 0;
    bool fromTune = true; // the tune's own; false also for what the right hand adds or takes
    tune::PlayedBarIndex playedBar = 0;
    friend bool operator==(HandNote const&, HandNote const&) = default;
};

// A position each time it is played, in the order of playing.
struct PlayedPosition {
    PositionIndex position = 0;
    Occurrence when;
};
base::List<PlayedPositionIndex, PlayedPosition> playedPositions(Arrangement const& arrangement);

// All notes of both hands by time, then from the lowest string. `position` counts in the order
// of playedPositions.
std::vector<HandNote> handNotes(Arrangement const& arrangement);

// A placing group each time it is played: indices into `notes`, which are handNotes. In order
// of time.
struct PlayedGroup {
    int group = 0; // index into Arrangement::groups
    std::vector<int> notes;
};
std::vector<PlayedGroup> playedGroups(Arrangement const& arrangement,
                                      std::vector<HandNote> const& notes);

} // namespace arrange
