#include "ui/bookdialog.h"

#include "scenario.h"

#include <QLineEdit>
#include <QTest>
#include <catch2/catch.hpp>

namespace {

QStringList const titles{"1. The Reed Cutter", "2. Lanterns", "7. The Cutter's Rest"};

} // namespace

TEST_CASE("A part of the title finds its tune in a book, in any case", "[ui]")
{
    scenario::application();
    ui::BookDialog dialog("book.abc", titles, 1);
    CHECK(dialog.chosen() == 1);
    auto* const words = dialog.findChild<QLineEdit*>();
    QTest::keyClicks(words, "cutter");
    CHECK(dialog.chosen() == 0);
    QTest::keyClick(words, Qt::Key_Down);
    CHECK(dialog.chosen() == 2);
}

TEST_CASE("Words that fit no tune of a book choose none", "[ui]")
{
    scenario::application();
    ui::BookDialog dialog("book.abc", titles, 0);
    QTest::keyClicks(dialog.findChild<QLineEdit*>(), "weir");
    CHECK(!dialog.chosen());
}
