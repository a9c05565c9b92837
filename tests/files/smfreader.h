#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

// A reader of Standard MIDI Files written for the tests alone, from the standard and not from
// the writer. Throws std::runtime_error where the bytes break a rule.
namespace smfreader {

struct Event {
    std::int64_t tick = 0;
    int status = 0;   // 0xFF for meta events
    int metaType = 0; // of meta events
    std::string data; // the bytes after status, or of the meta event
    int byte(std::size_t index) const { return static_cast<unsigned char>(data.at(index)); }
};

struct File {
    int format = 0;
    int division = 0;
    std::vector<std::vector<Event>> tracks; // the end of track included
};

File read(std::string_view bytes);

// The meta events of one type on a track.
std::vector<Event> metas(std::vector<Event> const& track, int type);

// Notes with their ends found: an error where one has no end or is begun twice.
struct Note {
    std::int64_t from = 0;
    std::int64_t to = 0;
    int channel = 0;
    int key = 0;
    int velocity = 0;
    friend bool operator==(Note const&, Note const&) = default;
};
std::vector<Note> notes(std::vector<Event> const& track);

} // namespace smfreader
