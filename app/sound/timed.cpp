#include "app/sound/timed.h"

#include "app/sound/locked.h"
#include "app/sound/synth.h"

#include <array>
#include <chrono>
#include <condition_variable>
#include <thread>
#include <utility>

namespace sound {

namespace {

class Timed final : public Locked {
public:
    explicit Timed(std::unique_ptr<Instrument> instrument)
        : Locked(Performance(std::move(instrument))), m_thread([this] { run(); })
    {
    }
    ~Timed() override
    {
        {
            std::lock_guard const lock(m_mutex);
            m_performance.stop();
            m_ends = true;
        }
        m_wake.notify_one();
        m_thread.join();
    }

    void begin(perform::Course course, perform::Place from) override
    {
        {
            std::lock_guard const lock(m_mutex);
            m_performance.begin(std::move(course), from);
            m_restart = true;
        }
        m_wake.notify_one();
    }

private:
    using Clock = std::chrono::steady_clock;

    void run()
    {
        std::array<float, blockFrames> left{};
        std::array<float, blockFrames> right{};
        constexpr std::chrono::nanoseconds block{std::int64_t{1'000'000'000} * blockFrames /
                                                 sampleRate};
        Clock::time_point due = Clock::now();
        std::unique_lock lock(m_mutex);
        while (!m_ends) {
            if (!m_performance.progress().running) {
                m_wake.wait(lock, [this] { return m_ends || m_restart; });
                due = Clock::now();
            }
            if (std::exchange(m_restart, false)) due = Clock::now();
            if (m_ends) break;
            m_performance.render(left.data(), right.data(), blockFrames);
            due += block; // asked of the clock afresh, so that it does not drift
            m_wake.wait_until(lock, due, [this] { return m_ends || m_restart; });
        }
    }

    std::condition_variable m_wake;
    bool m_restart = false; // guarded by m_mutex, as the next
    bool m_ends = false;
    std::thread m_thread;
};

} // namespace

std::unique_ptr<Output> timedOutput(std::unique_ptr<Instrument> instrument)
{
    return std::make_unique<Timed>(std::move(instrument));
}

} // namespace sound
