#pragma once

#include "core/harp/hand.h"
#include "core/harp/levers.h"
#include "core/tune/playing.h"
#include "core/tune/tune.h"

#include <compare>
#include <cstdint>
#include <optional>
#include <vector>

namespace levers {

// A stretch of one string between two notes that want its lever differently.
struct Gap {
    harp::StringIndex string = 0;
    music::Moment plucked;  // the last note of the old pitch
    music::Moment ends;     // where that note is counted out
    music::Moment wanted;   // the first note of the new pitch
    tune::PlayedBarIndex playedBar = 0; // of that first note
    bool high = true;       // at or above middle C: within easy reach of the right hand
    bool returning = false; // the lever goes back to where it stood at the start
    bool stiff = false;     // a wound string: its lever is stiff and scrapes [trade-3.6]
    double ringSeconds = 0; // in which the string's ring falls by 60 dB
    bool quick = false; // the left hand waits at the lever: see Clock::windows
    friend auto operator<=>(Gap const&, Gap const&) = default;
};

// One way to turn a lever in a gap, and how little it suits (lower is better).
struct Window {
    music::Moment freeFrom;
    music::Moment freeTo;
    music::Moment at;
    harp::Side hand = harp::Side::Left;
    harp::StringIndex string = 0;
    int cost = 0;
    int leftCost = 0; // the part of it that stands for what the left hand gives up
    friend bool operator==(Window const&, Window const&) = default;
};

// When the hands are free in one performance of a tune: its beats, its plucks, and what one
// flip asks for at the level and tempo. Built once and asked for every gap.
class Clock {
public:
    Clock(tune::Tune const& tune, tune::Playing const& playing, tune::Tempo tempo,
          harp::Level const& level);

    // How long a string must be silent for its lever to be turned in that bar: a quarter of the
    // free time, the rest of which is for reaching it, and never under half the level's least
    // time.
    music::Length turningTime(tune::PlayedBarIndex playedBar) const;

    // Every window of the gap, on a grid of half beats, in the order of time. In a window the
    // hand is free for the free time, which ends no later than the new pluck; it may reach for
    // the lever while the other hand still holds the old note. The lever is turned once the old
    // note is counted out, or, where that leaves less than the turning time, after half the old
    // note, which is then damped. The right hand serves where the tune plucks nothing inside
    // the window. None at a level without flips. Costs: the beats that the left hand gives up,
    // or the reach of the right; a note cut short, haste, a ring that is damped by touch, a
    // stiff lever; and how long the string stands away from its set-up.
    // In a quick gap the left hand plucks one low note on a beat and then waits at the lever, so
    // that half the level's least time of silence is enough: its windows begin on a beat and end
    // with the new pluck, and it has the least time of the level between the two.
    std::vector<Window> windows(Gap const& gap) const;

    // Whether there is any.
    bool hasWindow(Gap const& gap) const;

    // How long a string is silent in a gap where its old note is damped after half its count.
    music::Length silence(Gap const& gap) const;

    // The cheapest window, the first among equals: the same as the least of windows().
    std::optional<Window> bestWindow(Gap const& gap) const;

private:
    using Tick = std::int64_t;
    using PerBar = base::List<tune::PlayedBarIndex, Tick>;

    struct Mark {
        Tick at = 0;
        int weightBefore = 0; // of all marks before this one, added up
        int weight = 0;       // what it costs to keep the left hand from plucking here
    };

    // A window in ticks.
    struct Offer {
        Tick from = 0, to = 0, at = 0;
        harp::Side hand = harp::Side::Left;
        int cost = 0, leftCost = 0;
    };

    Window window(Offer const& offer, harp::StringIndex string) const;
    Tick tick(music::Moment moment) const;
    music::Moment moment(Tick tick) const;
    int blocked(Tick from, Tick to) const;
    int plucksInside(Tick from, Tick to) const;
    template<typename Visit>
    void eachWindow(Gap const& gap, Visit visit) const;

    bool m_flips = true;
    Tick m_ticksPerWhole = 1;
    double m_ticksPerSecond = 1;
    std::vector<Mark> m_marks; // half beats
    std::vector<Tick> m_plucks;
    PerBar m_free;               // for each played bar
    PerBar m_turning;            // likewise
    PerBar m_beat;               // likewise
    Tick m_least = 0;            // the level's least time
};

} // namespace levers
