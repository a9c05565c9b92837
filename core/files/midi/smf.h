#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace files {

// The bytes of Standard MIDI Files 1.0, without any knowledge of the harp.

// Seven bits a byte, the high ones first, every byte but the last marked. Up to 0x0FFFFFFF.
std::string variableLength(std::uint32_t value);

// One track under construction. Events may be added in any order; at the same tick, meta events
// and programs come first, then ends of notes, then their beginnings.
class SmfTrack {
public:
    void name(std::string_view text);
    void marker(std::int64_t tick, std::string_view text);
    void tempo(std::int64_t tick, double quartersPerMinute);
    // `clocksAClick`: 24 a crotchet, for the metronome.
    void meter(std::int64_t tick, int beats, int unit, int clocksAClick);
    // Sharps in the signature, flats negative, -7 to 7.
    void key(std::int64_t tick, int sharps, bool minor);
    void program(int channel, int program);
    // A note that begins while its key still sounds on that channel ends the earlier one.
    void note(std::int64_t from, std::int64_t to, int channel, int key, int velocity);
    // The track lasts at least so long.
    void end(std::int64_t tick);

    std::string chunk() const; // MTrk

private:
    struct Event {
        std::int64_t tick = 0;
        int rank = 0; // at the same tick
        std::string bytes;
    };
    struct Note {
        int channel = 0;
        int key = 0;
        int velocity = 0;
        std::int64_t from = 0; // ticks
        std::int64_t to = 0;
    };
    void meta(std::int64_t tick, int type, std::string_view bytes);
    std::vector<Event> events() const;

    std::vector<Event> m_events;
    std::vector<Note> m_notes;
    std::int64_t m_end = 0;
};

// Format 1: the tracks are played together. `division` is ticks a crotchet, 1 to 32767.
std::string smf(int division, std::vector<SmfTrack> const& tracks);

} // namespace files
