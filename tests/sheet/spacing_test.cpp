#include "core/sheet/spacing.h"
#include "core/sheet/words.h"
#include "tests/sheet/examples.h"

#include <catch2/catch.hpp>

using example::wholes;

TEST_CASE("Twice the duration takes about half as much room again", "[spacing]")
{
    // Ross 1970 (from memory): each doubling widens by about half.
    for (int halvings = 1; halvings <= 16; halvings *= 2) {
        double const shorter = sheet::spaceFor(wholes(1, 2 * halvings));
        double const longer = sheet::spaceFor(wholes(1, halvings));
        CHECK(longer / shorter > 1.4);
        CHECK(longer / shorter < 1.6);
    }
}

TEST_CASE("A row of columns fills the width it is given", "[spacing]")
{
    sheet::ColumnRow row;
    row.springs = {{1, 0}, {0, 2}, {0, 3}, {0, 2}};
    row.struts = {{1, 2, 1.5}, {1, 3, 6}, {3, 4, 1}};
    for (double width : {9.0, 12.0, 40.0}) {
        double const stretch = sheet::stretchFor(row, width);
        CHECK(sheet::widthAt(row, stretch) == Approx(width));
    }
}

TEST_CASE("Struts hold however much a row is squeezed", "[spacing]")
{
    sheet::ColumnRow row;
    row.springs = {{0, 4}, {0, 4}, {0, 4}};
    row.struts = {{0, 1, 1.2}, {0, 2, 5}, {2, 3, 1.4}};
    auto const x = sheet::columnsAt(row, sheet::stretchFor(row, 1));
    CHECK(x[1] - x[0] >= 1.2);
    CHECK(x[2] - x[0] >= 5);
    CHECK(x[3] - x[2] >= 1.4);
}

TEST_CASE("Words are measured by the widths of the core fonts", "[spacing]")
{
    // Adobe font metrics of Times and Helvetica: A 722 and 667, space 250 and 278, digits 500
    // and 556 thousandths of the em.
    CHECK(sheet::widthOf("A", sheet::Face::Roman, 1000) == Approx(722));
    CHECK(sheet::widthOf("A 1", sheet::Face::Roman, 1000) == Approx(722 + 250 + 500));
    CHECK(sheet::widthOf("A 1", sheet::Face::Sans, 10) == Approx(6.67 + 2.78 + 5.56));
    CHECK(sheet::widthOf("F♯", sheet::Face::Roman, 100) ==
          Approx(55.6 + 100 * sheet::accidentalSignWidth));
    CHECK(sheet::widthOf("é", sheet::Face::Roman, 100) > 30); // one character, two bytes
    CHECK(sheet::widthOf("é", sheet::Face::Roman, 100) < 70);
}
