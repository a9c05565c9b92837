#include "app/cli/stop.h"

#include <csignal>

namespace cli {

namespace {

std::sig_atomic_t volatile asked = 0;

void onStop(int signal)
{
    asked = signal;
    std::signal(signal, SIG_DFL);
}

} // namespace

void listenForStop()
{
    for (int const signal : {SIGINT, SIGTERM, SIGHUP}) std::signal(signal, onStop);
}

int stopAsked() { return asked; }

} // namespace cli
