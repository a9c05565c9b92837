#include "core/arrange/build.h"
#include "core/proposal/locks.h"
#include "core/proposal/proposal.h"
#include "core/proposal/rules.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace proposal;
using scenario::briefFor;
using scenario::proposed;

namespace {

base::FaultCode codeOf(Brief const& brief)
{
    auto const result = propose(brief);
    REQUIRE_FALSE(result);
    return result.error().code;
}

bool anyContains(std::vector<std::string> const& sentences, std::string const& part)
{
    return std::any_of(sentences.begin(), sentences.end(), [&](std::string const& sentence) {
        return sentence.find(part) != std::string::npos;
    });
}

// A candidate of the position that is not the chosen one and plays something.
arrange::CandidateIndex otherCandidate(Proposal const& proposal,
                                       arrange::PositionIndex position)
{
    for (Variant const& variant : variants(proposal, position))
        if (!variant.chosen &&
            !proposal.lattice.candidates[position][variant.candidate].voicing.notes.empty())
            return variant.candidate;
    FAIL("no other candidate");
    return 0;
}

} // namespace

TEST_CASE("A proposal has one position for each chord span and breaks no rule", "[proposal]")
{
    Proposal const p = proposed(briefFor(scenario::eightBars));
    CHECK(p.arrangement.positions.size() == 11); // two chords in bars 6 and 7, and the end apart
    CHECK(arrange::playedPositions(p.arrangement).size() == 20); // repeated
    CHECK(brokenRules(p.arrangement, p.brief.book) == std::vector<std::string>{});
}

TEST_CASE("The arrangement carries the voicings of the best choice", "[proposal]")
{
    Proposal const p = proposed(briefFor(scenario::eightBars));
    CHECK(p.solution.best == arrange::solved(p.lattice).best);
    // The hands may change fingers, but neither strings nor times.
    auto const withoutFingers = [](arrange::Voicing voicing) {
        for (arrange::VoicedNote& note : voicing.notes) note.finger = 1;
        return voicing;
    };
    for (arrange::PositionIndex const i : p.arrangement.positions.indices())
        CHECK(withoutFingers(p.arrangement.positions[i].voicing) ==
              withoutFingers(p.lattice.candidates[i][p.solution.best.candidates[i]].voicing));
}

TEST_CASE("The same brief gives the same proposal", "[proposal]")
{
    Proposal const one = proposed(briefFor(scenario::eightBars));
    Proposal const two = proposed(briefFor(scenario::eightBars));
    CHECK(one.solution.best == two.solution.best);
    CHECK(one.solution.regrets == two.solution.regrets);
    CHECK(one.warnings == two.warnings);
}

TEST_CASE("Most of a plain tune is accompanied", "[proposal]")
{
    Proposal const p = proposed(briefFor(scenario::eightBars));
    auto const rests = std::count_if(
        p.arrangement.positions.begin(), p.arrangement.positions.end(),
        [](arrange::ArrangedPosition const& a) { return a.voicing.notes.empty(); });
    CHECK(rests <= 1);
}

TEST_CASE("A locked variant is kept, costs its regret, and is free again when unlocked",
          "[proposal]")
{
    Proposal const free = proposed(briefFor(scenario::eightBars));
    arrange::CandidateIndex const other = otherCandidate(free, 2);
    auto const chosen = withChoice(free, 2, other, true);
    REQUIRE(chosen);
    Proposal const& p = *chosen;
    CHECK(p.arrangement.positions[2].locked);
    CHECK(p.solution.best.candidates[2] == other);
    CHECK(p.solution.best.cost - free.solution.best.cost == free.solution.regrets[2][other]);
    CHECK(p.solution == arrange::solved(p.lattice));
    Proposal const again = withoutLock(p, 2);
    CHECK(again.solution == free.solution);
    CHECK(again.brief.locks.empty());
    CHECK_FALSE(again.arrangement.positions[2].locked);
}

TEST_CASE("A second choice at one position replaces the first", "[proposal]")
{
    Proposal const free = proposed(briefFor(scenario::eightBars));
    auto const first = withChoice(free, 0, otherCandidate(free, 0), true);
    REQUIRE(first);
    auto const second = withChoice(*first, 0, free.solution.best.candidates[0], true);
    REQUIRE(second);
    CHECK((*second).brief.locks.size() == 1);
    CHECK((*second).solution.best == free.solution.best);
}

TEST_CASE("A variant that is only heard changes neither brief nor regrets", "[proposal]")
{
    Proposal const free = proposed(briefFor(scenario::eightBars));
    arrange::CandidateIndex const other = otherCandidate(free, 3);
    auto const heard = withChoice(free, 3, other, false);
    REQUIRE(heard);
    CHECK((*heard).solution.best.candidates[3] == other);
    CHECK((*heard).solution.regrets == free.solution.regrets);
    CHECK((*heard).brief.locks.empty());
    CHECK_FALSE((*heard).arrangement.positions[3].locked);
}

TEST_CASE("A choice that no position offers is refused", "[proposal]")
{
    Proposal const p = proposed(briefFor(scenario::eightBars));
    for (auto [position, candidate] : {std::pair{0, 100000}, {0, -1}, {-1, 0}, {99, 0}}) {
        auto const result = withChoice(p, arrange::PositionIndex(position),
                                       arrange::CandidateIndex(candidate), true);
        REQUIRE_FALSE(result);
        CHECK(result.error().code == base::FaultCode::BadLock);
    }
}

TEST_CASE("Locks of the brief are kept when the tune is proposed anew", "[proposal]")
{
    Proposal const free = proposed(briefFor(scenario::eightBars));
    auto const locked = withChoice(free, 4, otherCandidate(free, 4), true);
    REQUIRE(locked);
    Proposal const anew = proposed((*locked).brief);
    CHECK(anew.solution == (*locked).solution);
    CHECK(anew.arrangement.positions[4].locked);
}

TEST_CASE("A lock goes with the tune into another key", "[proposal]")
{
    Proposal const inG = proposed(briefFor(scenario::eightBars));
    auto const locked =
        withChoice(inG, 0, inG.solution.best.candidates[0], true); // of a G chord
    REQUIRE(locked);
    Brief brief = (*locked).brief;
    brief.key = music::Key{{music::Letter::A, 0}, music::Mode::Ionian};
    Proposal const inA = proposed(brief);
    auto const& was = inG.arrangement.positions[0];
    auto const& is = inA.arrangement.positions[0];
    REQUIRE(is.locked);
    CHECK(is.voicing.pattern == was.voicing.pattern);
    CHECK(is.voicing.rootString == was.voicing.rootString + inA.moved.steps);
    CHECK(is.position.chord.root == music::PitchName{music::Letter::A, 0});
}

TEST_CASE("A lock that no longer fits is named with bar and pattern", "[proposal]")
{
    Brief brief = briefFor(scenario::eightBars);
    Lock lock{2, {}, 1, {}, std::nullopt};
    lock.voicing.pattern = "1-5-10-12";
    lock.voicing.rhythm = "no such rhythm";
    brief.locks.push_back(lock);
    Proposal const p = proposed(brief);
    CHECK(anyContains(p.warnings, "1-5-10-12 that you kept in bar 3"));
    CHECK_FALSE(p.arrangement.positions[2].locked);
    CHECK(p.brief.locks.size() == 1); // it waits for better conditions
}

TEST_CASE("Variants come with the least regret first and the chosen among those of none",
          "[proposal]")
{
    Proposal const p = proposed(briefFor(scenario::eightBars));
    auto const list = variants(p, 5);
    REQUIRE(static_cast<int>(list.size()) == p.lattice.candidates[5].size());
    CHECK(list.front().regret == 0);
    CHECK(std::is_sorted(list.begin(), list.end(), [](Variant const& a, Variant const& b) {
        return a.regret < b.regret;
    }));
    CHECK(std::count_if(list.begin(), list.end(), [](Variant const& v) { return v.chosen; }) ==
          1);
    CHECK_FALSE(list.front().reasons.empty());
}

TEST_CASE("A named key moves tune and chords and leaves the mode", "[proposal]")
{
    Brief brief = briefFor("X:1\nM:4/4\nL:1/4\nQ:1/4=80\nK:Ador\n"
                           "\"Am\"AcBA|\"G\"GBdB|\"Am\"cABG|\"Am\"A4|\n");
    brief.key = music::Key{{music::Letter::E, 0}, music::Mode::Ionian};
    Proposal const p = proposed(brief);
    CHECK(p.arrangement.tune.key == music::Key{{music::Letter::E, 0}, music::Mode::Dorian});
    CHECK(p.arrangement.positions[0].position.chord.root ==
          music::PitchName{music::Letter::E, 0});
    CHECK(anyContains(p.warnings, "dorian"));
    CHECK(brokenRules(p.arrangement, p.brief.book).empty());
}

TEST_CASE("What no lever gives on its own string is plucked on the neighbour that sounds it", "[proposal]")
{
    // B major needs A sharp, which no lever gives from E flat (trade check: eight major keys).
    Brief brief = briefFor("X:1\nM:3/4\nL:1/4\nQ:1/4=80\nK:B\n"
                           "\"B\"Bdf|\"F#\"fac|\"E\"egB|\"B\"B3|\n");
    brief.mending.refuse = true;
    CHECK(codeOf(brief) == base::FaultCode::KeyBeyondTuning);
    brief.mending.refuse = false;
    brief.key = BestKey{};
    Proposal const p = proposed(brief);
    CHECK(p.arrangement.transposedSemitones == 0);
    CHECK(p.snags.empty());
    CHECK(brokenRules(p.arrangement, p.brief.book).empty());
}

TEST_CASE("A tune without chords is arranged over a drone of its key, one without notes refused",
          "[proposal]")
{
    Proposal const drone = proposed(briefFor("X:1\nM:4/4\nL:1/4\nK:Ador\nABcd|e2A2|\n"));
    CHECK(drone.brief.tune == scenario::tuneOf("X:1\nM:4/4\nL:1/4\nK:Ador\nABcd|e2A2|\n"));
    CHECK(brokenRules(drone.arrangement, drone.brief.book).empty());
    int plucked = 0;
    for (arrange::HandNote const& note : arrange::handNotes(drone.arrangement))
        if (note.hand == harp::Side::Left) {
            ++plucked;
            CHECK((note.pitch.letter == music::Letter::A || note.pitch.letter == music::Letter::E));
        }
    CHECK(plucked >= 2);
    CHECK(anyContains(drone.warnings, "no chord symbols"));
    tune::Tune silent = scenario::tuneOf(scenario::eightBars);
    for (tune::Bar& bar : silent.bars)
        for (tune::Note& note : bar.notes) note.pitches.clear();
    CHECK(proposed(briefFor(silent)).arrangement.playing.notes.empty()); // still to be written
    silent.bars.clear();
    CHECK(codeOf(briefFor(silent)) == base::FaultCode::NoNotes);
}

TEST_CASE("A tempo that was assumed is said, one that was given is not", "[proposal]")
{
    std::string const silent = "X:1\nM:4/4\nL:1/4\nK:G\n\"G\"GBdB|\"G\"G4|\n";
    CHECK(anyContains(proposed(briefFor(silent)).warnings, "gives no tempo"));
    Brief brief = briefFor(silent);
    brief.quartersPerMinute = 66;
    Proposal const p = proposed(brief);
    CHECK_FALSE(anyContains(p.warnings, "gives no tempo"));
    CHECK(tune::quartersPerMinute(p.arrangement.tempo) == 66);
}

TEST_CASE("A tune too fast for its level is told the tempo that would suit", "[proposal]")
{
    // Quavers at 240 crotchets are 8 a second; level 3 plays 6 (working limits, trade 3.4).
    Brief brief = briefFor("X:1\nM:4/4\nL:1/8\nQ:1/4=240\nK:G\n"
                           "\"G\"gdBd gdBd|\"G\"gdBd g4|\n");
    CHECK(anyContains(proposed(brief).warnings, "180 crotchets"));
}

TEST_CASE("Bars that no chord governs are named", "[proposal]")
{
    Proposal const p =
        proposed(briefFor("X:1\nM:4/4\nL:1/4\nQ:1/4=80\nK:G\ngdBd|gdBd|\"G\"gdBd|\"D\"f4|\n"));
    CHECK(anyContains(p.warnings, "no chord symbol for bars 1-2"));
}

TEST_CASE("With varied passes every pass is a position and can be locked alone", "[proposal]")
{
    Brief brief = briefFor(scenario::eightBars);
    brief.passes = Passes::Varied;
    Proposal const p = proposed(brief);
    CHECK(p.arrangement.positions.size() == 20);
    CHECK(brokenRules(p.arrangement, p.brief.book).empty());
    auto const locked = withChoice(p, 10, otherCandidate(p, 10), true);
    REQUIRE(locked);
    CHECK((*locked).brief.locks.front().pass == 2);
    CHECK((*locked).arrangement.positions[10].locked);
    CHECK_FALSE((*locked).arrangement.positions[0].locked);
}

TEST_CASE("What the reader remarked reaches the arranger with its place", "[proposal]")
{
    tune::Tune tune = scenario::tuneOf(scenario::eightBars);
    tune.said = {{{7, 3}, "a note too short", "it was lengthened"},
                 {{8, 1}, "a note too short", "it was lengthened"}};
    CHECK(anyContains(proposed(briefFor(tune)).warnings,
                      "Line 7, column 3: a note too short; it was lengthened (and 1 more"));
}
