#pragma once

#include "core/arrange/arrangement.h"
#include "core/perform/lilt.h"

#include <optional>
#include <vector>

namespace perform {

// Seconds begin here; everything above counts in whole notes.
using Seconds = double;

// How long a length sounds. Ask for every onset afresh: adding up rounded lengths drifts.
Seconds secondsOf(music::Length length, tune::Tempo tempo, double tempoScale = 1.0);

// One thing a string does. Strings ring on until they are plucked again or muffled.
struct Event {
    enum class Kind { Pluck, Damp };
    Seconds at = 0;
    Kind kind = Kind::Pluck;
    int string = 0;
    int midi = 60;     // what sounds as the levers stand
    int velocity = 80; // 1 to 127
    harp::Side hand = harp::Side::Right;
    std::optional<int> position; // of a left-hand note: index into arrange::playedPositions
    friend bool operator==(Event const&, Event const&) = default;
};

// How hard a note is plucked, 1 to 127: the tune above the left hand, strong beats a little
// above the others.
int velocityOf(arrange::Arrangement const& arrangement, arrange::HandNote const& note);

// What to hear of an arrangement, and how.
struct Hearing {
    int firstPlayedBar = 0;
    int lastPlayedBar = -1;  // inclusive; -1: to the end
    double tempoScale = 1.0; // 0.25 to 1.5
    bool left = true;        // false: the left hand is muted
    bool right = true;
    bool barBefore = false;  // the bar before is heard first, where there is one
    bool countIn = false;    // a bar of clicks before, two where a bar lasts under 1.5 s; a
                             // pick-up takes the place of its beats [science-9]
    Lilt lilt;               // how even beats are played
    Seconds rollGap = 0.045; // between the notes of a roll; the whole roll stays within 0.35 s,
                             // a third of a beat and half of its own length [science-9]
};

struct BarStart {
    int playedBar = 0;
    Seconds at = 0;
};

struct Click {
    Seconds at = 0;
    bool accented = false; // the first beat of a bar
    bool halfBar = false;  // the half bar, of meters with an even number of beats
};

// Events in order of time; at the same time damps come before plucks, low strings first.
struct Schedule {
    std::vector<Event> events;
    std::vector<BarStart> bars;
    std::vector<Click> clicks;
    Seconds begins = 0;  // the first counted beat, after count-in, bar before and grace notes
    Seconds counted = 0; // where the last counted beat ends: a loop goes on from `begins`
    Seconds ringing = 0; // where the last string has faded
};

// The arrangement as sound. Rolls go from low to high with the first note on the beat. Grace
// notes are plucked just before their note, in time taken from the note before; one that no
// string sounds as the levers stand is left out. Staccato changes nothing: a string rings until
// it is plucked again or its lever turns.
Schedule scheduled(arrange::Arrangement const& arrangement, Hearing const& hearing);

} // namespace perform
