#include "core/notation/beams.h"
#include "core/notation/melody.h"
#include "core/sheet/beamline.h"
#include "tests/sheet/examples.h"

#include <catch2/catch.hpp>

#include <string>

using notation::BeamGroup;
using sheet::BeamStem;

namespace {

// Lengths in semiquavers, r for a rest, | for a gap left by the writer: "2 2 |2 r2".
notation::StaffBar staff(std::string const& words, music::Meter meter)
{
    tune::Bar bar;
    bar.meter = meter;
    std::istringstream in(words);
    for (std::string word; in >> word;) {
        tune::Note note;
        note.at = bar.length;
        if (word[0] == '|') {
            note.beamBroken = true;
            word.erase(0, 1);
        }
        if (word[0] == 'r')
            word.erase(0, 1);
        else
            note.pitches = {{music::Letter::A, 0, 4}};
        note.length = example::wholes(std::stoi(word), 16);
        bar.length = bar.length + note.length;
        bar.notes.push_back(note);
    }
    return notation::melodyBar(example::tuneOf({bar}), 0, {});
}

std::string shown(std::vector<BeamGroup> const& groups)
{
    std::string out;
    for (BeamGroup group : groups)
        out += (out.empty() ? "" : " ") + std::to_string(group.first) + '-' +
               std::to_string(group.last);
    return out;
}

} // namespace

TEST_CASE("Beams show the beats of the meter", "[beams]")
{
    // Gould 2011, beaming (from memory).
    struct Row {
        music::Meter meter;
        std::string notes;
        std::string groups;
    };
    auto const row = GENERATE(values<Row>({
        {{6, 8, false}, "2 2 2 2 2 2", "0-2 3-5"},
        {{6, 8, false}, "2 4 2 2 2", "2-4"},
        {{9, 8, false}, "2 2 2 2 2 2 2 2 2", "0-2 3-5 6-8"},
        {{4, 4, false}, "2 2 2 2 2 2 2 2", "0-3 4-7"},
        {{4, 4, false}, "2 1 1 2 2 2 2 2 2", "0-2 3-4 5-8"}, // shorter notes: by beats
        {{2, 2, false}, "2 2 2 2 2 2 2 2", "0-3 4-7"},
        {{4, 4, false}, "2 2 |2 2 2 2 2 2", "0-1 2-3 4-7"}, // the writer's gap at a beat
        {{4, 4, false}, "2 |2 2 2 2 2 2 2", "0-3 4-7"},     // a gap off the beat is no wish
        {{3, 4, false}, "2 2 2 2 2 2", "0-5"},
        {{3, 4, false}, "4 2 2 2 2", "1-4"},
        {{3, 4, false}, "1 1 2 2 2 2 2", "0-2 3-4 5-6"},
        {{2, 4, false}, "2 2 2 2", "0-3"},
        {{2, 4, false}, "1 1 2 2 2", "0-2 3-4"},
        {{3, 8, false}, "2 2 2", "0-2"},
        {{4, 4, false}, "2 r2 2 2 8", "2-3"}, // a rest ends a beam
        {{4, 4, false}, "6 2 4 2 2", "3-4"},  // a lone quaver keeps its flag
        {{5, 8, false}, "2 2 2 |2 2", "0-2 3-4"},
    }));
    CAPTURE(music::text(row.meter), row.notes);
    CHECK(shown(notation::beamGroups(staff(row.notes, row.meter), row.meter, {})) == row.groups);
}

TEST_CASE("A pick-up is beamed by its place in the full bar", "[beams]")
{
    notation::StaffBar const bar = staff("2 2 2", {6, 8, false});
    CHECK(shown(notation::beamGroups(bar, {6, 8, false}, example::wholes(3, 8))) == "0-2");
    CHECK(shown(notation::beamGroups(bar, {4, 4, false}, example::wholes(5, 8))) == "0-2");
    CHECK(shown(notation::beamGroups(bar, {3, 4, false}, example::wholes(3, 8))) == "0-2");
}

TEST_CASE("A lone semiquaver's second beam points to the note it shares the beat with",
          "[beams]")
{
    music::Meter const meter{2, 4, false};
    notation::StaffBar const dotted = staff("3 1 1 3", meter);
    auto const groups = notation::beamGroups(dotted, meter, {});
    REQUIRE(shown(groups) == "0-1 2-3");
    auto const first = notation::beamRuns(dotted, groups[0], meter, {});
    REQUIRE(first.size() == 2);
    CHECK(first[1] == notation::BeamRun{2, 1, 1, true});
    auto const second = notation::beamRuns(dotted, groups[1], meter, {});
    REQUIRE(second.size() == 2);
    CHECK(second[1] == notation::BeamRun{2, 2, 2, false});
}

TEST_CASE("Semiquavers between quavers share their own beam", "[beams]")
{
    music::Meter const meter{6, 8, false};
    notation::StaffBar const bar = staff("2 1 1 2", meter);
    auto const runs = notation::beamRuns(bar, {0, 3}, meter, {});
    REQUIRE(runs.size() == 2);
    CHECK(runs[1] == notation::BeamRun{2, 1, 2, false});
}

TEST_CASE(
    "A beam lies flat where the group turns back and leans with its outer notes elsewhere",
    "[beams]")
{
    // Ross 1970, slants (from memory). Heads in spaces below the top line.
    auto const slant = [](std::vector<BeamStem> const& stems, bool up) {
        sheet::BeamLine const line = sheet::beamLine(stems, up, 0.5, 0.25);
        return line.last - line.first;
    };
    CHECK(slant({{0, 3, 1}, {4, 2, 1}, {8, 3.5, 1}}, true) == Approx(0.0)); // turns back
    CHECK(slant({{0, 3, 1}, {4, 3, 1}}, true) == Approx(0.0));              // level
    CHECK(slant({{0, 4, 1}, {4, 3.5, 1}, {8, 3, 1}}, true) < -0.3);         // rising
    CHECK(slant({{0, 0, 1}, {4, 0.5, 1}, {8, 1, 1}}, false) > 0.3);         // falling
    CHECK(std::abs(slant({{0, 4, 1}, {4, 2, 1}, {8, 0.5, 1}}, true)) <= 1.25);
}

TEST_CASE("No stem under a beam is shorter than the least and all reach the middle line",
          "[beams]")
{
    std::vector<std::vector<BeamStem>> const groups{
        {{0, 3, 1}, {3, 2.5, 1}, {6, 3.5, 1}},
        {{0, 6, 1}, {3, 6.5, 1}, {6, 7, 1}}, // far below the staff
        {{0, 4, 2}, {3, 3, 2}},
    };
    for (auto const& stems : groups) {
        sheet::BeamLine const line = sheet::beamLine(stems, true, 0.5, 0.25);
        for (BeamStem const& stem : stems) {
            double const share = stem.x / stems.back().x;
            double const end = line.first + share * (line.last - line.first);
            CHECK(stem.headY - end >= 2.75 - 1e-9);
            CHECK(end <= 2.0 + 1e-9);
        }
    }
}
