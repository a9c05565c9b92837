#include "ui/notetake.h"

#include "ui/melodyeditor.h"
#include "ui/noteediting.h"
#include "ui/session.h"
#include "ui/takebar.h"
#include "ui/workbench.h"

#include "core/tune/edit/whole.h"

#include <QAction>
#include <QBoxLayout>
#include <QMenu>

#include <algorithm>
#include <cmath>
#include <utility>

namespace ui {

namespace {

constexpr int mostTakenBars = 200;
constexpr double shortBar = 1.5; // seconds
constexpr int silentBars = 2;    // after the last note it is taken to be over

tune::Tune tuneAsHeard(Session const& session)
{
    return transposed(session.brief().tune, session.proposal().moved);
}

QString notesWords(int notes)
{
    return notes == 1 ? NoteTake::tr("1 note") : NoteTake::tr("%1 notes").arg(notes);
}

} // namespace

perform::Schedule takeClicks(music::Meter meter, double secondsAWhole, int bars,
                             double& countIn)
{
    double const beat = secondsAWhole * beatLength(meter).wholes.toDouble();
    int const inBar = beatsInBar(meter);
    int const counted = beat * inBar < shortBar ? 2 : 1;
    countIn = counted * inBar * beat;
    perform::Schedule out;
    for (int i = 0; i < (counted + bars) * inBar; ++i)
        out.clicks.push_back(
            {i * beat, i % inBar == 0, inBar % 2 == 0 && i % inBar == inBar / 2});
    out.crotchet = secondsAWhole / 4;
    out.counted = out.ringing = (counted + bars) * inBar * beat;
    return out;
}

NoteTake::NoteTake(Workbench& window, Session& session, NoteEditing& notes)
    : QObject(&window), m_window(window), m_session(session), m_notes(notes),
      m_bar(new TakeBar(notes.pane()))
{
    m_bar->hide();
    if (auto* const column = qobject_cast<QBoxLayout*>(notes.pane()->layout()))
        column->insertWidget(0, m_bar);
    auto* const action = new QAction(tr("Play notes in t&ime…"), &window);
    action->setShortcut(Qt::CTRL | Qt::Key_F2);
    action->setEnabled(session.isOpen());
    QList<QAction*> const entries = notes.menu()->actions();
    notes.menu()->insertAction(entries.size() > 1 ? entries[1] : nullptr, action);
    connect(action, &QAction::triggered, this, &NoteTake::begin);
    connect(m_bar, &TakeBar::startClicked, this, &NoteTake::start);
    connect(m_bar, &TakeBar::stopClicked, this, &NoteTake::stopWanted);
    connect(m_bar, &TakeBar::keepClicked, this, &NoteTake::keep);
    connect(m_bar, &TakeBar::againClicked, this, &NoteTake::again);
    connect(m_bar, &TakeBar::leaveClicked, this, &NoteTake::leave);
    // What is shown stays on the pane while she goes about, until the tune itself changes.
    connect(&session, &Session::selectionChanged, this, [this] {
        if (m_shown) m_notes.pane()->setTune(*m_shown);
    });
    connect(&session, &Session::changed, this, [this] {
        if (m_shown && !m_keeping) m_bar->hide();
    });
}

void NoteTake::begin()
{
    if (!m_session.isOpen()) return;
    if (m_notes.pane()->isHidden()) m_notes.openPane(); // else the caret stays where it is
    if (m_notes.pane()->isHidden()) return;
    m_at = m_notes.pane()->typing().at.bar;
    m_bar->setTempo(m_session.arrangement().tempo);
    again();
}

void NoteTake::again()
{
    m_shown.reset();
    tune::Tune const tune = tuneAsHeard(m_session);
    m_notes.pane()->setTune(tune);
    m_at = std::min(m_at, tune.bars.beyond() - 1);
    m_bar->setStage(TakeBar::Stage::Ready,
                    tr("A bar is counted in, then play from %1. Notes just before it are the "
                       "pick-up.")
                        .arg(QString::fromStdString(barName(tune, m_at))));
    m_bar->show();
    m_bar->setFocus(Qt::OtherFocusReason);
}

double NoteTake::wholeSeconds() const { return 240.0 / quartersPerMinute(m_bar->tempo()); }

void NoteTake::start()
{
    music::Meter const meter = m_session.brief().tune.bars[m_at].meter;
    double countIn = 0;
    auto schedule = takeClicks(meter, wholeSeconds(), mostTakenBars, countIn);
    double const beat = wholeSeconds() * beatLength(meter).wholes.toDouble();
    m_countIn = static_cast<int>(std::lround(countIn / beat));
    m_heard = m_beatsSince = 0;
    m_sounding = true;
    m_notes.pane()->holdStepEntry(true);
    m_bar->setStage(TakeBar::Stage::Playing, tr("Listen…"));
    m_bar->setFocus(Qt::OtherFocusReason);
    emit clicksWanted(perform::onceOnly(std::move(schedule)), countIn);
}

void NoteTake::beat(bool)
{
    if (!m_sounding) return;
    if (m_countIn > 0) {
        m_bar->setStage(TakeBar::Stage::Playing, tr("Count-in: %1").arg(m_countIn));
        --m_countIn;
        return;
    }
    m_bar->setStage(TakeBar::Stage::Playing, tr("Play. %1 so far.").arg(notesWords(m_heard)));
    int const inBar = beatsInBar(m_session.brief().tune.bars[m_at].meter);
    if (m_heard > 0 && ++m_beatsSince > silentBars * inBar) emit stopWanted();
}

void NoteTake::noteHeard()
{
    ++m_heard;
    m_beatsSince = 0;
}

void NoteTake::ended(std::vector<tune::HeardNote> const& played)
{
    m_notes.pane()->holdStepEntry(false);
    if (!std::exchange(m_sounding, false) || m_bar->isHidden()) return;
    if (played.empty()) {
        m_bar->setStage(
            TakeBar::Stage::Ready,
            tr("No note arrived. Connect a MIDI harp or keyboard and choose it in the "
               "menu Hear, Harp sound and MIDI; then start again."));
        return;
    }
    music::Meter const meter = m_session.brief().tune.bars[m_at].meter;
    show(tune::quantised(played, meter, wholeSeconds()));
}

void NoteTake::show(tune::Taken const& taken)
{
    m_shown = withTaken(tuneAsHeard(m_session), m_at, taken);
    m_notes.pane()->setTune(*m_shown);
    QStringList words{notesWords(static_cast<int>(taken.notes.size()))};
    if (taken.triplets > 0)
        words << (taken.triplets == 1 ? tr("1 triplet")
                                      : tr("%1 triplets").arg(taken.triplets));
    if (taken.leftOut > 0) words << tr("%1 under others left out").arg(taken.leftOut);
    m_bar->setStage(TakeBar::Stage::Played,
                    tr("Played: %1. It is shown below and is not in the tune yet.")
                        .arg(words.join(tr(", "))));
    m_bar->setFocus(Qt::OtherFocusReason);
}

void NoteTake::keep()
{
    if (!m_shown) return;
    tune::Tune const tune = *std::exchange(m_shown, std::nullopt);
    tune::BarIndex const before = m_session.brief().tune.bars.beyond();
    int const more = tune.bars.beyond() - before;
    bool const pickUp = tune::pickUpOf(tune) && !tune::pickUpOf(m_session.brief().tune);
    m_keeping = true;
    becomeTune(m_session, tune, tr("notes played in time"),
               {pickUp ? tune::BarIndex(0) : before, more});
    m_keeping = false;
    m_bar->hide();
    m_notes.pane()->setFocus(Qt::OtherFocusReason);
}

// Nothing of it stays.
void NoteTake::leave()
{
    if (std::exchange(m_sounding, false)) emit stopWanted();
    m_notes.pane()->holdStepEntry(false);
    if (m_shown.has_value() && m_session.isOpen()) {
        m_shown.reset();
        m_notes.pane()->setTune(tuneAsHeard(m_session));
    }
    m_shown.reset();
    if (!m_bar->isHidden()) {
        m_bar->hide();
        m_notes.pane()->setFocus(Qt::OtherFocusReason);
    }
}

} // namespace ui
