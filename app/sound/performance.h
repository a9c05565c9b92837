#pragma once

#include "app/sound/synth.h"
#include "core/perform/course.h"

#include <cstdint>
#include <memory>

namespace sound {

// How far a performance has come.
struct Progress {
    int round = 0;           // of the course
    perform::Seconds at = 0; // in the time of that round's schedule
    bool running = false;
};

// A course on its way through an instrument. Live sound and sound files are made by this same
// code, so that what is heard is what is written. An onset is placed at the nearest border of a
// block: never further off than half a block, 0.67 ms.
class Performance {
public:
    explicit Performance(std::unique_ptr<Instrument> instrument);
    explicit Performance(HarpSynth synth);

    // Goes on from a place. What rings there as well rings on; other strings are damped. The
    // last counted beat of a round leads to the first of the next; the last round runs until
    // the last string has faded.
    void begin(perform::Course course, perform::Place from);
    // Damps everything.
    void stop();
    // One string, outside the schedule.
    void pluck(harp::StringIndex string, int midi, int velocity);

    void render(float* left, float* right, int frames);
    Progress progress() const;

private:
    void startDue();
    void keepBeat(std::int64_t until);
    void startDue(perform::Schedule const& schedule, std::size_t& next, std::int64_t shift,
                  perform::Seconds end);
    void turn();
    bool playing() const { return !m_course.rounds.empty(); }

    std::unique_ptr<Instrument> m_instrument;
    perform::Course m_course; // without rounds: nothing is played
    int m_round = 0;
    std::size_t m_nextEvent = 0; // of this round
    std::size_t m_nextClick = 0;
    std::size_t m_nextGrace = 0; // of the next round, into this one's end
    std::size_t m_nextTuned = 0;
    std::int64_t m_nextClock = 0; // counts 24ths of a crotchet from where the round begins
    bool m_keepsBeat = false;
    std::int64_t m_frame = 0;    // of this round's schedule
    int m_inBlock = 0;           // frames of the synth's present block already written
};

} // namespace sound
