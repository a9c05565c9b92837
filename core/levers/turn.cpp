#include "core/levers/turn.h"

#include "core/base/at.h"

namespace levers {

Gap gapOf(Turn const& turn, Uses const& notes, harp::Harp const& harp)
{
    tune::PlayedNote const& old = notes[turn.after];
    tune::PlayedNote const& next = notes[turn.by];
    harp::HarpString const& string = harp.string(turn.string);
    constexpr int middleC = 60;
    music::Moment ends = old.at + old.held;
    if (turn.heldTo) ends = notes[*turn.heldTo].at + notes[*turn.heldTo].held;
    return {turn.string,    old.at,         ends,
            next.at,        next.playedBar, music::midi(string.open) >= middleC,
            turn.returning, string.wound,   harp::ringSeconds(string),
            turn.quick};
}

std::size_t BestWindows::Hash::operator()(Key const& key) const
{
    std::size_t hash = 0;
    for (int const part : {key.string.value(), key.after.value(), key.by.value(),
                           key.heldTo.value(), int{key.returning}, int{key.quick}})
        hash = (hash ^ static_cast<std::size_t>(part)) * 0x9e3779b97f4a7c15u;
    return hash ^ (hash >> 32);
}

std::optional<Window> const& BestWindows::of(Turn const& turn)
{
    Key const key{turn.string,    turn.after, turn.by, turn.heldTo.value_or(UseIndex(-1)),
                  turn.returning, turn.quick};
    auto const known = m_windows.find(key);
    if (known != m_windows.end()) return known->second;
    return m_windows.emplace(key, m_performance.clock.bestWindow(gapOf(turn, m_notes, m_harp)))
        .first->second;
}

} // namespace levers
