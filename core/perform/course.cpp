#include "core/perform/course.h"

#include <algorithm>
#include <utility>

namespace perform {

Schedule const& Course::round(int number) const
{
    int const last = static_cast<int>(rounds.size()) - 1;
    return *rounds[static_cast<std::size_t>(std::clamp(number, 0, last))];
}

bool Course::isLast(int number) const
{
    return !again && number >= static_cast<int>(rounds.size()) - 1;
}

Course onceOnly(Schedule schedule, bool again)
{
    return {{std::make_shared<Schedule const>(std::move(schedule))}, again};
}

Place placeAfter(Course const& course, Place from, Seconds elapsed)
{
    Place place{from.round, from.at + elapsed};
    while (!course.isLast(place.round)) {
        Schedule const& now = course.round(place.round);
        Schedule const& next = course.round(place.round + 1);
        if (place.at < now.counted || next.counted <= next.begins) break;
        place = {place.round + 1, next.begins + (place.at - now.counted)};
    }
    return place;
}

Seconds lengthOf(Course const& course)
{
    if (course.rounds.empty()) return 0;
    Seconds length = 0;
    for (std::size_t i = 0; i < course.rounds.size(); ++i) {
        Schedule const& round = *course.rounds[i];
        bool const last = i + 1 == course.rounds.size();
        length += (last ? round.ringing : round.counted) - (i == 0 ? 0 : round.begins);
    }
    return length;
}

Seconds samePlace(Schedule const& before, Seconds at, Schedule const& now)
{
    if (at < before.begins) return now.begins * at / before.begins;
    // From bar to bar, because the last ones may slow.
    Seconds from = before.begins;
    Seconds nowFrom = now.begins;
    Seconds to = before.counted;
    Seconds nowTo = now.counted;
    for (BarStart const& bar : before.bars) {
        auto const same = std::ranges::find(now.bars, bar.playedBar, &BarStart::playedBar);
        if (same == now.bars.end() || bar.at < from) continue;
        (bar.at <= at ? from : to) = bar.at;
        (bar.at <= at ? nowFrom : nowTo) = same->at;
        if (bar.at > at) break;
    }
    if (to <= from) return nowFrom;
    return nowFrom + (at - from) * (nowTo - nowFrom) / (to - from);
}

} // namespace perform
