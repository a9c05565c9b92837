#include "app/sound/output.h"
#include "tests/devices/dummyserver.h"
#include "tests/sound/hearing.h"

#include <memory>
#include <utility>

using namespace hearing;

namespace {

std::unique_ptr<sound::Output> openedDevice(DummyServer const& server)
{
    qputenv("SALLOW_SOUND_DRIVER", "jack");
    std::unique_ptr<sound::Output> output;
    server.waitFor([&output] {
        if (auto opened = sound::openDevice()) output = std::move(*opened);
        return output != nullptr;
    });
    qunsetenv("SALLOW_SOUND_DRIVER");
    return output;
}

} // namespace

TEST_CASE("A sound device plays a schedule to its end and falls silent", "[device]")
{
    if (!canSound()) return;
    if (!DummyServer::isInstalled()) {
        WARN("SKIPPED: no JACK server: no device was opened");
        return;
    }
    DummyServer const server("sallow-test-sound");
    auto const output = openedDevice(server);
    if (!output) {
        WARN("SKIPPED: the JACK server did not start: no device was opened");
        return;
    }
    auto const schedule = std::make_shared<perform::Schedule const>(
        scheduleOf({pluck(0, 20, 60), pluck(0.05, 21, 62)}, 0.1));
    CHECK_FALSE(output->progress().running);
    output->begin(schedule, 0, false);
    CHECK(output->progress().running);
    CHECK(server.waitFor([&] { return !output->progress().running; }));
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
