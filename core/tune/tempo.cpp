#include "core/tune/kind.h"

#include "core/base/words.h"

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
    constexpr std::array names{BeatName{{3, 4}, base::marked("dotted minims")},
                               BeatName{{1, 2}, base::marked("minims")},
                               BeatName{{3, 8}, base::marked("dotted crotchets")},
                               BeatName{{1, 4}, base::marked("crotchets")},
                               BeatName{{3, 16}, base::marked("dotted quavers")},
                               BeatName{{1, 8}, base::marked("quavers")}};
    auto const known = std::find_if(names.begin(), names.end(), [beat](BeatName const& n) {
        return n.length == beat.wholes;
    });
    bool const named = known != names.end();
    double const beats = named ? quarters / (beat.wholes * Rational(4)).toDouble() : quarters;
    // A hair is added so that a tempo met exactly is not rounded down by one.
    return base::say("{} {} a minute", static_cast<int>(beats + 1e-6),
                     base::said(named ? known->name : "crotchets"));
}

} // namespace tune
