#pragma once

#include "core/perform/schedule.h"

#include <memory>
#include <vector>

namespace perform {

// Rounds that follow each other without a gap: where the last counted beat of one ends, the
// next one `begins`. What a round has before that, its grace notes, falls into the end of the
// round before it.
struct Course {
    std::vector<std::shared_ptr<Schedule const>> rounds; // none: nothing is played
    bool again = false;                                  // the last goes round and round

    Schedule const& round(int number) const;
    bool isLast(int number) const; // nothing follows this round
};

// Played once, or round and round.
Course onceOnly(Schedule schedule, bool again = false);

// A place in a course: in the time of the schedule of its round.
struct Place {
    int round = 0;
    Seconds at = 0;
    friend bool operator==(Place const&, Place const&) = default;
};

// Where a course is so many seconds after a place. Beyond the end of its last round it runs on.
Place placeAfter(Course const& course, Place from, Seconds elapsed);

// From the first count or note to where the last string has faded. A course without end: of its
// rounds, each once.
Seconds lengthOf(Course const& course);

// The place in `now` that is the same place of the music as `at` in `before`. Both schedules
// are of the same bars.
Seconds samePlace(Schedule const& before, Seconds at, Schedule const& now);

} // namespace perform
