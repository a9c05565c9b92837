#include "core/proposal/barlist.h"

#include "core/base/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <vector>

namespace proposal {

std::string barList(tune::Tune const& tune, std::set<tune::BarIndex> const& bars)
{
    if (bars.size() == 1) return tune::barName(tune, *bars.begin());
    std::vector<std::string> runs;
    for (auto bar = bars.begin(); bar != bars.end();) {
        auto last = bar;
        while (std::next(last) != bars.end() && *std::next(last) == *last + 1) ++last;
        auto const number = [&](tune::BarIndex index) -> std::string {
            tune::Bar const& here = tune.bars[index];
            int const printed = here.number;
            if (here.role == tune::Role::Introduction) return base::said("introduction");
            return printed == 0 ? base::said("pick-up") : std::to_string(printed);
        };
        std::string const from = number(*bar);
        std::string const to = number(*last);
        std::string run = from == to ? from : from + "-" + to;
        // The same bars of another time through are told once.
        if (std::ranges::find(runs, run) == runs.end()) runs.push_back(std::move(run));
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
