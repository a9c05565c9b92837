// How pages are exported as PNG: by keys and the mouse.

#include "scenario.h"
#include "ui/pngdialog.h"

#include <QCheckBox>
#include <QFile>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QTest>
#include <catch2/catch.hpp>

using namespace ui;

TEST_CASE("PNG is a file a page in the resolution that is typed, or one picture", "[ui][png]")
{
    scenario::application();
    QTemporaryDir const folder;
    QString const path = folder.filePath("tune.png");
    auto const names = [&folder](int page) {
        return folder.filePath(QStringLiteral("tune-%1.png").arg(page));
    };
    QFile there(names(2));
    REQUIRE(there.open(QIODevice::WriteOnly));
    PngDialog dialog(path, 3, names);
    dialog.show();
    CHECK(dialog.resolution() == 300);
    CHECK(dialog.said() ==
          "Makes a file a page: “tune-1.png” to “tune-3.png”. Already there and "
          "replaced: tune-2.png.");
    auto* const dots = dialog.findChild<QSpinBox*>();
    dots->setFocus();
    dots->selectAll();
    QTest::keyClicks(dots, QStringLiteral("600"));
    CHECK(dialog.resolution() == 600);
    auto* const one = dialog.findChild<QCheckBox*>();
    QTest::keyClick(one, Qt::Key_Space);
    CHECK_FALSE(dialog.resolution());
    CHECK_FALSE(dots->isEnabled());
    CHECK(dialog.said() == "Makes “tune.png”.");
}

TEST_CASE("One page has the name that was chosen, in any resolution", "[ui][png]")
{
    scenario::application();
    PngDialog dialog(QStringLiteral("/x/tune.png"), 1, [](int) { return QString(); });
    dialog.show();
    CHECK(dialog.said() == "Makes “tune.png”.");
    CHECK(dialog.resolution() == 300);
    CHECK_FALSE(dialog.findChild<QCheckBox*>()->isVisible());
}
