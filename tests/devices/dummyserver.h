#pragma once

#include <QByteArray>
#include <QElapsedTimer>
#include <QStandardPaths>
#include <QThread>

#include <vector>

#include <csignal>
#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

// How long a test waits for another process before it gives up.
inline constexpr int patienceMs = 10000;

// A JACK server without hardware, for sound and MIDI; it ends with the test. Each has a name of
// its own, so that tests may run side by side.
class DummyServer {
public:
    explicit DummyServer(QByteArray const& name)
    {
        qputenv("JACK_DEFAULT_SERVER", name);
        qputenv("JACK_NO_START_SERVER", "1");
        m_pid = started({"jackd", "-r", "-n", name, "-d", "dummy", "-r", "48000"});
        // Clients that come before the server is ready complain on the terminal.
        pid_t const ready = started({"jack_wait", "-s", name, "-w", "-t", "10"});
        if (ready > 0) waitpid(ready, nullptr, 0);
    }
    DummyServer(DummyServer const&) = delete;
    DummyServer& operator=(DummyServer const&) = delete;
    ~DummyServer() { end(SIGTERM); }

    // Ends it now, as when a device is pulled out.
    void end(int signal = SIGKILL)
    {
        if (m_pid <= 0) return;
        kill(m_pid, signal);
        waitpid(m_pid, nullptr, 0);
        m_pid = -1;
    }

    static bool isInstalled() { return !QStandardPaths::findExecutable("jackd").isEmpty(); }
    bool isRunning() const
    {
        siginfo_t gone{};
        return m_pid > 0 &&
               waitid(P_PID, static_cast<id_t>(m_pid), &gone, WEXITED | WNOHANG | WNOWAIT) ==
                   0 &&
               gone.si_pid == 0;
    }

    // Tries again and again, for a server needs a moment to start.
    template<typename Attempt>
    bool waitFor(Attempt&& attempt) const
    {
        QElapsedTimer waiting;
        waiting.start();
        while (isRunning() && !waiting.hasExpired(patienceMs)) {
            if (attempt()) return true;
            QThread::msleep(20);
        }
        return false;
    }

private:
    // Not by QProcess, whose way to fork leaves the thread sanitizer blind to the locks of this
    // thread. Answers -1 where there is no such program.
    static pid_t started(std::vector<QByteArray> words)
    {
        std::vector<char*> arguments;
        for (QByteArray& word : words) arguments.push_back(word.data());
        arguments.push_back(nullptr);
        posix_spawn_file_actions_t quiet;
        posix_spawn_file_actions_init(&quiet);
        for (int const stream : {STDOUT_FILENO, STDERR_FILENO})
            posix_spawn_file_actions_addopen(&quiet, stream, "/dev/null", O_WRONLY, 0);
        pid_t pid = -1;
        if (posix_spawnp(&pid, arguments[0], &quiet, nullptr, arguments.data(), environ) != 0)
            pid = -1;
        posix_spawn_file_actions_destroy(&quiet);
        return pid;
    }

    pid_t m_pid = -1;
};
