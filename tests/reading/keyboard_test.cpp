// Everything is reached by Tab, from the window's first control to its last and round again:
// focusorder.txt tells the order, and the target main_job_read writes it anew.
#include "../keeping/window.h"
#include "everydialog.h"
#include "reader.h"

#include "app/language.h"
#include "tests/places.h"
#include "ui/button.h"
#include "ui/header.h"
#include "ui/noteediting.h"

#include <QAccessible>
#include <QFile>

#include <set>

using namespace keeping;

namespace {

QString fileRead()
{
    return QString::fromStdString(places::tests() + "/reading/focusorder.txt");
}

// What Tab is to come to.
bool isStop(QWidget const& widget, QWidget const& window)
{
    return widget.isVisibleTo(&window) && widget.isEnabled() && widget.window() == &window &&
           (widget.focusPolicy() & Qt::TabFocus) != 0 && !widget.focusProxy() &&
           !widget.objectName().startsWith(QStringLiteral("qt_"));
}

struct Round {
    QStringList order;   // as it is told
    QStringList missed;  // never reached
    bool closes = false; // Tab comes back to where it began
};

// Once round by Tab; a trap ends it after some hundred steps.
Round roundOf(QWidget& window, Qt::Key key = Qt::Key_Tab)
{
    Round round;
    QWidget* const first = window.focusWidget();
    REQUIRE(first);
    std::set<QWidget const*> seen;
    QWidget* at = first;
    constexpr int trap = 150;
    for (int step = 0; step < trap; ++step) {
        seen.insert(at);
        round.order << reading::told(QAccessible::queryAccessibleInterface(at));
        QTest::keyClick(at, key, key == Qt::Key_Backtab ? Qt::ShiftModifier : Qt::NoModifier);
        at = window.focusWidget();
        REQUIRE(at);
        if (at == first) {
            round.closes = true;
            break;
        }
        if (seen.contains(at)) {
            round.missed << QStringLiteral("caught at ") +
                                reading::told(QAccessible::queryAccessibleInterface(at));
            break;
        }
    }
    for (QWidget const* widget : window.findChildren<QWidget*>())
        if (isStop(*widget, window) && !seen.contains(widget) &&
            !(widget->parentWidget() && seen.contains(widget->parentWidget())))
            round.missed << QString::fromLatin1(widget->metaObject()->className()) + ' ' +
                                widget->accessibleName();
    return round;
}

void write(QStringList& page, QString const& heading, Round const& round)
{
    page << QString() << heading;
    for (QString const& stop : round.order) page << QStringLiteral("    ") + stop;
}

} // namespace

TEST_CASE("Tab goes through the window and every dialog in their order and traps nobody",
          "[reading][mainjob][keyboard]")
{
    REQUIRE(app::speak("en"));
    UserFolder const user;
    application();
    reading::Reader const reader;
    Window window;
    window.workbench.resize(1280, 820);
    window.workbench.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&window.workbench));
    ui::NoteEditing notes(window.workbench, window.session);
    QStringList page{QStringLiteral(
        "Where Tab goes. Written by the target main_job_read; compared in tests/reading.")};

    auto const go = [&](QString const& heading, QWidget& here) {
        CAPTURE(heading.toStdString());
        QApplication::processEvents();
        Round const round = roundOf(here);
        CAPTURE(round.order.join('\n').toStdString());
        CAPTURE(round.missed.join('\n').toStdString());
        CHECK(round.closes);
        CHECK(round.missed.isEmpty());
        QStringList back = roundOf(here, Qt::Key_Backtab).order;
        CHECK(back.size() == round.order.size());
        write(page, heading, round);
        QStringList const nameless = reading::unnamed(here);
        CAPTURE(nameless.join('\n').toStdString());
        CHECK(nameless.isEmpty());
    };
    window.workbench.findChild<ui::Header*>()->findChild<ui::Button*>()->setFocus();
    go(QStringLiteral("== The window, no tune open"), window.workbench);
    user.write("a.abc", tuneText());
    window.open(user.at("a.abc"));
    go(QStringLiteral("== The window with a tune"), window.workbench);
    window.workbench.setView(ui::Workbench::View::Sheet);
    go(QStringLiteral("== The window with the sheet"), window.workbench);
    window.workbench.setView(ui::Workbench::View::Grid);
    notes.openPane();
    go(QStringLiteral("== The window with the notes open"), window.workbench);

    for (auto const& dialog : reading::everyDialog(window.workbench, window.session)) {
        dialog->show();
        dialog->activateWindow();
        CAPTURE(dialog->windowTitle().toStdString());
        REQUIRE(QTest::qWaitForWindowActive(dialog.get()));
        QTest::qWait(250); // lists read their tunes when nothing else happens
        go(QStringLiteral("== Dialog “%1”").arg(dialog->windowTitle()), *dialog);
        dialog->hide();
    }

    QString const now = page.join(QLatin1Char('\n')) + QLatin1Char('\n');
    if (qEnvironmentVariableIsSet("SALLOW_READ_ANEW")) {
        QFile out(fileRead());
        REQUIRE(out.open(QIODevice::WriteOnly));
        out.write(now.toUtf8());
        return;
    }
    QFile in(fileRead());
    REQUIRE(in.open(QIODevice::ReadOnly));
    // Names alone: values are of the tune and the machine.
    auto const names = [](QString const& text) {
        QStringList out;
        for (QString line : text.split(QLatin1Char('\n'))) {
            if (line.startsWith(' ')) line = line.section(QChar(u'”'), 0, 0);
            for (QChar& c : line)
                if (c.isDigit()) c = '#';
            out << line;
        }
        return out;
    };
    QStringList const kept = names(QString::fromUtf8(in.readAll()));
    QStringList const here = names(now);
    for (qsizetype i = 0; i < std::min(kept.size(), here.size()); ++i) {
        CAPTURE(i + 1);
        REQUIRE(here[i].toStdString() == kept[i].toStdString());
    }
    CHECK(here.size() == kept.size());
}
