#include "core/arrange/positions.h"

#include <algorithm>

namespace arrange {

namespace {

bool soundsOn(tune::ChordSpan const& span, tune::PlayedBar const& bar)
{
    return bar.bar == span.bar && (!span.pass || *span.pass == bar.pass);
}

Occurrence occurrenceIn(tune::Playing const& playing, std::size_t bar, music::Length at)
{
    tune::PlayedBar const& played = playing.bars[bar];
    return {static_cast<int>(bar), played.pass, played.at + at};
}

} // namespace

std::vector<Position> positionsAsWritten(tune::Tune const& tune, tune::Playing const& playing)
{
    std::vector<Position> positions;
    for (tune::ChordSpan const& span : tune::chordSpans(tune)) {
        Position position{span.bar, span.at, span.length, span.chord, {}};
        for (std::size_t b = 0; b < playing.bars.size(); ++b)
            if (soundsOn(span, playing.bars[b]))
                position.played.push_back(occurrenceIn(playing, b, span.at));
        if (!position.played.empty()) positions.push_back(std::move(position));
    }
    return positions;
}

std::vector<Position> positionsByPass(tune::Tune const& tune, tune::Playing const& playing)
{
    std::vector<Position> positions;
    for (Position const& written : positionsAsWritten(tune, playing)) {
        for (Occurrence const& when : written.played) {
            positions.push_back(written);
            positions.back().played = {when};
        }
    }
    std::ranges::stable_sort(positions, {},
                             [](Position const& p) { return p.played.front().at; });
    return positions;
}

} // namespace arrange
