#pragma once

#include "core/harp/seats.h"
#include "core/levers/performance.h"
#include "core/levers/useindex.h"

#include <cstdint>
#include <optional>
#include <span>
#include <unordered_map>

namespace levers {

// A lever that must be turned between two notes of the tune.
struct Turn {
    harp::StringIndex string = 0;
    harp::Lever to = harp::Lever::Up;
    UseIndex after = 0;  // the string's last note before
    UseIndex before = 0; // its first note that wants the lever turned
    UseIndex by = 0;     // the note before which it must be turned: that one, or an earlier
                         // one that a neighbour plays and this string would sound as well
    bool returning = false;      // to where the string stood at the start
    bool quick = false;          // see Gap
    std::optional<UseIndex> heldTo{}; // a later note through which the old one rings on
    friend bool operator==(Turn const&, Turn const&) = default;
};

Gap gapOf(Turn const& turn, Uses const& notes, harp::Harp const& harp);

// The best windows of turns; each turn is asked once.
class BestWindows {
public:
    BestWindows(harp::Harp const& harp, Uses const& notes, Performance const& performance)
        : m_harp(harp), m_notes(notes), m_performance(performance)
    {}

    // None: there is no time for the turn. Holds until the next is asked for.
    std::optional<Window> const& of(Turn const& turn);

private:
    // What a window depends on.
    struct Key {
        harp::StringIndex string = 0;
        UseIndex after = 0;
        UseIndex by = 0;
        UseIndex heldTo = 0; // -1: none
        bool returning = false;
        bool quick = false;
        friend bool operator==(Key const&, Key const&) = default;
    };
    struct Hash {
        std::size_t operator()(Key const& key) const;
    };

    harp::Harp const& m_harp;
    Uses const& m_notes;
    Performance const& m_performance;
    std::unordered_map<Key, std::optional<Window>, Hash> m_windows;
};

} // namespace levers
