#include "core/proposal/remedies.h"
#include "core/proposal/rules.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace proposal;

namespace {

// C and C sharp a quaver apart in bar 3, in every octave's own string: no hand turns so fast.
std::string const chromatic = "X:1\nT:The Narrow Bridge\nM:4/4\nL:1/8\nQ:1/4=100\nK:G\n"
                              "\"G\"G2B2 d2B2|\"C\"c2e2 g2e2|\"C\"c^cd2 \"G\"B4|\"G\"G8|]\n";

std::vector<Remedy> remediesOf(Brief const& brief)
{
    return remediesFor(brief, scenario::tables().levels);
}

Remedy const* find(std::vector<Remedy> const& remedies, Help help)
{
    auto const found = std::find_if(remedies.begin(), remedies.end(),
                                    [help](Remedy const& r) { return r.help == help; });
    return found == remedies.end() ? nullptr : &*found;
}

Brief asWritten(int level)
{
    Brief brief = scenario::briefFor(chromatic, level);
    brief.key = AsWritten{};
    brief.mending.refuse = true;
    return brief;
}

} // namespace

TEST_CASE("Every remedy that is offered works, and is the tune but for what it says",
          "[proposal]")
{
    for (int level : {1, 2, 3}) {
        CAPTURE(level);
        Brief const brief = asWritten(level);
        REQUIRE_FALSE(propose(brief));
        auto const remedies = remediesOf(brief);
        CHECK(remedies.size() >= 3);
        for (Remedy const& remedy : remedies) {
            CAPTURE(remedy.sentence);
            auto const proposal = propose(remedy.brief);
            REQUIRE(proposal);
            CHECK(brokenRules(proposal->arrangement, remedy.brief.book).empty());
            bool const changes =
                remedy.help == Help::OtherOctave || remedy.help == Help::LeaveOut ||
                remedy.help == Help::Plain;
            CHECK(remedy.brief.changes.empty() != changes);
            CHECK(remedy.brief.tune == brief.tune); // as read, whatever is changed of it
        }
        CHECK(std::is_sorted(remedies.begin(), remedies.end(),
                             [](Remedy const& a, Remedy const& b) { return a.help < b.help; }));
    }
}

TEST_CASE("The note with the accidental is what a remedy changes, named with its bar",
          "[proposal]")
{
    auto const remedies = remediesOf(asWritten(3));
    auto const* octave = find(remedies, Help::OtherOctave);
    REQUIRE(octave);
    CHECK(octave->sentence == "Play the C♯5 in bar 3 an octave lower.");
    auto const* out = find(remedies, Help::LeaveOut);
    REQUIRE(out);
    CHECK(out->sentence == "Leave out the C♯5 in bar 3.");
    auto const* plain = find(remedies, Help::Plain);
    REQUIRE(plain);
    CHECK(plain->sentence == "Play the C♯5 in bar 3 without the accidental.");
}

TEST_CASE("What was changed of the tune stands among the warnings", "[proposal]")
{
    auto const remedies = remediesOf(asWritten(3));
    auto const* out = find(remedies, Help::LeaveOut);
    REQUIRE(out);
    auto const proposal = scenario::proposed(out->brief);
    CHECK(std::count(proposal.warnings.begin(), proposal.warnings.end(),
                     "As chosen: The C♯5 in bar 3 is left out.") == 1);
}

TEST_CASE("A key beyond the tuning is remedied by the key that suits best", "[proposal]")
{
    Brief brief = scenario::briefFor(scenario::eightBars);
    brief.key = *music::keyFrom("Ab"); // one flat more than E flat tuning [trade-1.4]
    brief.mending.refuse = true;
    REQUIRE_FALSE(propose(brief));
    auto const remedies = remediesOf(brief);
    REQUIRE_FALSE(remedies.empty());
    CHECK(remedies.front().help == Help::OtherKey);
    CHECK(remedies.front().sentence.find("Play it in G major") == 0);
}

TEST_CASE("A wished lever stands where the tune does not need it, and the left hand follows",
          "[proposal]")
{
    Brief brief = scenario::briefFor(scenario::eightBars);
    brief.key = AsWritten{};
    brief.leverWishes = {{music::Letter::C, 2, harp::Lever::Up}};
    auto const proposal = scenario::proposed(brief);
    harp::StringIndex const string = *harp::stringFor(brief.harp, {music::Letter::C, 0, 2});
    CHECK(proposal.arrangement.levers.setup[string] == harp::Lever::Up);
    CHECK(brokenRules(proposal.arrangement, brief.book).empty());
    // A string of the tune: the tune's need goes before, and it is said.
    auto const tuneString = *harp::stringFor(
        brief.harp, proposal.arrangement.playing.notes.front().pitch);
    auto const open = brief.harp.string(tuneString).open;
    auto const needed = proposal.arrangement.levers.setup[tuneString];
    brief.leverWishes = {{open.letter, open.octave,
                          needed == harp::Lever::Up ? harp::Lever::Down : harp::Lever::Up}};
    auto const other = scenario::proposed(brief);
    CHECK(other.arrangement.levers.setup[tuneString] == needed);
    CHECK(std::any_of(other.warnings.begin(), other.warnings.end(), [](auto const& warning) {
        return warning.find("not as you asked") != std::string::npos;
    }));
}

TEST_CASE("Plan and left hand agree: the flip waits for a moment that costs the hand nothing",
          "[proposal]")
{
    // C natural in bar 1, C sharp in bar 5; bars 2 to 4 leave a flip any moment.
    std::string const abc = "X:1\nT:The Long Bar\nM:4/4\nL:1/4\nQ:1/4=80\nK:G\n"
                            "\"C\"c2 G2|\"G\"G2 B2|\"G\"d4|\"G\"G2 B2|\"A\"^c2 e2|\"D\"d4|]\n";
    Brief brief = scenario::briefFor(abc, 3);
    brief.key = AsWritten{};
    auto const proposal = scenario::proposed(brief);
    REQUIRE(proposal.arrangement.levers.flips.size() == 1);
    CHECK(brokenRules(proposal.arrangement, brief.book).empty());
    // It is no dearer than the same tune with the C sharp an octave away, where no lever need
    // be turned at all, by more than one bar's rest for the left hand.
    Brief without = brief;
    without.changes = {{{4, 0, 0, false}, tune::Change::OctaveHigher}};
    auto const free = scenario::proposed(without);
    CHECK(free.arrangement.levers.flips.empty());
    CHECK(proposal.solution.best.cost <= free.solution.best.cost + 2000);
}
