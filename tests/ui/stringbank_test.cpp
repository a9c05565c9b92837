#include "ui/stringbank.h"

#include "core/proposal/proposal.h"
#include "scenario.h"

#include <QApplication>
#include <QSignalSpy>
#include <QTest>
#include <catch2/catch.hpp>

using namespace ui;

TEST_CASE("The bank shows one string for each string of the harp, low left and longest", "[ui]")
{
    harp::Harp const harp = scenario::brief().harp;
    StringBankLayout const layout = layOutBank(harp, {0, 0, 900, 200});
    REQUIRE(layout.strings.size() == 34);
    for (harp::StringIndex i = 0; i + 1 < layout.strings.size(); ++i) {
        CHECK(layout.strings[i].x < layout.strings[i + 1].x);
        CHECK(layout.strings[i].bottom > layout.strings[i + 1].bottom);
        CHECK(layout.strings[i].thickness > layout.strings[i + 1].thickness);
    }
    CHECK(layout.strings.front().x >= 0);
    CHECK(layout.strings.back().x <= 900);
    CHECK(layout.leverUpY < layout.leverDownY);
}

TEST_CASE("Gaps of the bank are to scale: wider in the bass than in the treble", "[ui]")
{
    // trade-2.1: 16.5 mm at C2 to 13.5 mm at C6.
    harp::Harp const harp = scenario::brief().harp;
    auto const& s = layOutBank(harp, {0, 0, 900, 200}).strings;
    double const low = s[1].x - s[0].x;
    double const high = s[33].x - s[32].x;
    CHECK(low / high == Approx(harp.string(0).gapMm / harp.string(32).gapMm));
    CHECK(low > high);
}

TEST_CASE("The string nearest to the pointer is found over the whole bank and nowhere else",
          "[ui]")
{
    harp::Harp const harp = scenario::brief().harp;
    StringBankLayout const layout = layOutBank(harp, {10, 30, 900, 200});
    for (harp::StringIndex const i : harp.indices())
        CHECK(stringNear(layout, layout.strings[i].x + 1, 100) == i);
    CHECK_FALSE(stringNear(layout, 100, 5));
    CHECK_FALSE(stringNear(layout, 2000, 100));
}

TEST_CASE("Discs of the two hands do not cover each other even on a small bank", "[ui]")
{
    harp::Harp const harp = scenario::brief().harp;
    for (double const height : {110.0, 200.0, 400.0}) {
        StringBankLayout const layout = layOutBank(harp, {0, 0, 760, height});
        CAPTURE(height);
        CHECK(layout.leftHandY - layout.rightHandY >= 1.9 * layout.discRadius);
        CHECK(layout.rightHandY - layout.discRadius >= layout.leverDownY);
        double const gap = layout.strings[33].x - layout.strings[32].x;
        CHECK(2 * layout.discRadius <= gap * 1.0);
    }
}

TEST_CASE("A string has one disc a hand: the finger that plays it first", "[ui]")
{
    auto proposal = proposal::propose(scenario::brief());
    REQUIRE(proposal);
    arrange::Arrangement arrangement = proposal->arrangement;
    auto& voicing = arrangement.positions[0].voicing;
    auto const note = [](int at, harp::StringIndex string, int finger) {
        arrange::VoicedNote made;
        made.at = {music::Rational(at, 8)};
        made.string = string;
        made.finger = finger;
        return made;
    };
    voicing.notes = {note(0, 4, 4), note(1, 8, 2), note(2, 13, 1), note(3, 8, 3)};
    auto const fingers = fingersAt(arrangement, 0);
    std::vector<FingerDisc> left;
    int right = 0;
    for (FingerDisc const& disc : fingers)
        if (disc.hand == harp::Side::Left)
            left.push_back(disc);
        else
            ++right;
    CHECK(left == std::vector<FingerDisc>{{harp::Side::Left, 4, 4, 0},
                                          {harp::Side::Left, 8, 2, 1},
                                          {harp::Side::Left, 13, 1, 2}});
    CHECK(right == 4); // G4 B4 D5 G5 D5
    CHECK(reachOf(fingers) == Reach{4, 13});
    CHECK(reachOf(fingers)->strings() == 10); // a tenth
}

TEST_CASE("A click on a string of the bank plucks it, and so do the keys", "[ui]")
{
    scenario::application();
    StringBank bank;
    bank.resize(900, 214);
    bank.setHarp(scenario::brief().harp);
    QSignalSpy plucked(&bank, &StringBank::stringPlucked);
    auto const& string = bank.bank().strings[12];
    QTest::mouseClick(&bank, Qt::LeftButton, {}, {qRound(string.x), qRound(string.top + 60)});
    REQUIRE(plucked.size() == 1);
    CHECK(plucked.at(0).at(0).value<harp::StringIndex>() == 12);
    QTest::keyClick(&bank, Qt::Key_Right);
    QTest::keyClick(&bank, Qt::Key_Space);
    REQUIRE(plucked.size() == 2);
    CHECK(plucked.at(1).at(0).value<harp::StringIndex>() == 13);
    QTest::keyClick(&bank, Qt::Key_PageDown); // an octave is seven strings
    QTest::keyClick(&bank, Qt::Key_Space);
    REQUIRE(plucked.size() == 3);
    CHECK(plucked.at(2).at(0).value<harp::StringIndex>() == 6);
}

TEST_CASE("A click on a lever turns it, and so do the arrow keys up and down", "[ui]")
{
    scenario::application();
    StringBank bank;
    bank.resize(900, 214);
    bank.setHarp(scenario::brief().harp);
    harp::LeverSetting levers(34, harp::Lever::Down);
    levers[12] = harp::Lever::Up;
    bank.setLevers(levers);
    QSignalSpy turned(&bank, &StringBank::leverTurned);
    QSignalSpy plucked(&bank, &StringBank::stringPlucked);
    StringBankLayout const& layout = bank.bank();
    QTest::mouseClick(&bank, Qt::LeftButton, {},
                      {qRound(layout.strings[12].x), qRound(layout.leverUpY)});
    REQUIRE(turned.size() == 1);
    CHECK(turned.at(0).at(0).value<harp::StringIndex>() == 12);
    CHECK(turned.at(0).at(1).value<harp::Lever>() == harp::Lever::Down);
    CHECK(plucked.empty());
    QTest::keyClick(&bank, Qt::Key_Up); // it is up already
    CHECK(turned.size() == 1);
    QTest::keyClick(&bank, Qt::Key_Right);
    QTest::keyClick(&bank, Qt::Key_Up);
    REQUIRE(turned.size() == 2);
    CHECK(turned.at(1).at(0).value<harp::StringIndex>() == 13);
    CHECK(turned.at(1).at(1).value<harp::Lever>() == harp::Lever::Up);
}

TEST_CASE("A string without a lever has none to click", "[ui]")
{
    scenario::application();
    StringBank bank;
    bank.resize(900, 214);
    harp::Harp const whole = scenario::brief().harp;
    harp::HarpStrings strings(whole.strings().begin(), whole.strings().end());
    strings[12].hasLever = false;
    bank.setHarp(*harp::Harp::make("own", "Own", {music::Letter::E, -1}, strings));
    QSignalSpy turned(&bank, &StringBank::leverTurned);
    StringBankLayout const& layout = bank.bank();
    QTest::mouseClick(&bank, Qt::LeftButton, {},
                      {qRound(layout.strings[12].x), qRound(layout.leverDownY)});
    CHECK(turned.empty());
}

TEST_CASE("A ringing string changes the picture of the bank until all is still", "[ui]")
{
    scenario::application();
    StringBank bank;
    bank.resize(900, 214);
    bank.setHarp(scenario::brief().harp);
    QImage const still = bank.grab().toImage();
    bank.ring(10, harp::Side::Left);
    CHECK(bank.grab().toImage() != still);
    bank.stillAll();
    CHECK(bank.grab().toImage() == still);
}
