// What a left-hand shape sounds and which fingers take it, as the trade's tables of checks have
// it. The expected values are written here with the source that the table names.

#include "core/hands/easing.h"
#include "core/hands/moves.h"
#include "core/hands/righthand.h"
#include "core/pattern/pattern.h"
#include "tests/levers/lines.h"
#include "tests/perform/pieces.h"

#include <catch2/catch.hpp>

#include <algorithm>

using pieces::stringOf;

namespace {

struct Sounding {
    std::string notes; // "C G E"
    std::vector<int> semitones;
    int strings = 0;
};

// A shape on the string of a letter in the third octave, levers set for a major key.
Sounding shape(char const* degrees, music::Letter root, char const* key)
{
    auto const harp = example::floor34();
    harp::LeverTimeline const levers{*harp::settingFor(harp, lines::major(key)), {}};
    auto const pattern = pattern::patternFrom(degrees);
    harp::StringIndex const rootString = stringOf(root, 3);
    Sounding out;
    int lowest = 0;
    for (pattern::PatternNote const& note : pattern->notes) {
        harp::StringIndex const string = pattern::stringOf(rootString, note.degree);
        music::Pitch const pitch = harp::pitchAt(harp, levers, string, {});
        std::string const name = music::plain(pitch);
        out.notes += (out.notes.empty() ? "" : " ") + name.substr(0, name.size() - 1);
        if (out.semitones.empty()) lowest = music::midi(pitch);
        out.semitones.push_back(music::midi(pitch) - lowest);
    }
    out.strings = pattern::stringsSpanned(*pattern);
    return out;
}

} // namespace

TEST_CASE("A degree lies one string less above the root than it counts", "[checks]")
{
    // checks.csv row 37: definition.
    for (int degree = 1; degree <= 12; ++degree)
        CHECK(pattern::stringOf(7, degree) == 7 + degree - 1);
}

TEST_CASE("Shapes sound what their strings and levers give", "[checks]")
{
    using music::Letter;
    // checks.csv row 38: definition.
    CHECK(shape("1-5-8", Letter::C, "C").notes == "C G C");
    CHECK(shape("1-5-8", Letter::C, "C").strings == 8);
    // checks.csv row 39: definition.
    CHECK(shape("1-5-10", Letter::C, "C").notes == "C G E");
    CHECK(shape("1-5-10", Letter::C, "C").strings == 10);
    // checks.csv row 40: definition.
    CHECK(shape("1-5-8-9-10", Letter::C, "C").notes == "C G C D E");
    CHECK(shape("1-5-8-9-10", Letter::C, "C").strings == 10);
    // checks.csv row 41: definition.
    CHECK(shape("1-5-10-12", Letter::G, "G").notes == "G D B D");
    CHECK(shape("1-5-10-12", Letter::G, "G").strings == 12);
    // checks.csv row 42: definition; a tenth of 16 semitones is major.
    CHECK(shape("1-5-10", Letter::D, "G").notes == "D A F#");
    CHECK(shape("1-5-10", Letter::D, "G").semitones.back() == 16);
    // checks.csv row 43: definition; of 15 minor.
    CHECK(shape("1-5-10", Letter::D, "C").notes == "D A F");
    CHECK(shape("1-5-10", Letter::D, "C").semitones.back() == 15);
    // checks.csv row 44: definition; the fifth is diminished.
    CHECK(shape("1-5-8", Letter::B, "C").notes == "B F B");
    CHECK(shape("1-5-8", Letter::B, "C").semitones[1] == 6);
    // checks.csv row 45: definition; a minor seventh.
    CHECK(shape("1-5-7", Letter::D, "G").notes == "D A C");
    CHECK(shape("1-5-7", Letter::D, "G").semitones.back() == 10);
    // checks.csv row 46: definition.
    CHECK(shape("1-5-8", Letter::C, "C").semitones == std::vector{0, 7, 12});
    CHECK(shape("1-5-10", Letter::C, "C").semitones == std::vector{0, 7, 16});
    CHECK(shape("1-5-10", Letter::D, "C").semitones == std::vector{0, 7, 15});
}

TEST_CASE("A medium hand plays 1-5-8 with its usual fingers, 4-2-1", "[checks]")
{
    // checks.csv row 47: common practice, no source.
    CHECK(pattern::fingersText(pattern::patternFrom("1-5-8")->notes) == "4-2-1");
}

TEST_CASE("Four fingers play, the little one does not", "[checks]")
{
    // checks.csv row 48: an open notation handbook.
    CHECK(harp::fingers == 4);
    auto const harp = example::floor34();
    auto const hand = example::mediumHand();
    for (hands::HandMove const& move : hands::movesTo({}, {{17, 19, 21}}, {harp, hand}))
        for (int const finger : move.fingers) CHECK((finger >= 1 && finger <= 4));
}

TEST_CASE("Two notes take 2-1 up to a fourth, 3-1 up to a sixth, 4-1 beyond", "[checks]")
{
    // checks.csv row 49: an open fingering page; an open orchestration course gives the same
    // reaches.
    struct Row {
        int gaps, low;
    };
    Row const row = GENERATE(Row{1, 2}, Row{2, 2}, Row{3, 2}, Row{4, 3}, Row{5, 3}, Row{6, 4},
                             Row{7, 4}, Row{9, 4});
    CAPTURE(row.gaps);
    tune::Tune tune;
    music::Pitch const high = music::naturalAt(diatonicStep(pieces::c5) + row.gaps);
    tune.bars = {pieces::barOf({4, 4}, pieces::wholes(1, 1), {pieces::c5})};
    tune.bars[0].notes[0].pitches.push_back(high);
    auto const right =
        hands::rightHand(pieces::arranged(tune, {pieces::wholes(1, 4), 60}, {{}}));
    REQUIRE(right.fingers.size() == 1);
    CHECK(right.fingers[0].fingers == std::vector{row.low, 1});
}

TEST_CASE("No adult hand is asked to hold more than a tenth", "[checks]")
{
    // checks.csv row 50: an open notation handbook. What is wider is rolled or let go.
    auto arrangement = pieces::twoBars();
    arrangement.hand.comfortMm = 183; // a man's of the 95th percentile (trade/reach_hand.csv)
    CHECK_FALSE(hands::stretches(arrangement, 7, 7 + 9));
    CHECK(hands::stretches(arrangement, 7, 7 + 10));
}

TEST_CASE("A woman's hand of average span holds ten strings at 15 mm with comfort", "[checks]")
{
    // checks.csv row 51: derived; span 201 mm after Boyle, Boyle and Booker 2015, of which 0.92
    // reach from thumb to finger 4 and 0.80 are comfortable.
    CHECK(harp::stringsWithin(example::floor34(), 201 * 0.92 * 0.80, 7) == 10);
    // checks.csv row 52: arithmetic; ten strings are nine gaps.
    CHECK(harp::distanceMm(example::floor34(), 7, 16) == Approx(135));
}

TEST_CASE("The thumb slides down and finger 4 up", "[checks]")
{
    // checks.csv row 53: derived from the direction in which fingers pluck, which an open
    // notation handbook gives.
    auto const harp = example::floor34();
    auto const hand = example::mediumHand();
    auto const slides = [&](int finger, int to) {
        constexpr harp::StringIndex string = 17;
        hands::HandShape from;
        from.placed[static_cast<std::size_t>(finger - 1)] = string;
        from.played = finger;
        auto const moves = hands::movesTo(from, {{string + to}}, {harp, hand});
        return std::any_of(moves.begin(), moves.end(), [](hands::HandMove const& move) {
            return move.join == hands::Join::Slides;
        });
    };
    CHECK(slides(1, -1));
    CHECK_FALSE(slides(1, +1));
    CHECK(slides(4, +1));
    CHECK_FALSE(slides(4, -1));
    CHECK_FALSE(slides(2, -1));
    CHECK_FALSE(slides(3, +1));
}
