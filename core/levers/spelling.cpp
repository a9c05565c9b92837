#include "core/levers/spelling.h"

#include "core/harp/placing.h"

namespace levers {

std::vector<SpeltByString> speltByString(arrange::Arrangement const& a)
{
    std::vector<SpeltByString> out;
    for (tune::PlayedNote const& note : a.playing.notes) {
        auto const string = harp::stringAtMoment(a.harp, a.levers, note.pitch, note.at);
        if (!string) continue;
        music::Pitch const plucked = harp::pitchAt(a.harp, a.levers, *string, note.at);
        if (plucked == note.pitch) continue;
        int const bar = a.playing.bars[static_cast<std::size_t>(note.playedBar)].bar;
        out.push_back({note.playedBar, {bar, note.note, note.ofChord, false}, *string, plucked,
                       note.pitch});
    }
    return out;
}

} // namespace levers
