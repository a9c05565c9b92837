#pragma once

#include "core/arrange/arrangement.h"
#include "core/arrange/scene.h"
#include "core/tune/kind.h"

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

// What the score sees of one position. Times are in whole notes from the start of the position,
// as doubles of exact fractions: equal times are equal numbers.
namespace arrange {

// A note of the tune that sounds during the position; it may begin before it and end after it.
struct TuneNote {
    double from = 0;
    double to = 0;
    music::Length at; // `from`, exact
    harp::StringIndex string = 0;
    int midi = 60;
    int strength = 0; // of the beat on which it begins, as music::beatStrength
    friend bool operator==(TuneNote const&, TuneNote const&) = default;
};

// A lever turned during the position or so near that a hand is still busy with it.
struct NearFlip {
    double at = 0;
    double freeFrom = 0;
    double freeTo = 0;
    harp::StringIndex string = 0;
    int midi = 60; // what the string sounds from `at` on
    harp::Side hand = harp::Side::Left;
    friend bool operator==(NearFlip const&, NearFlip const&) = default;
};

// One time the position is played.
struct PassView {
    std::vector<TuneNote> tune;     // by time, then from the lowest string
    base::List<harp::StringIndex, std::int16_t> midi; // as the position begins
    std::vector<NearFlip> flips;
    friend bool operator==(PassView const&, PassView const&) = default;
};

// How a position closes: nothing, a part of the tune, or the tune.
enum class Close { None, Part, Tune };

// The chord in numbers.
struct ChordView {
    std::array<bool, 12> tone{}; // by pitch class, bass included
    int root = 0;                // pitch class
    music::Letter rootLetter = music::Letter::C;
    int lowest = 0; // pitch class of the note that shapes stand on: the chord's lowest; the
                    // root where the levers give the bass of a slash chord nowhere
    music::Letter lowestLetter = music::Letter::C;
    bool slash = false;       // shapes stand on a bass that is not the root
    bool onTonic = false;     // built on the tonic of the key in force
    std::optional<int> third; // pitch class, where the chord has a third
    std::optional<int> fifth;
    std::optional<int> seventh;
    std::array<bool, 12> inScale{}; // of the key in force, by pitch class
    friend bool operator==(ChordView const&, ChordView const&) = default;
};

// Which of the times that its bar is played a position stands for.
struct Turn {
    int number = 1;
    int of = 1; // 1 where the position stands for all of them
    friend bool operator==(Turn const&, Turn const&) = default;
};

struct View {
    music::Meter meter;
    music::Length fromBar; // from the (full) bar's first beat to the position
    music::Length spanLength;
    double span = 1;
    double beat = 0.25; // a beat of this meter, in whole notes
    double secondsPerWhole = 2;
    ChordView chord;
    Close close = Close::None;
    bool endsPhrase = false; // the last position of a phrase of four bars, of a part or the tune
    tune::Kind kind = tune::Kind::Other;
    std::optional<double> pulse; // of the dance, in whole notes; none where it breathes
    bool upbeat = false;   // a pick-up, or the time of one before a part comes again: the left
                           // hand is free
    bool modeSure = false; // the tune has the key's third in one form only
    Turn turn;
    std::vector<PassView> passes; // at least one; equal passes stand once
    harp::Harp const* harp = nullptr;
    harp::HandModel const* hand = nullptr;
    harp::Level const* level = nullptr;
    pattern::PatternBook const* book = nullptr;
    Taste const* taste = nullptr;
    base::List<harp::StringIndex, double> ringSeconds;

    double seconds(double wholes) const { return wholes * secondsPerWhole; }

    // Positions with equal views have the same candidates at the same costs.
    friend bool operator==(View const&, View const&) = default;
};

// What a string sounds at a time within the position.
int midiAt(PassView const& pass, harp::StringIndex string, double at);

// How heavy a place within the position is, as music::beatStrength.
int strengthAt(View const& view, music::Length at);

// Notes of the tune that begin within the position.
int tuneOnsets(View const& view, PassView const& pass);

// The longest count of any note: how far back a note may begin that still sounds.
music::Length longestNote(tune::Playing const& playing);

View viewOf(Scene const& scene, Position const& position, music::Length longest);

} // namespace arrange
