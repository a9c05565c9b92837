#include "tests/sound/hearing.h"

#include "app/sound/output.h"

#include <QElapsedTimer>
#include <QProcess>
#include <QStandardPaths>
#include <QThread>

using namespace hearing;

namespace {

constexpr int patienceMs = 10000;

// A JACK server without hardware, of a name of its own; it ends with the test.
class DummyServer {
public:
    DummyServer()
    {
        qputenv("JACK_DEFAULT_SERVER", "sallow-test");
        qputenv("JACK_NO_START_SERVER", "1");
        m_process.setStandardOutputFile(QProcess::nullDevice());
        m_process.setStandardErrorFile(QProcess::nullDevice());
        m_process.start("jackd", {"-r", "-n", "sallow-test", "-d", "dummy", "-r", "48000"});
        m_process.waitForStarted();
    }
    DummyServer(DummyServer const&) = delete;
    DummyServer& operator=(DummyServer const&) = delete;
    ~DummyServer()
    {
        m_process.terminate();
        m_process.waitForFinished();
    }
    bool isRunning() const { return m_process.state() == QProcess::Running; }

private:
    QProcess m_process;
};

std::unique_ptr<sound::Output> openedDevice(DummyServer const& server)
{
    qputenv("SALLOW_SOUND_DRIVER", "jack");
    std::unique_ptr<sound::Output> output;
    QElapsedTimer waiting;
    waiting.start();
    while (!output && server.isRunning() && !waiting.hasExpired(patienceMs)) {
        if (auto opened = sound::openDevice())
            output = std::move(*opened);
        else
            QThread::msleep(50);
    }
    qunsetenv("SALLOW_SOUND_DRIVER");
    return output;
}

} // namespace

TEST_CASE("A sound device plays a schedule to its end and falls silent", "[device]")
{
    if (!canSound()) return;
    if (QStandardPaths::findExecutable("jackd").isEmpty()) {
        WARN("no JACK server: no device was opened");
        return;
    }
    DummyServer const server;
    auto const output = openedDevice(server);
    if (!output) {
        WARN("the JACK server did not start: no device was opened");
        return;
    }
    auto const schedule = std::make_shared<perform::Schedule const>(
        scheduleOf({pluck(0, 20, 60), pluck(0.05, 21, 62)}, 0.1));
    CHECK_FALSE(output->progress().running);
    output->begin(schedule, 0, false);
    CHECK(output->progress().running);
    QElapsedTimer waiting;
    waiting.start();
    while (output->progress().running && !waiting.hasExpired(patienceMs)) QThread::msleep(5);
    CHECK_FALSE(output->progress().running);
    CHECK(output->progress().at >= 0.1);
}

TEST_CASE("A machine without the wanted sound device says so once, as a fault", "[device]")
{
    if (!canSound()) return;
    qputenv("SALLOW_SOUND_DRIVER", "no-such-driver");
    auto const refused = sound::openDevice();
    qunsetenv("SALLOW_SOUND_DRIVER");
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == base::FaultCode::NoSoundDevice);
}
