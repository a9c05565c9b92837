#pragma once

#include "core/harp/hand.h"
#include "core/harp/levers.h"
#include "core/music/pitch.h"
#include "core/music/time.h"
#include "core/tune/changes.h"
#include "core/tune/ways.h"

#include <optional>
#include <string>
#include <vector>

// A snag is a note or chord that the harp, its levers, the hand or the level cannot give as it
// is written. It never stops a proposal: the best way round it is taken, and the others are
// offered.

namespace proposal {

// One way round a snag, tried.
struct SnagWay {
    tune::Way way = tune::Way::Plain;
    std::optional<music::Pitch> sounds; // none: nothing is plucked for it, or it is no one note
    int cost = 0; // points, lower is better (shared/snags.json)
    friend bool operator==(SnagWay const&, SnagWay const&) = default;
};

struct Snag {
    // Of the right hand: the note as the tune writes it. Of the left hand: its bar alone counts.
    tune::NotePlace place;
    int pass = 1;     // the first on which it stands
    music::Moment at; // of that pass, in played time
    harp::Side hand = harp::Side::Right;
    std::optional<music::Pitch> written; // in the key that is arranged; none: a chord
    std::vector<harp::StringIndex> strings; // those in question
    double timeSeconds = 0;  // that the string is silent before it,
    double needsSeconds = 0; // and that a flip needs; both 0 where time is not the reason
    std::string what;        // a sentence: what cannot be had, and why
    tune::Way way = tune::Way::Plain; // the one taken
    std::vector<SnagWay> ways;        // those that can be played, the best first
    int group = 0;        // snags that are alike have one number and share one way
    bool decided = false; // by the arranger, not by price
    bool leftRests = false; // the flip for it empties a chord of the left hand
    friend bool operator==(Snag const&, Snag const&) = default;
};

// What the arranger has decided about a note of the tune as read: for it alone, or for all that
// are alike. Kept whatever harp, key or level come after.
struct SnagChoice {
    tune::NotePlace place;
    tune::Way way = tune::Way::Plain; // one of the first six
    bool alike = true;
    friend bool operator==(SnagChoice const&, SnagChoice const&) = default;
};

// What is done about snags: each is mended in its best way; or a brief that has any is refused;
// or one way is taken for all.
struct Mending {
    bool refuse = false;
    std::optional<tune::Way> only{}; // of the first six
    friend bool operator==(Mending const&, Mending const&) = default;
};

// "bar 7: D♯5 played plain, as D5": a snag and the way taken, for the foot of a page.
std::string snagLine(Snag const& snag, std::string const& bar);

// "played plain, as D5"; "the note before held on"; "left out" ...: a way of a snag.
std::string wayWords(Snag const& snag, SnagWay const& way);

} // namespace proposal
