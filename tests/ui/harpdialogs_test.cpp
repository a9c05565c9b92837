#include "ui/harpeditor.h"
#include "ui/keydialog.h"
#include "ui/stringbank.h"

#include "tests/ui/scenario.h"

#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QComboBox>
#include <QLineEdit>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTreeWidget>

using namespace ui;

namespace {

template<typename Widget>
Widget* named(QWidget& parent, char const* accessibleName)
{
    for (Widget* widget : parent.findChildren<Widget*>())
        if (widget->accessibleName() == QLatin1String(accessibleName)) return widget;
    return nullptr;
}

harp::HarpModel model() { return harp::modelOf(scenario::brief().harp); }

} // namespace

TEST_CASE("The harp editor hands back what was set, string by string", "[ui]")
{
    scenario::application();
    HarpEditor editor(model(), scenario::tables());
    named<QSpinBox>(editor, "Number of strings")->setValue(36);
    auto* name = named<QLineEdit>(editor, "Name of the harp");
    name->setText("Willow");
    emit name->textEdited("Willow");
    emit editor.findChild<StringBank*>()->leverTurned(4, harp::Lever::Up);
    emit editor.findChild<StringBank*>()->stringPlucked(5);
    CHECK(editor.model().strings() == 36);
    CHECK(editor.model().name == "Willow");
    CHECK(editor.model().id == "willow");
    CHECK_FALSE(editor.model().levers[4]);
    CHECK_FALSE(editor.model().levers[5]);
    CHECK(editor.model().levers[6]);
    emit editor.findChild<StringBank*>()->stringPlucked(5);
    CHECK(editor.model().levers[5]);
    CHECK(harpOf(editor.model()));
}

TEST_CASE("An untouched harp leaves the editor as it came", "[ui]")
{
    scenario::application();
    HarpEditor editor(model(), scenario::tables());
    CHECK(editor.model() == model());
    CHECK_FALSE(editor.toBeKept());
    auto* keep = editor.findChild<QAbstractButton*>("keep");
    REQUIRE(keep);
    keep->click();
    CHECK(editor.toBeKept());
    CHECK(editor.result() == QDialog::Accepted);
}

TEST_CASE("A harp that cannot be is not kept", "[ui]")
{
    scenario::application();
    HarpEditor editor(model(), scenario::tables());
    auto* name = named<QLineEdit>(editor, "Name of the harp");
    name->setText("");
    emit name->textEdited("");
    CHECK_FALSE(editor.findChild<QAbstractButton*>("keep")->isEnabled());
    CHECK_FALSE(editor.findChild<QAbstractButton*>("use")->isEnabled());
}

TEST_CASE("The list of keys shows each key once and hands back the one that is marked", "[ui]")
{
    scenario::application();
    proposal::Brief brief = scenario::brief();
    brief.tune = scenario::jig();
    auto const keys = proposal::rankedKeys(brief);
    KeyDialog dialog(brief.harp, keys, brief.tune.key);
    auto* list = dialog.findChild<QTreeWidget*>();
    REQUIRE(list);
    CHECK(list->topLevelItemCount() == 12); // one for each semitone
    REQUIRE(dialog.chosen());
    CHECK(*dialog.chosen() == brief.tune.key);
    list->setCurrentItem(list->topLevelItem(1));
    REQUIRE(dialog.chosen());
    CHECK_FALSE(*dialog.chosen() == brief.tune.key);
    // What cannot be played is not chosen.
    list->setCurrentItem(list->topLevelItem(list->topLevelItemCount() - 1));
    CHECK_FALSE(dialog.chosen());
    CHECK_FALSE(dialog.findChild<QAbstractButton*>("use")->isEnabled());
}
