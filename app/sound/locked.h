#pragma once

#include "app/sound/output.h"

#include <mutex>
#include <utility>

namespace sound {

// An output whose performance is rendered on one thread and asked of another: both meet in one lock,
// held for a moment only. What renders stops before this is destroyed.
class Locked : public Output {
public:
    Locked(Locked const&) = delete;
    Locked& operator=(Locked const&) = delete;

    void begin(perform::Course course, perform::Place from) override
    {
        std::lock_guard const lock(m_mutex);
        m_performance.begin(std::move(course), from);
    }
    void stop() override
    {
        std::lock_guard const lock(m_mutex);
        m_performance.stop();
    }
    void pluck(harp::StringIndex string, int midi, int velocity) override
    {
        std::lock_guard const lock(m_mutex);
        m_performance.pluck(string, midi, velocity);
    }
    Progress progress() const override
    {
        std::lock_guard const lock(m_mutex);
        return m_performance.progress();
    }

protected:
    explicit Locked(Performance performance) : m_performance(std::move(performance)) {}

    mutable std::mutex m_mutex;
    Performance m_performance; // guarded by m_mutex
};

} // namespace sound
