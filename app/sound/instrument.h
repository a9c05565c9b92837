#pragma once

#include "core/harp/levers.h"

#include <set>

namespace sound {

// How hard a wood block is struck.
enum class Stress { Beat, HalfBar, Bar };

// What a performance is played on: a harp that is heard, or one at the other end of a cable.
class Instrument {
public:
    virtual ~Instrument() = default;

    // Plucks a string, which stops whatever it still sounded. `midi` is the key that sounds as
    // the lever stands, `velocity` 1 to 127.
    virtual void pluck(harp::StringIndex string, int midi, int velocity, harp::Side hand) = 0;
    virtual void damp(harp::StringIndex string) = 0;
    virtual void dampAllBut(std::set<harp::StringIndex> const& strings) = 0;
    virtual void click(Stress stress) = 0;
    // What a string would sound, as its lever stands now.
    virtual void tuned(harp::StringIndex /*string*/, int /*midi*/) {}
    // The beat is kept: it begins or goes on, a 24th of a crotchet has passed, it ends.
    virtual void beatBegins(bool /*fromTheStart*/) {}
    virtual void beatClock() {}
    virtual void beatEnds() {}
    // The next frames of sound, full scale 1; nothing is written where none is made here.
    virtual void write(float* left, float* right, int frames) = 0;
};

} // namespace sound
