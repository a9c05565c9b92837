#pragma once

namespace ui {

// How a passage is practised, beside its tempo and the hands that are heard.
struct Practice {
    bool barBefore = false; // heard first, before the passage
    bool clicks = false;    // on every beat, all the time
    int rollGapMs = 45;     // between two strings of a rolled chord
    bool faster = false;    // by itself, from round to round
    int from = 60;          // per cent of the tempo
    int to = 100;
    int by = 5;
    int every = 2; // times round
    int lilt = 0;  // per cent: how unevenly the beat is divided, where the page is even
    int slowing = 0;          // per cent of what is usual for the kind of tune, at its end
    bool waits = false;       // a round that is faster begins when it is asked for
    bool tuneAlone = false;   // no notes of the right hand but the tune's
    int balance = 0;          // per cent: above 0 the left hand is softer, below the right
    bool listens = false;     // to a MIDI instrument that plays along
    bool rightString = false; // and goes on only when the right strings were played
    friend bool operator==(Practice const&, Practice const&) = default;
};

} // namespace ui
