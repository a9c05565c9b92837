#pragma once

#include <chrono>
#include <cstddef>

namespace app {

// How far long work has come, on stderr: a bar on a terminal, else a line every few seconds.
class Progress {
public:
    // `silent`: someone else tells it.
    explicit Progress(std::size_t all, bool silent = false);
    ~Progress(); // ends the bar's line
    Progress(Progress const&) = delete;
    Progress& operator=(Progress const&) = delete;

    void reached(std::size_t done);

private:
    std::size_t m_all;
    bool m_terminal;
    bool m_silent;
    bool m_drawn = false;
    std::chrono::steady_clock::time_point m_said;
};

} // namespace app
