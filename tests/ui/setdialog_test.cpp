// A set put together in its dialog, and how a sheet is made easy to read, by keys and mouse.
#include "scenario.h"
#include "ui/readingmenu.h"
#include "ui/setdialog.h"

#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <catch2/catch.hpp>

namespace {

std::vector<ui::BookTune> const threeTunes{{7, "Osier Ferry", "jig", {}, {}},
                                           {3, "Willow Weir", "reel", {}, {}},
                                           {9, "The Long Reach", "waltz", {}, {}}};

// The dialog shown, begun with the tune of the second row.
struct Set {
    QApplication& application = scenario::application();
    ui::SetDialog dialog{threeTunes, "34 strings", "/here", 1};
    QListWidget* tunes = nullptr;
    QListWidget* set = nullptr;
    QLineEdit* words = nullptr;

    Set()
    {
        dialog.show();
        REQUIRE(QTest::qWaitForWindowExposed(&dialog));
        auto const lists = dialog.findChildren<QListWidget*>();
        REQUIRE(lists.size() == 3);
        tunes = lists[0];
        set = lists[1];
        for (QLineEdit* line : dialog.findChildren<QLineEdit*>())
            if (line->accessibleName() == "Find a tune") words = line;
        REQUIRE(words);
    }
    QPushButton* button(QString const& text)
    {
        for (QPushButton* one : dialog.findChildren<QPushButton*>())
            if (one->text().remove('&') == text) return one;
        FAIL("no button " << text.toStdString());
        return nullptr;
    }
    void press(QString const& text) { QTest::mouseClick(button(text), Qt::LeftButton); }
    static void click(QListWidget* list, int row)
    {
        QTest::mouseClick(list->viewport(), Qt::LeftButton, {},
                          list->visualItemRect(list->item(row)).center());
    }
    bool says(QString const& text)
    {
        for (QLabel const* label : dialog.findChildren<QLabel*>())
            if (label->text() == text) return true;
        return false;
    }
};

// What the menu's choices come to, each shown in it as the window would.
struct Menu {
    QApplication& application = scenario::application();
    ui::ReadingMenu menu;
    ui::Reading chosen;

    Menu()
    {
        QObject::connect(&menu, &ui::ReadingMenu::chosen, &menu,
                         [this](ui::Reading const& reading) {
                             chosen = reading;
                             menu.setReading(reading);
                         });
    }
    void click(QString const& text)
    {
        menu.popup({});
        REQUIRE(QTest::qWaitForWindowExposed(&menu));
        for (QAction* action : menu.actions())
            if (action->text().remove('&') == text) {
                QTest::mouseClick(&menu, Qt::LeftButton, {},
                                  menu.actionGeometry(action).center());
                return;
            }
        FAIL("no entry " << text.toStdString());
    }
    QStringList checked()
    {
        QStringList out;
        for (QAction* action : menu.actions())
            if (action->isChecked()) out << action->text().remove('&');
        return out;
    }
};

} // namespace

TEST_CASE("A set begins with the open tune and keeps the order in which tunes are added",
          "[ui][set]")
{
    Set s;
    CHECK(s.dialog.numbers() == QList<int>{3});
    CHECK_FALSE(s.button("Make the set")->isEnabled()); // one tune is no set
    Set::click(s.tunes, 2);
    s.press("Add");
    CHECK(s.dialog.numbers() == QList<int>{3, 9});
    CHECK(s.button("Make the set")->isEnabled());
    s.press("Earlier");
    CHECK(s.dialog.numbers() == QList<int>{9, 3});
    CHECK_FALSE(s.button("Earlier")->isEnabled());
    s.press("Later");
    CHECK(s.dialog.numbers() == QList<int>{3, 9});
    Set::click(s.set, 0);
    s.press("Take out");
    CHECK(s.dialog.numbers() == QList<int>{9});
    CHECK_FALSE(s.button("Make the set")->isEnabled());
}

TEST_CASE("A tune is found by a part of its title and added with the Enter key", "[ui][set]")
{
    Set s;
    QTest::keyClicks(s.words, "ferry");
    CHECK_FALSE(s.tunes->item(0)->isHidden());
    CHECK(s.tunes->item(1)->isHidden());
    QTest::keyClick(s.words, Qt::Key_Return);
    CHECK(s.dialog.numbers() == QList<int>{3, 7});
    CHECK(s.dialog.isVisible());
    s.words->clear();
    CHECK_FALSE(s.tunes->item(1)->isHidden());
    QTest::keyClicks(s.words, "waltz");
    QTest::keyClick(s.words, Qt::Key_Down);
    QTest::keyClick(s.tunes, Qt::Key_Return);
    CHECK(s.dialog.numbers() == QList<int>{3, 7, 9});
    // What no tune has adds none.
    s.words->setFocus();
    QTest::keyClicks(s.words, "zzz");
    QTest::keyClick(s.words, Qt::Key_Return);
    CHECK_FALSE(s.button("Add")->isEnabled());
    CHECK(s.dialog.numbers() == QList<int>{3, 7, 9});
}

TEST_CASE("Files of a set are named by what is ticked, and none without", "[ui][set]")
{
    Set s;
    Set::click(s.tunes, 0);
    s.press("Add");
    CHECK(s.dialog.files() == QStringList{"/here/Set.pdf"});
    for (QCheckBox* box : s.dialog.findChildren<QCheckBox*>())
        if (box->text() == "MIDI") QTest::keyClick(box, Qt::Key_Space);
    CHECK(s.dialog.files() == QStringList{"/here/Set.pdf", "/here/Set.mid"});
    for (QCheckBox* box : s.dialog.findChildren<QCheckBox*>())
        if (box->isChecked()) QTest::keyClick(box, Qt::Key_Space);
    CHECK(s.dialog.files().isEmpty());
    CHECK_FALSE(s.button("Make the set")->isEnabled());
}

TEST_CASE("While a set is made it can be stopped, not changed", "[ui][set]")
{
    Set s;
    Set::click(s.tunes, 0);
    s.press("Add");
    QSignalSpy started(&s.dialog, &ui::SetDialog::startClicked);
    QSignalSpy cancelled(&s.dialog, &ui::SetDialog::cancelClicked);
    s.press("Make the set");
    REQUIRE(started.count() == 1);
    s.dialog.started();
    CHECK_FALSE(s.button("Add")->isEnabled());
    CHECK_FALSE(s.tunes->isEnabled());
    s.press("Cancel");
    CHECK(cancelled.count() == 1);
    QTest::keyClick(&s.dialog, Qt::Key_Escape);
    CHECK(cancelled.count() == 2);
    CHECK(s.dialog.isVisible());
    s.dialog.ended("Stopped.");
    CHECK(s.says("Stopped."));
    CHECK(s.button("Make the set")->isEnabled());
    // A set that is changed is no longer the one of which that was said.
    Set::click(s.tunes, 2);
    s.press("Add");
    CHECK_FALSE(s.says("Stopped."));
    QTest::keyClick(&s.dialog, Qt::Key_Escape);
    CHECK_FALSE(s.dialog.isVisible());
}

TEST_CASE("A set holds six tunes at most", "[ui][set]")
{
    Set s;
    Set::click(s.tunes, 0);
    for (int i = 0; i < 8; ++i) s.press("Add");
    CHECK(s.dialog.numbers().size() == ui::SetDialog::mostTunes);
    CHECK_FALSE(s.button("Add")->isEnabled());
    CHECK(s.says("A set has at most 6 tunes."));
    s.press("Take out");
    CHECK(s.button("Add")->isEnabled());
    CHECK_FALSE(s.says("A set has at most 6 tunes."));
}

TEST_CASE("Helps of a sheet are chosen one by one, sizes in turn", "[ui][helps]")
{
    Menu m;
    QString const brackets = "Placing brackets where they help";
    CHECK(m.checked() == QStringList{"Normal print", brackets});
    m.click("String path under the staff");
    CHECK(m.chosen.helps == sheet::Helps{false, false, true});
    CHECK(m.chosen.staffMm == sheet::usualStaffMm);
    m.click("Large print");
    CHECK(m.chosen.staffMm == sheet::largeStaffMm);
    CHECK(m.chosen.helps.stringPath);
    CHECK(m.checked() == QStringList{"Large print", "String path under the staff", brackets});
    m.click("String path under the staff");
    CHECK(m.chosen.helps == sheet::Helps{});
    m.click("Large print"); // the size it has already
    CHECK(m.checked() == QStringList{"Large print", brackets});
    CHECK(ui::readingWords(m.chosen) == "Large print");
}

TEST_CASE("Placing brackets are all, helpful or none, with any print", "[ui][helps]")
{
    using sheet::Placings;
    Menu m;
    m.click("No placing brackets");
    CHECK(m.chosen.placings == Placings::None);
    CHECK(m.checked() == QStringList{"Normal print", "No placing brackets"});
    m.click("Beginner's paper");
    CHECK(m.chosen.placings == Placings::None);
    CHECK(ui::readingWords(m.chosen) == "Beginner's paper");
    m.click("Every placing bracket");
    CHECK(m.chosen.placings == Placings::All);
    CHECK(m.checked().contains("Beginner's paper"));
    m.click("Beginner's paper");
    CHECK(m.chosen == ui::Reading{sheet::usualStaffMm, {}, Placings::All});
    sheet::SheetStyle const style = ui::styled({}, m.chosen);
    CHECK(style.placings == Placings::All);
    CHECK(ui::readingOf(style) == m.chosen);
}

TEST_CASE(
    "Beginner's paper is huge print with all that helps, and off it is as before the helps",
    "[ui][helps]")
{
    Menu m;
    m.click("Beginner's paper");
    CHECK(m.chosen == ui::beginnersReading());
    CHECK(ui::readingWords(m.chosen) == "Beginner's paper");
    CHECK(m.checked().size() == 6);
    m.click("Note names in the heads");
    CHECK(ui::readingWords(m.chosen) == "Huge print with help");
    CHECK_FALSE(m.checked().contains("Beginner's paper"));
    m.click("Note names in the heads");
    CHECK(m.chosen == ui::beginnersReading());
    m.click("Beginner's paper");
    CHECK(m.chosen == ui::Reading{});
}
