#include "core/sheet/sheet.h"
#include "tests/paint/application.h"
#include "tests/sheet/examples.h"
#include "ui/pageview/pageview.h"
#include "ui/paint/sheetfonts.h"

#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>

namespace {

sheet::Document const& jigSheet()
{
    application();
    static sheet::Document const document = sheet::arrangementSheet(
        example::arrangementOf(example::jig()), ui::musicFont().value(), {});
    return document;
}

QPoint middleOf(ui::PageView const& view, sheet::PageArea const& area)
{
    auto const stack = ui::pageStack(view.document(), view.zoom() * view.logicalDpiX() / 25.4,
                                     view.viewport()->width());
    auto const& leaf = stack.leaves[static_cast<std::size_t>(area.page)];
    double const x = (area.area.topLeft.x + area.area.bottomRight.x) / 2;
    double const y = (area.area.topLeft.y + area.area.bottomRight.y) / 2;
    return QPointF(leaf.left + x * stack.pixelsPerMm - view.horizontalScrollBar()->value(),
                   leaf.top + y * stack.pixelsPerMm - view.verticalScrollBar()->value())
        .toPoint();
}

// A window that shows a whole page of the jig.
struct Shown {
    bool running = (application(), true);
    ui::PageView view;

    Shown()
    {
        view.resize(900, 1300);
        view.setDocument(jigSheet());
        view.fitPage();
    }
};

} // namespace

TEST_CASE("A click on a chord's ground names its position", "[pageview]")
{
    Shown shown;
    ui::PageView& view = shown.view;
    QSignalSpy clicked(&view, &ui::PageView::positionClicked);
    for (arrange::PositionIndex const position :
         std::vector<arrange::PositionIndex>{0, 3, 11}) {
        auto const area = sheet::areaOfPosition(jigSheet(), position);
        REQUIRE(area);
        QTest::mouseClick(view.viewport(), Qt::LeftButton, {}, middleOf(view, *area));
        REQUIRE_FALSE(clicked.empty());
        CHECK(clicked.takeLast().at(0).value<arrange::PositionIndex>() == position);
    }
}

TEST_CASE("A click on a bar without a chord names the bar", "[pageview]")
{
    Shown shown;
    ui::PageView& view = shown.view;
    QSignalSpy bars(&view, &ui::PageView::barClicked);
    QSignalSpy positions(&view, &ui::PageView::positionClicked);
    auto const pickUp = sheet::areaOfBar(jigSheet(), 0);
    QTest::mouseClick(view.viewport(), Qt::LeftButton, {}, middleOf(view, *pickUp));
    REQUIRE(bars.size() == 1);
    CHECK(bars[0].at(0).value<tune::BarIndex>() == 0);
    CHECK(positions.empty());
    QTest::mouseClick(view.viewport(), Qt::LeftButton, {}, {2, 2}); // beside the paper
    CHECK(bars.size() == 1);
}

TEST_CASE("Right and Left go from chord to chord and stop at the ends", "[pageview]")
{
    application();
    ui::PageView view;
    view.resize(600, 500);
    view.setDocument(jigSheet());
    QSignalSpy clicked(&view, &ui::PageView::positionClicked);
    QObject::connect(
        &view, &ui::PageView::positionClicked, &view,
        [&view](arrange::PositionIndex position) { view.setChosenPosition(position); });
    view.setChosenPosition(0);
    QTest::keyClick(&view, Qt::Key_Left);
    CHECK(clicked.empty());
    QTest::keyClick(&view, Qt::Key_Right);
    QTest::keyClick(&view, Qt::Key_Right);
    REQUIRE(clicked.size() == 2);
    CHECK(clicked[1].at(0).value<arrange::PositionIndex>() == 2);
    QTest::keyClick(&view, Qt::Key_Left);
    CHECK(clicked[2].at(0).value<arrange::PositionIndex>() == 1);
}

TEST_CASE("The bar that sounds is scrolled into view", "[pageview]")
{
    application();
    ui::PageView view;
    view.resize(600, 400);
    view.setDocument(jigSheet());
    view.setZoom(1);
    view.verticalScrollBar()->setValue(0);
    tune::BarIndex const last = example::jig().bars.beyond() - 1;
    view.setSoundingBar(last);
    QPoint const middle = middleOf(view, *sheet::areaOfBar(jigSheet(), last));
    CHECK(view.viewport()->rect().contains(middle));
}

TEST_CASE("Zoom keeps to its limits and says so", "[pageview]")
{
    application();
    ui::PageView view;
    view.setDocument(jigSheet());
    QSignalSpy zoomed(&view, &ui::PageView::zoomChanged);
    view.setZoom(1);
    CHECK(view.zoom() == Approx(1));
    QTest::keyClick(&view, Qt::Key_Plus);
    CHECK(view.zoom() == Approx(1.2));
    view.setZoom(100);
    CHECK(view.zoom() == Approx(4));
    view.setZoom(0.0001);
    CHECK(view.zoom() == Approx(0.25));
    CHECK(zoomed.size() == 4);
}

TEST_CASE("The page stands white on the surround and the chosen position is marked",
          "[pageview]")
{
    application();
    ui::PageView view;
    QPalette night;
    night.setColor(QPalette::Window, QColor(0x16, 0x1c, 0x1a));
    view.setPalette(night);
    view.resize(700, 900);
    view.setDocument(jigSheet());
    view.fitPage();
    QImage const plain = view.grab().toImage();
    CHECK(plain.pixelColor(3, 450) == QColor(0x16, 0x1c, 0x1a));
    CHECK(plain.pixelColor(350, 30) == QColor(Qt::white));
    view.setChosenPosition(4);
    QImage const marked = view.grab().toImage();
    QPoint const middle = middleOf(view, *sheet::areaOfPosition(jigSheet(), 4));
    QRect const around(middle - QPoint(10, 10), QSize(20, 20));
    CHECK(plain.copy(around) != marked.copy(around));
}

TEST_CASE("The strip under the sheet turns pages and names the one in view", "[pageview]")
{
    application();
    sheet::Document twoPages = jigSheet();
    twoPages.pages.resize(2, twoPages.pages.front());
    ui::PageView view;
    view.resize(900, 700);
    view.setDocument(twoPages);
    view.show();
    view.fitWidth();
    auto const button = [&view](char const* name) -> QAbstractButton* {
        for (auto* b : view.findChildren<QAbstractButton*>())
            if (b->accessibleName() == QLatin1String(name)) return b;
        return nullptr;
    };
    CHECK(view.page() == 1);
    REQUIRE(button("Next page"));
    CHECK_FALSE(button("Previous page")->isEnabled());
    button("Next page")->click();
    CHECK(view.page() == 2);
    CHECK_FALSE(button("Next page")->isEnabled());
    button("Previous page")->click();
    CHECK(view.page() == 1);
    double const before = view.zoom();
    button("Larger")->click();
    CHECK(view.zoom() > before);
    // The strip hides nothing of the sheet.
    auto const* bar = button("Larger")->parentWidget();
    CHECK_FALSE(bar->geometry().intersects(view.viewport()->geometry()));
}
