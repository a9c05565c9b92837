#include "core/harp/placing.h"

#include <array>

namespace harp {

namespace {

// Strings that may sound like the pitch: its own letter, the one below (B for C flat), the one
// above (C for B sharp).
std::array<int, 3> nearStrings(Harp const& harp, music::Pitch pitch)
{
    int const own = music::diatonicStep(pitch) - music::diatonicStep(harp.string(0).open);
    return {own, own - 1, own + 1};
}

bool isString(Harp const& harp, int index) { return index >= 0 && index < harp.count(); }

} // namespace

std::vector<Seat> seats(Harp const& harp, music::Pitch pitch)
{
    std::vector<Seat> out;
    if (harp.count() == 0) return out;
    for (int const index : nearStrings(harp, pitch)) {
        if (!isString(harp, index)) continue;
        HarpString const& string = harp.string(index);
        if (music::midi(sounding(string, Lever::Down)) == music::midi(pitch))
            out.push_back({index, Lever::Down});
        else if (string.hasLever &&
                 music::midi(sounding(string, Lever::Up)) == music::midi(pitch))
            out.push_back({index, Lever::Up});
    }
    return out;
}

std::optional<Seat> placeOf(Harp const& harp, music::Pitch pitch)
{
    auto const all = seats(harp, pitch);
    if (all.empty()) return std::nullopt;
    return all.front();
}

std::optional<int> stringAtMoment(Harp const& harp, LeverTimeline const& levers,
                                  music::Pitch pitch, music::Moment at)
{
    for (Seat const& seat : seats(harp, pitch))
        if (leverAt(levers, seat.string, at) == seat.lever) return seat.string;
    return std::nullopt;
}

std::optional<int> stringForKey(Harp const& harp, LeverSetting const& levers, int midiKey)
{
    std::optional<int> found;
    for (int index = 0; index < harp.count(); ++index) {
        Lever const lever = levers[static_cast<std::size_t>(index)];
        if (music::midi(sounding(harp.string(index), lever)) != midiKey) continue;
        if (!found || lever == Lever::Down) found = index;
    }
    return found;
}

} // namespace harp
