#include "core/perform/practice.h"

#include "core/music/meter.h"

#include <algorithm>

namespace perform {

namespace {

tune::Bar const& writtenBar(arrange::Arrangement const& arrangement, int playedBar)
{
    auto const& played = arrangement.playing.bars[static_cast<std::size_t>(playedBar)];
    return arrangement.tune.bars[static_cast<std::size_t>(played.bar)];
}

} // namespace

std::optional<Passage> passageOf(arrange::Arrangement const& arrangement, int firstBar,
                                 int lastBar)
{
    int const count = static_cast<int>(arrangement.playing.bars.size());
    auto const playedFrom = [&](int from, int number) {
        int bar = from;
        while (bar < count && writtenBar(arrangement, bar).number != number) ++bar;
        return bar;
    };
    int const first = playedFrom(0, firstBar);
    int last = playedFrom(first, lastBar);
    if (lastBar < firstBar || first == count || last == count) return std::nullopt;
    // A bar that is divided by a repeat sign has its number twice.
    while (last + 1 < count && writtenBar(arrangement, last + 1).number == lastBar &&
           arrangement.playing.bars[static_cast<std::size_t>(last + 1)].bar ==
               arrangement.playing.bars[static_cast<std::size_t>(last)].bar + 1)
        ++last;
    return Passage{first, last};
}

Schedule withClicks(Schedule schedule, arrange::Arrangement const& arrangement,
                    Hearing const& hearing)
{
    for (std::size_t i = 0; i < schedule.bars.size(); ++i) {
        BarStart const& start = schedule.bars[i];
        Seconds const end =
            i + 1 < schedule.bars.size() ? schedule.bars[i + 1].at : schedule.counted;
        tune::Bar const& bar = writtenBar(arrangement, start.playedBar);
        music::Length const beat = music::beatLength(bar.meter);
        for (int b = 0;; ++b) {
            music::Length const inBar = beat * music::Rational(b);
            if (inBar < bar.upbeat) continue;
            Seconds const at = start.at + secondsOf(inBar - bar.upbeat, arrangement.tempo,
                                                    hearing.tempoScale);
            if (at >= end - 1e-9) break;
            schedule.clicks.push_back({at, b == 0});
        }
    }
    std::ranges::stable_sort(schedule.clicks, {}, &Click::at);
    return schedule;
}

Schedule repeated(Schedule const& schedule, int times)
{
    Schedule all = schedule;
    Seconds const round = schedule.counted - schedule.begins;
    for (int again = 1; again < times; ++again) {
        Seconds const later = again * round;
        for (Event event : schedule.events) {
            event.at += later;
            all.events.push_back(event);
        }
        for (BarStart bar : schedule.bars) {
            bar.at += later;
            all.bars.push_back(bar);
        }
        for (Click click : schedule.clicks) {
            if (click.at < schedule.begins) continue; // the count-in
            click.at += later;
            all.clicks.push_back(click);
        }
    }
    Seconds const added = std::max(0, times - 1) * round;
    all.counted += added;
    all.ringing += added;
    auto const order = [](Event const& a, Event const& b) {
        return a.at != b.at ? a.at < b.at
                            : a.kind == Event::Kind::Damp && b.kind == Event::Kind::Pluck;
    };
    std::ranges::stable_sort(all.events, order);
    return all;
}

} // namespace perform
