#pragma once

#include "core/arrange/laid.h"
#include "core/arrange/scene.h"
#include "core/arrange/view.h"

#include <optional>
#include <variant>
#include <vector>

namespace arrange {

// A pattern with one way to lay it on a span.
struct Figure {
    pattern::Pattern pattern;
    pattern::Rhythm rhythm;
};

// Every figure of the book that suits the meter, the span and the level, in the order of the
// book. Figures that would leave out notes of their pattern are not made: a shorter pattern
// says the same honestly.
std::vector<Figure> figuresFor(pattern::PatternBook const& book, harp::Level const& level,
                               music::Meter meter, music::Length span);

// Why a figure cannot be played on a root string: the first rule that it breaks.
enum class Obstacle {
    OffHarp,       // a string beyond the ends
    RootTooLow,    // below the lowest root of the pattern
    RootSilent,    // a root's string does not sound the root as the levers stand
    SoundsVary,    // a string sounds one thing on one pass and another on the next
    OnTunesString, // the tune plucks or holds the string at that moment
    HandsCross,    // above the string that the tune plucks or holds at that moment
    TooFast,       // more notes a second than the level asks of a left hand
    StringTooSoon, // the same string again before a finger can be placed on it
    BeyondReach,   // wider than the hand, even rolled, or without time for the hand to move
    HandBusy,      // the left hand is turning a lever
    LeverTurned,   // the lever of a string is turned while its note is counted
};

// An obstacle with the strings and the time that it is about.
struct Hindrance {
    Obstacle what = Obstacle::OffHarp;
    harp::StringIndex string = 0; // the left hand's; beyond the ends where it is off the harp
    // The tune's string, or the one that the hand comes from.
    std::optional<harp::StringIndex> other;
    double at = 0; // whole notes from the position's start
    friend bool operator==(Hindrance const&, Hindrance const&) = default;
};

// The figure with its first degree on `rootString`, or what stands in the way. A note's count
// ends where the tune comes down to its string or below it: the left hand has let go by then.
std::variant<Laid, Hindrance> laidOn(Figure const& figure, harp::StringIndex rootString,
                                     View const& view);

// The strings that a shape may stand on at a position: each octave of the chord's lowest note.
std::vector<harp::StringIndex> rootStrings(View const& view);

// Whether the level asks for the shape, by its number and its width.
bool suitsLevel(pattern::Pattern const& pattern, harp::Level const& level);

// Whether the rhythm leaves none of the notes out.
bool playsAllNotes(pattern::Rhythm const& rhythm, pattern::Pattern const& pattern);

// The left hand rests.
Laid resting(View const& view);

// Every playable voicing of a position, resting last. Each figure stands on every octave of its
// root. Where the levers do not give the chord's lowest note, and beside it over the bass of a
// slash chord, there are shapes of those strings that do sound tones of the chord, named by
// their degrees from the string of the chord's lowest note. Of voicings with the same notes at
// the same times only the first is kept. The order depends on nothing but the arguments.
std::vector<Laid> playableVoicings(View const& view, std::vector<Figure> const& figures,
                                   pattern::PatternBook const& book);

} // namespace arrange
