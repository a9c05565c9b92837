#include "ui/variantlist.h"

#include "scenario.h"

#include <QApplication>
#include <QSignalSpy>
#include <QTest>
#include <catch2/catch.hpp>

using namespace ui;

namespace {

std::vector<VariantRow> rows(int count)
{
    std::vector<VariantRow> made;
    for (int i = 0; i < count; ++i) {
        VariantRow row;
        row.variant.candidate = arrange::CandidateIndex(100 + i);
        row.variant.regret = 250 * i;
        row.variant.chosen = i == 0;
        row.variant.reasons = {"open and clear", "one placing"};
        row.voicing.pattern = "1-5-8";
        row.voicing.rootString = 4;
        for (int n = 0; n < 3; ++n) {
            arrange::VoicedNote note;
            note.at = {music::Rational(n, 8)};
            note.string = harp::StringIndex(4 + (n == 0 ? 0 : n == 1 ? 4 : 7));
            row.voicing.notes.push_back(note);
        }
        made.push_back(row);
    }
    return made;
}

void fill(VariantList& list, int height, int count)
{
    list.resize(340, height);
    list.setHarp(scenario::brief().harp);
    list.setRows(rows(count));
}

} // namespace

TEST_CASE("Rows of the variant list are found again at every height they cover", "[ui]")
{
    VariantListLayout layout;
    layout.rows = 150;
    for (std::optional<int> const current :
         {std::optional<int>(), std::optional(0), std::optional(7), std::optional(149)}) {
        layout.current = current;
        layout.extra = current ? 60 : 0;
        for (int row = 0; row < layout.rows; ++row) {
            CAPTURE(current.value_or(-1), row);
            CHECK(layout.rowAt(layout.top(row) + 1) == row);
            CHECK(layout.rowAt(layout.top(row) + layout.heightOf(row) - 1) == row);
            if (row > 0)
                CHECK(layout.top(row) ==
                      Approx(layout.top(row - 1) + layout.heightOf(row - 1) + layout.gap));
        }
        CHECK_FALSE(layout.rowAt(0));
        CHECK_FALSE(layout.rowAt(layout.height()));
    }
    CHECK_FALSE(VariantListLayout{}.rowAt(20));
}

TEST_CASE("Down looks at the next variant, Enter uses it, Space hears it", "[ui]")
{
    scenario::application();
    VariantList list;
    fill(list, 400, 150);
    list.setShown(100);
    QObject::connect(&list, &VariantList::shownClicked, &list, &VariantList::setShown);
    QSignalSpy used(&list, &VariantList::useClicked);
    QSignalSpy heard(&list, &VariantList::hearClicked);
    QTest::keyClick(&list, Qt::Key_Down);
    QTest::keyClick(&list, Qt::Key_Down);
    CHECK(list.currentRow() == 2);
    QTest::keyClick(&list, Qt::Key_Space);
    REQUIRE(heard.size() == 1);
    CHECK(heard.at(0).at(0).value<arrange::CandidateIndex>() == 102);
    QTest::keyClick(&list, Qt::Key_Return);
    REQUIRE(used.size() == 1);
    CHECK(used.at(0).at(0).value<arrange::CandidateIndex>() == 102);
    QTest::keyClick(&list, Qt::Key_End);
    CHECK(list.currentRow() == 149);
    QTest::keyClick(&list, Qt::Key_5);
    REQUIRE(used.size() == 2);
    CHECK(used.at(1).at(0).value<arrange::CandidateIndex>() == 104);
}

TEST_CASE("A click on a row looks at that variant and does not use it", "[ui]")
{
    scenario::application();
    VariantList list;
    fill(list, 500, 5);
    QSignalSpy shown(&list, &VariantList::shownClicked);
    QSignalSpy used(&list, &VariantList::useClicked);
    int const y = static_cast<int>(list.rowLayout().top(3)) + 10;
    QTest::mouseClick(list.viewport(), Qt::LeftButton, {}, {60, y});
    REQUIRE(shown.size() == 1);
    CHECK(shown.at(0).at(0).value<arrange::CandidateIndex>() == 103);
    CHECK(used.isEmpty());
    QTest::mouseDClick(list.viewport(), Qt::LeftButton, {}, {60, y});
    REQUIRE(used.size() == 1);
    CHECK(used.at(0).at(0).value<arrange::CandidateIndex>() == 103);
}
