#pragma once

#include "core/arrange/handwork.h"
#include "core/arrange/leaning.h"
#include "core/arrange/score.h"
#include "core/arrange/slider.h"
#include "core/arrange/voicing.h"
#include "core/harp/hand.h"
#include "core/harp/harp.h"
#include "core/music/key.h"
#include "core/music/time.h"
#include "core/pattern/pattern.h"
#include "core/proposal/form.h"
#include "core/proposal/snag.h"
#include "core/tune/changes.h"
#include "core/tune/tune.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace proposal {

// What the arranger has committed at one position: a voicing that the solver must keep. The
// place is named by bar, time and pass. A candidate answers to the lock when it has the
// voicing's pattern, rhythm and root string; where `root` is given it stands for the string, so
// that the lock outlives another key or harp.
struct Lock {
    tune::BarIndex bar = 0;
    music::Length at;
    int pass = 1; // the first on which the position is played
    arrange::Voicing voicing;
    std::optional<music::Pitch> root; // letter and octave of the root string, as it would
                                      // stand in the tune's written key
    friend bool operator==(Lock const&, Lock const&) = default;
};

enum class Passes { Written, Varied };

// Which key to play in: the written one, the best that harp and tune allow, or a named one.
struct AsWritten {
    friend bool operator==(AsWritten const&, AsWritten const&) = default;
};
struct BestKey {
    friend bool operator==(BestKey const&, BestKey const&) = default;
};
using KeyWish = std::variant<BestKey, AsWritten, music::Key>;

// Everything a proposal depends on. A value: the same brief gives the same proposal.
struct Brief {
    tune::Tune tune; // as read
    harp::Harp harp;
    harp::HandModel hand;
    harp::Level level;
    pattern::PatternBook book;
    arrange::Weights weights; // of the style, before leaning and sliders
    KeyWish key = BestKey{};
    std::optional<double> quartersPerMinute{}; // none: the tune's own or usual tempo
    Passes passes = Passes::Written;
    std::vector<Lock> locks{};
    std::vector<arrange::Turned> sliders{}; // those that are turned
    int take = 0; // 0 the best arrangement, 1 the first clearly different one, and so on
    RightHand right = RightHand::Bare;
    std::vector<arrange::SetFinger> fingers{};
    std::vector<tune::NoteChange> changes{};    // of the tune as read, see remedies.h
    std::vector<harp::LeverWish> leverWishes{}; // of strings that the tune does not play
    std::vector<SnagChoice> snagChoices{};      // see snag.h
    Mending mending{};
    arrange::Leaning leaning{}; // what is known of the arranger's own taste
    Form form{}; // bars of locks, fingers and decided snags are those of the formed tune, bars
                 // of changes those of the tune as read (formed.h)
};

} // namespace proposal
