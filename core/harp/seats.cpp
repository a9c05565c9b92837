#include "core/harp/seats.h"

#include <array>

namespace harp {

namespace {

// Strings that may sound like the pitch: its own letter, the one below (B for C flat), the one
// above (C for B sharp).
std::array<StringIndex, 3> nearStrings(Harp const& harp, music::Pitch pitch)
{
    StringIndex const own(music::diatonicStep(pitch) -
                          music::diatonicStep(harp.string(0).open));
    return {own, own - 1, own + 1};
}

} // namespace

std::vector<Seat> seats(Harp const& harp, music::Pitch pitch)
{
    std::vector<Seat> out;
    if (harp.count() == 0) return out;
    for (StringIndex const index : nearStrings(harp, pitch)) {
        if (!harp.strings().holds(index)) continue;
        HarpString const& string = harp.string(index);
        if (music::midi(sounding(string, Lever::Down)) == music::midi(pitch))
            out.push_back({index, Lever::Down});
        else if (string.hasLever &&
                 music::midi(sounding(string, Lever::Up)) == music::midi(pitch))
            out.push_back({index, Lever::Up});
    }
    return out;
}

std::optional<Seat> seatOf(Harp const& harp, music::Pitch pitch)
{
    auto const all = seats(harp, pitch);
    if (all.empty()) return std::nullopt;
    return all.front();
}

std::optional<StringIndex> stringAtMoment(Harp const& harp, LeverTimeline const& levers,
                                          music::Pitch pitch, music::Moment at)
{
    for (Seat const& seat : seats(harp, pitch))
        if (leverAt(levers, seat.string, at) == seat.lever) return seat.string;
    return std::nullopt;
}

std::optional<StringIndex> stringForKey(Harp const& harp, LeverSetting const& levers,
                                        int midiKey)
{
    std::optional<StringIndex> found;
    for (StringIndex const index : harp.indices()) {
        Lever const lever = levers[index];
        if (music::midi(sounding(harp.string(index), lever)) != midiKey) continue;
        if (!found || lever == Lever::Down) found = index;
    }
    return found;
}

} // namespace harp
