#include "core/proposal/barlist.h"

#include "core/base/words.h"

#include <fmt/format.h>

#include <iterator>
#include <vector>

namespace proposal {

std::string barList(tune::Tune const& tune, std::set<int> const& bars)
{
    if (bars.size() == 1) return tune::barName(tune, *bars.begin());
    std::vector<std::string> runs;
    for (auto bar = bars.begin(); bar != bars.end();) {
        auto last = bar;
        while (std::next(last) != bars.end() && *std::next(last) == *last + 1) ++last;
        auto const number = [&](int index) -> std::string {
            int const printed = tune.bars[static_cast<std::size_t>(index)].number;
            return printed == 0 ? base::said("pick-up") : std::to_string(printed);
        };
        runs.push_back(bar == last ? number(*bar) : number(*bar) + "-" + number(*last));
        bar = std::next(last);
    }
    constexpr std::size_t named = 8;
    if (runs.size() > named)
        return base::say("bars {} and in {} more places",
                         fmt::join(runs.begin(), runs.begin() + named, ", "),
                         runs.size() - named);
    if (runs.size() == 1) return base::say("bars {}", runs.front());
    return base::say("bars {} and {}", fmt::join(runs.begin(), runs.end() - 1, ", "),
                     runs.back());
}

} // namespace proposal
