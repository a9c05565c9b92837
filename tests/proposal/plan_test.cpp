#include "core/files/latticebinary.h"
#include "core/files/plan.h"
#include "tests/proposal/planrules.h"
#include "tests/proposal/scenario.h"
#include "tests/reference/latticenumbers.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>

using namespace proposal;
using nlohmann::json;

namespace {

Proposal const& eightBarsInG()
{
    static Proposal const made = scenario::proposed(scenario::briefFor(scenario::eightBars));
    return made;
}

// Two chords, few candidates: small enough to try every choice.
Proposal shortTune()
{
    Brief brief =
        scenario::briefFor("X:1\nM:2/4\nL:1/4\nQ:1/4=60\nK:G\n\"G\"gd|\"D\"ff|\"G\"g2|\n", 1);
    return scenario::proposed(brief);
}

} // namespace

TEST_CASE("The plan says tune, harp, hand and set-up as the contract names them", "[plan]")
{
    json const plan = json::parse(files::planJson(eightBarsInG()));
    CHECK(plan.at("plan") == 1);
    CHECK(plan.at("tune") == json::parse(R"({"title": "Eight bars", "key": "G", "mode": "major",
        "meter": "4/4", "tempo_qpm": 80.0, "transposed_semitones": 0})"));
    CHECK(plan.at("harp").at("id") == "floor34");
    REQUIRE(plan.at("harp").at("strings").size() == 34);
    CHECK(plan.at("harp").at("strings").at(0) ==
          json::parse(R"({"n": 1, "name": "C2", "open_midi": 36, "lever": true})"));
    CHECK(plan.at("harp").at("strings").at(33).at("name") == "Ab6");
    CHECK(plan.at("hand").at("level") == 3);
    CHECK(plan.at("hand").at("reach_strings") == 10);
    // E flat to G raises A, E, B and F: 19 levers on 34 strings (trade check, derived).
    CHECK(plan.at("setup").size() == 19);
    CHECK(plan.at("setup").at(0) == 3); // E2
    CHECK(plan.at("flips").empty());
    CHECK(plan.at("total_cost") == eightBarsInG().solution.best.cost);
    CHECK(plan.at("warnings") == json(eightBarsInG().warnings));
}

TEST_CASE("The plan's positions are numbered as they are played, with exact times", "[plan]")
{
    json const plan = json::parse(files::planJson(eightBarsInG()));
    json const& positions = plan.at("positions");
    REQUIRE(positions.size() == 20);
    for (std::size_t i = 0; i < 20; ++i) CHECK(positions[i].at("id") == i);
    // The second chord of bar 6, first and second time: eight bars of 4/4 apart.
    CHECK(positions[6].at("chord") == "D7");
    CHECK(positions[6].at("bar") == 6);
    CHECK(positions[6].at("at") == "11/2");
    CHECK(positions[6].at("span") == "1/2");
    CHECK(positions[6].at("pass") == 1);
    CHECK(positions[16].at("at") == "27/2");
    CHECK(positions[16].at("pass") == 2);
    for (char const* same : {"pattern", "degrees", "root_string", "rhythm", "roll", "cost",
                             "regret", "reasons", "locked", "lattice_position"})
        CHECK(positions[6].at(same) == positions[16].at(same));
    CHECK(positions[6].at("regret") == 0);
}

TEST_CASE("Notes of the plan lie on strings of the harp and sound as the set-up says", "[plan]")
{
    json const plan = json::parse(files::planJson(eightBarsInG()));
    std::vector<bool> up(35, false);
    for (int const string : plan.at("setup")) up[static_cast<std::size_t>(string)] = true;
    json const& strings = plan.at("harp").at("strings");
    int fromTune = 0;
    for (json const& note : plan.at("notes")) {
        int const string = note.at("string");
        REQUIRE(string >= 1);
        REQUIRE(string <= 34);
        CHECK(note.at("midi") ==
              strings.at(static_cast<std::size_t>(string - 1)).at("open_midi").get<int>() +
                  (up[static_cast<std::size_t>(string)] ? 1 : 0));
        CHECK(note.at("finger") >= 1);
        CHECK(note.at("finger") <= 4);
        CHECK((note.at("hand") == "right") == note.at("from_tune").get<bool>());
        CHECK(note.at("position").is_null() == note.at("from_tune").get<bool>());
        if (note.at("from_tune")) ++fromTune;
    }
    // Counted in the tune: 6 + 3 + 4 + 2 + 4 + 4 + 3 + 1 notes, twice. The first two notes g2
    // d2 stand as crotchets.
    CHECK(fromTune == 2 * (4 + 3 + 4 + 2 + 4 + 4 + 3 + 1));
    CHECK(plan.at("notes").at(0).at("at") == "0");
}

TEST_CASE("Degrees of the plan count from the root string to the strings of its notes",
          "[plan]")
{
    json const plan = json::parse(files::planJson(eightBarsInG()));
    for (json const& position : plan.at("positions")) {
        if (position.at("root_string").is_null()) {
            CHECK(position.at("degrees").empty());
            continue;
        }
        std::vector<int> fromDegrees;
        for (int degree : position.at("degrees"))
            fromDegrees.push_back(position.at("root_string").get<int>() + degree - 1);
        std::vector<int> fromNotes;
        for (json const& note : plan.at("notes"))
            if (note.at("position") == position.at("id"))
                fromNotes.push_back(note.at("string").get<int>());
        CHECK(fromDegrees == fromNotes);
    }
}

TEST_CASE("The lattice file lists every candidate with terms that add up to its cost",
          "[lattice]")
{
    Proposal const& p = eightBarsInG();
    json const file = json::parse(files::latticeJson(p));
    CHECK(file.at("lattice") == 1);
    CHECK(file.at("unit") == "1/1000 point");
    json const& positions = file.at("positions");
    REQUIRE(positions.size() == p.lattice.positions.values().size());
    for (arrange::PositionIndex const at : p.lattice.positions.indices()) {
        auto const i = static_cast<std::size_t>(at);
        CHECK(positions[i].at("id") == i);
        CHECK(positions[i].at("locked").is_null());
        json const& candidates = positions[i].at("candidates");
        REQUIRE(static_cast<int>(candidates.size()) == p.lattice.candidates[at].size());
        for (arrange::CandidateIndex const k : p.lattice.candidates[at].indices()) {
            auto const c = static_cast<std::size_t>(k);
            arrange::Points sum = 0;
            for (auto const& [name, points] : candidates[c].at("terms").items())
                sum += points.get<arrange::Points>();
            CHECK(candidates[c].at("id") == c);
            CHECK(candidates[c].at("cost") == sum);
            CHECK(candidates[c].at("regret") == p.solution.regrets[at][k]);
            CHECK(candidates[c].at("pattern") == p.lattice.candidates[at][k].voicing.pattern);
        }
    }
    REQUIRE(file.at("pairs").size() == positions.size() - 1);
    for (arrange::PositionIndex i = 0; i + 1 < p.lattice.positions.size(); ++i)
        for (arrange::CandidateIndex const a : p.lattice.candidates[i].indices())
            for (arrange::CandidateIndex const b : p.lattice.candidates[i + 1].indices())
                if (file["pairs"][i.value()][a.value()][b.value()] != p.lattice.pair(i, a, b))
                    FAIL("pair " << i << ' ' << a << ' ' << b);
}

TEST_CASE("Best and alternatives of the lattice file cost what its numbers say", "[lattice]")
{
    Proposal const& p = eightBarsInG();
    std::string const text = files::latticeJson(p);
    auto const numbers = reference::latticeNumbers(text);
    auto const& best = p.solution.best.candidates;
    CHECK(std::ranges::equal(numbers.bestChoice, best,
                             [](int a, arrange::CandidateIndex b) { return b == a; }));
    CHECK(reference::costOf(numbers, numbers.bestChoice) == numbers.bestCost);
    auto last = numbers.bestCost;
    json const file = json::parse(text);
    CHECK(file.at("alternatives").size() == 3);
    for (json const& other : file.at("alternatives")) {
        CHECK(reference::costOf(numbers, other.at("choice").get<std::vector<int>>()) ==
              other.at("cost").get<reference::Cost>());
        CHECK(other.at("cost") >= last); // what is new to more takes has less to choose from
        last = other.at("cost").get<reference::Cost>();
    }
}

TEST_CASE("Trying every choice of a short tune's lattice file finds the same optimum",
          "[lattice]")
{
    Proposal p = shortTune();
    auto numbers = reference::latticeNumbers(files::latticeJson(p));
    CHECK(reference::leastByTryingAll(numbers) == numbers.bestCost);
    auto locked =
        withChoice(p, 1, arrange::CandidateIndex(p.lattice.candidates[1].size() - 1), true);
    REQUIRE(locked);
    numbers = reference::latticeNumbers(files::latticeJson(*locked));
    CHECK(numbers.locked[1] == arrange::CandidateIndex(p.lattice.candidates[1].size() - 1));
    CHECK(reference::leastByTryingAll(numbers) == numbers.bestCost);
}

TEST_CASE(
    "The binary lattice has the numbers of the JSON, for a reader that knows only its table",
    "[lattice]")
{
    auto locked = withChoice(eightBarsInG(), 2, 1, true);
    REQUIRE(locked);
    std::array<Proposal const*, 2> const both{&eightBarsInG(), &*locked};
    for (Proposal const* p : both) {
        auto const written = reference::latticeNumbers(files::latticeJson(*p));
        std::string const bytes = files::latticeBinary(*p);
        auto const binary = reference::latticeNumbersOfBinary(bytes);
        CHECK(bool(binary == written));
        // An end that comes too early is noticed.
        CHECK(reference::latticeNumbersOfBinary(bytes.substr(0, bytes.size() - 1)).own.empty());
    }
    auto const numbers =
        reference::latticeNumbersOfBinary(files::latticeBinary(eightBarsInG()));
    auto const plain = reference::plainlySolved(numbers);
    CHECK(plain.least == numbers.bestCost);
    CHECK(plain.regrets == numbers.regrets);
}

TEST_CASE("A lattice file tells the best, whatever take is arranged", "[lattice]")
{
    Proposal const& p = eightBarsInG();
    Proposal const other = withTake(p, 1);
    CHECK(other.take);
    CHECK(files::latticeJson(other) == files::latticeJson(p));
    CHECK(files::latticeBinary(other) == files::latticeBinary(p));
}

TEST_CASE("A plan that was tampered with breaks the rules that an honest one keeps", "[plan]")
{
    Proposal const& p = eightBarsInG();
    auto const tune = tune::played(p.brief.tune).notes;
    CHECK(planrules::brokenIn(files::planJson(p), tune).empty());
    auto const tampered = [&](std::string const& at, json const& value) {
        json plan = json::parse(files::planJson(p));
        plan.at(json::json_pointer(at)) = value;
        return planrules::brokenIn(plan.dump(), tune);
    };
    CHECK_FALSE(tampered("/notes/0/midi", 20).empty());
    CHECK_FALSE(tampered("/notes/0/string", 35).empty());
    CHECK_FALSE(tampered("/setup", json::array()).empty());
    CHECK_FALSE(tampered("/tune/transposed_semitones", 1).empty());
    CHECK_FALSE(tampered("/hand/reach_strings", 0).empty());
    json const notes = json::parse(files::planJson(p)).at("notes");
    auto const own = std::find_if(notes.begin(), notes.end(),
                                  [](json const& n) { return n.at("from_tune") == true; });
    std::string const first = "/notes/" + std::to_string(own - notes.begin());
    CHECK_FALSE(tampered(first + "/held", "7/8").empty());
    CHECK_FALSE(tampered(first + "/from_tune", false).empty());
}

TEST_CASE("The same proposal writes the same bytes", "[plan]")
{
    Proposal const again = scenario::proposed(scenario::briefFor(scenario::eightBars));
    CHECK(files::planJson(again) == files::planJson(eightBarsInG()));
    CHECK(files::latticeJson(again) == files::latticeJson(eightBarsInG()));
}

TEST_CASE("A title that is no UTF-8 still gives readable JSON", "[plan]")
{
    Proposal p = eightBarsInG();
    p.arrangement.tune.title = "bad \xff byte \" and quote";
    json const plan = json::parse(files::planJson(p));
    CHECK(plan.at("tune").at("title") == "bad \xEF\xBF\xBD byte \" and quote");
}
