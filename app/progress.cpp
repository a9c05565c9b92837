#include "app/progress.h"

#include "core/base/words.h"

#include <iostream>
#include <string>

#include <unistd.h>

namespace app {

namespace {

constexpr std::size_t barWidth = 40;
constexpr std::chrono::seconds betweenLines{3};
constexpr std::chrono::milliseconds betweenBars{100};
constexpr std::chrono::milliseconds betweenTold{250};

} // namespace

Progress::Progress(std::size_t all, bool silent)
    : m_all(all), m_terminal(isatty(STDERR_FILENO) == 1), m_silent(silent),
      m_said(std::chrono::steady_clock::now())
{}

Progress::~Progress()
{
    if (m_drawn) std::cerr << '\n';
}

void Progress::reached(std::size_t done)
{
    if (m_silent) return;
    auto const now = std::chrono::steady_clock::now();
    if (m_terminal && (done == m_all || now - m_said >= betweenBars)) {
        std::size_t const filled = m_all == 0 ? barWidth : barWidth * done / m_all;
        std::cerr << "\r[" << std::string(filled, '#') << std::string(barWidth - filled, ' ')
                  << "] " << done << base::said(" of ") << m_all << std::flush;
        m_drawn = true;
        m_said = now;
    } else if (!m_terminal && now - m_said >= betweenLines) {
        std::cerr << "sallow: " << done << base::said(" of ") << m_all
                  << base::said(" tunes\n");
        m_said = now;
    }
}

Waiting::Waiting(std::string what)
    : m_what(std::move(what)), m_begun(std::chrono::steady_clock::now())
{
    if (isatty(STDERR_FILENO) == 1) m_teller = std::thread([this] { tell(); });
}

void Waiting::reached(std::size_t done, std::size_t all)
{
    std::scoped_lock const lock(m_mutex);
    m_reached = ", " + std::to_string(done) + base::said(" of ") + std::to_string(all);
}

void Waiting::end()
{
    if (!m_teller.joinable()) return;
    {
        std::scoped_lock const lock(m_mutex);
        m_end = true;
    }
    m_ended.notify_one();
    m_teller.join();
}

void Waiting::tell()
{
    constexpr std::chrono::seconds untilTold{1};
    constexpr char const* takeAway = "\r\x1b[K"; // to the line's start, and all of it goes
    bool told = false;
    std::unique_lock lock(m_mutex);
    std::chrono::milliseconds wait = untilTold;
    while (!m_ended.wait_for(lock, wait, [this] { return m_end; })) {
        auto const seconds = std::chrono::duration_cast<std::chrono::seconds>(
            std::chrono::steady_clock::now() - m_begun);
        std::cerr << takeAway << "sallow: " << m_what << m_reached << ", " << seconds.count()
                  << base::said(" s (Ctrl-C stops it)") << std::flush;
        told = true;
        wait = betweenTold;
    }
    if (told) std::cerr << takeAway << std::flush;
}

} // namespace app
