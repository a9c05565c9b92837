// Ten thousand tunes in a list: how long until they are on the screen from what is kept, how
// long each key takes while words and first notes are typed, and how long the first reading
// takes.
//   sallow_tunes_bench [tunes]

#include "app/tunereading.h"
#include "core/collection/listing.h"
#include "core/files/textfile.h"
#include "core/files/work/tuneindex.h"
#include "tests/places.h"
#include "ui/theme.h"
#include "ui/tunefinder.h"
#include "ui/tunerows.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QLineEdit>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <filesystem>
#include <iostream>
#include <random>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;

std::string const letters = "CDEFGABcdefgab";

// Invented by chance: a walk over the strings, in books of a hundred.
std::string tuneOf(int number, std::mt19937& random)
{
    constexpr char const* first[] = {"Alder",  "Basket", "Copper", "Dusty", "Eel",    "Furze",
                                     "Gravel", "Hazel",  "Iron",   "Jolly", "Kettle", "Linen"};
    constexpr char const* second[] = {"Lantern", "Mill",    "Weaver", "Causeway", "Ferry",
                                      "Orchard", "Slipway", "Loom",   "Thatcher", "Windlass"};
    constexpr char const* heads[] = {"R:jig\nM:6/8\n", "R:reel\nM:4/4\n", "R:waltz\nM:3/4\n"};
    constexpr int quavers[] = {6, 8, 6};
    constexpr char const* keys[] = {"G", "D", "Ador", "C", "F", "Em", "Amix"};
    auto const any = [&random](auto const& from) { return from[random() % std::size(from)]; };
    std::size_t const kind = random() % 3;
    std::string out = "X:" + std::to_string(number) + "\nT:The " + any(first) + ' ' +
                      any(second) + ' ' + std::to_string(number) + '\n' + heads[kind] +
                      "L:1/8\nK:" + any(keys) + '\n';
    std::size_t at = 4 + random() % 6;
    for (int bar = 0; bar < 16; ++bar) {
        for (int i = 0; i < quavers[kind]; ++i) {
            at = std::clamp<std::size_t>(at + random() % 5, 2, letters.size() + 1) - 2;
            out += letters[at];
        }
        out += bar % 8 == 7 ? "|\n" : "|";
    }
    return out + '\n';
}

double ms(QElapsedTimer const& timer)
{
    return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

struct Times {
    std::vector<double> all;
    void tell(char const* what)
    {
        std::ranges::sort(all);
        std::cout << what << ": half within " << all[all.size() / 2] << " ms, all within "
                  << all.back() << " ms (" << all.size() << ")\n";
    }
};

Times typed(ui::TuneFinder& finder, QString const& name, std::vector<char const*> const& texts)
{
    Times times;
    for (QLineEdit* line : finder.findChildren<QLineEdit*>()) {
        if (line->accessibleName() != name) continue;
        for (char const* text : texts) {
            for (char const* key = text; *key != 0; ++key) {
                QElapsedTimer timer;
                timer.start();
                QTest::keyClick(line, *key);
                QCoreApplication::sendPostedEvents();
                finder.repaint();
                times.all.push_back(ms(timer));
            }
            line->clear();
        }
    }
    return times;
}

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    ui::dress(application, ui::Theme::Light);
    int const tunes = argc > 1 ? std::atoi(argv[1]) : 10'000;
    auto const tables = files::readTables(places::shared());
    if (!tables) return 1;
    QTemporaryDir const folder;
    fs::path const at = folder.path().toStdString();
    std::mt19937 random(7);
    for (int book = 0; book * 100 < tunes; ++book) {
        std::string text;
        for (int i = 1; i <= 100; ++i) text += tuneOf(i, random);
        if (!files::writeWhole(at / ("book" + std::to_string(book) + ".abc"), text)) return 1;
    }

    auto const goesOn = [](app::Gathered const&, int, int) { return true; };
    QElapsedTimer timer;
    timer.start();
    auto const first = app::gathered({at.string()}, {}, *tables, goesOn);
    std::cout << "first reading, on a thread of its own: " << ms(timer) << " ms, "
              << first.files.size() << " files, " << first.troubles.size() << " troubles\n";
    timer.restart();
    auto const again = app::gathered({at.string()}, first.files, *tables, goesOn);
    std::cout << "looking whether anything has changed: " << ms(timer) << " ms, " << again.fresh
              << " files read\n";
    std::string const index = files::tuneIndexText(first.files);
    std::cout << "index: " << static_cast<double>(index.size()) / 1e6 << " MB\n";

    timer.restart();
    auto const known = files::readTuneIndex(index, "index");
    if (!known) return 1;
    ui::TuneFinder finder;
    finder.setRows(collection::rowsOf(*known, {}));
    finder.begin();
    QCoreApplication::processEvents();
    finder.repaint();
    std::cout << "from the index to the list on the screen: " << ms(timer) << " ms, "
              << finder.rows().rowCount() << " tunes\n";

    typed(finder, "Search", {"the copper", "jig ador", "weaver 42", "x"})
        .tell("a key of a word");
    typed(finder, "First notes", {"gabdgedb", "1 2 3 5 8 6 5", "gfedcbagfedc", "ddeeffgg"})
        .tell("a key of first notes");
    Times played;
    for (int const midi : {67, 69, 71, 74, 79, 76, 74, 71, 69, 71, 74, 76}) {
        QElapsedTimer key;
        key.start();
        finder.play(midi);
        QCoreApplication::sendPostedEvents();
        finder.repaint();
        played.all.push_back(ms(key));
    }
    played.tell("a note played");
    return 0;
}
