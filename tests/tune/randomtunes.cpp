#include "tests/tune/randomtunes.h"

#include "core/files/abc/read.h"
#include "core/tune/edit/bars.h"
#include "core/tune/edit/barsums.h"
#include "core/tune/edit/notes.h"
#include "core/tune/edit/pitches.h"
#include "core/tune/edit/rebar.h"
#include "core/tune/edit/whole.h"

#include <algorithm>
#include <array>
#include <catch2/catch.hpp>

namespace randomtunes {

using namespace tune;
using music::Length;
using music::Letter;
using music::Pitch;
using music::Rational;

Tune empty()
{
    return newTune({"A",
                    Kind::Jig,
                    {{Letter::G, 0}, music::Mode::Ionian},
                    {6, 8, false},
                    4,
                    Length{Rational(1, 8)}});
}

Tune full()
{
    std::string const abc = "X:1\nM:6/8\nL:1/8\nK:G\nP:A\n"
                            "D|\"G\"GABc2d|\"D\"{e}dcBA2G|[1 G3F2D:|[2 G6|]\n";
    auto const entries = files::abcTunes(abc);
    REQUIRE(entries);
    auto tune = files::readAbc(abc, entries->front(), "test", files::Rests::Allowed);
    REQUIRE(tune);
    return *std::move(tune);
}

Tune edited(Tune const& tune, std::mt19937& random)
{
    auto const upTo = [&random](int most) {
        return static_cast<int>(random() % static_cast<unsigned>(most + 1));
    };
    constexpr std::array lengths{Rational(1, 16), Rational(1, 8), Rational(3, 16),
                                 Rational(1, 4),  Rational(3, 8), Rational(1, 2)};
    int const bars = tune.bars.size();
    BarIndex const bar(upTo(bars - 1));
    NoteAt const at{bar, NoteIndex(upTo(tune.bars[bar].notes.size()))};
    Length const length{lengths[static_cast<std::size_t>(upTo(5))]};
    Pitch typed = typedPitch(tune, at, static_cast<Letter>(upTo(6)));
    if (upTo(5) == 0) typed.alter = upTo(2) - 1;
    BarIndex const before(upTo(bars));
    BarIndex const other = std::min(bar + upTo(3), tune.bars.beyond() - 1);
    auto const or_ = [&tune](base::Result<Tune> made) { return made ? *made : tune; };
    switch (upTo(21)) {
    case 0:
        return withNote(tune, at, {}, length);
    case 1:
        return withTriplet(tune, at, {typed}, length);
    case 2:
        return silenced(tune, at);
    case 3:
        return withoutNote(tune, at);
    case 5:
        return withLength(tune, at, length);
    case 6:
        return withStep(tune, at, upTo(4) - 2);
    case 7:
        return withSemitone(tune, at, upTo(1) == 0 ? 1 : -1);
    case 8:
        return withOctave(tune, at, upTo(1) == 0 ? 1 : -1);
    case 9:
        return withTie(tune, at);
    case 10:
        return withGraces(tune, at, {typed});
    case 11:
        return bars < 20 ? withBars(tune, before, 1 + upTo(1)) : tune;
    case 12:
        return withoutBars(tune, bar, bar);
    case 13:
        return withRepeat(tune, bar, other);
    case 14:
        return withoutRepeat(tune, bar, other);
    case 15:
        return or_(withTimeBars(tune, sectionOf(tune, bar).first, bar, bar));
    case 16:
        return withPart(tune, bar, upTo(1) == 0 ? "B" : "");
    case 17:
        return or_(withPickUp(tune, upTo(2) == 0 ? std::nullopt : std::optional(length)));
    case 18:
        return withSignature(tune, music::keyOf(upTo(6) - 3, music::Mode::Dorian));
    case 19:
        return transposed(tune, wayTo(tune, music::nameAtFifths(upTo(6) - 3)));
    case 4:
        return withAllOctave(tune, upTo(2) - 1);
    default:
        return withNote(tune, at, {typed}, length);
    }
}

Tune some(std::mt19937& random, int edits)
{
    Tune tune = random() % 2 == 0 ? empty() : full();
    for (int i = 0; i < edits; ++i) tune = edited(tune, random);
    return tune;
}

} // namespace randomtunes
