#pragma once

#include "app/sound/synth.h"
#include "core/perform/schedule.h"

#include <cstdint>
#include <memory>

namespace sound {

// How far a performance has come.
struct Progress {
    int round = 0;           // times the loop has been begun again
    perform::Seconds at = 0; // in the time of the schedule
    bool running = false;
};

// A schedule on its way through the synth. Live sound and sound files are made by this same
// code, so that what is heard is what is written. An onset is placed at the nearest border of a
// block: never further off than half a block, 0.67 ms.
class Performance {
public:
    explicit Performance(HarpSynth synth);

    // Goes on from `from` without silencing what rings. With `loop`, the last counted beat
    // leads back to the first; without, it runs until the last string has faded.
    void begin(std::shared_ptr<perform::Schedule const> schedule, perform::Seconds from,
               bool loop);
    // Damps everything.
    void stop();
    // One string, outside the schedule.
    void pluck(int string, int midi, int velocity);

    void render(float* left, float* right, int frames);
    Progress progress() const;

private:
    void startDue();
    void turnBack();

    HarpSynth m_synth;
    std::shared_ptr<perform::Schedule const> m_schedule; // none: nothing is played
    std::size_t m_nextEvent = 0;
    std::size_t m_nextClick = 0;
    std::int64_t m_frame = 0; // of the schedule
    int m_inBlock = 0;        // frames of the synth's present block already written
    int m_round = 0;
    bool m_loop = false;
};

} // namespace sound
