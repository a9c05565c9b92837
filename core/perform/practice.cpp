#include "core/perform/practice.h"

#include "core/music/meter.h"

#include <algorithm>
#include <map>
#include <memory>
#include <utility>

namespace perform {

namespace {

double wholesAt(music::Moment moment) { return moment.wholes.toDouble(); }

} // namespace

std::optional<Passage> passageOf(arrange::Arrangement const& arrangement, int firstBar,
                                 int lastBar)
{
    tune::PlayedBarIndex const end = arrangement.playing.bars.beyond();
    auto const playedFrom = [&](tune::PlayedBarIndex from, int number) {
        tune::PlayedBarIndex bar = from;
        while (bar < end && arrange::barPlayed(arrangement, bar).number != number) ++bar;
        return bar;
    };
    tune::PlayedBarIndex const first = playedFrom(0, firstBar);
    tune::PlayedBarIndex last = playedFrom(first, lastBar);
    if (lastBar < firstBar || first == end || last == end) return std::nullopt;
    // A bar that is divided by a repeat sign has its number twice.
    while (last + 1 < end && arrange::barPlayed(arrangement, last + 1).number == lastBar &&
           arrangement.playing.bars[last + 1].bar == arrangement.playing.bars[last].bar + 1)
        ++last;
    return Passage{first, last};
}

Schedule withClicks(Schedule schedule, arrange::Arrangement const& arrangement,
                    Hearing const& hearing)
{
    SlowedTime const slowed = slowedTime(arrangement, hearing);
    Seconds const whole =
        secondsOf({music::Rational(1)}, arrangement.tempo, hearing.tempoScale);
    for (std::size_t i = 0; i < schedule.bars.size(); ++i) {
        BarStart const& start = schedule.bars[i];
        Seconds const end =
            i + 1 < schedule.bars.size() ? schedule.bars[i + 1].at : schedule.counted;
        tune::Bar const& bar = arrange::barPlayed(arrangement, start.playedBar);
        music::Length const beat = music::beatLength(bar.meter);
        music::Moment const begins = arrangement.playing.bars[start.playedBar].at;
        for (int b = 0;; ++b) {
            music::Length const inBar = beat * music::Rational(b);
            if (inBar < bar.upbeat) continue;
            Seconds const at =
                start.at +
                secondsOf(inBar - bar.upbeat, arrangement.tempo, hearing.tempoScale) +
                whole * (slowed.later(wholesAt(begins + (inBar - bar.upbeat))) -
                         slowed.later(wholesAt(begins)));
            if (at >= end - 1e-9) break;
            schedule.clicks.push_back({at, b == 0, music::beatStrength(bar.meter, inBar) == 2});
        }
    }
    std::ranges::stable_sort(schedule.clicks, {}, &Click::at);
    return schedule;
}

std::vector<double> temposOf(Steps const& steps)
{
    std::vector<double> tempos;
    // Asked for afresh: added up, the shares would not end exactly at the last one.
    for (int step = 0;; ++step) {
        double const tempo = steps.from + step * steps.by;
        if (tempo >= steps.to - 1e-9) break;
        tempos.insert(tempos.end(), static_cast<std::size_t>(std::max(1, steps.every)), tempo);
    }
    tempos.push_back(std::max(steps.from, steps.to));
    return tempos;
}

std::vector<double> temposOf(Steps steps, int now, double tempo)
{
    steps.from = tempo;
    steps.to = std::max(tempo, steps.to);
    std::vector<double> tempos = temposOf(steps);
    tempos.insert(tempos.begin(), static_cast<std::size_t>(std::max(0, now)), tempo);
    return tempos;
}

Course course(arrange::Arrangement const& arrangement, Hearing const& hearing,
              Rounds const& rounds)
{
    // By tempo, and whether it is the end: rounds after the first.
    std::map<std::pair<double, bool>, std::shared_ptr<Schedule const>> later;
    auto const made = [&](Hearing const& how) {
        Schedule schedule = scheduled(arrangement, how);
        if (rounds.clicks) schedule = withClicks(std::move(schedule), arrangement, how);
        return std::make_shared<Schedule const>(std::move(schedule));
    };
    Course course;
    course.again = rounds.again;
    std::vector<double> tempos = rounds.tempos;
    if (tempos.empty()) tempos = {hearing.tempoScale};
    bool const plain = !hearing.countIn && !hearing.barBefore;
    if (rounds.again && tempos.size() == 1 && !plain) tempos.push_back(tempos.front());
    for (std::size_t i = 0; i < tempos.size(); ++i) {
        Hearing how = hearing;
        how.tempoScale = tempos[i];
        bool const ends = i + 1 == tempos.size() && !rounds.again;
        if (!ends) how.slowing = {};
        if (i == 0 && !plain) {
            course.rounds.push_back(made(how));
            continue;
        }
        how.countIn = how.barBefore = false;
        auto& schedule = later[{tempos[i], ends}];
        if (!schedule) schedule = made(how);
        course.rounds.push_back(schedule);
    }
    return course;
}

} // namespace perform
