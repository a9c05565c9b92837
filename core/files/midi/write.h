#pragma once

#include "core/arrange/arrangement.h"
#include "core/perform/slowing.h"
#include "core/perform/tuneset.h"

#include <string>

namespace files {

// Standard MIDI File 1.0, format 1: title, tempo, meter and key on the first track, right hand
// and left hand on tracks of their own, harp sound. Bytes. Notes last as long as the player
// counts them, at the exact places of the sheet: rolls are not spread and grace notes left out,
// so that other programs can write the notes down again. A pick-up has a bar of its own length,
// so that bar lines fall where they stand in the tune. A final slowing is written as tempos:
// one at every onset and at eight places a beat, each the mean up to the next, so that onsets
// come when perform::scheduled has them (rounding: a microsecond a crotchet) and what lies
// between, as a metronome's beats may, within 10 ms of there.
std::string midiFile(arrange::Arrangement const& arrangement, perform::Slowing slowing = {});

// A set as one file: each tune with its title as a marker, its tempo, meter and key, behind the
// pause that the levers need, which is counted in the beat of the tune before. The last tune
// alone slows.
std::string midiFile(perform::PlayedSet const& set, perform::Slowing slowing = {});

} // namespace files
