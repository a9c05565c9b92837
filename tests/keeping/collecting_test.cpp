// The list of the harper's tunes in the real window: folders are added, tunes found and opened
// by keys, files change and go away, and what is kept of it is damaged.
#include "window.h"

#include "app/collecting.h"
#include "core/files/textfile.h"
#include "ui/tunefinder.h"
#include "ui/tunefolders.h"
#include "ui/tunerows.h"

#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QSignalSpy>
#include <QTableView>

using namespace keeping;
namespace fs = std::filesystem;

namespace {

std::string const reels = "X:1\nT:The Basket Maker\nR:reel\nM:4/4\nL:1/8\nK:G\n"
                          "\"G\"GABd g2fg|edBd e2dB|\"D\"A2FA dAFA|G2BG G4|]\n\n"
                          "X:1\nT:Alder Bank\nR:reel\nM:4/4\nL:1/8\nK:D\n"
                          "F2AF dFAF|E2GE BEGE|F2AF dFAF|EDEF D4|]\n\n"
                          "X:2\nT:No Key At All\nM:4/4\n";

struct List {
    Window window;
    app::Collecting collecting;
    QSignalSpy through{&collecting, &app::Collecting::readThrough};

    explicit List(UserFolder const& user)
        : collecting(window.workbench, window.filing, shelf(), user.at("."))
    {}
    ui::TuneFinder& open()
    {
        qsizetype const before = through.count();
        window.actions().tunes->trigger();
        REQUIRE(collecting.finder());
        REQUIRE(QTest::qWaitForWindowExposed(collecting.finder()));
        REQUIRE(QTest::qWaitFor([&] { return through.count() > before; }, 10000));
        return *collecting.finder();
    }
    ui::TuneFinder& withFolder(fs::path const& folder)
    {
        ui::TuneFinder& finder = open();
        qsizetype const before = through.count();
        emit finder.folderAdded(QString::fromStdString(folder.string()));
        REQUIRE(QTest::qWaitFor([&] { return through.count() > before; }, 10000));
        return finder;
    }
    int freshFiles() const { return through.last().first().toInt(); }
};

QLineEdit* line(ui::TuneFinder& finder, QString const& name)
{
    for (QLineEdit* each : finder.findChildren<QLineEdit*>())
        if (each->accessibleName() == name) return each;
    FAIL("no line " << name.toStdString());
    return nullptr;
}

QStringList titles(ui::TuneFinder const& finder)
{
    QStringList out;
    for (int row = 0; row < finder.rows().rowCount(); ++row)
        out << QString::fromStdString(finder.rows().at(row).tune.title);
    return out;
}

bool says(ui::TuneFinder& finder, QString const& words)
{
    for (QLabel* label : finder.findChildren<QLabel*>())
        if (label->text().contains(words)) return true;
    return false;
}

} // namespace

TEST_CASE("Tunes of a folder and those below it are listed, and one is opened by keys alone",
          "[keeping][collecting]")
{
    UserFolder const user;
    user.write("tunes/reels.abc", reels);
    user.write("tunes/waltzes/lantern.abc", keeping::tuneText());
    user.write("tunes/waltzes/readme.txt", "These are waltzes.\n");
    user.write("tunes/.hidden/x.abc", keeping::tuneText());
    List list(user);
    ui::TuneFinder& finder = list.withFolder(user.at("tunes"));
    CHECK(titles(finder) ==
          QStringList{"The Basket Maker", "Alder Bank", "No Key At All", "The Sluice Lantern"});
    CHECK(list.freshFiles() == 3);
    // What cannot be read is named, with its line.
    CHECK(says(finder, "reels.abc"));
    QLineEdit* const words = line(finder, "Search");
    words->setFocus();
    QTest::keyClicks(words, "alder");
    CHECK(titles(finder) == QStringList{"Alder Bank"});
    QTest::keyClick(words, Qt::Key_Return);
    REQUIRE(list.window.session.isOpen());
    // Its number comes twice in the book; the right one is open.
    CHECK(list.window.session.brief().tune.title == "Alder Bank");
    CHECK_FALSE(finder.isVisible());
    // And is said to have been opened.
    ui::TuneFinder& again = list.open();
    line(again, "Search")->clear();
    CHECK(list.freshFiles() == 0);
    CHECK(again.rows().at(0).opened.empty());
    CHECK_FALSE(again.rows().at(1).opened.empty());
}

TEST_CASE("First notes are typed or played, in any key", "[keeping][collecting]")
{
    UserFolder const user;
    user.write("tunes/reels.abc", reels);
    user.write("tunes/lantern.abc", keeping::tuneText());
    List list(user);
    ui::TuneFinder& finder = list.withFolder(user.at("tunes"));
    QLineEdit* const notes = line(finder, "First notes");
    QTest::keyClicks(notes, "defad");
    CHECK(titles(finder) == QStringList{"The Basket Maker"});
    notes->clear();
    QTest::keyClicks(notes, "1 3 5");
    CHECK(titles(finder).first() == "The Sluice Lantern");
    QTest::keyClicks(notes, "x");
    CHECK(says(finder, "letters from a to g"));
    notes->clear();
    finder.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&finder));
    for (int const midi : {60, 62, 64, 67, 72}) list.collecting.hear(midi);
    CHECK(titles(finder) == QStringList{"The Basket Maker"});
    CHECK(notes->text() == "C D E G C");
    QTest::keyClicks(notes, " a f"); // what is typed counts again, and is another tune
    CHECK(titles(finder).isEmpty());
    notes->clear();
    CHECK(titles(finder).size() == 4);
}

TEST_CASE("Only what has changed is read again, and what is gone leaves the list",
          "[keeping][collecting]")
{
    UserFolder const user;
    fs::path const book = user.write("tunes/reels.abc", reels);
    fs::path const lantern = user.write("tunes/lantern.abc", keeping::tuneText());
    {
        List list(user);
        list.withFolder(user.at("tunes"));
        CHECK(list.freshFiles() == 2);
    }
    List list(user); // another start
    ui::TuneFinder& finder = list.open();
    CHECK(list.freshFiles() == 0);
    CHECK(finder.rows().rowCount() == 4);
    std::string longer = keeping::tuneText();
    longer.replace(longer.find("Sluice"), 6, "Copper");
    user.write("tunes/lantern.abc", longer + "\n");
    list.open();
    CHECK(list.freshFiles() == 1);
    CHECK(titles(finder).contains("The Copper Lantern"));
    fs::remove(book);
    list.open();
    CHECK(list.freshFiles() == 0);
    CHECK(titles(finder) == QStringList{"The Copper Lantern"});
    // A tune that goes away behind the list's back is told, and opens nothing.
    fs::remove(lantern);
    finder.findChild<QTableView*>()->setFocus();
    line(finder, "Search")->setFocus();
    QTest::keyClick(line(finder, "Search"), Qt::Key_Return);
    CHECK_FALSE(list.window.session.isOpen());
}

TEST_CASE("A folder that goes away is told, and known again when it is back",
          "[keeping][collecting]")
{
    UserFolder const user;
    user.write("stick/reels.abc", reels);
    user.write("tunes/lantern.abc", keeping::tuneText());
    List list(user);
    list.withFolder(user.at("stick"));
    ui::TuneFinder& finder = list.withFolder(user.at("tunes"));
    CHECK(finder.rows().rowCount() == 4);
    fs::rename(user.at("stick"), user.at("elsewhere"));
    list.open();
    CHECK(titles(finder) == QStringList{"The Sluice Lantern"});
    CHECK(says(finder, "not there now"));
    fs::rename(user.at("elsewhere"), user.at("stick"));
    list.open();
    CHECK(list.freshFiles() == 0);
    CHECK(finder.rows().rowCount() == 4);
    // Taken out of the list it is forgotten, and its files stay.
    finder.openFolders();
    auto* const folders = finder.findChild<ui::TuneFolders*>();
    REQUIRE(folders);
    CHECK(folders->findChild<QPlainTextEdit*>()->toPlainText().contains("reels.abc"));
    qsizetype const before = list.through.count();
    folders->findChild<QListWidget*>()->setCurrentRow(0);
    click(folders, "Take out of the list");
    REQUIRE(QTest::qWaitFor([&] { return list.through.count() > before; }, 10000));
    CHECK(titles(finder) == QStringList{"The Sluice Lantern"});
    CHECK(fs::exists(user.at("stick/reels.abc")));
}

TEST_CASE("A damaged list is told and made again, and folders that cannot be read are kept as "
          "they are",
          "[keeping][collecting]")
{
    UserFolder const user;
    user.write("tunes/lantern.abc", keeping::tuneText());
    {
        List list(user);
        list.withFolder(user.at("tunes"));
    }
    SECTION("the index")
    {
        std::string text = *files::readTextFile(user.at("tunes.index"));
        text[text.size() / 2] = '\t';
        user.write("tunes.index", text.substr(0, text.size() - 3));
        List list(user);
        ui::TuneFinder& finder = list.open();
        CHECK(list.window.told().contains("damaged"));
        CHECK(list.freshFiles() == 1);
        CHECK(titles(finder) == QStringList{"The Sluice Lantern"});
    }
    SECTION("the folders")
    {
        user.write("tunes.json", "{ half");
        List list(user);
        CHECK(list.window.told().contains("tunes.json"));
        list.withFolder(user.at("tunes"));
        CHECK(*files::readTextFile(user.at("tunes.json")) == "{ half");
    }
}

TEST_CASE("A tune that was saved as an arrangement is said to be arranged",
          "[keeping][collecting]")
{
    UserFolder const user;
    user.write("tunes/reels.abc", reels);
    List list(user);
    ui::TuneFinder& finder = list.withFolder(user.at("tunes"));
    QLineEdit* const words = line(finder, "Search");
    QTest::keyClicks(words, "basket");
    QTest::keyClick(words, Qt::Key_Return);
    REQUIRE(list.window.session.isOpen());
    saveAs(list.window, user.at("work.sallow")); // in no folder of the list
    list.open();
    words->clear();
    CHECK(finder.rows().at(0).arranged.ends_with("work.sallow"));
    CHECK(finder.rows().at(1).arranged.empty());
    QComboBox* arranged = nullptr;
    for (QComboBox* box : finder.findChildren<QComboBox*>())
        if (box->accessibleName() == "Arranged") arranged = box;
    REQUIRE(arranged);
    arranged->setFocus();
    QTest::keyClick(arranged, Qt::Key_Down);
    CHECK(titles(finder) == QStringList{"The Basket Maker"});
    QTest::keyClick(arranged, Qt::Key_Down);
    CHECK(titles(finder) == QStringList{"Alder Bank", "No Key At All"});
}
