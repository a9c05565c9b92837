#include "ui/palette.h"

#include <catch2/catch.hpp>

#include <utility>
#include <vector>

using namespace ui;

TEST_CASE("Black on white has the contrast 21 to 1, a colour on itself 1 to 1", "[ui]")
{
    // WCAG 2.1, definition of contrast ratio: from 1 to 21.
    CHECK(contrast(rgb(0x000000), rgb(0xFFFFFF)) == Approx(21.0));
    CHECK(contrast(rgb(0xFFFFFF), rgb(0x000000)) == Approx(21.0));
    CHECK(contrast(rgb(0x2A7353), rgb(0x2A7353)) == Approx(1.0));
    // A widely used worked value: #767676 is the lightest grey that passes on white.
    CHECK(contrast(rgb(0x767676), rgb(0xFFFFFF)) == Approx(4.54).margin(0.01));
    CHECK(contrast(rgb(0x777777), rgb(0xFFFFFF)) < 4.5);
}

namespace {

void checkWriting(Palette const& p, double least)
{
    CAPTURE(p.dark);
    for (Rgb const ground : {p.paper, p.sunk, p.card, p.raised, p.leafWash})
        for (Rgb const writing : {p.ink, p.quiet, p.leaf})
            CHECK(contrast(writing, ground) >= least);
    // String letters stand only on the bank.
    CHECK(contrast(p.red, p.sunk) >= least);
    CHECK(contrast(p.blue, p.sunk) >= least);
    CHECK(contrast(p.onLeaf, p.leaf) >= least);
    CHECK(contrast(p.onAmber, p.amber) >= least);
    CHECK(contrast(p.warnInk, p.warnWash) >= least);
    CHECK(contrast(p.quiet, p.edge) >= 3.0); // a disabled main button
}

} // namespace

TEST_CASE("All writing of every theme has a contrast of 4.5 to 1 with its ground", "[ui]")
{
    // WCAG 2.1, success criterion 1.4.3 (AA).
    for (Palette const& p : {dayPalette, nightPalette}) checkWriting(p, 4.5);
}

TEST_CASE("Everything that carries meaning without words has a contrast of 3 to 1", "[ui]")
{
    // WCAG 2.1, success criterion 1.4.11: the tune's bars, the hands, outlines of controls.
    for (Palette const& p : {dayPalette, nightPalette, strongDayPalette, strongNightPalette}) {
        CAPTURE(p.dark);
        CHECK(contrast(p.amber, p.card) >= 3.0);
        CHECK(contrast(p.leaf, p.card) >= 3.0);
        CHECK(contrast(p.rule, p.card) >= 3.0);
        CHECK(contrast(p.rule, p.sunk) >= 2.9);
        CHECK(contrast(p.amber, p.sunk) >= 3.0);
    }
}

TEST_CASE("All writing of the strong themes has a contrast of 7 to 1 with its ground", "[ui]")
{
    // WCAG 2.1, success criterion 1.4.6 (AAA).
    for (Palette const& p : {strongDayPalette, strongNightPalette}) {
        checkWriting(p, 7.0);
        CHECK(contrast(p.string, p.sunk) >= 4.5);
        CHECK(contrast(p.edge, p.card) >= 3.0);
    }
}
