#pragma once

#include "core/base/result.h"
#include "core/harp/hand.h"
#include "core/harp/harp.h"
#include "core/harp/levers.h"
#include "core/music/key.h"
#include "core/tune/tune.h"
#include "core/tune/ways.h"

#include <optional>
#include <string>
#include <vector>

namespace levers {

// One way to have a tune on a harp: moved by an interval, with what it takes.
struct KeyFit {
    music::Key key;
    music::Interval moved; // from the written pitch, octave included
    bool possible = false;
    std::optional<base::Fault> why; // where it is not possible
    harp::LeverSetting setup;
    harp::LeverSetting atEnd; // as the flips leave it
    int flips = 0;
    int roomBelow = 0;  // strings below the lowest melody note
    int snags = 0;      // notes that are not as written there, see levers/waysround.h
    int snagPrice = 0;  // what the ways round them cost, in points
    int rank = 0;       // cost by which fits are ordered, lower first
    std::string reason; // a sentence for the arranger
};

// Every move of up to six semitones and an octave (two octaves on a small harp) from the
// written pitch, each once, the best first; those that are not possible come last. What counts
// against a fit, and how much, is a table in keyfit.cpp; the written key and octave lead unless
// leaving them gains about two turned levers or an octave's worth of strings below the tune.
// With prices a fit whose levers cannot give every note is possible too, and its snags are
// weighed with the rest; without them it is not possible. Where only the best is asked for, a
// fit that cannot lead may stay without its ways round, as not possible; where they are to be
// compared, one that ranks far behind (`farBehind`).
enum class KeysAsked { All, TheBest, Compared };
inline constexpr int farBehind = 360; // of a rank: as twelve flips, each time they are played
std::vector<KeyFit> keyFits(tune::Tune const& tune, harp::Harp const& harp, tune::Tempo tempo,
                            harp::Level const& level,
                            std::optional<tune::WayPrices> const& prices = std::nullopt,
                            KeysAsked asked = KeysAsked::All);

// How many notes of the tune, moved so, would have to be left out before the harp gives the
// others: notes without a string, and notes for which no lever turns in time, the first that
// stands in the way each time; grace notes and levers that crowd aside. None when even
// `mostLost` are not enough, or the key itself is beyond the tuning.
inline constexpr int mostLost = 40;
std::optional<int> notesLost(tune::Tune const& tune, harp::Harp const& harp, tune::Tempo tempo,
                             harp::Level const& level, music::Interval moved);

// Strings whose lever is up before playing.
int leversRaised(harp::LeverSetting const& setup);

} // namespace levers
