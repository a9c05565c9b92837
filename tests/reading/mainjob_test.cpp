// The main job, start to printed sheet, by keys alone, written down as a reader of the screen
// tells it: mainjob.txt, which the target main_job_read writes anew.
#include "../keeping/window.h"
#include "reader.h"

#include "app/language.h"
#include "tests/places.h"
#include "ui/chordediting.h"
#include "ui/pageview/pageview.h"
#include "ui/stringbank.h"
#include "ui/tunegrid.h"
#include "ui/variantpanel.h"

#include <QAccessible>
#include <QFile>
#include <QFileDialog>
#include <QMenu>
#include <QPrintPreviewDialog>
#include <QRegularExpression>

using namespace keeping;

namespace {

QString fileRead() { return QString::fromStdString(places::tests() + "/reading/mainjob.txt"); }

// The reader at the window, with what was met so far.
struct Sitting {
    UserFolder user;
    QApplication& running = application();
    reading::Reader reader;
    Window window;
    ui::ChordMenu chords{window.workbench, window.session, shelf().harmony};
    QStringList page;
    QStringList nameless;

    Sitting()
    {
        reader.hideFolder(QString::fromStdString(user.path().string()));
        QObject::connect(&window.workbench, &ui::Workbench::playRequested, [this] {
            window.workbench.playbackStarted();
            window.workbench.barPlaying(0);
        });
        QObject::connect(&window.workbench, &ui::Workbench::stopRequested,
                         [this] { window.workbench.playbackStopped(); });
        window.workbench.resize(1280, 820);
        window.workbench.activateWindow();
        REQUIRE(QTest::qWaitForWindowActive(&window.workbench));
    }

    void heading(QString const& words) { page << QString() << words; }
    void write(QString const& line) { page << reader.masked(line); }
    void meet(QWidget& here)
    {
        write(QStringLiteral("What is there:"));
        for (QString const& line : reading::tree(here)) write(QStringLiteral("    ") + line);
        nameless << reading::unnamed(here);
    }
    void hear()
    {
        for (int i = 0; i < 3; ++i) QApplication::processEvents();
        for (QString const& line : reader.heard()) write(QStringLiteral("  > ") + line);
    }
    void press(QString const& words, Qt::Key key, Qt::KeyboardModifiers with = {})
    {
        write(QStringLiteral("%1:").arg(words));
        QWidget* at = QApplication::activePopupWidget();
        if (!at) at = QApplication::focusWidget();
        QTest::keyClick(at ? at : &window.workbench, key, with);
        if (auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget()))
            noteItem(*menu);
        hear();
    }
    // The entry of a menu that the keyboard is on.
    void noteItem(QMenu& menu)
    {
        QApplication::processEvents();
        QAccessibleInterface* all = QAccessible::queryAccessibleInterface(&menu);
        qsizetype const at = menu.actions().indexOf(menu.activeAction());
        if (at >= 0) reader.note(reading::told(all->child(static_cast<int>(at))));
    }
    // A key that opens a dialog, which is left by `leave`.
    void opens(QString const& words, Qt::Key key, Qt::KeyboardModifiers with,
               std::function<void(QWidget*)> const& leave)
    {
        write(QStringLiteral("%1:").arg(words));
        answerNext([this, leave](QWidget* dialog) {
            if (!QTest::qWaitForWindowActive(dialog)) write(QStringLiteral("(not active)"));
            QTest::qWait(20);
            write(QStringLiteral("  > dialog “%1”").arg(dialog->windowTitle()));
            hear();
            leave(dialog);
        });
        QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget()
                                                    : &window.workbench,
                        key, with);
        window.workbench.activateWindow();
        REQUIRE(QTest::qWaitForWindowActive(&window.workbench));
        hear();
    }
};

void typeAndOpen(Sitting& sitting, QWidget* dialog, QString const& path)
{
    auto* const name = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
    REQUIRE(name);
    CHECK(name->hasFocus());
    name->setText(path);
    sitting.reader.heard();
    auto* const asked = qobject_cast<QDialog*>(dialog);
    QTest::keyClick(name, Qt::Key_Return);
    if (asked->isVisible()) asked->accept();
}

// Shapes, counts and scores are of what is arranged, not of what is said.
QString bones(QString const& text)
{
    static QRegularExpression const shapeItem(
        QStringLiteral("item “[0-9lr][^”]*, [^”]*\\.[^”]*”"));
    static QRegularExpression const number(QStringLiteral("[0-9]+([-.,~+][0-9]+)*"));
    QString out;
    for (QString const& line : text.split(QLatin1Char('\n'))) {
        QString bare = line;
        bare.replace(shapeItem, QStringLiteral("item (a shape)"));
        bare.replace(number, QStringLiteral("#"));
        bare.replace(QStringLiteral("# other chord has a new shape"),
                     QStringLiteral("# other chords have new shapes"));
        bare.remove(QStringLiteral(". # other chords have new shapes"));
        out += bare + QLatin1Char('\n');
    }
    return out;
}

} // namespace

TEST_CASE("The main job is read out from start to printed sheet, with nothing unnamed",
          "[reading][mainjob]")
{
    REQUIRE(app::speak("en"));
    Sitting job;
    std::string const file = (job.user.path() / "lantern.abc").string();
    job.user.write("lantern.abc", tuneText());
    job.page
        << QStringLiteral("What a reader of the screen tells, from the start of Sallow to the "
                          "printed sheet.")
        << QStringLiteral(
               "Lines with > are read out by themselves; what is there can be walked through.")
        << QStringLiteral("Written by the target main_job_read; compared in tests/reading.");

    job.heading(QStringLiteral("== Sallow is started"));
    job.hear();
    job.meet(job.window.workbench);

    job.heading(QStringLiteral("== A tune is opened"));
    job.opens(QStringLiteral("Ctrl+O"), Qt::Key_O, Qt::ControlModifier, [&](QWidget* dialog) {
        job.write(QStringLiteral("(the name of the file, then Enter)"));
        typeAndOpen(job, dialog, QString::fromStdString(file));
    });
    REQUIRE(job.window.session.isOpen());
    job.meet(job.window.workbench);

    job.heading(QStringLiteral("== The harp is chosen"));
    job.press(QStringLiteral("Alt+2"), Qt::Key_2, Qt::AltModifier);
    job.press(QStringLiteral("Down"), Qt::Key_Down);
    job.press(QStringLiteral("Down"), Qt::Key_Down);
    job.press(QStringLiteral("Enter"), Qt::Key_Return);

    job.heading(QStringLiteral("== Through the bars, and a chord is set"));
    job.press(QStringLiteral("Right"), Qt::Key_Right);
    job.press(QStringLiteral("Right"), Qt::Key_Right);
    job.opens(QStringLiteral("C"), Qt::Key_C, {}, [&](QWidget* dialog) {
        job.meet(*dialog);
        auto* const line = qobject_cast<QLineEdit*>(dialog->focusWidget());
        REQUIRE(line);
        job.write(QStringLiteral("(Bm, then Enter)"));
        line->selectAll();
        QTest::keyClicks(line, QStringLiteral("Bm"));
        job.reader.heard();
        QTest::keyClick(line, Qt::Key_Return);
    });

    job.heading(QStringLiteral("== A shape is looked at, heard and kept"));
    job.press(QStringLiteral("Enter"), Qt::Key_Return);
    CHECK(job.window.workbench.variants()->list()->hasFocus());
    job.press(QStringLiteral("Down"), Qt::Key_Down);
    job.press(QStringLiteral("Down"), Qt::Key_Down);
    job.press(QStringLiteral("Space"), Qt::Key_Space);
    job.press(QStringLiteral("Esc, it is still"), Qt::Key_Escape);
    job.press(QStringLiteral("Esc, back to the grid"), Qt::Key_Escape);
    CHECK(job.window.workbench.grid()->hasFocus());
    job.press(QStringLiteral("3, the third shape is kept"), Qt::Key_3);
    job.press(QStringLiteral("U, it may change"), Qt::Key_U);

    job.heading(QStringLiteral("== The bar is heard"));
    job.press(QStringLiteral("Space"), Qt::Key_Space);
    job.press(QStringLiteral("Esc"), Qt::Key_Escape);

    job.heading(QStringLiteral("== The level is changed"));
    job.press(QStringLiteral("Alt+4"), Qt::Key_4, Qt::AltModifier);
    job.press(QStringLiteral("Down"), Qt::Key_Down);
    job.press(QStringLiteral("Enter"), Qt::Key_Return);

    job.heading(QStringLiteral("== Strings and levers"));
    job.press(QStringLiteral("F6"), Qt::Key_F6);
    job.press(QStringLiteral("F6"), Qt::Key_F6);
    CHECK(job.window.workbench.bank()->hasFocus());
    job.press(QStringLiteral("Right"), Qt::Key_Right);
    job.press(QStringLiteral("Up, the lever"), Qt::Key_Up);
    job.press(QStringLiteral("Down, the lever"), Qt::Key_Down);
    job.press(QStringLiteral("Right"), Qt::Key_Right);
    job.press(QStringLiteral("Up, the lever"), Qt::Key_Up);

    job.heading(QStringLiteral("== The sheet"));
    job.press(QStringLiteral("Ctrl+2"), Qt::Key_2, Qt::ControlModifier);
    CHECK(job.window.workbench.sheet()->hasFocus());
    job.press(QStringLiteral("Left"), Qt::Key_Left);
    job.meet(job.window.workbench);

    job.heading(QStringLiteral("== It is exported and printed"));
    QString const pdf = QString::fromStdString(job.user.at("lantern.pdf").string());
    job.opens(QStringLiteral("Ctrl+E"), Qt::Key_E, Qt::ControlModifier,
              [&](QWidget* dialog) { typeAndOpen(job, dialog, pdf); });
    CHECK(QFile::exists(pdf));
    job.opens(QStringLiteral("Ctrl+P"), Qt::Key_P, Qt::ControlModifier, [&](QWidget* dialog) {
        REQUIRE(qobject_cast<QPrintPreviewDialog*>(dialog));
        job.meet(*dialog);
        job.write(QStringLiteral("(Esc; Enter would print)"));
        QTest::keyClick(dialog, Qt::Key_Escape);
    });

    CAPTURE(job.nameless.join('\n').toStdString());
    CHECK(job.nameless.isEmpty());

    QString const read = job.page.join(QLatin1Char('\n')) + QLatin1Char('\n');
    if (qEnvironmentVariableIsSet("SALLOW_READ_ANEW")) {
        QFile out(fileRead());
        REQUIRE(out.open(QIODevice::WriteOnly));
        out.write(read.toUtf8());
        return;
    }
    QFile in(fileRead());
    REQUIRE(in.open(QIODevice::ReadOnly));
    QStringList const kept = bones(QString::fromUtf8(in.readAll())).split(QLatin1Char('\n'));
    QStringList const now = bones(read).split(QLatin1Char('\n'));
    for (qsizetype i = 0; i < std::min(kept.size(), now.size()); ++i) {
        CAPTURE(i + 1);
        REQUIRE(now[i].toStdString() == kept[i].toStdString());
    }
    CHECK(now.size() == kept.size());
}
