#pragma once

#include "app/sound/voice.h"
#include "core/arrange/arrangement.h"
#include "core/base/result.h"
#include "core/perform/course.h"
#include "core/perform/danceways.h"
#include "core/perform/practice.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace app {

// What is to be heard in a sound file, and how; what is played stays the same.
struct SoundWish {
    double at = 1; // of the tempo, 0.25 to 1.5
    std::optional<std::pair<int, int>> passage = {}; // first and last bar, as printed
    bool left = true;
    bool right = true;
    bool countIn = false;
    bool click = false;
    int times = 1;
    sound::Voice voice;
    bool pack = false; // four files for practice
    int lilt = 0;      // per cent: how unevenly a dance divides its beats
    std::optional<perform::Steps> steps = {}; // instead of `at` and `times`
    bool tuneAlone = false; // the right hand without what was added to the tune
    bool barBefore = false; // heard first
    int balance = 0;        // per cent, as perform::Hearing has it
    int rollGapMs = 45;
    std::optional<int> slowing = {}; // per cent of the most at its end, perform::slowingFor
    friend bool operator==(SoundWish const&, SoundWish const&) = default;
};

// "60%" or "60", 25 to 150. Fault: BadCall.
base::Result<double> tempoShareFrom(std::string const& text);
// "5-8" or "5". Fault: BadCall.
base::Result<std::pair<int, int>> passageFrom(std::string const& text);

// "60-100/5x2": from 60 to 100 % of the tempo by 5, each twice; "60-100/5": each once. Fault:
// BadCall.
base::Result<perform::Steps> stepsFrom(std::string const& text);

// The arrangement as it is to be heard; a kind of tune without lilt or slowing has none. Fault:
// BadCall where it has no such bars.
base::Result<perform::Course> heard(arrange::Arrangement const& arrangement,
                                    SoundWish const& wish, perform::DanceWays const& ways);

} // namespace app
