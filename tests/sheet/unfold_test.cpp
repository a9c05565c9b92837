#include "core/arrange/unfold.h"
#include "tests/sheet/examples.h"
#include "tests/sheet/measure.h"

#include <catch2/catch.hpp>

using arrange::Arrangement;

namespace {

// |: G | C |1 D :|2 G | then |: C :|, in 4/4, one position a played bar.
Arrangement everyPassItsOwn()
{
    auto const b = [](std::string const& chord) {
        return example::withChord(
            example::bar("G4:1/2 B4:1/2", example::fourFour, example::gMajor), chord);
    };
    tune::Bars bars{b("G"), b("C"), b("D"), b("G"), b("C")};
    bars[0].part = "A";
    bars[0].repeatOpens = true;
    bars[2].endings = {1};
    bars[2].repeatCloses = true;
    bars[2].endingCloses = true;
    bars[3].endings = {2};
    bars[3].endingCloses = true;
    bars[4].repeatOpens = true;
    bars[4].repeatCloses = true;
    Arrangement made = example::arrangementOf(example::tuneOf(std::move(bars)));
    made.playing = tune::played(made.tune);
    std::vector<arrange::ArrangedPosition> const written = made.positions.values();
    made.positions.clear();
    for (tune::PlayedBarIndex const i : made.playing.bars.indices()) {
        tune::PlayedBar const& played = made.playing.bars[i];
        auto position = written[static_cast<std::size_t>(played.bar)];
        position.position.played = {{i, played.pass, played.at}};
        made.positions.push_back(position);
    }
    made.rightFingers = {{0, 0, {1}}, {4, 0, {2}}};
    return made;
}

std::string chordsOf(tune::Tune const& tune)
{
    std::string out;
    for (tune::Bar const& bar : tune.bars) out += bar.chords[0].written;
    return out;
}

} // namespace

TEST_CASE("Passes that are alike leave the repeats as they are", "[unfold]")
{
    Arrangement const alike = everyPassItsOwn();
    REQUIRE(alike.playing.bars.size() == 8); // G C D, G C G, C C
    CHECK_FALSE(arrange::passesDiffer(alike));
}

TEST_CASE("A section whose second time differs is written out, the others keep their repeats",
          "[unfold]")
{
    Arrangement varied = everyPassItsOwn();
    varied.positions[4].voicing.pattern = "1-5-10"; // bar 2, second time
    REQUIRE(arrange::passesDiffer(varied));
    arrange::Unfolded const unfolded = arrange::unfolded(varied);
    tune::Tune const& tune = unfolded.arrangement.tune;
    CHECK(chordsOf(tune) == "GCDGCGC");
    CHECK(unfolded.bars.values() == std::vector<tune::BarIndex>{0, 1, 2, 0, 1, 3, 4});
    CHECK(tune.bars[0].part == "A");
    CHECK(tune.bars[3].part == "A 2");
    CHECK_FALSE(tune.bars[0].repeatOpens);
    CHECK(tune.bars[2].endings.empty());
    CHECK(tune.bars[6].repeatCloses);
    CHECK(tune.bars[6].number == 7);
    CHECK(tune.bars[3].annotations.empty());
    // Played out again it is the same performance.
    CHECK(tune::played(tune).total == varied.playing.total);
    CHECK(tune::played(tune).bars == unfolded.arrangement.playing.bars);
    // Every position of the first section has a bar of its own; fingers come with every copy.
    CHECK(unfolded.arrangement.positions[4].position.bar == 4);
    CHECK(unfolded.arrangement.rightFingers.size() == 3);
}

TEST_CASE("A written-out section without a name is told to be the second time", "[unfold]")
{
    Arrangement varied = everyPassItsOwn();
    varied.tune.bars[0].part.clear();
    varied.positions[4].voicing.pattern = "1-5-10";
    tune::Tune const tune = arrange::unfolded(varied).arrangement.tune;
    CHECK(tune.bars[0].annotations.empty());
    REQUIRE(tune.bars[3].annotations.size() == 1);
    CHECK(tune.bars[3].annotations[0].text == "second time");
    CHECK(tune.bars[3].part.empty());
}

TEST_CASE("A position of all passes is written in every copy of its bar", "[unfold]")
{
    Arrangement varied = everyPassItsOwn();
    varied.positions[0].position.played.push_back(varied.positions[3].position.played[0]);
    varied.positions.erase(varied.positions.begin() + 3);
    varied.positions[3].voicing.pattern = "1-5-10"; // bar 2, second time
    arrange::Unfolded const unfolded = arrange::unfolded(varied);
    CHECK(unfolded.positions.values() ==
          std::vector<arrange::PositionIndex>{0, 1, 2, 3, 4, 5, 6, 0});
    CHECK(unfolded.arrangement.positions.back().position.bar == 3);
    CHECK(arrange::handNotes(unfolded.arrangement).size() == arrange::handNotes(varied).size());
}

TEST_CASE("The sheet prints every voicing that is played, and clicks find it", "[unfold]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    Arrangement varied = everyPassItsOwn();
    varied.positions[4].voicing.pattern = "1-5-10";
    sheet::SheetStyle style;
    style.shapes = false; // the box names the shapes again
    sheet::Document const document = sheet::arrangementSheet(varied, *font, style);
    int labels = 0;
    bool found = false;
    for (sheet::Mark const& mark : document.pages[0].marks)
        if (auto const* words = std::get_if<sheet::Words>(&mark.what);
            words && words->ink == sheet::Ink::PatternLabel) {
            ++labels;
            if (words->text == "1-5-10") found = mark.position == 4 && mark.bar == 1;
        }
    CHECK(labels == 7);
    CHECK(found);
}
