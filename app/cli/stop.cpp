#include "app/cli/stop.h"

#include "core/base/words.h"

#include <csignal>
#include <string>
#include <string_view>

#include <unistd.h>

namespace cli {

namespace {

std::sig_atomic_t volatile asked = 0;
std::string farewell; // set before the signal can come

void onStop(int signal)
{
    asked = signal;
    std::signal(signal, SIG_DFL);
}

// Only what may be called in the middle of anything else.
void sayAndEnd(int signal)
{
    constexpr std::string_view overLine = "\r\x1b[K"; // to the line's start, and all of it goes
    if (::isatty(STDERR_FILENO) == 1) [[maybe_unused]]
        auto const cleared = ::write(STDERR_FILENO, overLine.data(), overLine.size());
    [[maybe_unused]] auto const said = ::write(STDERR_FILENO, farewell.data(), farewell.size());
    std::signal(signal, SIG_DFL);
    std::raise(signal);
}

} // namespace

void sayWhenStopped()
{
    farewell = "sallow: " + base::said("stopped; what is saved is whole") + "\n";
    for (int const signal : {SIGINT, SIGTERM})
        if (std::signal(signal, sayAndEnd) == SIG_IGN)
            std::signal(signal, SIG_IGN); // whoever started the program wants none of it
}

void listenForStop()
{
    for (int const signal : {SIGINT, SIGTERM, SIGHUP}) std::signal(signal, onStop);
}

int stopAsked() { return asked; }

} // namespace cli
