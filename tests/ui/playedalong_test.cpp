// What is told of a passage that was played along.

#include "scenario.h"
#include "tests/perform/pieces.h"
#include "ui/playedalong.h"

#include <QListWidget>
#include <QSignalSpy>
#include <QTest>
#include <catch2/catch.hpp>

using namespace ui;

TEST_CASE("What was played is told bar by bar, in kind words", "[ui][playalong]")
{
    auto const piece = pieces::twoBars();
    auto const schedule = perform::scheduled(piece, {});
    auto const told = [&](std::vector<perform::Heard> const& heard) {
        return playedWords(piece, perform::judged(schedule, {false, true}, heard));
    };
    std::vector<perform::Heard> heard{{0, 72}, {1, 74}, {2, 76}, {3, 72},
                                      {4, 74}, {5, 76}, {6, 79}, {7, 74}};
    CHECK(told(heard).summary == "Every note was in its place.");
    CHECK(told(heard).bars.empty());
    heard[1].at = 1.12;
    heard[2].at = 2.25;
    heard[5].midi = 77;
    heard.pop_back();
    auto const words = told(heard);
    REQUIRE(words.bars.size() == 2);
    CHECK(words.bars[0].words.contains("D5 a little late, E5 late"));
    CHECK(words.bars[1].words.contains("F5 for E5"));
    CHECK(words.bars[1].words.contains("D5 left out"));
    CHECK(words.summary.startsWith("4 of 8 notes were in their place."));
    CHECK_FALSE(words.summary.contains("wrong"));
}

TEST_CASE("A bar in the list of what was played is gone to by a click", "[ui][playalong]")
{
    scenario::application();
    PlayedDialog* const dialog =
        new PlayedDialog({"1 of 2 notes were in their place.", {{1, "Bar 2: D5 left out"}}});
    QSignalSpy const chosen(dialog, &PlayedDialog::barChosen);
    dialog->show();
    auto* const list = dialog->findChild<QListWidget*>();
    REQUIRE(list);
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {},
                      list->visualItemRect(list->item(0)).center());
    REQUIRE(chosen.size() == 1);
    CHECK(chosen[0][0].value<tune::PlayedBarIndex>() == 1);
    dialog->close();
}
