#include "core/harmony/features.h"
#include "core/harmony/keyhistograms.h"
#include "tests/harmony/tunes.h"

#include <catch2/catch.hpp>

using namespace harmony;

namespace {

int heardAt(KeyHistograms const& heard, KeyHeard what, std::string const& name, int more = 0)
{
    int const c = pitchClass(music::keyFrom(name)->tonic);
    return heard[static_cast<std::size_t>(what) + static_cast<std::size_t>(more)]
                [static_cast<std::size_t>(c)];
}

} // namespace

TEST_CASE("What is heard for the key is counted where it stands", "[key]")
{
    // Invented, counted by hand: two strains of four bars, the first ends on A, the last on G.
    tune::Tune const tune = scenes::tuneOf("X:1\nM:2/4\nL:1/4\nK:Am\n"
                                           "E|A2|c2|B^G|A2||c2|BA|G2|G2||\n");
    KeyHistograms const heard = keyHistogramsOf(tune);
    CHECK(heardAt(heard, KeyHeard::Last, "G") == featureOne);
    CHECK(heardAt(heard, KeyHeard::FirstStrainEnd, "A") == featureOne);
    CHECK(heardAt(heard, KeyHeard::EndsOfStrains, "A") == featureOne / 2);
    CHECK(heardAt(heard, KeyHeard::EndsOfStrains, "G") == featureOne / 2);
    CHECK(heardAt(heard, KeyHeard::AgreedEnd, "G") == 0);
    CHECK(heardAt(heard, KeyHeard::First, "A") == featureOne);
    CHECK(heardAt(heard, KeyHeard::StartsOfStrains, "C") == featureOne / 2);
    // Of 16 beats in full bars and one before them, A has five.
    CHECK(heardAt(heard, KeyHeard::Sounding, "A") == (5 * featureOne + 8) / 17);
    CHECK(heardAt(heard, KeyHeard::FirstStrain, "A") == featureOne / 2);
    CHECK(heardAt(heard, KeyHeard::FirstBarAtAll, "A") == featureOne);
    // Nine moves: E A c B G♯ A c B A G. One of them rises a semitone, to A.
    constexpr int semitone = 0;
    CHECK(heardAt(heard, KeyHeard::Moves, "A", semitone) == featureOne * 8 / 9);
    CHECK(heardAt(heard, KeyHeard::Moves, "C", semitone) == 0);
}

TEST_CASE("Keys are heard alike wherever the tune stands", "[key]")
{
    KeyHistograms const low = keyHistogramsOf(scenes::jig());
    KeyHistograms const high = keyHistogramsOf(transposed(scenes::jig(), {1, 2}));
    for (std::size_t h = 0; h < low.size(); ++h)
        for (std::size_t c = 0; c < 12; ++c) CHECK(low[h][c] == high[h][(c + 2) % 12]);
}
