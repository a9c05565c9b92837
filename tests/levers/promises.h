#pragma once

#include "core/harp/hand.h"
#include "core/harp/seats.h"
#include "core/tune/playing.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <map>

// What every lever plan promises, checked from the outside: by the tune's own notes and the
// flips, knowing nothing of how they were found.
namespace promises {

inline bool rightHandPlucksIn(std::vector<tune::PlayedNote> const& notes,
                              harp::Flip const& flip)
{
    return std::any_of(notes.begin(), notes.end(), [&flip](tune::PlayedNote const& note) {
        return flip.freeFrom < note.at && note.at < flip.freeTo;
    });
}

// No flip while a note on its string is still to be counted for its first half.
inline bool turnsUnderNote(std::vector<tune::PlayedNote> const& notes,
                           std::vector<int> const& strings, harp::Flip const& flip)
{
    for (std::size_t i = 0; i < notes.size(); ++i)
        if (strings[i] == flip.string && notes[i].at <= flip.at &&
            flip.at < notes[i].at + notes[i].held * music::Rational(1, 2))
            return true;
    return false;
}

inline double seconds(music::Length length, double quarters)
{
    return length.wholes.toDouble() * 240 / quarters;
}

inline void check(harp::Harp const& harp, tune::Tune const& tune,
                  harp::LeverTimeline const& plan, harp::Level const& level, double quarters)
{
    auto const playing = tune::played(tune);
    std::vector<int> strings;
    for (tune::PlayedNote const& note : playing.notes) {
        auto const string = stringAtMoment(harp, plan, note.pitch, note.at);
        REQUIRE(string);
        CHECK(midi(pitchAt(harp, plan, *string, note.at)) == midi(note.pitch));
        strings.push_back(*string);
    }

    std::map<int, harp::Lever> now;
    for (harp::StringIndex const i : harp.indices()) now[i] = plan.setup[i];
    for (std::size_t i = 0; i < plan.flips.size(); ++i) {
        harp::Flip const& flip = plan.flips[i];
        CAPTURE(i, flip.string);
        CHECK(harp.string(flip.string).hasLever);
        CHECK(now[flip.string] != flip.to); // turned, not touched
        now[flip.string] = flip.to;
        if (i > 0) CHECK(plan.flips[i - 1].at <= flip.at);
        CHECK(flip.freeFrom < flip.at);
        CHECK(flip.at < flip.freeTo);
        CHECK(seconds(flip.freeTo - flip.freeFrom, quarters) >= level.flipFreeSeconds - 1e-9);
        auto const& bar = playing.bars[flip.playedBar];
        CHECK(bar.at <= flip.at);
        if (playing.bars.holds(flip.playedBar + 1))
            CHECK(flip.at < playing.bars[flip.playedBar + 1].at);
        auto const beat = beatLength(tune.bars[bar.bar].meter);
        if (tune.bars.front().meter == tune.bars.back().meter)
            CHECK(((flip.freeTo - flip.freeFrom) / beat).toDouble() >=
                  level.flipFreeBeats - 1e-9);
        if (flip.hand == harp::Side::Right) CHECK_FALSE(rightHandPlucksIn(playing.notes, flip));
        CHECK_FALSE(turnsUnderNote(playing.notes, strings, flip));
        for (std::size_t j = 0; j < i; ++j)
            if (plan.flips[j].hand == flip.hand && plan.flips[j].string != flip.string)
                CHECK((plan.flips[j].freeTo <= flip.freeFrom ||
                       flip.freeTo <= plan.flips[j].freeFrom));
    }
}

} // namespace promises
