// What is there at the next start: every window here is one start of the program.
#include "window.h"

#include "core/files/textfile.h"
#include "core/files/work/document.h"

#include "ui/transport.h"
#include "ui/tunegrid.h"

#include <QMenu>
#include <QSplitter>

using namespace keeping;
namespace fs = std::filesystem;

namespace {

QAction* entry(QMenu* menu, QString const& beginning)
{
    emit menu->aboutToShow();
    for (QAction* action : menu->actions())
        if (action->text().remove('&').startsWith(beginning)) return action;
    FAIL("no entry " << beginning.toStdString());
    return nullptr;
}

void addPupil(Window& window, QString const& name)
{
    answerNext([&](QWidget* dialog) {
        QTest::keyClicks(dialog->findChild<QLineEdit*>(), name);
        QTest::keyClick(dialog, Qt::Key_Return);
    });
    entry(window.actions().pupil, "Add a pupil")->trigger();
}

} // namespace

TEST_CASE("Harp, hand, level, manner and key habit are there at the next start", "[keeping]")
{
    UserFolder const user;
    auto const& tables = keeping::shelf();
    {
        Window window;
        REQUIRE(window.session.setHarp(*files::harpFrom(tables, "floor36", "C", "full")));
        REQUIRE(window.session.setHand(*files::handFrom(tables, "large")));
        REQUIRE(window.session.setLevel(*files::levelFrom(tables, 4)));
        REQUIRE(window.session.setStyle(*files::styleFrom(tables, "plain")));
        REQUIRE(window.session.setKey(proposal::AsWritten{}));
        // No orderly end: what is chosen is kept when it is chosen.
    }
    Window window;
    proposal::Brief const& brief = window.session.brief();
    CHECK(brief.harp == *files::harpFrom(tables, "floor36", "C", "full"));
    CHECK(brief.hand.id == "large");
    CHECK(brief.level.number == 4);
    CHECK(brief.weights.style == "plain");
    CHECK(brief.key == proposal::KeyWish(proposal::AsWritten{}));
}

TEST_CASE("A saved arrangement brings its own harp and leaves hers for the next tune", "[keeping]")
{
    UserFolder const user;
    fs::path const saved =
        user.write("a.sallow", files::documentText(keeping::workOf(66), keeping::shelf()));
    Window window;
    REQUIRE(window.session.setHarp(*files::harpFrom(keeping::shelf(), "floor36")));
    window.open(saved);
    CHECK(window.session.brief().harp.id() == "lap26");
    window.open(user.write("b.abc", keeping::tuneText()));
    CHECK(window.session.brief().harp.id() == "floor36");
}

TEST_CASE("A harp that is tried and undone is not the next tune's", "[keeping]")
{
    UserFolder const user;
    Window window;
    window.open(user.write("a.abc", keeping::tuneText()));
    std::string const before = window.session.standing().harp.id();
    REQUIRE(window.session.setHarp(*files::harpFrom(keeping::shelf(), "floor36")));
    CHECK(window.session.standing().harp.id() == "floor36");
    window.actions().undo->trigger();
    CHECK(window.session.standing().harp.id() == before);
}

TEST_CASE("Files, their folder and the place in each tune are remembered", "[keeping]")
{
    UserFolder const user;
    fs::path const tune = user.write("tunes/a.abc", keeping::tuneText());
    {
        Window window;
        window.open(tune);
        window.session.select(2);
        window.open(user.write("tunes/b.abc", keeping::tuneText()));
    }
    Window window;
    CHECK(window.filing.folder() == QString::fromStdString(user.at("tunes").string()));
    REQUIRE(window.actions().recent->isEnabled());
    entry(window.actions().recent, "2  a.abc")->trigger();
    REQUIRE(window.session.isOpen());
    CHECK(window.session.selected() == 2);
}

TEST_CASE("Window and panes are as they were left", "[keeping]")
{
    UserFolder const user;
    QList<QList<int>> left;
    {
        Window window;
        window.workbench.resize(1100, 760);
        for (QSplitter* splitter : window.workbench.findChildren<QSplitter*>()) {
            QList<int> sizes = splitter->sizes();
            if (sizes.size() > 1) sizes[0] -= 60, sizes[1] += 60;
            splitter->setSizes(sizes);
            left << splitter->sizes();
        }
        window.workbench.setView(ui::Workbench::View::Sheet);
        window.remembering.keepNow();
    }
    Window window;
    window.preferences.applyTo(window.workbench);
    CHECK(window.workbench.size() == QSize(1100, 760));
    CHECK(window.actions().sheet->isChecked());
    QList<QList<int>> now;
    for (QSplitter* splitter : window.workbench.findChildren<QSplitter*>())
        now << splitter->sizes();
    CHECK(now == left);
}

TEST_CASE("The same tune for another pupil is one step, and is saved under another name",
          "[keeping]")
{
    UserFolder const user;
    auto const& tables = keeping::shelf();
    {
        Window window;
        REQUIRE(window.session.setHarp(*files::harpFrom(tables, "floor36")));
        REQUIRE(window.session.setLevel(*files::levelFrom(tables, 1)));
        addPupil(window, "Mira");
        REQUIRE(window.session.setHarp(*files::harpFrom(tables, "floor34")));
        REQUIRE(window.session.setLevel(*files::levelFrom(tables, 3)));
        window.open(user.write("a.abc", keeping::tuneText()));
        saveAs(window, user.at("a.sallow"));
        entry(window.actions().pupil, "Mira")->trigger();
        CHECK(window.session.brief().harp.id() == "floor36");
        CHECK(window.session.brief().level.number == 1);
        CHECK(window.session.undoStack().count() == 1);
        QString offered;
        answerNext([&](QWidget* dialog) {
            offered = dialog->findChild<QLineEdit*>("fileNameEdit")->text();
            typeName(dialog, user.at("b.sallow"));
        });
        window.actions().save->trigger();
        CHECK(offered.contains("Mira"));
        auto const first =
            files::readDocument(*files::readTextFile(user.at("a.sallow")), tables, "a");
        REQUIRE(first);
        CHECK(first->brief.harp.id() == "floor34"); // not written over
        // Papers name the pupil when that is asked for.
        entry(window.actions().pupil, "Name the pupil")->trigger();
        entry(window.actions().pupil, "Yourself")->trigger();
        CHECK(window.session.brief().harp.id() == "floor34");
        CHECK(window.session.brief().level.number == 3);
    }
    Window window; // the list is there, and her own harp is hers
    CHECK(window.players.pupils().size() == 1);
    CHECK(window.session.standing().harp.id() == "floor34");
}

TEST_CASE("What is set for practice is there again, the tempo in its tune alone", "[keeping]")
{
    UserFolder const user;
    fs::path const first = user.write("tunes/a.abc", keeping::tuneText());
    std::string other = keeping::tuneText();
    other.replace(other.find("T:") + 2, 3, "Old");
    fs::path const second = user.write("tunes/b.abc", other);
    {
        Window window;
        window.open(first);
        ui::Transport& transport = *window.workbench.transport();
        for (int i = 0; i < 4; ++i)
            QTest::keyClick(window.workbench.grid(), Qt::Key_Down, Qt::ControlModifier);
        window.actions().click->trigger();
        window.actions().countIn->trigger();
        window.actions().left->trigger();
        REQUIRE(transport.tempoPercent() < 100);
        REQUIRE_FALSE(transport.hearsLeft());
        window.remembering.keepNow();
    }
    Window window;
    ui::Transport& transport = *window.workbench.transport();
    CHECK(transport.practice().clicks);
    CHECK(transport.countsIn());
    CHECK(transport.tempoPercent() == 100);
    window.open(second);
    CHECK(transport.tempoPercent() == 100);
    CHECK(transport.practice().clicks);
    window.open(first);
    CHECK(transport.tempoPercent() < 100);
    CHECK_FALSE(transport.hearsLeft());
    CHECK(window.actions().click->isChecked());
}

TEST_CASE("What is unreadable among the settings for practice is passed over", "[keeping]")
{
    UserFolder const user;
    Window window;
    ui::Transport& transport = *window.workbench.transport();
    QByteArray const before = transport.settings();
    for (char const* damaged : {"", "{", "[]", "{\"percent\":\"x\"}", "{\"every\":{}}", "\xff"}) {
        transport.restoreSettings(damaged);
        CHECK(transport.settings() == before);
    }
    transport.restoreSettings(R"({"percent":9999,"balance":-500,"rollGapMs":7,"from":1})");
    CHECK(transport.tempoPercent() == 150);
    CHECK(transport.practice().balance == -100);
    CHECK(transport.practice().rollGapMs >= 20);
    CHECK(transport.practice().from == 25);
}

TEST_CASE("The sound of the harp and its MIDI devices are there at the next start", "[keeping]")
{
    UserFolder const user;
    ui::HarpSound const sound{"/fonts/a.sf2", 432, "meantone", 30, "lap harp", "box"};
    {
        app::Preferences preferences;
        CHECK(preferences.harpSound() == ui::HarpSound{});
        preferences.keepHarpSound(sound);
    }
    app::Preferences const preferences;
    CHECK(preferences.harpSound() == sound);
}

TEST_CASE("Size, helps and placing brackets of the sheet are there at the next start",
          "[keeping]")
{
    for (sheet::Placings placings :
         {sheet::Placings::All, sheet::Placings::Helpful, sheet::Placings::None}) {
        UserFolder const user;
        ui::Reading const reading{sheet::largeStaffMm, {true, false, true}, placings};
        {
            Window window;
            window.workbench.setReading(reading);
            window.preferences.keepFrom(window.workbench);
        }
        Window window;
        CHECK(window.workbench.reading() == ui::Reading{});
        window.preferences.applyTo(window.workbench);
        CHECK(window.workbench.reading() == reading);
    }
}
