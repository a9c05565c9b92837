#include "app/sound/player.h"
#include "tests/sound/application.h"

#include <catch2/catch.hpp>

#include <QCoreApplication>

#include <memory>
#include <string>
#include <vector>

using perform::Event;

namespace {

// Two bars of one second each: string 5 on the first beat, 7 half a second later, 5 again on
// the second bar.
perform::Schedule twoBars()
{
    perform::Schedule schedule;
    schedule.events = {
        {0.0, Event::Kind::Pluck, 5, 50, 80, harp::Side::Left, 0},
        {0.5, Event::Kind::Pluck, 7, 53, 80, harp::Side::Right, {}},
        {1.0, Event::Kind::Damp, 5, 50, 0, harp::Side::Left, 1},
        {1.0, Event::Kind::Pluck, 5, 50, 80, harp::Side::Left, 1},
    };
    schedule.bars = {{0, 0.0}, {1, 1.0}};
    schedule.counted = 2.0;
    schedule.ringing = 5.0;
    return schedule;
}

perform::Schedule slowedTwice(perform::Schedule schedule)
{
    for (Event& event : schedule.events) event.at *= 2;
    for (perform::BarStart& bar : schedule.bars) bar.at *= 2;
    schedule.counted *= 2;
    schedule.ringing *= 2;
    return schedule;
}

// A silent player whose clock the test turns, and what it has said since last asked.
class Listener {
public:
    Listener()
    {
        hearing::application();
        QObject::connect(&player, &sound::Player::started, [this] { say("started"); });
        QObject::connect(&player, &sound::Player::stopped, [this] { say("stopped"); });
        QObject::connect(&player, &sound::Player::stringPlucked,
                         [this](harp::StringIndex string, harp::Side hand) {
                             say((hand == harp::Side::Left ? "left " : "right ") +
                                 std::to_string(string));
                         });
        QObject::connect(
            &player, &sound::Player::stringDamped,
            [this](harp::StringIndex string) { say("damp " + std::to_string(string)); });
        QObject::connect(&player, &sound::Player::barReached, [this](tune::PlayedBarIndex bar) {
            say("bar " + std::to_string(bar));
        });
        QObject::connect(&player, &sound::Player::positionReached,
                         [this](arrange::PlayedPositionIndex position) {
                             say("position " + std::to_string(position));
                         });
        QObject::connect(&player, &sound::Player::clicked,
                         [this](bool accented) { say(accented ? "CLICK" : "click"); });
    }

    void pass(double seconds)
    {
        m_now += seconds;
        player.look();
    }
    std::vector<std::string> said() { return std::exchange(m_said, {}); }

private:
    void say(std::string what) { m_said.push_back(std::move(what)); }

    double m_now = 100;
    std::vector<std::string> m_said;

public:
    sound::Player player{sound::silentOutput([this] { return m_now; })};
};

using Said = std::vector<std::string>;

} // namespace

TEST_CASE("Without a device the player says what is played as time passes", "[player]")
{
    Listener listener;
    listener.player.play(perform::onceOnly(twoBars()));
    CHECK(listener.said() == Said{"started", "bar 0", "left 5", "position 0"});
    listener.pass(0.4);
    CHECK(listener.said() == Said{});
    listener.pass(0.4);
    CHECK(listener.said() == Said{"right 7"});
    listener.pass(0.4);
    CHECK(listener.said() == Said{"bar 1", "damp 5", "left 5", "position 1"});
    CHECK(listener.player.isPlaying());
}

TEST_CASE("Playing stops after the last counted beat though strings ring on", "[player]")
{
    Listener listener;
    listener.player.play(perform::onceOnly(twoBars()));
    listener.pass(1.9);
    listener.said();
    listener.pass(0.2);
    CHECK(listener.said() == Said{"stopped"});
    CHECK_FALSE(listener.player.isPlaying());
}

TEST_CASE("A loop leads from the last beat back to the first without its count-in", "[player]")
{
    Listener listener;
    auto schedule = twoBars();
    for (Event& event : schedule.events) event.at += 1;
    for (perform::BarStart& bar : schedule.bars) bar.at += 1;
    schedule.clicks = {{0.0, true}, {0.5, false}};
    schedule.begins = 1;
    schedule.counted = 3;
    schedule.ringing = 6;
    listener.player.play(perform::onceOnly(schedule, true));
    listener.pass(0.6);
    CHECK(listener.said() == Said{"started", "CLICK", "click"});
    listener.pass(2.3);
    listener.said();
    listener.pass(0.2); // 3.1: the second round has begun 0.1 ago
    CHECK(listener.said() == Said{"bar 0", "left 5", "position 0"});
    listener.pass(4.0); // two rounds later
    CHECK(listener.said().size() == 16);
    listener.player.replace(perform::onceOnly(schedule));
    listener.pass(2.0);
    CHECK(listener.said().back() == "stopped");
}

TEST_CASE("A change of tempo while playing goes on from the same place of the music",
          "[player]")
{
    Listener listener;
    listener.player.play(perform::onceOnly(twoBars()));
    listener.pass(0.75);
    listener.said();
    listener.player.replace(perform::onceOnly(slowedTwice(twoBars()))); // 1.5 of 4 seconds
    listener.pass(0.4);
    CHECK(listener.said() == Said{});
    listener.pass(0.2);
    CHECK(listener.said() == Said{"bar 1", "damp 5", "left 5", "position 1"});
}

TEST_CASE("The same place of the music is found in the count-in, the bars and the end",
          "[player]")
{
    perform::Schedule quick;
    quick.begins = 1;
    quick.counted = 5;
    perform::Schedule slow;
    slow.begins = 2;
    slow.counted = 10;
    CHECK(perform::samePlace(quick, 0.5, slow) == Approx(1));
    CHECK(perform::samePlace(quick, 1, slow) == Approx(2));
    CHECK(perform::samePlace(quick, 3, slow) == Approx(6));
    CHECK(perform::samePlace(quick, 5, slow) == Approx(10));
}

TEST_CASE("Whoever hears a signal may stop the player", "[player]")
{
    Listener listener;
    QObject::connect(&listener.player, &sound::Player::stringPlucked,
                     [&](harp::StringIndex string) {
                         if (string == 7) listener.player.stop();
                     });
    listener.player.play(perform::onceOnly(twoBars(), true));
    listener.pass(5);
    CHECK(listener.said() ==
          Said{"started", "bar 0", "left 5", "position 0", "bar 1", "right 7", "stopped"});
}

TEST_CASE("A string plucked by hand lights while nothing is played", "[player]")
{
    Listener listener;
    listener.player.pluck(12, 60);
    CHECK(listener.said() == Said{"right 12"});
    CHECK_FALSE(listener.player.isPlaying());
}
