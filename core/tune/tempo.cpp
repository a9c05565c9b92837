#include "core/tune/kind.h"

#include <algorithm>
#include <array>

namespace tune {

using music::Length;
using music::Rational;

Tempo usualTempo(Tune const& tune, int level)
{
    return tempoFor(kindOf(tune), tune.meter, level);
}

std::string tempoWords(Length beat, double quarters)
{
    struct BeatName {
        Rational length;
        std::string_view name;
    };
    constexpr std::array names{
        BeatName{{3, 4}, "dotted minims"},    BeatName{{1, 2}, "minims"},
        BeatName{{3, 8}, "dotted crotchets"}, BeatName{{1, 4}, "crotchets"},
        BeatName{{3, 16}, "dotted quavers"},  BeatName{{1, 8}, "quavers"}};
    auto const known = std::find_if(names.begin(), names.end(), [beat](BeatName const& n) {
        return n.length == beat.wholes;
    });
    bool const named = known != names.end();
    double const beats = named ? quarters / (beat.wholes * Rational(4)).toDouble() : quarters;
    // A hair is added so that a tempo met exactly is not rounded down by one.
    return std::to_string(static_cast<int>(beats + 1e-6)) + ' ' +
           std::string(named ? known->name : "crotchets") + " a minute";
}

} // namespace tune
