#pragma once

#include <QByteArray>
#include <QElapsedTimer>
#include <QProcess>
#include <QStandardPaths>
#include <QThread>

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
        m_process.setStandardOutputFile(QProcess::nullDevice());
        m_process.setStandardErrorFile(QProcess::nullDevice());
        m_process.start("jackd",
                        {"-r", "-n", QString::fromLatin1(name), "-d", "dummy", "-r", "48000"});
        m_process.waitForStarted();
        // Clients that come before the server is ready complain on the terminal.
        QProcess ready;
        ready.setStandardOutputFile(QProcess::nullDevice());
        ready.setStandardErrorFile(QProcess::nullDevice());
        ready.start("jack_wait", {"-s", QString::fromLatin1(name), "-w", "-t", "10"});
        ready.waitForFinished(patienceMs);
    }
    DummyServer(DummyServer const&) = delete;
    DummyServer& operator=(DummyServer const&) = delete;
    ~DummyServer()
    {
        m_process.terminate();
        m_process.waitForFinished();
    }

    // Ends it now, as when a device is pulled out.
    void end()
    {
        m_process.kill();
        m_process.waitForFinished();
    }

    static bool isInstalled() { return !QStandardPaths::findExecutable("jackd").isEmpty(); }
    bool isRunning() const { return m_process.state() == QProcess::Running; }

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
    QProcess m_process;
};
