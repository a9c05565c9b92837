#include "core/arrange/build.h"
#include "core/arrange/solve.h"
#include "core/explain/judgement.h"
#include "core/explain/reasons.h"

#include "tests/arrange/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace arrange;
using namespace explain;

namespace {

// The example's lattice and its solution.
struct Solved {
    scenes::Example example;
    Lattice lattice;
    Solution solution;

    explicit Solved(scenes::Example x)
        : example(std::move(x)), lattice(latticeFor(example.scene(), example.positions())),
          solution(solved(lattice))
    {}
    std::vector<std::string> reasons(arrange::PositionIndex position,
                                     arrange::CandidateIndex candidate) const
    {
        return reasonsFor(example.scene(), lattice, solution, position, candidate);
    }
    // The first candidate of this pattern on this root.
    arrange::CandidateIndex candidate(arrange::PositionIndex position,
                                      std::string const& pattern, char const* root) const
    {
        auto const& list = lattice.candidates[position];
        auto const found = std::ranges::find_if(list, [&](Candidate const& c) {
            return c.voicing.pattern == pattern && c.voicing.rootString == example.string(root);
        });
        REQUIRE(found != list.end());
        return list.indexOf(found);
    }
};

// The first position of an example with a voicing of its own.
struct FirstPosition {
    Scene scene;
    arrange::Positions positions;
    Told told;

    FirstPosition(scenes::Example const& x, std::vector<int> const& degrees, char const* root,
                  std::vector<music::Rational> const& at)
        : scene(x.scene()),
          positions(x.positions()), told{scene,
                                         positions.front(),
                                         nullptr,
                                         nullptr,
                                         x.view(0),
                                         scenes::laid(x.view(0), degrees, x.string(root), at)}
    {}
};

std::string against(Term term, FirstPosition const& first) { return against(term, first.told); }

bool anySays(std::vector<std::string> const& sentences, std::string const& words)
{
    return std::ranges::any_of(
        sentences, [&](std::string const& s) { return s.find(words) != std::string::npos; });
}

} // namespace

TEST_CASE("Every candidate has one to three whole sentences and no points", "[reasons]")
{
    Solved const s(scenes::example(
        "[G] B4:1/4 A4:1/4 G4:1/2 | [D] A4:1/4 B4:1/4 A4:1/2 | [C] E5:1/2 [G] D5:1/2 |"));
    for (arrange::PositionIndex const i : s.lattice.candidates.indices()) {
        for (arrange::CandidateIndex const c : s.lattice.candidates[i].indices()) {
            auto const sentences = s.reasons(i, c);
            CAPTURE(i, c, s.lattice.candidates[i][c].voicing.pattern, sentences);
            CHECK(!sentences.empty());
            CHECK(sentences.size() <= 3);
            for (std::string const& sentence : sentences) {
                CHECK(sentence.back() == '.');
                CHECK((sentence.front() >= 'A' && sentence.front() <= 'Z'));
                CHECK(sentence.find("point") == std::string::npos);
            }
        }
    }
}

TEST_CASE("A clash is named by finger, strings and beat", "[reasons]")
{
    // F sharp 3 on beat 3 below the tune's G4: a minor ninth.
    auto const x = scenes::example("[G] D5:1/2 G4:1/2 |");
    CHECK(against(Term::MelodyClash, FirstPosition(x, {1, 7}, "G2", {{0}, {1, 2}})) ==
          "The second finger's F♯3 clashes with the tune's G4 on beat 3.");
}

TEST_CASE("A low close triad is said to growl, by its minor third", "[reasons]")
{
    auto const x = scenes::example("[C] E5:1 |", "C");
    CHECK(against(Term::Mud, FirstPosition(x, {1, 3, 5}, "C2", {{0}, {0}, {0}})) ==
          "E2 and G2 ring together so low that they sound muddy.");
}

TEST_CASE("A stretch is named by its interval and lowest string", "[reasons]")
{
    auto const x = scenes::example("[C] E5:1 |", "C");
    CHECK(against(Term::Reach, FirstPosition(x, {1, 10}, "C2", {{0}, {1, 2}})) ==
          "A tenth from C2 stretches the hand.");
}

TEST_CASE("A string that is no note of the chord is named by degree and pitch", "[reasons]")
{
    // Levers set for G: the C strings sound C natural, no note of D.
    auto const x = scenes::example("[D] A4:1 |");
    CHECK(against(Term::ChordFit, FirstPosition(x, {1, 7}, "D2", {{0}, {1, 2}})) ==
          "The seventh sounds C3, which is not a note of D.");
    CHECK(inFavour(Term::Quality,
                   FirstPosition(x, {1, 5, 10}, "D2", {{0}, {1, 4}, {1, 2}}).told) ==
          "It has the third of the chord, F♯3.");
}

TEST_CASE("Crowded hands are told with finger and beat", "[reasons]")
{
    auto const x = scenes::example("[G] A4:1/2 B4:1/2 |");
    CHECK(against(Term::Collision, FirstPosition(x, {1, 8}, "G3", {{0}, {1, 2}})) ==
          "The second finger is only two strings from the tune on beat 3, so the hands are "
          "crowded.");
}

TEST_CASE("The chosen shape says what it is and where it stands", "[reasons]")
{
    Solved const s(scenes::example("[G] B4:1 | [G] B4:1 |"));
    arrange::CandidateIndex const chosen = s.solution.best.candidates[0];
    auto const sentences = s.reasons(0, chosen);
    REQUIRE(!sentences.empty());
    CAPTURE(sentences);
    CHECK(anySays({sentences.front()}, "G"));
}

TEST_CASE("The last bar's open ninth is said to leave the tune open", "[reasons]")
{
    auto x = scenes::example("[D] A4:1 | [G] B4:1 |");
    x.book.patterns.push_back(*pattern::patternFrom("1-5-9"));
    Solved const s(x);
    auto const sentences = s.reasons(1, s.candidate(1, "1-5-9", "G2"));
    CAPTURE(sentences);
    CHECK(anySays(sentences, "ends here"));
}
