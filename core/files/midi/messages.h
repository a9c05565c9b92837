#pragma once

// Numbers of MIDI 1.0, of Standard MIDI Files 1.0 and of General MIDI 1, programs and keys
// counted from 0.
namespace files::midi {

// Status bytes; the first three for channel 0.
inline constexpr int noteOff = 0x80;
inline constexpr int noteOn = 0x90;
inline constexpr int programChange = 0xC0;
inline constexpr int timingClock = 0xF8;
inline constexpr int start = 0xFA;
inline constexpr int goOn = 0xFB;
inline constexpr int stop = 0xFC;
inline constexpr int metaEvent = 0xFF; // in files

// Of meta events.
inline constexpr int trackName = 0x03;
inline constexpr int marker = 0x06;
inline constexpr int endOfTrack = 0x2F;
inline constexpr int setTempo = 0x51;
inline constexpr int timeSignature = 0x58;
inline constexpr int keySignature = 0x59;

inline constexpr int usualReleaseVelocity = 64;

inline constexpr int harpProgram = 46; // Orchestral Harp, number 47 counted from 1
inline constexpr int percussionChannel = 9;
inline constexpr int highWoodBlock = 76;
inline constexpr int lowWoodBlock = 77;

} // namespace files::midi
