#include "app/sound/performance.h"
#include "core/perform/schedule.h"
#include "tests/perform/pieces.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <memory>
#include <vector>

namespace {

// Hears when the beat is told and when the right hand plucks, in frames.
class Beaten final : public sound::Instrument {
public:
    struct Heard {
        std::vector<std::int64_t> clocks;
        std::vector<std::int64_t> plucks;
        std::vector<std::int64_t> ends;
        std::int64_t now = 0;
    };
    explicit Beaten(Heard& heard) : m_heard(heard) {}
    void pluck(harp::StringIndex /*string*/, int /*midi*/, int /*velocity*/,
               harp::Side hand) override
    {
        if (hand == harp::Side::Right) m_heard.plucks.push_back(m_heard.now);
    }
    void damp(harp::StringIndex /*string*/) override {}
    void dampAllBut(std::set<harp::StringIndex> const& /*strings*/) override {}
    void click(sound::Stress /*stress*/) override {}
    void beatClock() override { m_heard.clocks.push_back(m_heard.now); }
    void beatEnds() override { m_heard.ends.push_back(m_heard.now); }
    void write(float* /*left*/, float* /*right*/, int frames) override
    {
        m_heard.now += frames;
    }

private:
    Heard& m_heard;
};

Beaten::Heard played(perform::Hearing const& hearing, perform::Seconds from = 0)
{
    Beaten::Heard heard;
    sound::Performance performance(std::make_unique<Beaten>(heard));
    performance.begin(perform::onceOnly(perform::scheduled(
                          pieces::twoBars({pieces::wholes(1, 4), 90}), hearing)),
                      {0, from});
    std::vector<float> left(4800), right(4800);
    while (performance.progress().running) performance.render(left.data(), right.data(), 4800);
    return heard;
}

} // namespace

TEST_CASE("The MIDI clock slows where the end of the tune does", "[clock][slowing]")
{
    perform::Hearing hearing;
    SECTION("in time") {}
    SECTION("slower") { hearing.slowing = {0.5, 4}; }
    SECTION("slower and below the tempo")
    {
        hearing.slowing = {0.7, 3};
        hearing.tempoScale = 0.6;
    }
    SECTION("of a passage to the end")
    {
        hearing.slowing = {0.5, 4};
        hearing.firstPlayedBar = 1;
    }
    auto const heard = played(hearing);
    std::size_t const crotchets = hearing.firstPlayedBar == 1 ? 4 : 8;
    // MIDI 1.0: 24 clocks a crotchet. Every crotchet is plucked, so each 24th comes with a
    // pluck, to a block of 64 frames.
    REQUIRE(heard.clocks.size() == 24 * crotchets);
    REQUIRE(heard.plucks.size() == crotchets);
    for (std::size_t i = 0; i < crotchets; ++i)
        CHECK(std::abs(heard.clocks[24 * i] - heard.plucks[i]) <= 64);
    // Never quicker than the one before, but for the borders of blocks.
    for (std::size_t i = 2; i < heard.clocks.size(); ++i)
        CHECK(heard.clocks[i] - heard.clocks[i - 1] >=
              heard.clocks[i - 1] - heard.clocks[i - 2] - 128);
    CHECK(heard.ends.size() == 1);
}

TEST_CASE("The MIDI clock that goes on within a slowed end tells the rest of it",
          "[clock][slowing]")
{
    perform::Hearing hearing;
    hearing.slowing = {0.5, 4};
    auto const whole = played(hearing);
    double const from = static_cast<double>(whole.clocks[24 * 6]) / 48000;
    auto const rest = played(hearing, from - 0.002);
    CHECK(rest.clocks.size() == 24 * 2);
    CHECK(std::abs(rest.clocks.front()) <= 3 * 64);
}
