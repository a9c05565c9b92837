// What other programs are told of keys and sets.

#include "core/files/keysjson.h"
#include "core/proposal/tuneset.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

#include <nlohmann/json.hpp>

using nlohmann::json;
using namespace proposal;

namespace {

std::string tuneIn(std::string const& key, std::string const& notes)
{
    return "X:1\nT:" + key + "\nM:4/4\nL:1/4\nQ:1/4=90\nK:" + key + "\n" + notes + "|]\n";
}

Brief inG() { return scenario::briefFor(tuneIn("G", "\"G\"GBdB|\"D7\"AFDF|\"G\"G4")); }
Brief inD() { return scenario::briefFor(tuneIn("D", "\"D\"dfaf|\"A7\"ecAc|\"D\"d4")); }

} // namespace

TEST_CASE("Ranked keys are told in their order, with the strings whose lever is up",
          "[proposal][keys]")
{
    Brief brief = inG();
    brief.key = BestKey{};
    auto const keys = rankedKeys(brief);
    json const told = json::parse(files::keysJson(brief.harp, keys));
    REQUIRE(told.size() == keys.size());
    for (std::size_t i = 0; i < keys.size(); ++i) {
        json const& row = told[i];
        CAPTURE(row.dump());
        CHECK(row["moved_semitones"] == keys[i].fit.moved.semitones);
        CHECK(row["possible"] == keys[i].possible());
        CHECK(row["cost"].is_null() == !keys[i].cost);
        CHECK(row["notes_lost"].is_null() == !keys[i].notesLost);
        CHECK(row["setup"].size() == static_cast<std::size_t>(keys[i].leversRaised));
        CHECK_FALSE(row["reason"].get<std::string>().empty());
    }
}

TEST_CASE("A key that is beyond counting is told with nulls", "[proposal][keys]")
{
    Brief const brief = inG();
    RankedKey key;
    key.fit.key = brief.tune.key;
    json const told = json::parse(files::keysJson(brief.harp, {key}));
    CHECK(told[0]["cost"].is_null());
    CHECK(told[0]["notes_lost"].is_null());
    CHECK(told[0]["setup_line"] == "");
    CHECK(told[0]["key"] == "G");
    CHECK(told[0]["mode"] == "major");
}

TEST_CASE("A set keeps the keys that are wished and tells what is turned between tunes",
          "[proposal][keys]")
{
    std::vector<Brief> const briefs{inG(), inD()};
    auto const steps = setOf(briefs, levers::SetOrder::AsGiven);
    REQUIRE(steps);
    json const told = json::parse(files::setJson(briefs.front().harp, briefs, *steps));
    REQUIRE(told.size() == 2);
    CHECK(told[0]["key"] == "G");
    CHECK(told[0]["changes"].empty());
    CHECK(told[1]["key"] == "D");
    // From G to D every C that is played is raised [trade-7].
    REQUIRE_FALSE(told[1]["changes"].empty());
    for (json const& change : told[1]["changes"]) {
        CHECK(change["up"] == true);
        CHECK(briefs.front()
                  .harp.string(harp::StringIndex(change["string"].get<int>() - 1))
                  .open.letter == music::Letter::C);
    }
    CHECK(told[1]["changes_line"].get<std::string>().find("C♯") != std::string::npos);
    CHECK(told[1]["seconds"].get<double>() > 0);
}

TEST_CASE("A set's own wishes: a named key, as written, and the best", "[proposal][keys]")
{
    Brief named = inD();
    named.key = music::Key{{music::Letter::G, 0}, music::Mode::Ionian};
    auto const steps = setOf({inG(), named}, levers::SetOrder::Free);
    REQUIRE(steps);
    for (levers::SetStep const& step : *steps)
        CHECK(step.fit.key.tonic.letter == music::Letter::G);
    for (levers::SetStep const& step : *steps) CHECK(step.changes.empty());
}

TEST_CASE("A set that cannot be is refused with its tune or its number of tunes",
          "[proposal][keys]")
{
    CHECK(setOf({}, levers::SetOrder::AsGiven).error().code == base::FaultCode::BadCall);
    CHECK(setOf(std::vector<Brief>(longestSet + 1, inG()), levers::SetOrder::AsGiven)
              .error()
              .code == base::FaultCode::BadCall);
    Brief far = inD();
    // With E flat tuning there is no key of F sharp [trade-2]: seven sharps or flats too many.
    far.key = music::Key{{music::Letter::C, 1}, music::Mode::Ionian};
    far.mending.refuse = true;
    auto const refused = setOf({inG(), far}, levers::SetOrder::AsGiven);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().place.starts_with("\"D\""));
}
