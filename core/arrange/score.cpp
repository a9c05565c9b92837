#include "core/arrange/score.h"

#include <numeric>

namespace arrange {

std::string_view termName(Term term)
{
    static constexpr std::array<std::string_view, termCount> names{
        "reach",     "rate",    "chord_fit", "melody_clash", "collision",  "mud",
        "meter_fit", "cadence", "liking",    "travel",       "ring_clash", "variety"};
    return names[static_cast<std::size_t>(term)];
}

Points total(Account const& account)
{
    return std::accumulate(account.begin(), account.end(), Points{0});
}

} // namespace arrange
