#include "ui/lanelayout.h"

#include "core/proposal/proposal.h"
#include "scenario.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <set>

using namespace ui;

namespace {

arrange::Arrangement const& arranged()
{
    static arrange::Arrangement const made = [] {
        auto proposal = proposal::propose(scenario::brief());
        REQUIRE(proposal);
        return proposal->arrangement;
    }();
    return made;
}

LaneLayout laidOut(double width)
{
    LaneMeasure measure;
    measure.width = width;
    return layOutLanes(arranged(), measure);
}

} // namespace

TEST_CASE("Four bars of a dance tune stand in a lane, fewer in a narrow window", "[ui]")
{
    // trade-6: four bars a system for dance tunes, common practice, no source.
    auto const [width, bars] =
        GENERATE(table<double, int>({{900, 4}, {700, 4}, {500, 2}, {200, 1}, {2000, 8}}));
    CAPTURE(width);
    CHECK(laidOut(width).barsPerLane == bars);
}

TEST_CASE("A part begins a new lane with its letter at the left", "[ui]")
{
    LaneLayout const layout = laidOut(900);
    REQUIRE(layout.lanes.size() == 4);
    CHECK(layout.lanes[0].part == "A");
    CHECK(layout.lanes[0].timesPlayed == 2);
    CHECK(layout.lanes[1].part.empty());
    CHECK(layout.lanes[2].part == "B");
    CHECK(layout.lanes[2].firstBar == 8);
    CHECK(layout.bars[8].box.x == layout.bars[0].box.x);
    CHECK(layout.bars[8].lane == 2);
}

TEST_CASE("A lane is unbroken: each bar begins where the one before ends", "[ui]")
{
    LaneLayout const layout = laidOut(900);
    for (tune::BarIndex i = 1; i < layout.bars.size(); ++i) {
        if (layout.bars[i].lane != layout.bars[i - 1].lane) continue;
        CHECK(layout.bars[i].box.x == Approx(layout.bars[i - 1].box.right()));
    }
    for (Lane const& lane : layout.lanes) {
        CHECK(lane.box.x == layout.bars[lane.firstBar].box.x);
        CHECK(lane.strings.right() >= layout.bars[lane.lastBar].box.right());
    }
}

TEST_CASE("Every note of both hands that is played first is one pluck of a lane", "[ui]")
{
    LaneLayout const layout = laidOut(900);
    std::size_t plucks = 0;
    for (Lane const& lane : layout.lanes) plucks += lane.plucks.size();
    // Counted from the tune and the shapes, not from the plan that the lanes are made of. The
    // jig plays every bar of a part twice over, and every string of it is there.
    std::size_t written = 0;
    for (tune::Bar const& bar : arranged().tune.bars)
        for (tune::Note const& note : bar.notes) written += note.pitches.size();
    for (arrange::AddedBelow const& below : arranged().added) written += below.pitches.size();
    std::set<std::pair<int, music::Length>> places; // a place that ends otherwise comes twice
    for (auto const& one : arranged().positions)
        if (places.insert({one.position.bar, one.position.at}).second)
            written += one.voicing.notes.size();
    CHECK(plucks == written);
}

TEST_CASE("A tail gets softer, stays in its lane and ends where its string is plucked again",
          "[ui]")
{
    LaneLayout const layout = laidOut(900);
    int endedByPluck = 0;
    for (Lane const& lane : layout.lanes)
        for (Tail const& tail : lane.tails) {
            CHECK(tail.loudTo <= tail.loudFrom);
            CHECK(tail.loudFrom <= 1);
            CHECK(tail.loudTo >= 0);
            CHECK(tail.from >= lane.strings.x);
            CHECK(tail.to <= lane.strings.right() + 1e-9);
            for (PluckDot const& pluck : lane.plucks) {
                if (pluck.y != tail.y) continue;
                CAPTURE(pluck.x, tail.from, tail.to);
                bool const across = pluck.x > tail.from + 0.5 && pluck.x < tail.to - 0.5;
                CHECK_FALSE(across);
                if (std::abs(pluck.x - tail.to) < 0.01) ++endedByPluck;
            }
        }
    CHECK(endedByPluck > 5);
}

TEST_CASE("A string that nobody plucks again rings over the bar line as long as it can",
          "[ui]")
{
    // An undamped low string rings for many seconds: common practice, no source. At 76 dotted
    // crotchets a minute a bar of the jig lasts 1.6 s.
    LaneLayout const layout = laidOut(900);
    int over = 0;
    for (Lane const& lane : layout.lanes)
        for (Tail const& tail : lane.tails) {
            if (tail.held || tail.hand != harp::Side::Left) continue;
            for (LaneBar const& bar : layout.bars)
                if (bar.bar > lane.firstBar && bar.bar <= lane.lastBar &&
                    std::abs(tail.from - bar.box.x - 8) < 0.01)
                    ++over;
        }
    CHECK(over > 3);
}

TEST_CASE("At 1024 by 700 several bars stand in sight", "[ui]")
{
    // What is left of such a window for the lanes: some 660 by 300.
    LaneMeasure measure;
    measure.width = 660;
    measure.height = 300;
    LaneLayout const layout = layOutLanes(arranged(), measure);
    int seen = 0;
    for (LaneBar const& bar : layout.bars) seen += bar.box.bottom() <= measure.height ? 1 : 0;
    CHECK(seen >= 4);
}

TEST_CASE("A bar is found under a point, the nearest one beside its lane", "[ui]")
{
    LaneLayout const layout = laidOut(900);
    for (LaneBar const& bar : layout.bars)
        CHECK(barAt(layout, bar.box.x + bar.box.width / 2, bar.box.y + 40) == bar.bar);
    CHECK(barAt(layout, 1, layout.lanes[1].box.y + 10) == 4);
    CHECK(barAt(layout, 899, layout.lanes[1].box.y + 10) == 7);
    CHECK_FALSE(barAt(layout, 400, layout.height + 50));
}

TEST_CASE("Bars of the grid lie inside it and never over each other", "[ui]")
{
    for (double const width : {300.0, 640.0, 1000.0, 2200.0}) {
        LaneLayout const layout = laidOut(width);
        CAPTURE(width);
        for (tune::BarIndex const i : layout.bars.indices()) {
            Box const& a = layout.bars[i].box;
            CHECK(a.x >= 0);
            CHECK(a.right() <= width);
            CHECK(a.bottom() <= layout.height);
            for (tune::BarIndex k = i + 1; k < layout.bars.size(); ++k) {
                Box const& b = layout.bars[k].box;
                bool const apart = a.right() <= b.x || b.right() <= a.x || a.bottom() <= b.y ||
                                   b.bottom() <= a.y;
                CHECK(apart);
            }
        }
    }
}

TEST_CASE("A higher string stands higher in every lane", "[ui]")
{
    LaneLayout const layout = laidOut(900);
    for (Lane const& lane : layout.lanes) {
        for (harp::StringIndex string = layout.lowestString; string < layout.highestString;
             ++string)
            CHECK(yAt(layout, lane, string + 1) < yAt(layout, lane, string));
        CHECK(yAt(layout, lane, layout.highestString) == Approx(lane.strings.y));
        CHECK(yAt(layout, lane, layout.lowestString) == Approx(lane.strings.bottom()));
    }
}

TEST_CASE("Every position of the grid is found under the middle of its chord name", "[ui]")
{
    LaneLayout const layout = laidOut(900);
    int found = 0;
    for (LaneBar const& bar : layout.bars)
        for (LaneChord const& chord : bar.chords) {
            Box const& name = chord.name;
            CHECK(positionAt(layout, name.x + name.width / 2, name.y + name.height / 2,
                             std::nullopt) == chord.position);
            ++found;
        }
    CHECK(found == arranged().positions.size());
    CHECK_FALSE(positionAt(layout, 1, 1, std::nullopt));
}

TEST_CASE("Two chords of one bar split it where the second one begins", "[ui]")
{
    LaneLayout const layout = laidOut(900);
    LaneBar const& bar = layout.bars[1];
    REQUIRE(bar.chords.size() == 2);
    // The second chord of bar 2 stands on its fourth quaver of six: half way.
    CHECK(bar.chords[1].stretch.x == Approx(bar.box.x + bar.box.width / 2));
    CHECK(bar.chords[0].stretch.right() == Approx(bar.chords[1].stretch.x));
    CHECK(bar.chords[1].stretch.right() == Approx(bar.box.right()));
}

TEST_CASE("Arrow keys walk the grid by chord and by lane and stop at its edges", "[ui]")
{
    LaneLayout const layout = laidOut(900);
    arrange::PositionIndex const last = arranged().positions.beyond() - 1;
    CHECK(neighbour(layout, 0, Step::Right) == 1);
    CHECK(neighbour(layout, 0, Step::Left) == 0);
    CHECK(neighbour(layout, 0, Step::Up) == 0);
    CHECK(neighbour(layout, last, Step::Right) == last);
    CHECK(neighbour(layout, last, Step::Down) == last);
    CHECK(neighbour(layout, 3, Step::First) == 0);
    CHECK(neighbour(layout, 3, Step::Last) == last);
    // Bar 1 has one chord, bar 2 two: position 5 is bar 5, right below bar 1.
    CHECK(neighbour(layout, 0, Step::Down) == 5);
    CHECK(neighbour(layout, 5, Step::Up) == 0);
}

TEST_CASE("A tune without part letters is divided at its repeats", "[ui]")
{
    tune::Tune tune = scenario::jig();
    for (tune::Bar& bar : tune.bars) bar.part.clear();
    auto const sections = laneSections(tune);
    REQUIRE(sections.size() == 2);
    CHECK(sections[0].part == "A");
    CHECK(sections[0].lastBar == 7);
    CHECK(sections[1].part == "B");
    CHECK(sections[1].timesPlayed == 2);
}

TEST_CASE("Second endings belong to the part whose first ending went before", "[ui]")
{
    tune::Tune tune = scenario::jig();
    for (tune::Bar& bar : tune.bars) bar.part.clear();
    tune.bars[8].repeatOpens = false;
    tune.bars[7].endings = {1};
    tune.bars[8].endings = {2};
    tune.bars[8].closes = tune::BarLine::Double;
    auto const sections = laneSections(tune);
    REQUIRE(sections.size() == 2);
    CHECK(sections[0].lastBar == 8);
}

TEST_CASE("A pick-up bar shares the column of the bar it leads to", "[ui]")
{
    arrange::Arrangement withPickUp = arranged();
    tune::Bar pickUp = withPickUp.tune.bars[0];
    pickUp.number = 0;
    pickUp.length = {music::Rational(1, 8)};
    pickUp.upbeat = {music::Rational(5, 8)};
    pickUp.notes.resize(1);
    pickUp.chords.clear();
    withPickUp.tune.bars[0].part.clear();
    withPickUp.tune.bars.insert(withPickUp.tune.bars.begin(), pickUp);
    for (auto& arrangedPosition : withPickUp.positions) ++arrangedPosition.position.bar;
    LaneLayout const layout = layOutLanes(withPickUp, {});
    REQUIRE(layout.bars.size() == 17);
    CHECK(layout.bars[0].lane == layout.bars[1].lane);
    CHECK(layout.bars[0].box.width < layout.bars[1].box.width);
    // The columns stay where they are without it.
    CHECK(layout.bars[2].box.x == Approx(layOutLanes(arranged(), {}).bars[1].box.x));
    CHECK(layout.bars[1].box.right() ==
          Approx(layOutLanes(arranged(), {}).bars[0].box.right()));
}

TEST_CASE("A second ending that begins a lane stands below the first", "[ui]")
{
    arrange::Arrangement withEndings = arranged();
    auto& bars = withEndings.tune.bars;
    bars[8].part.clear();
    bars[7].endings = {1};
    bars[8].endings = {2};
    LaneLayout const layout = layOutLanes(withEndings, {});
    CHECK(layout.bars[8].lane == layout.bars[7].lane + 1);
    CHECK(layout.bars[8].box.x == layout.bars[7].box.x);
    CHECK(layout.bars[9].lane == layout.bars[8].lane + 1);
}
