// Kinds of tunes told from meter and notes alone, against a collection that keeps each dance in
// a file of its own.

#include "core/tune/kind.h"
#include "tests/proposal/nottingham.h"

#include <catch2/catch.hpp>

#include <map>
#include <string>

namespace {

struct Told {
    int right = 0;
    int all = 0;
    double perCent() const { return 100.0 * right / all; }
};

} // namespace

TEST_CASE("The notes tell jigs, waltzes, reels and hornpipes apart as the collection's files do",
          "[kind]")
{
    auto const tunes = nottingham::tunesWithChords();
    if (!tunes) {
        WARN("the folk tunes are absent: no kinds told");
        return;
    }
    using tune::Kind;
    std::map<std::string, Kind> const files{
        {"jigs", Kind::Jig}, {"slip", Kind::SlipJig}, {"waltzes", Kind::Waltz},
        {"hpps", Kind::Hornpipe}, {"reel", Kind::Reel}};
    std::map<std::string, Told> told;
    for (nottingham::NamedTune const& named : *tunes) {
        for (auto const& [file, kind] : files) {
            if (named.name.rfind(file, 0) != 0) continue;
            tune::Tune bare = named.tune;
            bare.rhythm.clear();
            bare.title.clear();
            Kind found = tune::kindOf(bare);
            if (found == Kind::SingleJig) found = Kind::Jig;
            ++told[file].all;
            told[file].right += found == kind;
        }
    }
    for (auto const& [file, one] : told) {
        CAPTURE(file, one.right, one.all);
        // Reels and hornpipes of that collection are of all sorts of dance in two and four, and are
        // written alike: by their notes alone no more than this was told apart.
        CHECK(one.perCent() >= (file == "reel" ? 20 : file == "hpps" ? 50 : 80));
    }
}
