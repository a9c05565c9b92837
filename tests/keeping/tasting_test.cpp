// What is learned from the shapes that are taken, in the window as the program makes it.
#include "window.h"

#include "app/tasting.h"
#include "core/files/textfile.h"
#include "ui/tastedialog.h"

#include <QCheckBox>
#include <QLabel>
#include <QMessageBox>

using namespace keeping;
namespace fs = std::filesystem;

namespace {

struct Learning {
    Window window;
    app::Tasting tasting{window.workbench, window.session, app::tasteFile()};

    std::size_t kept() const
    {
        auto const text = files::readTextFile(app::tasteFile());
        if (!text) return 0;
        auto const taste = files::readTaste(*text, "taste.json");
        REQUIRE(taste);
        return taste->choices.size();
    }
    // The second best shape at each of so many chords, by the number key.
    void takeSeconds(int chords)
    {
        for (arrange::PositionIndex position = 0; position < chords; ++position) {
            window.session.select(position);
            REQUIRE(window.session.chooseRanked(1));
        }
    }
    template<typename T>
    T* part(QString const& name)
    {
        REQUIRE(tasting.dialog());
        auto* const found = tasting.dialog()->findChild<T*>(name);
        REQUIRE(found);
        return found;
    }
};

} // namespace

TEST_CASE("A shape that is taken is remembered, one that is undone is not", "[keeping]")
{
    UserFolder const user;
    Learning learning;
    learning.window.open(user.write("a.abc", keeping::tuneText()));
    CHECK(learning.kept() == 0);
    learning.takeSeconds(2);
    CHECK(learning.kept() == 2);
    learning.window.actions().undo->trigger();
    CHECK(learning.kept() == 1);
    learning.window.actions().redo->trigger();
    CHECK(learning.kept() == 2);
    learning.window.actions().undo->trigger();
    REQUIRE(learning.window.session.setTempo(60)); // another step in its place
    CHECK(learning.kept() == 1);
    learning.window.actions().undo->trigger();
    CHECK(learning.kept() == 1);

    Learning again; // the next start
    CHECK(again.kept() == 1);
}

TEST_CASE("The dialog tells what was learned, off nothing is noted, forgotten, all is gone",
          "[keeping]")
{
    UserFolder const user;
    Learning learning;
    Window& window = learning.window;
    window.open(user.write("a.abc", keeping::tuneText()));
    window.actions().taste->trigger();
    REQUIRE(learning.tasting.dialog());
    CHECK(learning.tasting.dialog()->isVisible());
    CHECK(learning.part<QLabel>("standing")->text().startsWith("0 choices so far"));
    CHECK_FALSE(learning.part<QPushButton>("forget")->isEnabled());
    learning.takeSeconds(4);
    CHECK(learning.part<QLabel>("standing")->text().startsWith("4 choices so far"));

    QTest::mouseClick(learning.part<QCheckBox>("on"), Qt::LeftButton, {}, QPoint(8, 8));
    CHECK_FALSE(learning.part<QCheckBox>("on")->isChecked());
    window.session.select(4);
    REQUIRE(window.session.chooseRanked(1));
    CHECK(learning.kept() == 4);

    fs::path const copy = user.path() / "copy.json";
    answerNext([&](QWidget* dialog) { typeName(dialog, copy); });
    QTest::mouseClick(learning.part<QPushButton>("save"), Qt::LeftButton);
    CHECK(files::readTaste(*files::readTextFile(copy), "copy.json")->choices.size() == 4);

    answerNext([](QWidget* dialog) { click(dialog, "Forget all"); });
    QTest::mouseClick(learning.part<QPushButton>("forget"), Qt::LeftButton);
    CHECK(learning.kept() == 0);
    CHECK(learning.part<QLabel>("standing")->text().startsWith("0 choices so far"));
}

TEST_CASE("What is learned goes into the next tune, and into the open one when she asks",
          "[keeping]")
{
    UserFolder const user;
    // Someone who does not mind that shapes change, thirty times over.
    files::TasteKept taste;
    proposal::Brief const standing = Window::usual();
    for (int i = 0; i < 30; ++i) {
        learning::Choice choice{standing.weights.style,
                                standing.level.number,
                                "air",
                                std::to_string(i),
                                {{"1-5-8", {}}, {"1-5-10", {}}},
                                1,
                                0};
        choice.offers[0].judged[static_cast<std::size_t>(arrange::Term::Mud)] = 0.3;
        choice.offers[1].judged[static_cast<std::size_t>(arrange::Term::Variety)] = 0.6;
        taste.choices.push_back(choice);
    }
    fs::create_directories(app::tasteFile().parent_path());
    REQUIRE(files::writeWhole(app::tasteFile(), files::tasteText(taste)));
    fs::path const tune = user.write("a.abc", keeping::tuneText());
    Learning learning;
    Window& window = learning.window;
    window.open(tune);
    auto const leaning = window.session.brief().leaning;
    CHECK(leaning.byTerm[static_cast<std::size_t>(arrange::Term::Variety)] < 800);

    window.actions().taste->trigger();
    CHECK(learning.part<QLabel>("sentences")
              ->text()
              .contains("In airs you take 1-5-10 where 1-5-8 is suggested: 30 of 30 times."));
    CHECK_FALSE(learning.part<QPushButton>("use")->isEnabled()); // it is used already
    REQUIRE(window.session.setLeaning({}));
    REQUIRE(learning.part<QPushButton>("use")->isEnabled());
    QTest::mouseClick(learning.part<QPushButton>("use"), Qt::LeftButton);
    CHECK(window.session.brief().leaning == leaning);
    window.actions().undo->trigger();
    CHECK(window.session.brief().leaning.isEven());

    // Another level knows nothing of it.
    REQUIRE(window.session.setLevel(*files::levelFrom(keeping::shelf(), 1)));
    CHECK(window.session.brief().leaning.isEven());
}

TEST_CASE("A damaged file of her taste is told and left as it is", "[keeping]")
{
    UserFolder const user;
    fs::create_directories(app::tasteFile().parent_path());
    REQUIRE(files::writeWhole(app::tasteFile(), "{\"sallow_taste\": 1, \"on\""));
    Learning learning;
    CHECK(learning.window.told().contains("taste.json"));
    learning.window.open(user.write("a.abc", keeping::tuneText()));
    learning.takeSeconds(1);
    CHECK(*files::readTextFile(app::tasteFile()) == "{\"sallow_taste\": 1, \"on\"");
}
