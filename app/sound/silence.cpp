#include "app/sound/output.h"

#include <chrono>
#include <cmath>
#include <utility>

namespace sound {

namespace {

class Silence final : public Output {
public:
    explicit Silence(std::function<perform::Seconds()> now) : m_now(std::move(now)) {}

    void begin(std::shared_ptr<perform::Schedule const> schedule, perform::Seconds from,
               bool loop) override
    {
        m_schedule = std::move(schedule);
        m_zero = m_now() - from;
        m_loop = loop;
    }
    void stop() override { m_schedule.reset(); }
    void pluck(int, int, int) override {}

    Progress progress() const override
    {
        if (!m_schedule) return {};
        perform::Seconds const at = m_now() - m_zero;
        perform::Seconds const beyond = at - m_schedule->counted;
        perform::Seconds const round = m_schedule->counted - m_schedule->begins;
        if (!m_loop || round <= 0) return {0, at, at <= m_schedule->ringing};
        if (beyond < 0) return {0, at, true};
        return {1 + static_cast<int>(beyond / round),
                m_schedule->begins + std::fmod(beyond, round), true};
    }

private:
    std::function<perform::Seconds()> m_now;
    std::shared_ptr<perform::Schedule const> m_schedule; // none: nothing is played
    perform::Seconds m_zero = 0;                         // the clock at the schedule's start
    bool m_loop = false;
};

} // namespace

std::unique_ptr<Output> silentOutput(std::function<perform::Seconds()> now)
{
    return std::make_unique<Silence>(std::move(now));
}

std::unique_ptr<Output> silentOutput()
{
    return silentOutput([] {
        auto const since = std::chrono::steady_clock::now().time_since_epoch();
        return std::chrono::duration<perform::Seconds>(since).count();
    });
}

} // namespace sound
