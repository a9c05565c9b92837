#include "app/progress.h"

#include <iostream>
#include <string>

#include <unistd.h>

namespace app {

namespace {

constexpr std::size_t barWidth = 40;
constexpr std::chrono::seconds betweenLines{3};
constexpr std::chrono::milliseconds betweenBars{100};

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
                  << "] " << done << " of " << m_all << std::flush;
        m_drawn = true;
        m_said = now;
    } else if (!m_terminal && now - m_said >= betweenLines) {
        std::cerr << "sallow: " << done << " of " << m_all << " tunes\n";
        m_said = now;
    }
}

} // namespace app
