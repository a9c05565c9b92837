#include "core/notation/durations.h"
#include "tests/sheet/examples.h"

#include <catch2/catch.hpp>

using example::fourFour;
using example::sixEight;
using example::threeFour;
using example::wholes;
using notation::NoteValue;
using notation::Piece;

namespace {

// "2 3." for a crotchet and a dotted quaver: halvings of the semibreve, with dots.
std::string shown(std::vector<Piece> const& pieces)
{
    std::string out;
    for (Piece const& piece : pieces)
        out += (out.empty() ? "" : " ") + std::to_string(piece.value.halvings) +
               std::string(static_cast<std::size_t>(piece.value.dots), '.');
    return out;
}

} // namespace

TEST_CASE("A dot adds half, a second dot a quarter of the plain value", "[durations]")
{
    // Elementary theory of music.
    CHECK(notation::lengthOf({2, 0}) == wholes(1, 4));
    CHECK(notation::lengthOf({2, 1}) == wholes(3, 8));
    CHECK(notation::lengthOf({2, 2}) == wholes(7, 16));
    CHECK(notation::lengthOf({-1, 0}) == wholes(2, 1));
    CHECK(notation::valueOf(wholes(3, 16)) == NoteValue{3, 1});
    CHECK(notation::valueOf(wholes(5, 8)) == std::nullopt);
    CHECK(notation::valueOf(wholes(1, 12)) == std::nullopt);
    CHECK(notation::nearestValue(wholes(5, 8)) == NoteValue{1, 0});
}

TEST_CASE("Notes are spelt so that the beat stays visible", "[durations]")
{
    // Gould 2011, grouping of rhythms (from memory); worked by hand.
    struct Row {
        music::Meter meter;
        int at, length; // in quavers
        std::string pieces;
    };
    auto const row = GENERATE(values<Row>({
        {fourFour, 0, 8, "0"},
        {fourFour, 0, 3, "2."},
        {fourFour, 0, 5, "1 3"},
        {fourFour, 0, 6, "1."},
        {fourFour, 0, 7, "1.."},
        {fourFour, 1, 2, "2"},   // quaver crotchet quaver is plain enough
        {fourFour, 2, 4, "2 2"}, // over the half bar
        {fourFour, 3, 2, "3 3"},
        {fourFour, 1, 3, "3 2"},
        {fourFour, 5, 3, "3 2"},
        {threeFour, 0, 5, "1 3"},
        {threeFour, 2, 4, "1"},
        {threeFour, 0, 6, "1."},
        {sixEight, 0, 6, "1."},
        {sixEight, 0, 4, "2. 3"}, // a minim would hide the second beat
        {sixEight, 0, 5, "2. 2"},
        {sixEight, 2, 4, "3 2."},
        {sixEight, 1, 2, "2"},
        {sixEight, 2, 2, "3 3"},
        {{9, 8, false}, 0, 8, "1. 2"},
        {{9, 8, false}, 0, 9, "1. 2."},
        {{12, 8, false}, 0, 12, "0."},
        {{12, 8, false}, 3, 6, "2. 2."}, // over the half bar
        {{2, 4, false}, 0, 4, "1"},
    }));
    CAPTURE(music::text(row.meter), row.at, row.length);
    CHECK(shown(notation::notePieces(wholes(row.at, 8), wholes(row.length, 8), row.meter)) ==
          row.pieces);
}

TEST_CASE("Rests show every beat", "[durations]")
{
    // Gould 2011, rests (from memory): no minim rest in 3/4; in compound time a crotchet rest
    // only for the first two thirds of a beat.
    struct Row {
        music::Meter meter;
        int at, length; // in quavers
        std::string pieces;
    };
    auto const row = GENERATE(values<Row>({
        {fourFour, 0, 4, "1"},
        {fourFour, 4, 4, "1"},
        {fourFour, 2, 4, "2 2"},
        {fourFour, 1, 3, "3 2"},
        {fourFour, 2, 6, "2 1"},
        {threeFour, 2, 4, "2 2"},
        {threeFour, 0, 4, "2 2"},
        {sixEight, 1, 2, "3 3"},
        {sixEight, 0, 2, "2"},
        {sixEight, 0, 3, "2."},
        {sixEight, 3, 3, "2."},
        {sixEight, 1, 5, "3 3 2."},
        {{12, 8, false}, 6, 6, "1."},
        {{9, 8, false}, 3, 6, "2. 2."},
    }));
    CAPTURE(music::text(row.meter), row.at, row.length);
    CHECK(shown(notation::restPieces(wholes(row.at, 8), wholes(row.length, 8), row.meter)) ==
          row.pieces);
}

TEST_CASE("Spelt pieces follow one another without gap and add up to the length", "[durations]")
{
    for (music::Meter meter : {fourFour, sixEight, threeFour, music::Meter{2, 4, false},
                               music::Meter{9, 8, false}, music::Meter{7, 8, false}})
        for (int at = 0; at < 16; ++at)
            for (int length = 1; length <= 24; ++length) {
                music::Length const from = wholes(at, 16);
                music::Length const all = wholes(length, 16);
                for (auto const& pieces : {notation::notePieces(from, all, meter),
                                           notation::restPieces(from, all, meter)}) {
                    CAPTURE(music::text(meter), at, length);
                    music::Length next = from;
                    for (Piece const& piece : pieces) {
                        REQUIRE(piece.at == next);
                        next = next + notation::lengthOf(piece.value);
                    }
                    REQUIRE(next == from + all);
                }
            }
}
