#include "core/files/abc/read.h"
#include "core/files/textfile.h"
#include "core/tune/playing.h"
#include "tests/places.h"

#include <catch2/catch.hpp>

using namespace files;
using music::Rational;

namespace {

std::vector<tune::Tune> demoTunes()
{
    std::string const path = places::shared() + "/demo/demo.abc";
    std::string const text = *readTextFile(path);
    std::vector<tune::Tune> tunes;
    std::vector<AbcEntry> const entries = *abcTunes(text, path);
    for (AbcEntry const& entry : entries) tunes.push_back(*readAbc(text, entry, path));
    return tunes;
}

} // namespace

TEST_CASE("The demo book holds a waltz, a jig and a reel that read without remark", "[demo]")
{
    auto const tunes = demoTunes();
    REQUIRE(tunes.size() == 3);
    CHECK(tunes[0].rhythm == "waltz");
    CHECK(tunes[1].rhythm == "jig");
    CHECK(tunes[2].rhythm == "reel");
    for (tune::Tune const& tune : tunes) {
        CAPTURE(tune.title);
        CHECK(tune.said.empty());
        CHECK(tune.tempo);
    }
}

TEST_CASE("Each demo tune is 32 bars long when its repeats are played", "[demo]")
{
    // Common practice, no source: two strains of eight bars, each played twice.
    for (tune::Tune const& tune : demoTunes()) {
        CAPTURE(tune.title);
        CHECK(tune::played(tune).total.wholes == barLength(tune.meter).wholes * Rational(32));
    }
}

TEST_CASE("The chords of the demo tunes cover every bar but the pick-ups", "[demo]")
{
    for (tune::Tune const& tune : demoTunes()) {
        CAPTURE(tune.title);
        std::vector<music::Length> covered(tune.bars.size());
        for (tune::ChordSpan const& span : tune::chordSpans(tune)) {
            auto& length = covered[static_cast<std::size_t>(span.bar)];
            length = length + span.length;
        }
        for (tune::BarIndex const i : tune.bars.indices())
            if (tune.bars[i].number > 0) CHECK(covered[i] == tune.bars[i].length);
    }
}

TEST_CASE("One demo tune has one note outside its key, after a note held for a whole bar",
          "[demo]")
{
    tune::Tune const air = demoTunes()[0];
    int outside = 0;
    bool heldBefore = false;
    for (tune::Bar const& bar : air.bars)
        for (tune::Note const& note : bar.notes)
            for (music::Pitch const& pitch : note.pitches) {
                if (pitch.alter != alterIn(signature(bar.key), pitch.letter)) {
                    ++outside;
                    CHECK(heldBefore);
                    CHECK(plain(pitch) == "D#4");
                }
                heldBefore = heldBefore || note.length == barLength(bar.meter);
            }
    CHECK(outside == 1);
}
