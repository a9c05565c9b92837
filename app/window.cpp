#include "app/window.h"

#include "app/batchrun.h"
#include "app/cautions.h"
#include "app/collecting.h"
#include "app/desk.h"
#include "app/exitstatus.h"
#include "app/filing.h"
#include "app/keeping/userfolder.h"
#include "app/keptpatterns.h"
#include "app/language.h"
#include "app/languagemenu.h"
#include "app/options.h"
#include "app/playback.h"
#include "app/players.h"
#include "app/preferences.h"
#include "app/remembering.h"
#include "app/setmaking.h"
#include "app/sharedfolder.h"
#include "app/shelf.h"
#include "app/soundsaving.h"
#include "app/tasting.h"
#include "core/base/words.h"
#include "core/files/tables/tables.h"
#include "core/files/work/player.h"
#include "core/pattern/own.h"
#include "ui/chordediting.h"
#include "ui/chordfollowing.h"
#include "ui/engine.h"
#include "ui/handbook.h"
#include "ui/noteediting.h"
#include "ui/notetake.h"
#include "ui/session.h"
#include "ui/theme.h"
#include "ui/tunegrid.h"
#include "ui/workbench.h"

#include <QApplication>
#include <QTimer>

#include <cstdlib>
#include <iostream>

namespace app {

bool displayThere()
{
    for (char const* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
        if (char const* value = std::getenv(name); value && *value) return true;
    return false;
}

int sayNoDisplay()
{
    std::cerr << "sallow: "
              << base::said("there is no screen for the workbench; use a command that needs no "
                            "window, such as: sallow arrange TUNE.abc -o TUNE.pdf")
              << '\n';
    return CallOff;
}

int openWorkbench(int argc, char** argv)
{
    auto tables = openShelf();
    if (!tables) return refuse(tables.error());
    auto kept = keptPatterns();
    if (kept)
        for (pattern::Pattern& own : *kept)
            tables->book = pattern::withOwn(std::move(tables->book), std::move(own)).book;
    auto standing = briefFor(tune::Tune{}, ArrangeOptions{}, *tables);
    if (!standing) return refuse(standing.error());

    Preferences preferences;
    *standing = files::withStanding(*std::move(standing), preferences.standing(), *tables);
    ui::ThemeFollower follower(*qApp);
    follower.setTheme(preferences.theme());
    ui::dress(*qApp, preferences.theme());
    ui::Session session(ui::coreEngine(tables->levels), *std::move(standing));
    ui::Workbench workbench(session, *tables);
    QObject::connect(&workbench, &ui::Workbench::keepPatternRequested, &workbench,
                     [&workbench](pattern::Pattern const& own) {
                         auto const done = keepPattern(own);
                         if (done)
                             workbench.tellDone(
                                 ui::Workbench::tr("%1 is saved in your pattern book.")
                                     .arg(QString::fromStdString(own.name)));
                         else
                             workbench.tellFault(done.error());
                     });
    QObject::connect(&workbench, &ui::Workbench::themeChosen, &workbench, [&](ui::Theme theme) {
        follower.setTheme(theme);
        preferences.keepTheme(theme);
    });
    QObject::connect(&workbench, &ui::Workbench::lessMotionChosen, &workbench,
                     [&preferences](bool less) { preferences.keepLessMotion(less); });
    preferences.applyTo(workbench);
    addLanguageMenu(workbench, preferences);
    QObject::connect(&workbench, &ui::Workbench::harpKept, &workbench,
                     [&workbench](harp::HarpModel const& harp) {
                         auto const done = keepHarp(harp);
                         if (done)
                             workbench.tellDone(ui::Workbench::tr("Saved among your harps: %1")
                                                    .arg(QString::fromStdString(harp.name)));
                         else
                             workbench.tellFault(done.error());
                     });
    Filing filing(workbench, session, *tables);
    Desk const desk{preferences, workbench, session, filing, *tables};
    Players players(desk);
    Remembering remembering(desk, players);
    Tasting tasting(workbench, session, tasteFile());
    Cautions cautions(desk);
    BatchRun batch(desk);
    SetMaking tuneSet(desk);
    Playback hearing(workbench, preferences, tables->temperaments);
    Collecting collecting(workbench, filing, *tables, userFolder());
    QObject::connect(&hearing, &Playback::keyPlayed, &collecting, &Collecting::hear);
    SoundSaving sounds(desk, hearing);
    ui::ChordMenu chords(workbench, session, tables->harmony);
    workbench.addToGridMenu({chords.chord(), chords.takeOut()});
    chords.takePassageFrom([&workbench] { return workbench.passage(); });
    QObject::connect(workbench.grid(), &ui::TuneGrid::chordWanted, chords.chord(),
                     &QAction::trigger);
    QObject::connect(&chords, &ui::ChordMenu::done, &workbench, &ui::Workbench::tellDone);
    QObject::connect(&chords, &ui::ChordMenu::hearWanted, &workbench,
                     &ui::Workbench::hearTrial);
    QObject::connect(&chords, &ui::ChordMenu::hearEnded, &workbench,
                     &ui::Workbench::stopHearing);
    QObject::connect(
        workbench.actions().handbook, &QAction::triggered, &workbench, [&workbench] {
            (new ui::Handbook(QString::fromStdString(handbookFolder().string()), &workbench))
                ->show();
        });
    ui::NoteEditing notes(workbench, session);
    ui::ChordFollowing const following(workbench, session, notes, tables->harmony);
    ui::NoteTake take(workbench, session, notes);
    hearing.recording().serve(take);
    QObject::connect(&filing, &Filing::begun, &notes, [&notes, &take](bool playsIn) {
        notes.openPane();
        if (playsIn) take.begin();
    });

    workbench.show();
    if (!kept) workbench.tellFault(kept.error()); // the tune matters more than her own book
    // From within the event loop, where the window is there and dialogs may ask.
    QTimer::singleShot(0, &filing, [&filing, &preferences, &workbench, argc, argv] {
        if (filing.offerUnsaved()) return;
        for (int word = 1; word < argc; ++word)
            filing.open(QString::fromLocal8Bit(argv[word]));
        // Where nobody looks they are kept for the first time that somebody does.
        if (QGuiApplication::platformName() != QLatin1String("offscreen") &&
            !preferences.toldBefore(QStringLiteral("first-steps")))
            workbench.showFirstSteps();
    });
    int const status = QApplication::exec();
    remembering.keepNow();
    return status;
}

} // namespace app
