#pragma once

#include "core/base/list.h"
#include "core/harp/stringindex.h"

namespace sound {

// What the strings that nobody plucked add: each answers where something sounds its own pitch or
// an octave or twelfth below, comes slowly and rings on. A bank of two-pole resonators, one a
// string, that the harp's sound runs through.
class Halo {
public:
    void setStrings(int count);
    void tune(harp::StringIndex string, double hz);
    // One that somebody plucked sounds by itself and answers nothing until it is free again.
    void pluck(harp::StringIndex string);
    void free(harp::StringIndex string);
    void setLevel(double level) { m_level = level; } // 0 to 1
    bool sounds() const { return m_level > 0; }

    // Adds to the sound what the strings answer to it.
    void add(float* left, float* right, int frames);
    void still();

private:
    struct String {
        double hz = 0; // 0: not there
        float feedback1 = 0;
        float feedback2 = 0;
        float input = 0;
        float free = 1;   // 0: plucked
        float before = 0; // output, one and two frames ago
        float before2 = 0;
    };
    base::List<harp::StringIndex, String> m_strings;
    double m_level = 0;
};

} // namespace sound
