#pragma once

#include "app/desk.h"
#include "app/filing.h"
#include "app/players.h"
#include "app/preferences.h"
#include "app/remembering.h"
#include "core/files/work/player.h"
#include "ui/messagebar.h"
#include "ui/session.h"
#include "ui/workbench.h"
#include "userfolder.h"

#include <QApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <catch2/catch.hpp>

#include <functional>

// The window with its filing and what is remembered, as the program makes it, and answers to its
// dialogs.
namespace keeping {

inline QApplication& application()
{
    static char name[] = "test_keeping";
    static char* words[] = {name, nullptr};
    static int count = 1;
    // Never destroyed: the pointing device of QTest is a static that must go before it.
    static auto* const instance = new QApplication(count, words);
    return *instance;
}

struct Window {
    QApplication& running = application();
    app::Preferences preferences;
    ui::Session session{ui::coreEngine(), files::withStanding(usual(), preferences.standing(), shelf())};
    ui::Workbench workbench{session, shelf()};
    app::Filing filing{workbench, session, shelf()};
    app::Desk desk{preferences, workbench, session, filing, shelf()};
    app::Players players{desk};
    app::Remembering remembering{desk, players};

    static proposal::Brief usual()
    {
        proposal::Brief brief = workOf(80).brief;
        brief.tune = {};
        brief.quartersPerMinute.reset();
        return brief;
    }

    Window()
    {
        workbench.show();
        REQUIRE(QTest::qWaitForWindowExposed(&workbench));
    }
    void open(std::filesystem::path const& file)
    {
        filing.open(QString::fromStdString(file.string()));
        REQUIRE(session.isOpen());
    }
    void setTempo(double tempo) { REQUIRE(session.setTempo(tempo)); }
    ui::Actions const& actions() { return workbench.actions(); }
    QString told() { return workbench.messages()->words(); }
};

// Answers the dialog that comes next; it may ask for another one before it does.
inline void answerNext(std::function<void(QWidget*)> answer)
{
    auto* const timer = new QTimer(&application());
    QObject::connect(timer, &QTimer::timeout, timer, [timer, answer] {
        QWidget* const dialog = QApplication::activeModalWidget();
        if (!dialog) return;
        timer->stop();
        timer->deleteLater();
        answer(dialog);
    });
    timer->start(5);
}

inline void click(QWidget* dialog, QString const& label)
{
    for (QPushButton* button : dialog->findChildren<QPushButton*>())
        if (button->text().remove('&') == label)
            return QTest::mouseClick(button, Qt::LeftButton);
    FAIL("no button " << label.toStdString());
}

// Gives the file dialog a name and its Save button a click; a file that is there is replaced.
inline void typeName(QWidget* dialog, std::filesystem::path const& file)
{
    auto* const name = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
    auto* const buttons = dialog->findChild<QDialogButtonBox*>(QStringLiteral("buttonBox"));
    REQUIRE(name);
    REQUIRE(buttons);
    name->setText(QString::fromStdString(file.string()));
    QTest::mouseClick(buttons->button(QDialogButtonBox::Save), Qt::LeftButton);
    auto* const asked = qobject_cast<QDialog*>(dialog);
    if (asked->isVisible()) asked->accept();
    if (asked->isVisible()) asked->reject(); // the test then fails by what is missing
}

inline void saveAs(Window& window, std::filesystem::path const& file)
{
    answerNext([&](QWidget* dialog) { typeName(dialog, file); });
    window.actions().saveAs->trigger();
    REQUIRE(std::filesystem::exists(file));
}

} // namespace keeping
