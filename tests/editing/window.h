#pragma once

#include "tests/ui/scenario.h"
#include "ui/engine.h"
#include "ui/noteediting.h"
#include "ui/session.h"
#include "ui/workbench.h"

#include <catch2/catch.hpp>

#include <QTest>

// The workbench with a tune whose notes are edited.
namespace editing {

struct Window {
    ui::Session session{ui::coreEngine(scenario::tables().levels), scenario::brief()};
    ui::Workbench workbench{(scenario::application(), session), scenario::tables()};
    ui::NoteEditing notes{workbench, session};

    void show(tune::Tune tune, proposal::KeyWish key)
    {
        proposal::Brief brief = scenario::brief();
        brief.tune = std::move(tune);
        brief.key = key;
        REQUIRE(session.open(std::move(brief)));
        workbench.resize(1100, 760);
        workbench.show();
        REQUIRE(QTest::qWaitForWindowExposed(&workbench));
    }
};

} // namespace editing
