#pragma once

#include "core/base/row.h"
#include "core/music/time.h"

#include <string>
#include <vector>

namespace arrange {

// One left-hand note of a voicing.
struct VoicedNote {
    music::Length at;   // from the start of the position
    music::Length held; // how long the player counts it
    harp::StringIndex string = 0;
    int finger = 4;
    int degree = 1;
    int rollOrder = 0; // 0 when plucked on time; 1, 2 ... the place in a roll, low to high
    friend bool operator==(VoicedNote const&, VoicedNote const&) = default;
};

// A pattern laid on real strings at real times. No notes: the left hand rests here.
struct Voicing {
    std::string pattern; // its name, "1-5-8"; "rest" when empty
    harp::StringIndex rootString = 0;
    std::string rhythm; // name of the rhythm
    bool rolled = false;
    base::Row<VoicedNote> notes; // by time, then from the lowest string
    friend bool operator==(Voicing const&, Voicing const&) = default;
};

} // namespace arrange
