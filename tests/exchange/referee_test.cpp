#include "core/files/musicxml.h"
#include "tests/exchange/outside.h"
#include "tests/exchange/scorelines.h"
#include "tests/proposal/nottingham.h"
#include "tests/proposal/scenario.h"
#include "tests/sheet/examples.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <iterator>

// Other programs' libraries read what we write: npm packages pinned in
// packaging/package-lock.json.

namespace {

bool canLoad(std::string const& package)
{
    bool const there =
        outside::run("node -e \"require('" SALLOW_NODE_MODULES "/" + package + "')\"").status ==
        0;
    if (!there) WARN("node or the package " << package << " is missing: not compared");
    return there;
}

std::string contents(std::string const& path)
{
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

std::string notesReadBy(std::string const& score)
{
    outside::TemporaryFile const file(score, ".musicxml");
    auto const answer =
        outside::run("node " SALLOW_SCORE_NOTES " " SALLOW_NODE_MODULES " " + file.path());
    INFO(answer.text);
    REQUIRE(answer.status == 0);
    std::string const lines = contents(file.path() + ".notes");
    std::filesystem::remove(file.path() + ".notes");
    return lines;
}

void checkScore(arrange::Arrangement const& arrangement)
{
    std::string const score = files::musicXml(arrangement, files::ScoreKind::Arrangement);
    CHECK(notesReadBy(score) == scoreLines(arrangement, divisionsOf(score)));
}

} // namespace

TEST_CASE("Another program's library reads the same notes, voices and lengths from MusicXML",
          "[musicxml][referee]")
{
    if (!canLoad("musicxml-io")) return;
    checkScore(example::arrangementOf(example::jig()));
    checkScore(
        example::arrangementOf(scenario::tuneOf("X:1\nT:t\nM:4/4\nL:1/8\nK:Ador\n{e}A2 (3Bcd "
                                                "e4-|e5 z[Ac]2|(5:4:5c/d/e/f/g/ a3 x3|\n")));
    auto const tunes = nottingham::tunesWithChords();
    constexpr std::size_t every = 100; // the whole collection is tried by hand
    for (std::size_t i = 0; tunes && i < tunes->size(); i += every) {
        CAPTURE((*tunes)[i].name);
        auto const proposal = proposal::propose(scenario::briefFor((*tunes)[i].tune));
        if (proposal) checkScore(proposal->arrangement);
    }
}
