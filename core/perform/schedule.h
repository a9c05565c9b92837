#pragma once

#include "core/arrange/arrangement.h"
#include "core/perform/lilt.h"
#include "core/perform/slowing.h"

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
    harp::StringIndex string = 0;
    int midi = 60;     // what sounds as the levers stand
    int velocity = 80; // 1 to 127
    harp::Side hand = harp::Side::Right;
    std::optional<arrange::PlayedPositionIndex> position; // of a left-hand note
    friend bool operator==(Event const&, Event const&) = default;
};

// How hard a note is plucked, 1 to 127: the tune above the left hand, strong beats a little
// above the others.
int velocityOf(arrange::Arrangement const& arrangement, arrange::HandNote const& note);

// The same with the hands balanced; never silent.
int balanced(int velocity, harp::Side hand, double balance);

// Where the beat is in a roll: at its last note, so that the top sings in time, or at its first.
enum class RollOn {
    AsKind, // airs on the last, dances on the first
    First,
    Last
};

// What to hear of an arrangement, and how.
struct Hearing {
    tune::PlayedBarIndex firstPlayedBar = 0;
    std::optional<tune::PlayedBarIndex> lastPlayedBar; // inclusive; none: to the end
    double tempoScale = 1.0; // 0.25 to 1.5
    bool left = true;        // false: the left hand is muted
    bool right = true;
    bool barBefore = false;  // the bar before is heard first, where there is one
    bool countIn = false;    // a bar of clicks before, two where a bar lasts under 1.5 s; a
                             // pick-up takes the place of its beats [science-9]
    bool added = true;       // false: the tune alone in the right hand, no note that was added
    double balance = 0;      // -1 to 1: above 0 the left hand is plucked softer, below the right
    Lilt lilt;               // how even beats are played
    Slowing slowing;         // at the end of the tune, where that is heard
    Seconds rollGap = 0.045; // between the notes of a roll; the whole roll stays within 0.35 s,
                             // a third of a beat and half of its own length [science-9]
    RollOn rollOn = RollOn::AsKind;
};

struct BarStart {
    tune::PlayedBarIndex playedBar = 0;
    Seconds at = 0;
};

struct Click {
    Seconds at = 0;
    bool accented = false; // the first beat of a bar
    bool halfBar = false;  // the half bar, of meters with an even number of beats
};

// What a string sounds from here on, as its lever stands.
struct Tuned {
    Seconds at = 0;
    harp::StringIndex string = 0;
    int midi = 60;
};

// Events in order of time; at the same time damps come before plucks, low strings first.
struct Schedule {
    std::vector<Event> events;
    std::vector<BarStart> bars;
    std::vector<Click> clicks;
    std::vector<Tuned> tuned; // every string at the beginning, then each flip
    Seconds crotchet = 0;     // how long one lasts in time; 0: nobody counts
    double from = 0;          // whole notes from the start of the performance to `begins`
    SlowedTime slowed;        // how much longer they last at the end
    Seconds begins = 0;  // the first counted beat, after count-in, bar before and grace notes
    Seconds counted = 0; // where the last counted beat ends: a loop goes on from `begins`
    Seconds ringing = 0; // where the last string has faded
};

// The arrangement as sound. Rolls go from low to high. Grace
// notes are plucked just before their note, in time taken from the note before; one that no
// string sounds as the levers stand is left out. Staccato changes nothing: a string rings until
// it is plucked again or its lever turns.
Schedule scheduled(arrange::Arrangement const& arrangement, Hearing const& hearing);

// Where so many crotchets have been counted from `begins` on.
Seconds afterCrotchets(Schedule const& schedule, double crotchets);

// The slowing that is heard: none where the end of the tune is not.
SlowedTime slowedTime(arrange::Arrangement const& arrangement, Hearing const& hearing);

} // namespace perform
