#include "app/sound/output.h"

#include <chrono>
#include <utility>

namespace sound {

namespace {

class Silence final : public Output {
public:
    explicit Silence(std::function<perform::Seconds()> now) : m_now(std::move(now)) {}

    void begin(perform::Course course, perform::Place from) override
    {
        m_course = std::move(course);
        m_from = from;
        m_begun = m_now();
    }
    void stop() override { m_course = {}; }
    void pluck(harp::StringIndex, int, int) override {}

    Progress progress() const override
    {
        if (m_course.rounds.empty()) return {};
        perform::Place const place = perform::placeAfter(m_course, m_from, m_now() - m_begun);
        bool const over =
            m_course.isLast(place.round) && place.at > m_course.round(place.round).ringing;
        return {place.round, place.at, !over};
    }

private:
    std::function<perform::Seconds()> m_now;
    perform::Course m_course; // without rounds: nothing is played
    perform::Place m_from;
    perform::Seconds m_begun = 0; // the clock then
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
