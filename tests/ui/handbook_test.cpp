#include "ui/handbook.h"

#include "scenario.h"
#include "tests/places.h"
#include "ui/actions.h"
#include "ui/chordediting.h"
#include "ui/session.h"
#include "ui/workbench.h"

#include <QDir>
#include <QFile>
#include <QImage>
#include <QListWidget>
#include <QMenu>
#include <QMenuBar>
#include <QPointer>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>
#include <QTextBrowser>
#include <catch2/catch.hpp>

using namespace ui;

namespace {

QString folder() { return QString::fromStdString(places::shared() + "/handbook"); }

QString textOf(QString const& file)
{
    QFile in(QDir(folder()).filePath(file));
    REQUIRE(in.open(QIODevice::ReadOnly));
    return QString::fromUtf8(in.readAll()).replace(QLatin1Char('\n'), QLatin1Char(' '));
}

QStringList pages()
{
    return QDir(folder()).entryList({QStringLiteral("*.md")}, QDir::Files, QDir::Name);
}

QString bare(QString words)
{
    return words.remove(QLatin1Char('&')).remove(QStringLiteral("…"));
}

// The action of a menu whose words begin so.
QAction const* actionOf(QMenuBar const& bar, QString const& menu, QString const& words)
{
    for (QAction const* top : bar.actions()) {
        if (bare(top->text()) != menu) continue;
        for (QAction const* action : top->menu()->actions())
            if (bare(action->text()).startsWith(words)) return action;
    }
    return nullptr;
}

} // namespace

TEST_CASE("Menu entries and their keys are as the handbook has them", "[ui][handbook]")
{
    scenario::application();
    Session session(coreEngine(), scenario::brief());
    Workbench workbench(session, scenario::tables());
    ChordMenu const chords(workbench, session, scenario::tables().harmony);
    // **File, Open** (Ctrl+O)
    QRegularExpression const entry(
        QStringLiteral(R"(\*\*([A-Z][a-z]+), ([^*]+)\*\*(?: \(([A-Za-z0-9+]+)\))?)"));
    int found = 0;
    for (QString const& file : pages()) {
        auto matches = entry.globalMatch(textOf(file));
        while (matches.hasNext()) {
            auto const match = matches.next();
            CAPTURE(file.toStdString(), match.captured(0).toStdString());
            QAction const* const action =
                actionOf(*workbench.menuBar(), match.captured(1), match.captured(2));
            if (match.captured(1) == QLatin1String("Up") ||
                match.captured(1) == QLatin1String("Down"))
                continue;
            REQUIRE(action);
            ++found;
            if (!match.captured(3).isEmpty())
                CHECK(action->shortcut().toString(QKeySequence::PortableText) ==
                      match.captured(3));
        }
    }
    CHECK(found >= 8);
}

TEST_CASE("Every page of the handbook opens with its title, its pictures and whole links",
          "[ui][handbook]")
{
    scenario::application();
    QPointer<Handbook> handbook = new Handbook(folder(), nullptr);
    handbook->show();
    REQUIRE(handbook->pages() == 13);
    auto* titles = handbook->findChild<QListWidget*>();
    auto* text = handbook->findChild<QTextBrowser*>();
    REQUIRE(titles);
    REQUIRE(text);
    for (int page = 0; page < handbook->pages(); ++page) {
        QString const title = titles->item(page)->text();
        CAPTURE(title.toStdString());
        CHECK(titles->currentRow() == page);
        CHECK(text->toPlainText().startsWith(title));
        CHECK(text->toPlainText().size() > 300);
        QTest::keyClick(titles, Qt::Key_Down);
    }
    QRegularExpression const link(QStringLiteral(R"(\]\(([^)]+)\))"));
    for (QString const& file : pages()) {
        auto matches = link.globalMatch(textOf(file));
        while (matches.hasNext()) {
            QString const target = matches.next().captured(1);
            CAPTURE(file.toStdString(), target.toStdString());
            CHECK(QFile::exists(QDir(folder()).filePath(target)));
        }
    }
    QTest::keyClick(handbook, Qt::Key_Escape);
    QTest::qWait(10);
    CHECK(!handbook);
}

TEST_CASE("The handbook's pictures show the program as it is", "[ui][handbook]")
{
    // Drawn anew by the program and seen from afar, in cells of fifty points, since type differs from
    // machine to machine: with other type one cell in a hundred is another grey, in an older
    // window four, on another view thirty.
    QString const program = QString::fromStdString(places::program());
    if (!QFile::exists(program)) {
        WARN("SKIPPED: the program was not built");
        return;
    }
    QTemporaryDir const dir;
    for (char const* language : {"en", "de"})
        for (char const* view : {"workbench", "sheet"}) {
            QString const made = dir.filePath(QStringLiteral("made.png"));
            QString const kept = QDir(folder()).filePath(
                (language == std::string("en") ? QString()
                                               : QString::fromLatin1(language) + '/') +
                QStringLiteral("pictures/%1.png").arg(QLatin1String(view)));
            QProcess run;
            run.start(program,
                      {QStringLiteral("picture"),
                       QString::fromStdString((places::shared() + "/demo/demo.abc")),
                       QStringLiteral("--tune"), QStringLiteral("1"), QStringLiteral("--view"),
                       QLatin1String(view), QStringLiteral("--size"),
                       QStringLiteral("1100x700"), QStringLiteral("--language"),
                       QLatin1String(language), QStringLiteral("-o"), made});
            REQUIRE(run.waitForFinished());
            QImage const whole(made);
            REQUIRE(whole.size() == QImage(kept).size());
            auto const fromAfar = [](QImage const& picture) {
                return picture.scaled(22, 14, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
            };
            QImage const now = fromAfar(whole);
            QImage const then = fromAfar(QImage(kept));
            CAPTURE(language, view, kept.toStdString());
            REQUIRE(!now.isNull());
            int unlike = 0;
            for (int y = 0; y < now.height(); ++y)
                for (int x = 0; x < now.width(); ++x)
                    unlike += std::abs(qGray(now.pixel(x, y)) - qGray(then.pixel(x, y))) > 20;
            CHECK(unlike < now.width() * now.height() * 3 / 100);
        }
}
