#include "core/tune/drone.h"

namespace tune {

Tune overDrone(Tune tune)
{
    if (hasChords(tune)) return tune;
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
