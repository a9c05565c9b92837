#include "ui/tunegridlayout.h"

#include "core/proposal/proposal.h"
#include "scenario.h"

#include <catch2/catch.hpp>

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

GridLayout laidOut(double width)
{
    GridMeasure measure;
    measure.width = width;
    return layOutGrid(arranged(), measure);
}

} // namespace

TEST_CASE("Four bars of a dance tune stand in a row, fewer in a narrow window", "[ui]")
{
    // trade-6: four bars a system for dance tunes, common practice, no source.
    auto const [width, bars] =
        GENERATE(table<double, int>({{900, 4}, {700, 4}, {500, 2}, {200, 1}, {2000, 8}}));
    CAPTURE(width);
    CHECK(laidOut(width).barsPerRow == bars);
}

TEST_CASE("A part begins a new row under a heading of its own", "[ui]")
{
    GridLayout const layout = laidOut(900);
    REQUIRE(layout.sections.size() == 2);
    CHECK(layout.sections[0].part == "A");
    CHECK(layout.sections[0].timesPlayed == 2);
    CHECK(layout.sections[1].firstBar == 8);
    CHECK(layout.cards[8].box.x == layout.cards[0].box.x);
    CHECK(layout.cards[8].row == 2);
    CHECK(layout.cards[8].box.y > layout.sections[1].heading.y);
    CHECK(layout.sections[1].heading.y >= layout.cards[7].box.bottom());
}

TEST_CASE("Cards of the grid lie inside it and never over each other", "[ui]")
{
    for (double const width : {300.0, 640.0, 1000.0, 2200.0}) {
        GridLayout const layout = laidOut(width);
        CAPTURE(width);
        for (std::size_t i = 0; i < layout.cards.size(); ++i) {
            Box const& a = layout.cards[i].box;
            CHECK(a.x >= 0);
            CHECK(a.right() <= width);
            CHECK(a.bottom() <= layout.height);
            for (std::size_t k = i + 1; k < layout.cards.size(); ++k) {
                Box const& b = layout.cards[k].box;
                bool const apart = a.right() <= b.x || b.right() <= a.x || a.bottom() <= b.y ||
                                   b.bottom() <= a.y;
                CHECK(apart);
            }
        }
    }
}

TEST_CASE("A higher pitch stands higher in the drawing", "[ui]")
{
    GridLayout const layout = laidOut(900);
    Box const& drawing = layout.cards[0].drawing;
    for (int step = layout.lowestStep; step < layout.highestStep; ++step)
        CHECK(yAt(layout, drawing, step + 1) < yAt(layout, drawing, step));
    CHECK(yAt(layout, drawing, layout.highestStep) >= drawing.y);
    CHECK(yAt(layout, drawing, layout.lowestStep) <= drawing.bottom());
}

TEST_CASE("Every position of the grid is found under the middle of its chord name", "[ui]")
{
    GridLayout const layout = laidOut(900);
    int found = 0;
    for (GridCard const& card : layout.cards)
        for (GridSpan const& span : card.spans) {
            Box const& name = span.name;
            CHECK(positionAt(layout, name.x + name.width / 2, name.y + name.height / 2,
                             std::nullopt) == span.position);
            ++found;
        }
    CHECK(found == static_cast<int>(arranged().positions.size()));
    CHECK_FALSE(positionAt(layout, 1, 1, std::nullopt));
}

TEST_CASE("Two chords of one bar split its card where the second one begins", "[ui]")
{
    GridLayout const layout = laidOut(900);
    GridCard const& card = layout.cards[1];
    REQUIRE(card.spans.size() == 2);
    // The second chord of bar 2 stands on its fourth quaver of six: half way.
    CHECK(card.spans[1].stretch.x == Approx(card.drawing.x + card.drawing.width / 2));
    CHECK(card.spans[0].stretch.right() == Approx(card.spans[1].stretch.x));
    CHECK(card.spans[1].stretch.right() == Approx(card.box.right()));
}

TEST_CASE("Arrow keys walk the grid by chord and by row and stop at its edges", "[ui]")
{
    GridLayout const layout = laidOut(900);
    int const last = static_cast<int>(arranged().positions.size()) - 1;
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
    auto const sections = gridSections(tune);
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
    auto const sections = gridSections(tune);
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
    GridLayout const layout = layOutGrid(withPickUp, {});
    REQUIRE(layout.cards.size() == 17);
    CHECK(layout.cards[0].row == layout.cards[1].row);
    CHECK(layout.cards[0].box.width < layout.cards[1].box.width);
    // The columns stay where they are without it.
    CHECK(layout.cards[2].box.x == Approx(layOutGrid(arranged(), {}).cards[1].box.x));
    CHECK(layout.cards[1].box.right() ==
          Approx(layOutGrid(arranged(), {}).cards[0].box.right()));
}

TEST_CASE("A second ending that begins a row stands below the first", "[ui]")
{
    arrange::Arrangement withEndings = arranged();
    auto& bars = withEndings.tune.bars;
    bars[8].part.clear();
    bars[7].endings = {1};
    bars[8].endings = {2};
    GridLayout const layout = layOutGrid(withEndings, {});
    CHECK(layout.cards[8].row == layout.cards[7].row + 1);
    CHECK(layout.cards[8].box.x == layout.cards[7].box.x);
    CHECK(layout.cards[9].row == layout.cards[8].row + 1);
}
