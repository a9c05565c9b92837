#include "core/levers/notechoice.h"

namespace levers {

namespace {

// A note away from the string of its own letter has to be marked and learnt. Common practice,
// no source.
constexpr std::int64_t awayFromLetterCost = 30;

} // namespace

std::vector<NoteOption> optionsOf(harp::Harp const& harp, music::Pitch pitch,
                                  NoteChoice const* choice)
{
    std::vector<NoteOption> out;
    auto const seatAll = [&](music::Pitch sounds, std::int64_t cost, std::optional<int> way,
                             bool quick) {
        auto const seats = harp::seats(harp, sounds);
        for (harp::Seat const& seat : seats)
            out.push_back({seat, seats.front(),
                           cost + (seat == seats.front() ? 0 : awayFromLetterCost), way, quick,
                           std::nullopt});
    };
    if (!choice || choice->asWritten) seatAll(pitch, 0, std::nullopt, false);
    if (!choice) return out;
    for (std::size_t w = 0; w < choice->ways.size(); ++w) {
        NoteWay const& way = choice->ways[w];
        int const index = static_cast<int>(w);
        if (way.sounds)
            seatAll(*way.sounds, way.cost, index, way.way == tune::Way::LeftLightened);
        else
            out.push_back({std::nullopt,
                           {},
                           way.cost,
                           index,
                           false,
                           way.way == tune::Way::Held ? choice->before : std::nullopt});
    }
    return out;
}

} // namespace levers
