#include "ui/picture.h"

#include "scenario.h"
#include "ui/session.h"
#include "ui/theme.h"

#include <QApplication>
#include <catch2/catch.hpp>

#include <set>

using namespace ui;

namespace {

int coloursIn(QImage const& image)
{
    std::set<QRgb> colours;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) colours.insert(image.pixel(x, y));
    return static_cast<int>(colours.size());
}

} // namespace

TEST_CASE("Every scene is drawn at the size asked for, at one and two pixels a point", "[ui]")
{
    scenario::application();
    Session session(coreEngine(), scenario::brief());
    REQUIRE(session.open(scenario::jig()));
    for (Scene const scene : {Scene::Grid, Scene::Sheet, Scene::Bank, Scene::Workbench})
        for (double const scale : {1.0, 2.0}) {
            QImage const image = picture(session, scenario::tables(), scene, {900, 600}, scale);
            CAPTURE(static_cast<int>(scene), scale);
            CHECK(image.width() == 900 * scale);
            CHECK(image.height() == 600 * scale);
            CHECK(coloursIn(image) > 20); // something is drawn, not one flat ground
        }
}

TEST_CASE("The dark theme draws light writing on a dark ground", "[ui]")
{
    Session session(coreEngine(), scenario::brief());
    dress(scenario::application(), Theme::Dark);
    REQUIRE(session.open(scenario::jig()));
    QImage const night = picture(session, scenario::tables(), Scene::Grid, {600, 300});
    dress(scenario::application(), Theme::Light);
    QImage const day = picture(session, scenario::tables(), Scene::Grid, {600, 300});
    CHECK(night.pixelColor(2, 2) == colour(nightPalette.paper));
    CHECK(day.pixelColor(2, 2) == colour(dayPalette.paper));
}
