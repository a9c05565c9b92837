#pragma once

#include "core/arrange/indices.h"
#include "core/harp/levers.h"
#include "core/music/pitch.h"
#include "core/music/time.h"

#include <optional>
#include <string>
#include <vector>

// What the hands do beyond the bare notes of tune and patterns: fingers placed together, notes
// added or handed over. Places are written ones: a bar of the tune, and a time from its start.
namespace arrange {

// Fingers of one written melody note, one for each of its pitches from the lowest.
struct NoteFingers {
    tune::BarIndex bar = 0;
    tune::NoteIndex note = 0;
    std::vector<int> fingers;
    bool rolled = false; // with what is added below it: wider than the hand, low to high
    friend bool operator==(NoteFingers const&, NoteFingers const&) = default;
};

// A finger that the player has set. The note is named by hand, written bar and time, and its
// place among what the hand plucks there.
struct SetFinger {
    harp::Side hand = harp::Side::Right;
    tune::BarIndex bar = 0;
    music::Length at; // from the start of that bar
    int pass = 1;     // of the left hand: the first on which the position is played
    int voice = 0;    // 0 the lowest note of that hand there
    int finger = 1;
    friend bool operator==(SetFinger const&, SetFinger const&) = default;
};

// One note of a placing group.
struct GroupNote {
    tune::BarIndex bar = 0;
    music::Length at; // from the start of that bar
    harp::StringIndex string = 0;
    int finger = 1;
    std::optional<PositionIndex> position; // none: of the right hand
    friend bool operator==(GroupNote const&, GroupNote const&) = default;
};

// Notes whose fingers lie on their strings together before the first of them is plucked: what a
// bracket on the page joins [trade-3.3]. A string may come more than once; a finger lies on one
// string, but for a slide.
struct PlacingGroup {
    harp::Side hand = harp::Side::Right;
    bool linked = false; // a finger of the group before stays on until this one is placed: the
                         // brackets overlap
    std::vector<GroupNote> notes; // by time, then from the lowest string; at least one
    friend bool operator==(PlacingGroup const&, PlacingGroup const&) = default;
};

// Notes that the right hand adds below those of one written melody note, and lets sound as
// long.
struct AddedBelow {
    tune::BarIndex bar = 0;
    tune::NoteIndex note = 0;
    std::vector<music::Pitch> pitches; // lowest first, as they stand in the arrangement's key
    std::vector<int> fingers;          // one for each
    friend bool operator==(AddedBelow const&, AddedBelow const&) = default;
};

// A left-hand note that the right hand takes, because the left would have to stretch for it.
struct GivenNote {
    PositionIndex position = 0;
    int note = 0;     // index into Voicing::notes there
    int finger = 1;   // of the right hand
    friend bool operator==(GivenNote const&, GivenNote const&) = default;
};

// Something about the hands that the player must be told on the page.
struct HandRemark {
    tune::BarIndex bar = 0;
    music::Length at;
    harp::Side hand = harp::Side::Left;
    std::string words; // "roll up, finger 4 leaves as the thumb arrives"
    friend bool operator==(HandRemark const&, HandRemark const&) = default;
};

// A note of the tune, or a left-hand chord, that is not played as it is written, because the harp,
// its levers, the hand or the level cannot give it. Told on the page.
struct GaveWay {
    tune::BarIndex bar = 0;
    music::Length at;  // from the start of that bar
    std::string words; // "D♯5 played plain, as D5"
    friend bool operator==(GaveWay const&, GaveWay const&) = default;
};

} // namespace arrange
