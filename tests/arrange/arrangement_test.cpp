#include "core/arrange/arrangement.h"

#include "core/arrange/candidates.h"
#include "core/arrange/positions.h"
#include "tests/arrange/scenes.h"

#include <catch2/catch.hpp>

using namespace arrange;

namespace {

music::Moment moment(int numerator, int denominator = 1)
{
    return lines::moment(numerator, denominator);
}

// The example with one voicing for each of its positions: 1 and 8 as two minims.
Arrangement arranged(scenes::Example const& x,
                     std::vector<harp::StringIndex> const& rootStrings)
{
    Arrangement out{x.tune, 0, x.harp, x.hand, x.level, x.levers, x.tempo, x.playing, {}, {}};
    arrange::Positions const positions = x.positions();
    for (PositionIndex const i : positions.indices())
        out.positions.push_back(
            {positions[i],
             scenes::laid(x.view(i), {1, 8}, rootStrings[static_cast<std::size_t>(i)],
                          {{0}, {1, 2}})
                 .voicing,
             false});
    return out;
}

} // namespace

TEST_CASE("A chord in a repeated bar is one position played twice", "[positions]")
{
    auto const x = scenes::example("[G] z:1/2 [D] z:1/2 :| [G] z:1 |");
    auto const positions = positionsAsWritten(x.tune, x.playing);
    REQUIRE(positions.size() == 3);
    REQUIRE(positions[1].played.size() == 2);
    CHECK(positions[1].played[0].at == moment(1, 2));
    CHECK(positions[1].played[1].at == moment(3, 2));
    CHECK(positions[1].played[1].pass == 2);
    CHECK(positions[2].played.size() == 1);
}

TEST_CASE("With varied passes each time through is a position of its own, in playing order",
          "[positions]")
{
    auto const x = scenes::example("[G] z:1/2 [D] z:1/2 :| [G] z:1 |");
    auto const positions = positionsByPass(x.tune, x.playing);
    REQUIRE(positions.size() == 5);
    for (PositionIndex const i : positions.indices()) {
        CHECK(positions[i].played.size() == 1);
        if (i > 0) CHECK(positions[i - 1].played[0].at < positions[i].played[0].at);
    }
    CHECK(positions[2].played[0].pass == 2);
}

TEST_CASE("A chord for the second time only is played on the second pass", "[positions]")
{
    auto x = scenes::example("[G] z:1 :|");
    x.tune.bars[0].chords = {{{}, *music::chordFrom("G"), "G", 1},
                             {{}, *music::chordFrom("Em"), "Em", 2}};
    auto const positions = positionsAsWritten(x.tune, x.playing);
    REQUIRE(positions.size() == 2);
    REQUIRE(positions[1].played.size() == 1);
    CHECK(positions[1].played[0].pass == 2);
    CHECK(music::plain(positions[1].chord) == "Em");
}

TEST_CASE("Where a repeated part comes again its third time is a first time, its fourth a second",
          "[positions]")
{
    auto x = scenes::example("[G] z:1 :|");
    x.tune.bars[0].chords = {{{}, *music::chordFrom("G"), "G", 1},
                             {{}, *music::chordFrom("Em"), "Em", 2}};
    x.playing.bars.push_back({0, 3, moment(2)});
    x.playing.bars.push_back({0, 4, moment(3)});
    auto const positions = positionsAsWritten(x.tune, x.playing);
    REQUIRE(positions.size() == 2);
    for (PositionIndex i = 0; i < 2; ++i) {
        REQUIRE(positions[i].played.size() == 2);
        CHECK(positions[i].played[0].pass == i.value() + 1);
        CHECK(positions[i].played[1].pass == i.value() + 3);
    }
}

TEST_CASE("Every position is played as often as its bar, in the order of time", "[arrangement]")
{
    auto const x = scenes::example("[G] z:1 :| [D] z:1 |");
    auto const played = playedPositions(arranged(x, {x.string("G2"), x.string("D3")}));
    REQUIRE(played.size() == 3);
    CHECK(played[0].position == 0);
    CHECK(played[1].position == 0);
    CHECK(played[2].position == 1);
    CHECK(played[1].when.at == moment(1));
}

TEST_CASE("Both hands' notes come by time and from the lowest string, with what they sound",
          "[arrangement]")
{
    auto const x = scenes::example("[G] B4+D5:1/2 F#4:1/2 |");
    Arrangement arrangement = arranged(x, {x.string("G2")});
    arrangement.rightFingers = {{0, 0, {2, 1}}, {0, 1, {3}}};
    auto const notes = handNotes(arrangement);
    REQUIRE(notes.size() == 5);
    CHECK(notes[0].hand == harp::Side::Left);
    CHECK(music::plain(notes[0].pitch) == "G2");
    CHECK(notes[0].position == 0);
    CHECK_FALSE(notes[0].fromTune);
    CHECK(music::plain(notes[1].pitch) == "B4");
    CHECK(notes[1].finger == 2);
    CHECK(notes[2].finger == 1);
    CHECK(music::plain(notes[3].pitch) == "G3");
    CHECK(music::plain(notes[4].pitch) == "F#4");
    CHECK(notes[4].finger == 3);
    CHECK(notes[4].string == x.string("F4"));
    CHECK(notes[4].fromTune);
    CHECK_FALSE(notes[4].position.has_value());
}

TEST_CASE("A left-hand note sounds what its lever gives on each pass", "[arrangement]")
{
    auto x = scenes::example("[G] z:1 :|");
    x.levers.flips = {{moment(1), moment(1), moment(1), x.string("G3"), harp::Lever::Up,
                       harp::Side::Right, 1}};
    auto const notes = handNotes(arranged(x, {x.string("G2")}));
    REQUIRE(notes.size() == 4);
    CHECK(music::plain(notes[1].pitch) == "G3");
    CHECK(music::plain(notes[3].pitch) == "G#3");
    CHECK(notes[3].position == 1);
}
