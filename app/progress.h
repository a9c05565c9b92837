#pragma once

#include <chrono>
#include <condition_variable>
#include <cstddef>
#include <mutex>
#include <string>
#include <thread>

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

// A line on a terminal while one thing takes longer than a second: what, and for how long.
// Elsewhere nothing is said. A stop from the keyboard ends the program as ever
// (app/cli/stop.h); no output is begun by then.
class Waiting {
public:
    explicit Waiting(std::string what);
    ~Waiting() { end(); }
    Waiting(Waiting const&) = delete;
    Waiting& operator=(Waiting const&) = delete;

    void reached(std::size_t done, std::size_t all);
    void end(); // takes the line away

private:
    void tell();

    std::string m_what;
    std::chrono::steady_clock::time_point m_begun;
    std::mutex m_mutex;
    std::condition_variable m_ended;
    bool m_end = false;
    std::string m_reached; // "3 of 13"
    std::thread m_teller;  // the last, for it begins at once
};

} // namespace app
