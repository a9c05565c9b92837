#pragma once

#include "scenario.h"
#include "ui/session.h"
#include "ui/workbench.h"

#include <QApplication>
#include <QTest>
#include <catch2/catch.hpp>

namespace scenario {

// The window with a tune in it.
struct OpenWindow {
    QApplication& application = scenario::application();
    ui::Session session{ui::coreEngine(), scenario::brief()};
    ui::Workbench workbench{session, scenario::tables()};
    explicit OpenWindow(tune::Tune const& tune = scenario::jig())
    {
        workbench.resize(1200, 900);
        workbench.show();
        REQUIRE(QTest::qWaitForWindowExposed(&workbench));
        REQUIRE(session.open(tune));
        QApplication::processEvents();
    }
};

} // namespace scenario
