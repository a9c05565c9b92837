// The dialog for sound files, by keys and the mouse.

#include "scenario.h"
#include "ui/sounddialog.h"

#include <QComboBox>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTest>
#include <catch2/catch.hpp>

using namespace ui;

namespace {

QPushButton* button(SoundDialog& dialog, QString const& words)
{
    for (QPushButton* one : dialog.findChildren<QPushButton*>())
        if (one->text().remove(QLatin1Char('&')).startsWith(words)) return one;
    FAIL("no such button");
    return nullptr;
}

} // namespace

TEST_CASE("The sound dialog begins with what is heard and keeps bars in order", "[ui][sounds]")
{
    scenario::application();
    SoundChoice begin;
    begin.firstBar = 5;
    begin.lastBar = 8;
    begin.percent = 60;
    begin.left = false;
    begin.click = true;
    SoundDialog dialog(begin, 0, 16);
    dialog.show();
    CHECK(dialog.choice().firstBar == 5);
    CHECK(dialog.choice().lastBar == 8);
    CHECK(dialog.choice().percent == 60);
    CHECK_FALSE(dialog.choice().left);
    CHECK(dialog.choice().right);
    CHECK(dialog.choice().click);
    auto* first = dialog.findChildren<QSpinBox*>().at(0);
    first->setFocus();
    first->selectAll();
    QTest::keyClicks(first, QStringLiteral("12"));
    CHECK(dialog.choice().firstBar == 12);
    CHECK(dialog.choice().lastBar == 12); // never before the first
}

TEST_CASE("A practice pack is slow unless it is slow already, and has every hand",
          "[ui][sounds]")
{
    scenario::application();
    SoundDialog dialog({1, 8}, 1, 8);
    dialog.show();
    auto* what = dialog.findChildren<QComboBox*>().at(0);
    what->setFocus();
    QTest::keyClick(what, Qt::Key_Down);
    CHECK(dialog.choice().pack);
    CHECK(dialog.choice().percent == 60);
}

TEST_CASE("While sound is written the dialog shows how far it is, and its button stops",
          "[ui][sounds]")
{
    scenario::application();
    SoundDialog dialog({1, 8}, 1, 8);
    dialog.show();
    QSignalSpy const start(&dialog, &SoundDialog::startClicked);
    QSignalSpy const cancel(&dialog, &SoundDialog::cancelClicked);
    QTest::mouseClick(button(dialog, QStringLiteral("Save")), Qt::LeftButton);
    CHECK(start.size() == 1);
    dialog.started();
    dialog.reached(0.5);
    auto const* bar = dialog.findChild<QProgressBar*>();
    CHECK(bar->value() * 2 == bar->maximum());
    QTest::keyClick(&dialog, Qt::Key_Escape); // is not a way out while it runs
    CHECK(cancel.size() == 1);
    CHECK(dialog.isVisible());
    QTest::mouseClick(button(dialog, QStringLiteral("Stop")), Qt::LeftButton);
    CHECK(cancel.size() == 2);
    dialog.ended(QStringLiteral("Stopped."));
    QTest::keyClick(&dialog, Qt::Key_Escape);
    CHECK_FALSE(dialog.isVisible());
}
