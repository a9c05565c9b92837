#include "core/proposal/repeats.h"
#include "core/proposal/rules.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

using namespace proposal;

TEST_CASE("A repeat that comes back within a beat asks for no string too soon", "[proposal]")
{
    // A beginner plucks a string once a second; the last chord of the part lasts 0.8 s and is
    // that of the first bar: nearly every shape at the end conflicts with nearly every one at
    // the beginning, more than can be tried one by one.
    Brief brief = scenario::briefFor(
        "X:1\nT:The Turnstile\nM:9/8\nL:1/8\nQ:3/8=75\nK:G\n"
        "|:\"G\"g3b3\"G\"b3|\"Em\"g2ab2g\"G\"b3:|\n",
        1);
    brief.key = AsWritten{};
    brief.harp = *files::harpFrom(scenario::tables(), "lap22");
    auto const p = scenario::proposed(brief);
    CHECK(conflicts(p, p.solution.best).empty());
    CHECK(brokenRules(p.arrangement, brief.book).empty());
}
