#pragma once

#include "core/tune/kind.h"
#include "core/tune/tune.h"

#include <cstdint>
#include <string>
#include <vector>

// The harper's own tunes: what a list says of each tune of each of her files, and how one is
// found there. (Her harps, patterns and the like are tables, which core/files reads.)
namespace collection {

// One of the notes that a tune begins with: the place of its string, and the key it sounds.
struct FirstNote {
    int step = 35; // as music::diatonicStep
    int midi = 60;
    friend bool operator==(FirstNote const&, FirstNote const&) = default;
};

// So many are kept: enough to begin a few notes later than the tune does.
inline constexpr std::size_t openingLength = 24;

// What a list tells of one tune.
struct TuneEntry {
    int number = 1; // X: of a tunebook
    std::string title;
    std::string otherTitles;                   // one after the other, with "; " between
    std::string kind;                          // as the file says it; empty where it says none
    tune::Kind likelyKind = tune::Kind::Other; // as tune::kindOf tells it
    music::Key key;
    music::Meter meter;
    int bars = 0; // pick-ups are not counted
    bool chords = false;
    int pickUp = 0;                 // how many of the first notes stand before bar 1
    std::vector<FirstNote> opening; // the highest of what begins together, ties joined
    std::string unreadable;         // why the tune cannot be read; then all else is of its head
    friend bool operator==(TuneEntry const&, TuneEntry const&) = default;
};

TuneEntry entryOf(tune::Tune const& tune);

// "slip jig": as the file says it, else what its notes sound like; empty where nothing tells.
std::string kindWords(TuneEntry const& entry);

// One file, as it was when it was read.
struct FileEntry {
    std::string path;
    std::int64_t time = 0;    // of its last change, as the system counts
    std::uint64_t size = 0;   // bytes
    bool arrangement = false; // a saved arrangement, .sallow
    bool passedOver = false;  // a text that is no tune, as may lie among tunes
    std::string unreadable;   // why; empty: it can be read
    std::vector<TuneEntry> tunes;
    friend bool operator==(FileEntry const&, FileEntry const&) = default;
};

} // namespace collection
