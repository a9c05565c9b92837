#include "core/arrange/score.h"

#include <numeric>

namespace arrange {

std::string_view termName(Term term)
{
    static constexpr std::array<std::string_view, termCount> names{
        "reach",          "rate",       "chord_fit",  "quality",   "melody_clash",
        "melody_company", "collision",  "mud",        "meter_fit", "activity",
        "levers",         "cadence",    "liking",     "passes",    "travel",
        "link",           "ring_clash", "thumb_line", "bass_line", "variety"};
    return names[static_cast<std::size_t>(term)];
}

Points total(Account const& account)
{
    return std::accumulate(account.begin(), account.end(), Points{0});
}

} // namespace arrange
