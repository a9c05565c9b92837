#pragma once

#include "core/perform/course.h"
#include "core/perform/schedule.h"

#include <optional>
#include <vector>

namespace perform {

// The played bars of a passage, both inclusive.
struct Passage {
    tune::PlayedBarIndex first = 0;
    tune::PlayedBarIndex last = 0;
    friend bool operator==(Passage const&, Passage const&) = default;
};

// The passage between two bars by their printed numbers (0: the pick-up), as it is played first:
// repeats that lie within it are played. None: the tune has no such bars.
std::optional<Passage> passageOf(arrange::Arrangement const& arrangement, int firstBar,
                                 int lastBar);

// With a click on every beat of the bars that are heard, beside those of the count-in. The
// first beat of a bar is accented, the half bar a little.
Schedule withClicks(Schedule schedule, arrange::Arrangement const& arrangement,
                    Hearing const& hearing);

// A passage that is played faster by itself, in shares of the tempo.
struct Steps {
    double from = 0.6;
    double to = 1;
    double by = 0.05; // more than 0
    int every = 2;    // times round, at least 1
    friend bool operator==(Steps const&, Steps const&) = default;
};

// The tempo of round after round up to the first that has reached `to`; it never goes beyond
// it.
std::vector<double> temposOf(Steps const& steps);

// The same when the tempo is changed in the middle: up to and in round `now` it is `tempo`, and
// from there it goes on in the same steps.
std::vector<double> temposOf(Steps steps, int now, double tempo);

// The passage round after round, each as fast as `tempos` says (shares of the tempo; none: all
// as `hearing` says); `again`: the last one without end. Count-in and bar before are heard
// once, a click on every beat in every round where it is asked for; only the last of all slows.
struct Rounds {
    std::vector<double> tempos;
    bool again = false;
    bool clicks = false;
};
Course course(arrange::Arrangement const& arrangement, Hearing const& hearing,
              Rounds const& rounds);

} // namespace perform
