#include "tests/places.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

namespace scenario {

files::Tables const& tables()
{
    static files::Tables const read = [] {
        auto result = files::readTables(places::shared());
        if (!result) FAIL(base::sentence(result.error()));
        return *std::move(result);
    }();
    return read;
}

tune::Tune tuneOf(std::string const& abc)
{
    auto const entries = files::abcTunes(abc);
    if (!entries) FAIL(base::sentence(entries.error()));
    auto read = files::readAbc(abc, entries.value().front(), "test.abc");
    if (!read) FAIL(base::sentence(read.error()));
    return *std::move(read);
}

proposal::Brief briefFor(tune::Tune tune, int level)
{
    files::Tables const& t = tables();
    proposal::Brief brief{std::move(tune),
                          *files::harpFrom(t, "floor34", "Eb"),
                          *files::handFrom(t, "medium"),
                          *files::levelFrom(t, level),
                          t.book,
                          t.styles.front()};
    brief.key = proposal::AsWritten{};
    return brief;
}

proposal::Brief briefFor(std::string const& abc, int level)
{
    return briefFor(tuneOf(abc), level);
}

proposal::Proposal proposed(proposal::Brief const& brief)
{
    auto result = proposal::propose(brief);
    if (!result) FAIL(base::sentence(result.error()));
    return *std::move(result);
}

std::string const eightBars = "X:1\n"
                              "T:Eight bars\n"
                              "M:4/4\n"
                              "L:1/8\n"
                              "Q:1/4=80\n"
                              "K:G\n"
                              "|:\"G\"g2d2 B2d2|\"C\"e2g2 e4|\"D\"f2a2 f2d2|\"G\"g6 d2|\n"
                              "\"Em\"e2g2 b2g2|\"Am\"a2e2 \"D7\"f2a2|\"C\"g2e2 \"D\"f4|"
                              "\"G\"g8:|\n";

} // namespace scenario
