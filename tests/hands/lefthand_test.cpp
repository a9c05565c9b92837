#include "core/hands/lefthand.h"

#include "tests/perform/pieces.h"

#include <catch2/catch.hpp>

using namespace pieces;

namespace {

struct Played {
    int degree, finger;
};

// One bar in which the left hand plays these degrees on C3, one a quaver.
arrange::Arrangement bar(std::vector<Played> const& notes)
{
    tune::Tune tune;
    tune.bars = {barOf({4, 4}, wholes(1, 1), {c5})};
    std::vector<arrange::VoicedNote> voiced;
    for (std::size_t i = 0; i < notes.size(); ++i)
        voiced.push_back({wholes(static_cast<std::int64_t>(i), 8), wholes(1, 8),
                          stringOf(music::Letter::C, 3) + notes[i].degree - 1, notes[i].finger,
                          notes[i].degree, 0});
    return arranged(tune, {wholes(1, 4), 60}, {voiced});
}

std::string groups(std::vector<Played> const& notes)
{
    std::string out;
    for (arrange::PlacingGroup const& group : hands::leftHand(bar(notes)).groups) {
        out += out.empty() ? "" : group.linked ? " ~" : " ";
        for (arrange::GroupNote const& note : group.notes) out += std::to_string(note.finger);
    }
    return out;
}

} // namespace

TEST_CASE("The left hand places 4-2-1 at once and crosses under to a linked group", "[hands]")
{
    CHECK(groups({{1, 4}, {5, 2}, {8, 1}}) == "421");
    CHECK(groups({{1, 4}, {5, 2}, {8, 1}, {5, 2}}) == "4212");
    CHECK(groups({{1, 4}, {5, 2}, {8, 1}, {9, 2}}) == "421 ~2"); // 1-5-8-9, 2u [trade-4]
}

TEST_CASE("Fingers that cannot lie together are placed one after the other", "[hands]")
{
    // 1-5-8-10 with 4-3-2-1: 4 and 2 reach six gaps [trade-3.2], an octave is seven.
    CHECK(groups({{1, 4}, {5, 3}, {8, 2}, {10, 1}}) == "43 ~21");
}

TEST_CASE("A group is played as often as its bar, as notes of the plan", "[hands]")
{
    auto arrangement = bar({{1, 4}, {5, 2}, {8, 1}});
    arrangement.tune.bars[0].repeatCloses = true;
    auto twice =
        arranged(arrangement.tune, arrangement.tempo, {arrangement.positions[0].voicing.notes});
    twice.groups = hands::leftHand(twice).groups;
    auto const notes = handNotes(twice);
    auto const played = playedGroups(twice, notes);
    REQUIRE(played.size() == 2);
    CHECK(played[0].notes == std::vector<int>{0, 2, 3}); // the tune's C5 is note 1
    CHECK(played[1].notes == std::vector<int>{4, 6, 7});
}

TEST_CASE("A note given to the right hand is played by it and leaves the left hand's group",
          "[hands]")
{
    auto arrangement = bar({{1, 4}, {5, 2}, {10, 1}});
    arrangement.given = {{0, 2, 2}};
    auto const groups = hands::leftHand(arrangement).groups;
    REQUIRE(groups.size() == 1);
    CHECK(groups[0].notes.size() == 2);
    auto const notes = handNotes(arrangement);
    REQUIRE(notes.size() == 4);
    CHECK(notes[3].hand == harp::Side::Right);
    CHECK(notes[3].finger == 2);
    CHECK_FALSE(notes[3].fromTune);
    CHECK(notes[3].position == 0);
}

TEST_CASE("Notes added below the tune sound with it as often as it is played", "[hands]")
{
    auto arrangement = twoBars();
    arrangement.added = {{0, 2, {music::Pitch{music::Letter::C, 0, 5}}, {3}}}; // below E5
    auto const before = handNotes(twoBars());
    auto const notes = handNotes(arrangement);
    REQUIRE(notes.size() == before.size() + 1);
    auto const added = std::find_if(notes.begin(), notes.end(), [](auto const& note) {
        return note.hand == harp::Side::Right && !note.fromTune;
    });
    REQUIRE(added != notes.end());
    CHECK(added->at == music::Moment{music::Rational(1, 2)});
    CHECK(added->string == stringOf(music::Letter::C, 5));
    CHECK(added->held == wholes(1, 4));
    CHECK(added->finger == 3);
}
