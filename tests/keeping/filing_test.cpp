// Opening, saving and going back in the real window, by its actions, dialogs and keys.
#include "window.h"

#include "core/files/textfile.h"
#include "core/files/work/document.h"

#include <QCheckBox>
#include <QImage>
#include <QListWidget>
#include <QMessageBox>
#include <QSpinBox>
#include <QTableView>

using namespace keeping;
namespace fs = std::filesystem;

namespace {

double savedTempo(fs::path const& file)
{
    auto const text = files::readTextFile(file);
    REQUIRE(text);
    auto const work = files::readDocument(*text, keeping::shelf(), "test");
    REQUIRE(work);
    return work->brief.quartersPerMinute.value_or(-1);
}

// As a program that is killed leaves it: without its lock.
void leaveAsKilled(UserFolder const& user)
{
    for (auto const& file : fs::directory_iterator(user.at("unsaved")))
        if (file.path().extension() == ".unsaved")
            fs::copy_file(file.path(), user.at("unsaved") / "killed.unsaved");
}

bool waitForUnsaved(UserFolder const& user)
{
    return QTest::qWaitFor([&] {
        std::error_code none;
        for (auto const& file : fs::directory_iterator(user.at("unsaved"), none))
            if (file.path().extension() == ".unsaved") return true;
        return false;
    });
}

// A tune is saved at 60 crotchets a minute, and then set to 70.
void saveAndGoOn(Window& window, UserFolder const& user, char const* name)
{
    window.open(user.write("a.abc", keeping::tuneText()));
    window.setTempo(60);
    saveAs(window, user.at(name));
    window.setTempo(70);
}

} // namespace

TEST_CASE("Work that was not saved when the program stopped is offered and opened", "[keeping]")
{
    UserFolder const user;
    fs::path const tune = user.write("tunes/a.abc", keeping::tuneText());
    {
        Window window;
        window.open(tune);
        window.setTempo(63);
        REQUIRE(waitForUnsaved(user));
        leaveAsKilled(user);
        window.session.undoStack().setClean();
    }
    Window window;
    QString offered;
    answerNext([&](QWidget* dialog) {
        offered = dialog->findChild<QListWidget*>()->item(0)->text();
        click(dialog, "Open");
    });
    CHECK(window.filing.offerUnsaved());
    CHECK(offered.contains("The Sluice Lantern"));
    CHECK(offered.contains("today at"));
    CHECK(offered.contains("tempo")); // what would be lost
    REQUIRE(window.session.isOpen());
    CHECK(window.session.brief().quartersPerMinute == 63);
    CHECK(window.workbench.isWindowModified());
    CHECK_FALSE(fs::exists(user.at("unsaved/killed.unsaved"))); // kept by this window now
    CHECK(waitForUnsaved(user));
    saveAs(window, user.at("tunes/a.sallow"));
    CHECK(savedTempo(user.at("tunes/a.sallow")) == 63);
    CHECK_FALSE(window.workbench.isWindowModified());
}

TEST_CASE("Undo goes back across a save, and the saved file stays as it was saved", "[keeping]")
{
    UserFolder const user;
    Window window;
    saveAndGoOn(window, user, "a.sallow");
    window.actions().save->trigger();
    CHECK(savedTempo(user.at("a.sallow")) == 70);
    window.actions().undo->trigger();
    window.actions().undo->trigger();
    CHECK_FALSE(window.session.brief().quartersPerMinute);
    CHECK(window.workbench.isWindowModified());
    CHECK(savedTempo(user.at("a.sallow")) == 70);
    window.actions().redo->trigger();
    window.actions().redo->trigger();
    CHECK_FALSE(window.workbench.isWindowModified());
}

TEST_CASE("An earlier version comes back as one step that undo takes back", "[keeping]")
{
    UserFolder const user;
    Window window;
    window.open(user.write("a.abc", keeping::tuneText()));
    CHECK_FALSE(window.actions().goBack->isEnabled());
    for (double tempo : {60.0, 70.0, 80.0}) {
        window.setTempo(tempo);
        saveAs(window, user.at("a.sallow"));
        fs::copy_file(user.at("a.sallow"), user.at("copy.sallow"),
                      fs::copy_options::overwrite_existing);
        fs::remove(user.at("a.sallow")); // or the file dialog asks before it replaces it
    }
    fs::copy_file(user.at("copy.sallow"), user.at("a.sallow"));
    answerNext([&](QWidget* dialog) {
        auto* const list = dialog->findChild<QListWidget*>();
        REQUIRE(list->count() == 3);
        QTest::keyClick(list, Qt::Key_Down);
        QTest::keyClick(list, Qt::Key_Down);
        click(dialog, "Go back");
    });
    window.actions().goBack->trigger();
    CHECK(window.session.brief().quartersPerMinute == 60);
    CHECK(window.workbench.isWindowModified());
    window.actions().undo->trigger();
    CHECK(window.session.brief().quartersPerMinute == 80);
}

TEST_CASE("Changes that are given up stay among the versions", "[keeping]")
{
    UserFolder const user;
    fs::path const first = user.write("a.abc", keeping::tuneText());
    Window window;
    window.open(first);
    window.setTempo(61);
    answerNext([](QWidget* dialog) { click(dialog, "Discard"); });
    window.open(first);
    CHECK_FALSE(window.session.brief().quartersPerMinute);
    REQUIRE(window.actions().goBack->isEnabled());
    answerNext([](QWidget* dialog) { click(dialog, "Go back"); });
    window.actions().goBack->trigger();
    CHECK(window.session.brief().quartersPerMinute == 61);
}

TEST_CASE("A file that another program has changed is not replaced unasked", "[keeping]")
{
    UserFolder const user;
    Window window;
    saveAndGoOn(window, user, "a.sallow");
    user.write("a.sallow", files::documentText(keeping::workOf(123), keeping::shelf()));
    CHECK(QTest::qWaitFor([&] { return window.told().contains("another program"); }));
    answerNext([](QWidget* dialog) { click(dialog, "Cancel"); });
    window.actions().save->trigger();
    CHECK(savedTempo(user.at("a.sallow")) == 123);
    CHECK(window.workbench.isWindowModified());
    answerNext([](QWidget* dialog) { click(dialog, "Replace"); });
    window.actions().save->trigger();
    CHECK(savedTempo(user.at("a.sallow")) == 70);
    // What the other program wrote is still there to go back to.
    answerNext([](QWidget* dialog) {
        QTest::keyClick(dialog->findChild<QListWidget*>(), Qt::Key_Down);
        click(dialog, "Go back");
    });
    window.actions().goBack->trigger();
    CHECK(window.session.brief().quartersPerMinute == 123);
}

TEST_CASE("A disk that is read-only, gone or full leads to saving elsewhere", "[keeping]")
{
    UserFolder const user;
    Window window;
    fs::create_directories(user.at("stick"));
    saveAndGoOn(window, user, "stick/a.sallow");

    QString words;
    auto const readThenCancel = [&words](QWidget* dialog) {
        words = qobject_cast<QMessageBox*>(dialog)->text();
        click(dialog, "Cancel");
    };
    fs::permissions(user.at("stick/a.sallow"), fs::perms::owner_read);
    answerNext(readThenCancel);
    window.actions().save->trigger();
    CHECK(words.contains("read-only"));
    CHECK(window.workbench.isWindowModified());

    fs::remove_all(user.at("stick"));
    answerNext(readThenCancel);
    window.actions().save->trigger();
    CHECK(words.contains("not there"));

    answerNext([&](QWidget* dialog) {
        answerNext([&](QWidget* next) { typeName(next, user.at("b.sallow")); });
        click(dialog, "Save as…");
    });
    window.actions().save->trigger();
    CHECK(savedTempo(user.at("b.sallow")) == 70);
    CHECK_FALSE(window.workbench.isWindowModified());

    if (!fs::exists("/dev/full")) return;
    window.setTempo(75);
    fs::remove(user.at("b.sallow"));
    fs::create_symlink("/dev/full", user.at("b.sallow"));
    answerNext(readThenCancel);
    window.actions().save->trigger();
    CHECK(words.contains("full"));
    CHECK(window.workbench.isWindowModified());
}

TEST_CASE("A file that is open in another window opens as a copy", "[keeping]")
{
    UserFolder const user;
    fs::path const file =
        user.write("a.sallow", files::documentText(keeping::workOf(66), keeping::shelf()));
    Window first;
    first.open(file);
    Window second;
    second.open(file);
    CHECK(second.told().contains("another window"));
    second.setTempo(77);
    // Save asks for a name; that of the first window's file is refused.
    answerNext([&](QWidget* dialog) { typeName(dialog, user.at("b.sallow")); });
    second.actions().save->trigger();
    CHECK(savedTempo(file) == 66);
    CHECK(savedTempo(user.at("b.sallow")) == 77);
}

TEST_CASE("A tunebook asks which tune before any is arranged, and one key opens the next",
          "[keeping]")
{
    UserFolder const user;
    std::string third = keeping::tuneText();
    third.replace(third.find("X:4"), 3, "X:6");
    third.replace(third.find("The Sluice Lantern"), 18, "The Third Lock");
    fs::path const book =
        user.write("book.abc", keeping::tuneText() + "\nX:5\nT:No Key At All\nGBd|\n\n" + third);
    Window window;
    answerNext([](QWidget* dialog) {
        auto* const list = dialog->findChild<QTableView*>();
        REQUIRE(list);
        CHECK(list->model()->rowCount() == 3);
        CHECK(list->model()->index(1, 6).data().toString() == "cannot be read");
        click(dialog, "Cancel");
    });
    window.filing.open(QString::fromStdString(book.string()));
    CHECK_FALSE(window.session.isOpen());
    answerNext([](QWidget* dialog) { QTest::keyClick(dialog, Qt::Key_Return); });
    window.open(book);
    CHECK(window.session.brief().tune.title == "The Sluice Lantern");
    // The tune between cannot be read: it is passed over, and said.
    QApplication::setActiveWindow(&window.workbench);
    QTest::keyClick(&window.workbench, Qt::Key_N);
    CHECK(window.session.brief().tune.title == "The Third Lock");
    CHECK(window.told().contains("Passed over"));
    QTest::keyClick(&window.workbench, Qt::Key_N);
    CHECK(window.told().contains("last tune"));
    QTest::keyClick(&window.workbench, Qt::Key_N, Qt::ShiftModifier);
    CHECK(window.session.brief().tune.title == "The Sluice Lantern");
}

TEST_CASE("PNG is exported as a file a page at the resolution that is asked for",
          "[keeping][png]")
{
    UserFolder const user;
    Window window;
    std::string text = "X:1\nT:Long\nM:4/4\nL:1/8\nK:G\n";
    for (int bar = 0; bar < 64; ++bar) text += "\"G\"GABc \"D\"dcBA|\n";
    user.write("long.abc", text);
    window.open(user.at("long.abc"));
    auto const exported = [&](std::function<void(QWidget*)> const& answer) {
        answerNext([&](QWidget* dialog) {
            answerNext(answer);
            typeName(dialog, user.at("long.png"));
        });
        window.actions().exportTo->trigger();
    };
    exported([](QWidget* dialog) {
        dialog->findChild<QSpinBox*>()->setValue(60);
        click(dialog, "Export");
    });
    CHECK_FALSE(fs::exists(user.at("long.png")));
    REQUIRE(fs::exists(user.at("long-1.png")));
    REQUIRE(fs::exists(user.at("long-2.png")));
    QImage const page(QString::fromStdString(user.at("long-2.png").string()));
    CHECK(std::abs(page.width() - 210 / 25.4 * 60) <= 1);
    CHECK(window.told().contains("long-1.png"));
    exported([](QWidget* dialog) { click(dialog, "Cancel"); });
    CHECK_FALSE(fs::exists(user.at("long.png")));
    exported([](QWidget* dialog) {
        QTest::keyClick(dialog->findChild<QCheckBox*>(), Qt::Key_Space);
        click(dialog, "Export");
    });
    QImage const all(QString::fromStdString(user.at("long.png").string()));
    CHECK(all.height() > 2 * 297 / 25.4 * 150);
}

TEST_CASE("Any levels are exported together, a page each", "[keeping][levels]")
{
    UserFolder const user;
    Window window;
    user.write("a.abc", tuneText());
    window.open(user.at("a.abc"));
    answerNext([&](QWidget* dialog) {
        auto const boxes = dialog->findChildren<QCheckBox*>();
        REQUIRE(boxes.size() == 5);
        for (QCheckBox* box : boxes) QTest::keyClick(box, Qt::Key_Space);
        for (QPushButton* button : dialog->findChildren<QPushButton*>())
            if (button->text() == "Export…") CHECK_FALSE(button->isEnabled());
        for (int level : {2, 4}) QTest::keyClick(boxes[level - 1], Qt::Key_Space);
        answerNext([&](QWidget* next) {
            answerNext([](QWidget* how) { click(how, "Export"); });
            typeName(next, user.at("levels.png"));
        });
        click(dialog, "Export…");
    });
    window.actions().levels->trigger();
    CHECK(fs::exists(user.at("levels-1.png")));
    CHECK(fs::exists(user.at("levels-2.png")));
    CHECK_FALSE(fs::exists(user.at("levels-3.png")));
}
