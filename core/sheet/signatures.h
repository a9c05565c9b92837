#pragma once

#include "core/music/key.h"
#include "core/music/meter.h"
#include "core/sheet/pen.h"
#include "core/sheet/staffplace.h"

namespace sheet {

// Clefs, key signatures and time signatures: each draws at x and answers its width; a null pen
// only measures.
double drawClef(Pen& pen, Clef clef, double x);
double clefWidth(Clef clef, MusicFont const& font);

// Staff steps of the accidentals of a signature, in order: the fixed places of the treble clef,
// two steps lower in the bass [gould11].
std::vector<int> signatureSteps(int signature, Clef clef);

// A change of key shows naturals only where nothing else would be shown: when the new key has
// no signature.
struct KeySign {
    int signature = 0;
    int naturalsOf = 0; // the old signature that is taken back, 0: none
};
KeySign keySign(int newSignature, int oldSignature);
void drawKeySign(Pen& pen, KeySign sign, Clef clef, double x);
double keySignWidth(KeySign sign, MusicFont const& font);

void drawMeter(Pen& pen, music::Meter meter, double x);
double meterWidth(music::Meter meter, MusicFont const& font);

} // namespace sheet
