#include "app/sound/player.h"
#include "tests/devices/dummyserver.h"
#include "tests/sound/application.h"
#include "tests/sound/hearing.h"

#include <QCoreApplication>
#include <memory>
#include <optional>
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
    output->begin({{schedule}, false}, {});
    CHECK(output->progress().running);
    CHECK(server.waitFor([&] { return !output->progress().running; }));
    CHECK(output->progress().at >= 0.1);
}

TEST_CASE(
    "A device that goes away in the middle of a tune is noticed once, and the tune goes on "
    "silently from there",
    "[device]")
{
    if (!canSound()) return;
    if (!DummyServer::isInstalled()) {
        WARN("SKIPPED: no JACK server: no device was opened");
        return;
    }
    hearing::application();
    DummyServer server("sallow-test-lost");
    auto output = openedDevice(server);
    if (!output) {
        WARN("SKIPPED: the JACK server did not start: no device was opened");
        return;
    }
    sound::Player player(std::move(output));
    int lost = 0;
    int plucked = 0;
    QObject::connect(&player, &sound::Player::outputLost, [&lost] { ++lost; });
    QObject::connect(&player, &sound::Player::stringPlucked, [&plucked] { ++plucked; });
    std::vector<perform::Event> events;
    for (int i = 0; i < 900; ++i)
        events.push_back(pluck(i * 0.1, harp::StringIndex(20 + i % 5), 60 + i % 5));
    player.play(perform::onceOnly(scheduleOf(std::move(events), 90)));
    REQUIRE(server.waitFor([&] {
        player.look();
        return player.place().at > 0.3;
    }));
    server.end();
    perform::Seconds const cut = player.place().at;
    QElapsedTimer waiting;
    waiting.start();
    while (lost == 0 && !waiting.hasExpired(patienceMs)) {
        player.look();
        QThread::msleep(20);
    }
    REQUIRE(lost == 1);
    CHECK(player.isPlaying());
    CHECK(player.place().at == Approx(cut).margin(0.2)); // from where it was cut off
    int const before = plucked;
    waiting.restart();
    while (plucked < before + 3 && !waiting.hasExpired(patienceMs)) {
        player.look();
        QThread::msleep(20);
    }
    CHECK(plucked >= before + 3);
    CHECK(lost == 1);

    // It is plugged in again: the tune goes on in it from where it is.
    DummyServer const again("sallow-test-back");
    auto back = openedDevice(again);
    if (!back) {
        WARN("SKIPPED: the JACK server did not start again");
        return;
    }
    perform::Seconds const silent = player.place().at;
    player.useOutput(std::move(back));
    CHECK(player.isPlaying());
    CHECK(player.place().at == Approx(silent).margin(0.3));
    int const later = plucked;
    CHECK(again.waitFor([&] {
        player.look();
        return plucked >= later + 3;
    }));
    CHECK(lost == 1);
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
