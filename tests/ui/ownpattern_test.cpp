#include "ui/ownpattern.h"

#include "scenario.h"
#include "ui/button.h"
#include "ui/sliderbox.h"

#include <QLineEdit>
#include <QSignalSpy>
#include <QSlider>
#include <QTest>
#include <catch2/catch.hpp>

using namespace ui;

TEST_CASE("A typed pattern is checked at every letter and used with Enter", "[ui]")
{
    scenario::application();
    OwnPattern own;
    own.setReady(true);
    QSignalSpy used(&own, &OwnPattern::useClicked);
    QSignalSpy kept(&own, &OwnPattern::keepClicked);
    QTest::keyClicks(own.line(), QStringLiteral("1 5 8 10 8"));
    CHECK(own.said().contains(QStringLiteral("1-5-8-10-8, fingers 4-3-2-1-2")));
    QTest::keyClick(own.line(), Qt::Key_Return);
    CHECK(used.count() == 1);
    own.keep()->click();
    CHECK(kept.count() == 1);
    QTest::keyClicks(own.line(), QStringLiteral(" x"));
    CHECK(own.said().contains(QStringLiteral("note 6"), Qt::CaseInsensitive));
    QTest::keyClick(own.line(), Qt::Key_Return);
    CHECK(used.count() == 1);
    own.line()->clear();
    CHECK(own.said().isEmpty());
}

TEST_CASE("Without a selected chord a typed pattern can be kept but not used", "[ui]")
{
    scenario::application();
    OwnPattern own;
    own.line()->setText(QStringLiteral("1 5 8"));
    CHECK_FALSE(own.use()->isEnabled());
    CHECK(own.keep()->isEnabled());
}

TEST_CASE("Sliders show what they are given and report each step of the hand", "[ui]")
{
    scenario::application();
    auto const& sliders = scenario::tables().sliders;
    SliderBox box(sliders);
    QSignalSpy turned(&box, &SliderBox::turned);
    QSignalSpy reset(&box, &SliderBox::resetClicked);
    CHECK_FALSE(box.reset()->isEnabled());
    box.setTurned(arrange::withSlider({}, sliders[2], 150));
    CHECK(box.slider(2)->value() == 150);
    CHECK(turned.count() == 0);
    QTest::keyClick(box.slider(1), Qt::Key_Right);
    REQUIRE(turned.count() == 1);
    CHECK(turned.at(0) == QVariantList{1, 110});
    box.reset()->click();
    CHECK(reset.count() == 1);
}
