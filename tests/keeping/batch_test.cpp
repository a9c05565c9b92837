// A folder of tunes arranged from the real window, by the real program beside it.
#include "window.h"

#include "app/batchrun.h"
#include "app/language.h"
#include "core/files/textfile.h"
#include "core/files/work/document.h"
#include "tests/places.h"
#include "ui/batchdialog.h"

#include <QCheckBox>
#include <QLabel>
#include <QListWidget>
#include <QProgressBar>

using namespace keeping;
namespace fs = std::filesystem;

namespace {

constexpr int longestWait = 120000; // ms

char const* const plainAndSnag = R"(X:1
T:Plain
M:4/4
L:1/4
K:G
"G"GABc|"D"dcBA|"G"G4|]

X:2
T:A Flip Too Many
R:jig
M:6/8
L:1/8
Q:3/8=110
K:G
"G"GAB cBA|"D"d^d=d ^c=c^c|"D"d=fd ^f=fd|"G"G3 G3|]
)";

struct Batching {
    UserFolder user;
    Window window;
    app::BatchRun batch{window.desk, QString::fromStdString(places::program())};
    ui::BatchDialog* dialog = nullptr;

    Batching()
    {
        fs::create_directories(user.at("tunes/more"));
        user.write("tunes/a.abc", plainAndSnag);
        user.write("tunes/more/b.mid", "no music");
        window.actions().batch->trigger();
        dialog = window.workbench.findChild<ui::BatchDialog*>();
        REQUIRE(dialog);
        field("Folder of tunes")->setText(QString::fromStdString(user.at("tunes").string()));
        field("Folder for the papers")->setText(QString::fromStdString(papers().string()));
        for (QCheckBox* box : dialog->findChildren<QCheckBox*>()) {
            bool const wanted =
                box->text().contains("Arrangement") || box->text().contains("MIDI");
            if (box->isChecked() != wanted && !box->text().contains("Leave")) box->click();
        }
        CHECK(dialog->kinds() == QStringList{"mid", "sallow"});
    }
    fs::path papers() const { return user.at("papers"); }
    QLineEdit* field(QString const& name) const
    {
        for (QLineEdit* one : dialog->findChildren<QLineEdit*>())
            if (one->accessibleName() == name) return one;
        FAIL("no field " << name.toStdString());
        return nullptr;
    }
    QPushButton* button(QString const& words) const
    {
        for (QPushButton* one : dialog->findChildren<QPushButton*>())
            if (one->text().remove('&') == words) return one;
        return nullptr;
    }
    void run() const
    {
        REQUIRE(button("Start"));
        QTest::mouseClick(button("Start"), Qt::LeftButton);
        REQUIRE(QTest::qWaitFor([this] { return button("Start") != nullptr; }, longestWait));
    }
    QListWidget* troubles() const { return dialog->findChild<QListWidget*>(); }
    QStringList said() const
    {
        QStringList out;
        for (QLabel const* label : dialog->findChildren<QLabel*>()) out << label->text();
        return out;
    }
    int papersMade() const
    {
        int count = 0;
        if (!fs::exists(papers())) return 0;
        for (auto const& entry : fs::recursive_directory_iterator(papers()))
            if (entry.is_regular_file() && entry.path().filename() != ".sallow-batch") ++count;
        return count;
    }
};

} // namespace

TEST_CASE("A folder is arranged from the window, and what is to be checked opens at its bar",
          "[keeping]")
{
    Batching on;
    on.run();
    CHECK(on.papersMade() == 4); // two tunes, two kinds
    int snag = -1;
    int damaged = -1;
    std::string all;
    for (int i = 0; i < on.troubles()->count(); ++i) {
        QString const words = on.troubles()->item(i)->text(); // without the folder's name
        all += words.toStdString() + '\n';
        if (words.startsWith("a.abc, X:2, ") && words.contains("Bar 3")) snag = i;
        if (words.startsWith("more/b.mid")) damaged = i;
    }
    CAPTURE(all);
    REQUIRE(snag >= 0);
    REQUIRE(damaged >= 0);
    CHECK(on.said().contains(
        QString("Done, with %1 things to check.").arg(on.troubles()->count())));

    on.troubles()->setCurrentRow(snag);
    on.troubles()->setFocus();
    emit on.troubles()->itemActivated(on.troubles()->item(snag));
    REQUIRE(on.window.session.isOpen());
    auto const& arrangement = on.window.session.arrangement();
    CHECK(arrangement.tune.title == "A Flip Too Many");
    REQUIRE(on.window.session.selected());
    tune::BarIndex const bar =
        arrangement.positions[*on.window.session.selected()].position.bar;
    CHECK(arrangement.tune.bars[bar].number == 3);

    emit on.troubles()->itemActivated(on.troubles()->item(damaged));
    CHECK(on.window.told().contains("b.mid"));
}

TEST_CASE("A folder without anything to check says so, and is not made twice", "[keeping]")
{
    Batching on;
    fs::remove(on.user.at("tunes/more/b.mid"));
    on.user.write("tunes/a.abc", keeping::tuneText());
    on.run();
    CHECK(on.troubles()->count() == 0);
    CHECK(on.papersMade() == 2);
    CHECK(on.said().filter("Done. The papers are in").size() == 1);
    auto const made = [&] {
        std::vector<fs::file_time_type> times;
        for (auto const& entry : fs::recursive_directory_iterator(on.papers()))
            if (entry.is_regular_file()) times.push_back(fs::last_write_time(entry));
        return times;
    };
    auto const before = made();
    for (QCheckBox* box : on.dialog->findChildren<QCheckBox*>())
        if (box->text().contains("Leave") && !box->isChecked()) box->click();
    on.run();
    CHECK(made() == before);
}

TEST_CASE("A folder that is cancelled leaves whole papers, and is gone on with", "[keeping]")
{
    Batching on;
    fs::remove_all(on.user.at("tunes/more"));
    std::string many;
    for (int i = 1; i <= 60; ++i)
        many += "X:" + std::to_string(i) + "\nT:Tune " + std::to_string(i) +
                "\nM:4/4\nL:1/4\nK:D\n\"D\"dfaf|\"G\"gbgf|\"A\"egec|\"D\"d4|]\n\n";
    on.user.write("tunes/a.abc", many);
    QTest::mouseClick(on.button("Start"), Qt::LeftButton);
    REQUIRE(QTest::qWaitFor([&] { return on.papersMade() > 2; }, longestWait));
    QPushButton* const cancel = on.button("Cancel");
    REQUIRE(cancel);
    QTest::mouseClick(cancel, Qt::LeftButton);
    REQUIRE(QTest::qWaitFor([&] { return on.button("Start") != nullptr; }, longestWait));
    CHECK(on.said().filter("Stopped.").size() == 1);
    CHECK(on.papersMade() < 120);
    for (auto const& entry : fs::recursive_directory_iterator(on.papers())) {
        CAPTURE(entry.path().string());
        if (entry.path().extension() != ".sallow") continue;
        auto const text = files::readTextFile(entry.path().string());
        REQUIRE(text);
        CHECK(files::readDocument(*text, shelf(), entry.path().string()));
    }
    for (QCheckBox* box : on.dialog->findChildren<QCheckBox*>())
        if (box->text().contains("Leave") && !box->isChecked()) box->click();
    on.run();
    CHECK(on.papersMade() == 120);
}

TEST_CASE("What a batch says is understood in the language of the window", "[keeping][batch]")
{
    REQUIRE(app::speak("de"));
    auto const progress = app::batchLine("sallow: 12 von 40 Stücken");
    auto const trouble = app::batchLine("sallow: Hinweis: a.abc, X:2: Takte 5 und 7 sind eng");
    auto const unread = app::batchLine("sallow: b.abc, Zeile 3: dies ist keine Note");
    auto const summary = app::batchLine("sallow: 3 Stücke: 3 gespeichert");
    REQUIRE(app::speak("en"));
    REQUIRE(progress);
    CHECK(progress->done == 12);
    CHECK(progress->all == 40);
    REQUIRE(trouble);
    CHECK(trouble->words == QStringLiteral("a.abc, X:2: Takte 5 und 7 sind eng"));
    CHECK(trouble->place.number == 2);
    CHECK(trouble->place.bar == 5);
    REQUIRE(unread);
    CHECK(unread->place.file == QStringLiteral("b.abc"));
    CHECK(!summary);
}
