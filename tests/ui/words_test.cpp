#include "ui/words.h"

#include "core/base/words.h"
#include "core/harp/levers.h"
#include "scenario.h"
#include "ui/numbers.h"

#include <catch2/catch.hpp>

using namespace ui;

TEST_CASE("Ten strings are a tenth, eight an octave, fifteen two octaves", "[ui]")
{
    CHECK(reachWords(1) == "one string · 1 strings");
    CHECK(reachWords(8).toStdString() == "an octave · 8 strings");
    CHECK(reachWords(10).toStdString() == "a tenth · 10 strings");
    CHECK(reachWords(15).toStdString() == "two octaves · 15 strings");
    CHECK(reachWords(16).toStdString() == "16 strings");
}

TEST_CASE("No regret reads as the best, and a longer regret draws a shorter bar", "[ui]")
{
    CHECK(regretWords(0) == "as good as the best");
    CHECK(regretWords(1) != regretWords(0));
    CHECK(regretShare(0) == 1.0);
    CHECK(regretShare(3000) == Approx(0.5));
    double before = 1;
    for (arrange::Points const regret : {1, 100, 2000, 50000, 1000000}) {
        CHECK(regretShare(regret) < before);
        before = regretShare(regret);
        CHECK(before > 0);
    }
    CHECK(regretShare(-500) == 1.0); // better than the locks allow
}

TEST_CASE("An E flat harp in G has A, E, B and F raised", "[ui]")
{
    // trade-1.4: order of raising from E flat A, E, B, F, C, G, D.
    harp::Harp const harp = scenario::brief().harp;
    auto const setup = harp::settingFor(harp, {{music::Letter::G, 0}, music::Mode::Ionian});
    REQUIRE(setup);
    CHECK(setupWords(harp, *setup) == QString::fromUtf8("A♮ E♮ B♮ F♯"));
    auto mixed = *setup;
    mixed[3] = harp::Lever::Down; // the lowest F alone
    CHECK(setupWords(harp, mixed) == QString::fromUtf8("A♮ E♮ B♮ (F♯)"));
    CHECK(setupWords(harp, harp::LeverSetting(34, harp::Lever::Down)) == "all down");
}

TEST_CASE("Middle C is string 15 of 34 from the bottom, 20 from the top, harp octave 4", "[ui]")
{
    // trade/checks.csv 1 and 2; trade-1.2.
    harp::Harp const harp = scenario::brief().harp;
    QString const words = stringWords(harp, 14, harp.string(14).open);
    CHECK(words ==
          QString::fromUtf8("C4 · string 15 from the bottom, 20 from the top · harp octave 4"));
}

TEST_CASE("A fault is told with its place, what is wrong and what to do", "[ui]")
{
    QString const words = faultWords({base::FaultCode::NoteOffHarp, "bar 3", "C2"});
    CHECK(words.startsWith("Bar 3: "));
    CHECK(words.contains("(C2)"));
    CHECK(words.contains("larger harp"));
    CHECK(words.endsWith("."));
}

TEST_CASE("Numbers of the window have the decimal point of the language in use", "[ui][words]")
{
    CHECK(ui::decimal(3.14, 1) == QStringLiteral("3.1"));
    CHECK(ui::decimal(1234.5, 1) == QStringLiteral("1234.5"));
    base::Catalogue german;
    german.sayings["en-GB"] = {"de"};
    base::speakBy(german);
    // DIN 5008: a comma before the decimals (from memory).
    CHECK(ui::decimal(3.14, 1) == QStringLiteral("3,1"));
    CHECK(ui::decimal(1234.5, 1) == QStringLiteral("1234,5"));
    base::speakBy({});
}
