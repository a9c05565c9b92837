#include "ui/bookdialog.h"

#include "scenario.h"

#include <QApplication>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <catch2/catch.hpp>

namespace {

std::vector<ui::BookTune> const tunes{{1, "The Reed Cutter", "jig", "G", "6/8"},
                                      {2, "Lanterns", "reel", "Ador", "C|"},
                                      {7, "The Cutter's Rest", "jig", "D", "6/8"}};

ui::BookGlance glance(int row)
{
    if (row == 1) return {std::nullopt, 0, false, "book.abc, line 9: there is no key line"};
    return {scenario::jig(), 16, row == 0, {}};
}

struct Dialog {
    QApplication& application = scenario::application();
    ui::BookDialog dialog{"book.abc", tunes, glance, 0};
    QLineEdit* words = dialog.findChild<QLineEdit*>();
    QTableView* list = dialog.findChild<QTableView*>();
    QPushButton* open =
        dialog.findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Open);
    QLabel* beginning = nullptr;

    Dialog()
    {
        dialog.show();
        REQUIRE(QTest::qWaitForWindowExposed(&dialog));
        for (QLabel* label : dialog.findChildren<QLabel*>())
            if (label->accessibleName() == "How the tune begins") beginning = label;
        REQUIRE(beginning);
    }
    QString cell(int row, int column)
    {
        return list->model()->index(row, column).data().toString();
    }
};

} // namespace

TEST_CASE("A part of the title finds its tune in a book, in any case", "[ui]")
{
    Dialog d;
    QTest::keyClicks(d.words, "cutter");
    CHECK(d.dialog.chosen() == 0);
    QTest::keyClick(d.words, Qt::Key_Down);
    CHECK(d.dialog.chosen() == 2);
    d.words->clear();
    QTest::keyClicks(d.words, "jig d");
    CHECK(d.list->model()->rowCount() == 2); // "d" is in "Reed" also
    CHECK(d.dialog.chosen() == 2);
    d.words->clear();
    QTest::keyClicks(d.words, "ador");
    CHECK(d.dialog.chosen() == 1);
}

TEST_CASE("Words that fit no tune of a book choose none", "[ui]")
{
    Dialog d;
    QTest::keyClicks(d.words, "weir");
    CHECK(!d.dialog.chosen());
    CHECK(QTest::qWaitFor([&] { return !d.open->isEnabled(); }));
}

TEST_CASE("The list of a book tells kind, key, time, bars and chords of every tune", "[ui]")
{
    Dialog d;
    using Model = ui::BookModel;
    CHECK(d.cell(0, Model::Kind) == "jig");
    CHECK(d.cell(1, Model::Key) == "Ador");
    CHECK(d.cell(0, Model::Meter) == "6/8");
    CHECK(d.cell(0, Model::Bars) == "16");
    CHECK(d.cell(0, Model::Chords) == "chords");
    CHECK(d.cell(2, Model::Chords) == "no chords");
    CHECK(d.cell(1, Model::Chords) == "cannot be read");
}

TEST_CASE("Arrow keys show how each tune begins, and why one cannot be read", "[ui]")
{
    Dialog d;
    CHECK(QTest::qWaitFor([&] { return !d.beginning->pixmap(Qt::ReturnByValue).isNull(); }));
    CHECK(d.open->isEnabled());
    QTest::keyClick(d.words, Qt::Key_Down);
    CHECK(QTest::qWaitFor([&] { return d.beginning->text().contains("line 9"); }));
    CHECK_FALSE(d.open->isEnabled());
    QTest::keyClick(d.words, Qt::Key_Down);
    CHECK(QTest::qWaitFor([&] { return d.open->isEnabled(); }));
    QTest::keyClick(d.words, Qt::Key_Return);
    CHECK(d.dialog.result() == QDialog::Accepted);
    CHECK(d.dialog.chosen() == 2);
}
