// Sound files and the harp's sound from the real window, by its actions and dialogs.
#include "window.h"

#include "app/playback.h"
#include "app/sound/soundfont.h"
#include "app/soundsaving.h"
#include "ui/harpsounddialog.h"
#include "ui/sounddialog.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QProgressBar>
#include <QSpinBox>

using namespace keeping;
namespace fs = std::filesystem;

namespace {

struct Sounding {
    Window window;
    app::Playback hearing{window.workbench, window.preferences, shelf().temperaments};
    app::SoundSaving saving{window.desk, hearing};
};

ui::SoundDialog* openDialog(Sounding& sounding)
{
    sounding.window.actions().soundFiles->trigger();
    auto* const dialog = sounding.window.workbench.findChild<ui::SoundDialog*>();
    REQUIRE(dialog);
    return dialog;
}

QPushButton* button(QWidget* dialog, QString const& words)
{
    for (QPushButton* one : dialog->findChildren<QPushButton*>())
        if (one->text().remove('&').startsWith(words)) return one;
    std::string all;
    for (QPushButton* one : dialog->findChildren<QPushButton*>())
        all += one->text().toStdString() + ", ";
    FAIL("no button " << words.toStdString() << " among " << all);
    return nullptr;
}

void save(QWidget* dialog, fs::path const& file)
{
    answerNext([file](QWidget* asking) { typeName(asking, file); });
    QTest::mouseClick(button(dialog, "Save"), Qt::LeftButton);
}

} // namespace

TEST_CASE("A sound file that is stopped in the window leaves no file, and the next is whole",
          "[keeping]")
{
    if (!sound::findSoundFont()) {
        WARN("SKIPPED: no sound font");
        return;
    }
    UserFolder const user;
    Sounding sounding;
    sounding.window.open(user.write("a.abc", keeping::tuneText()));
    ui::SoundDialog* const dialog = openDialog(sounding);
    for (QSpinBox* box : dialog->findChildren<QSpinBox*>())
        if (box->maximum() == 100 && box->minimum() == 1) box->setValue(100); // times
    fs::path const file = user.at("long.wav");
    save(dialog, file);
    auto* const progress = dialog->findChild<QProgressBar*>();
    REQUIRE(QTest::qWaitFor([&] { return progress->value() > 0; }, 60000));
    CHECK_FALSE(fs::exists(file));
    QTest::mouseClick(button(dialog, "Stop"), Qt::LeftButton);
    REQUIRE(QTest::qWaitFor([&] { return button(dialog, "Save")->isEnabled(); }, 60000));
    QTest::qWait(300);
    CHECK_FALSE(fs::exists(file));
    long left = 0;
    for (auto const& entry : fs::directory_iterator(user.at("")))
        if (entry.path().filename().string().find("long") != std::string::npos) ++left;
    CHECK(left == 0);
    for (QSpinBox* box : dialog->findChildren<QSpinBox*>())
        if (box->maximum() == 100 && box->minimum() == 1) box->setValue(1);
    save(dialog, file);
    CHECK(QTest::qWaitFor([&] { return fs::exists(file); }, 120000));
    CHECK(fs::file_size(file) > 100000);
    dialog->close();
}

TEST_CASE("The pitch, the temperament and the halo are chosen in a dialog and kept", "[keeping]")
{
    UserFolder const user;
    Sounding sounding;
    sounding.window.actions().harpSound->trigger();
    auto* const dialog = sounding.window.workbench.findChild<ui::HarpSoundDialog*>();
    REQUIRE(dialog);
    auto* const a4 = dialog->findChild<QDoubleSpinBox*>();
    a4->setFocus();
    a4->selectAll();
    QTest::keyClicks(a4, "432");
    QTest::keyClick(a4, Qt::Key_Return);
    CHECK(sounding.hearing.voice().a4Hz == 432);
    QComboBox* temperament = nullptr;
    for (QComboBox* list : dialog->findChildren<QComboBox*>())
        if (list->findData(QStringLiteral("meantone")) >= 0) temperament = list;
    REQUIRE(temperament);
    temperament->setFocus();
    QTest::keyClick(temperament, Qt::Key_Down);
    CHECK(sounding.hearing.voice().cents[4] == Approx(-3.422)); // E, a quarter of a comma low
    CHECK(sounding.window.preferences.harpSound().temperament == "meantone");
    QTest::keyClick(temperament, Qt::Key_End); // one's own, in cents
    auto* cents = dialog->findChild<QLineEdit*>(QString(), Qt::FindDirectChildrenOnly);
    REQUIRE(cents);
    CHECK(cents->isVisible());
    cents->setFocus();
    QTest::keyClicks(cents, "E=99");
    QTest::keyClick(cents, Qt::Key_Return);
    bool told = false;
    for (QLabel* label : dialog->findChildren<QLabel*>())
        told = told || label->text().contains("E=99");
    CHECK(told);
    cents->selectAll();
    QTest::keyClicks(cents, "E=-14");
    QTest::keyClick(cents, Qt::Key_Return);
    CHECK(sounding.hearing.voice().cents[4] == -14);
    QTest::mouseClick(button(dialog, "Test note"), Qt::LeftButton);
    CHECK(sounding.window.preferences.harpSound().a4 == 432);
    dialog->close();
}
