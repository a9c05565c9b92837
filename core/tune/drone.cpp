#include "core/tune/drone.h"

#include "core/music/typedchord.h"

#include <algorithm>

namespace tune {

Tune overDrone(Tune tune)
{
    bool const rests = std::ranges::all_of(tune.bars, [](Bar const& bar) {
        return std::ranges::all_of(
            bar.chords, [](ChordMark const& mark) { return music::isNoChord(mark.chord); });
    });
    if (!rests) return tune;
    // Where nothing but rests is asked of the left hand, there is nothing to rest from.
    for (Bar& bar : tune.bars) bar.chords.clear();
    std::optional<music::Key> drone;
    for (Bar& bar : tune.bars) {
        if (drone && drone->tonic == bar.key.tonic) continue;
        std::string const name = music::plain(bar.key.tonic) + "5";
        if (auto const chord = music::chordFrom(name)) {
            bar.chords.push_back({{}, *chord, name, std::nullopt});
            drone = bar.key;
        }
    }
    return tune;
}

} // namespace tune
