#include "everydialog.h"

#include "../keeping/userfolder.h"
#include "app/language.h"
#include "ui/batchdialog.h"
#include "ui/bookdialog.h"
#include "ui/chordediting.h"
#include "ui/chordeditor.h"
#include "ui/chordways.h"
#include "ui/handbook.h"
#include "ui/handoutdialog.h"
#include "ui/harpeditor.h"
#include "ui/harpsounddialog.h"
#include "ui/helppages.h"
#include "ui/historydialog.h"
#include "ui/keydialog.h"
#include "ui/newtunedialog.h"
#include "ui/pastdialog.h"
#include "ui/session.h"
#include "ui/setdialog.h"
#include "ui/sounddialog.h"
#include "ui/tastedialog.h"
#include "ui/tunedialog.h"
#include "ui/tunefinder.h"
#include "ui/tunefolders.h"
#include "ui/wordsdialog.h"
#include "ui/workbench.h"

#include <catch2/catch.hpp>

namespace reading {

namespace {

std::vector<ui::BookTune> const threeTunes{{7, "Osier Ferry", "jig", {}, {}},
                                           {3, "Willow Weir", "reel", {}, {}},
                                           {9, "The Long Reach", "waltz", {}, {}}};

} // namespace

std::vector<std::unique_ptr<QDialog>> everyDialog(ui::Workbench& workbench,
                                                  ui::Session& session)
{
    std::vector<std::unique_ptr<QDialog>> all;
    auto const add = [&all](QDialog* dialog) { all.emplace_back(dialog); };
    QWidget* const over = &workbench;
    files::Tables const& tables = keeping::shelf();
    arrange::Arrangement const& open = session.arrangement();

    add(new ui::BatchDialog("/tunes", "34 strings", over));
    add(new ui::BookDialog(
        "book.abc", threeTunes, [](int) { return ui::BookGlance{}; }, 0, over));
    auto const beats = ui::chordBeats(session, tables.harmony);
    add(new ui::ChordEditor("bar 2", beats, ui::selectedBeat(session, beats), 3, over));
    add(new ui::ChordWays(
        [&](bool keep) { return ui::chordWayRows(session, tables.harmony, keep); }, "G", true,
        over));
    REQUIRE(workbench.font());
    add(new ui::HandoutDialog(workbench.handoutWish(), *workbench.font(), {}, over));
    add(new ui::HarpEditor(harp::modelOf(open.harp), tables, over));
    add(new ui::HarpSoundDialog({}, {"harp.sf2"}, {{"equal", "equal"}}, over));
    add(new ui::HistoryDialog(session.undoStack(), over));
    add(new ui::KeyDialog(open.harp, session.rankedKeys(), open.tune.key, over));
    add(new ui::NewTuneDialog(over));
    add(new ui::PastDialog("Earlier", "Versions", {{"Today at 9:30", "level 3"}}, "Open",
                           "Later", "Throw away", over));
    add(new ui::SetDialog(threeTunes, "34 strings", "/here", 1, over));
    add(new ui::SoundDialog({}, 1, 8, over));
    add(new ui::TasteDialog(over));
    add(new ui::TuneDialog(session.brief().tune, over));
    add(new ui::TuneFinder(over));
    add(new ui::TuneFolders(over));
    add(new ui::WordsDialog(tune::pageWords(session.brief().tune), over));
    add(new ui::Handbook(QString::fromStdString(app::handbookFolder().string()), over));
    return all;
}

} // namespace reading
