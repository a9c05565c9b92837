// Tunes at random, written and read: ABC and MusicXML.
#include "core/files/abc/read.h"
#include "core/files/abc/write.h"
#include "tests/exchange/roundtrip.h"
#include "tests/exchange/same.h"
#include "tests/sheet/examples.h"
#include "tests/tune/randomtunes.h"

#include <catch2/catch.hpp>

using tune::Tune;

namespace {

// With chord symbols over some of its bars, also inside notes.
Tune withChords(Tune tune, std::mt19937& random)
{
    for (tune::Bar& bar : tune.bars) {
        bar.chords.clear();
        music::Length at;
        while (at < bar.length) {
            char const* const names[] = {"G", "Am7", "D7/F#", "Bb", "C#dim", "Esus4"};
            char const* const name = names[random() % 6];
            if (random() % 2 == 0)
                bar.chords.push_back({at, *music::chordFrom(name), name, std::nullopt});
            at = at + music::Length{music::Rational(3, 8)};
        }
    }
    return tune;
}

} // namespace

TEST_CASE("A tune at random with chords anywhere reads back from ABC the same", "[abc][random]")
{
    std::mt19937 random(20261130); // fixed, so that a failure can be seen again
    for (int run = 0; run < 200; ++run) {
        Tune tune = withChords(randomtunes::some(random, 30), random);
        tune.tempo = tune::Tempo{{music::Rational(3, 8)}, 76};
        std::string const abc = files::abcOfTune(tune);
        INFO("run " << run << "\n" << abc);
        auto const entries = files::abcTunes(abc);
        REQUIRE(entries);
        auto const back = files::readAbc(abc, entries->front(), "test", files::Rests::Allowed);
        REQUIRE(back);
        // A chord inside a note cuts it.
        CHECK(same::difference(tune, *back, {true, false, false}) == "");
        CHECK(files::abcOfTune(*back) == abc);
    }
}

TEST_CASE("A tune at random reads back from MusicXML the same", "[musicxml][random]")
{
    std::mt19937 random(20261201);
    int tried = 0;
    for (int run = 0; run < 200; ++run) {
        Tune const tune = withChords(randomtunes::some(random, 30), random);
        // The harp of the examples has no levers for more than that.
        if (!tune::hasNotes(tune) || !harp::settingFor(example::floor34(), tune.key)) continue;
        ++tried;
        INFO("run " << run << "\n" << files::abcOfTune(tune));
        roundtrip::checkMusicXml(example::arrangementOf(tune));
    }
    CHECK(tried > 100);
}
