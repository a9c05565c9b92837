#include "app/soundsaving.h"

#include "app/filing.h"
#include "app/outputs.h"
#include "app/playback.h"
#include "app/soundfiles.h"
#include "ui/session.h"
#include "ui/transport.h"
#include "ui/words.h"
#include "ui/workbench.h"

#include <QFileDialog>
#include <QFileInfo>

#include <algorithm>

namespace app {

namespace {

int numberOf(tune::Tune const& tune, tune::BarIndex bar) { return tune.bars[bar].number; }

} // namespace

SoundSaving::SoundSaving(Desk const& desk, Playback const& hearing)
    : QObject(&desk.workbench), m_desk(desk), m_hearing(hearing)
{
    connect(desk.workbench.actions().soundFiles, &QAction::triggered, this, &SoundSaving::open);
}

// It opens with what is heard: the passage, the tempo, the hands.
void SoundSaving::open()
{
    if (!m_desk.session.isOpen() || m_dialog) return;
    tune::Tune const& tune = m_desk.session.arrangement().tune;
    int first = numberOf(tune, 0);
    int last = first;
    for (tune::Bar const& bar : tune.bars) {
        first = std::min(first, bar.number);
        last = std::max(last, bar.number);
    }
    ui::Transport const& transport = *m_desk.workbench.transport();
    ui::SoundChoice begin;
    begin.firstBar = first;
    begin.lastBar = last;
    if (auto const passage = m_desk.workbench.passage()) {
        begin.firstBar = numberOf(tune, passage->firstBar);
        begin.lastBar = numberOf(tune, passage->lastBar);
    }
    begin.percent = transport.tempoPercent();
    begin.left = transport.hearsLeft() || !transport.hearsRight();
    begin.right = transport.hearsRight() || !transport.hearsLeft();
    begin.countIn = transport.countsIn();
    begin.click = transport.practice().clicks;
    begin.steps = transport.practice().faster;
    ui::Practice const practice = transport.practice();
    begin.stepsWords = tr("%1 to %2 % by %3, each %4 times")
                           .arg(practice.from)
                           .arg(practice.to)
                           .arg(practice.by)
                           .arg(practice.every);
    m_dialog = new ui::SoundDialog(begin, first, last, &m_desk.workbench);
    m_dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(m_dialog, &ui::SoundDialog::startClicked, this, &SoundSaving::start);
    connect(m_dialog, &ui::SoundDialog::cancelClicked, this, [this] {
        m_work.giveUp();
        m_dialog->ended(tr("Stopped. What was written whole stays; the rest is not there."));
    });
    m_dialog->open();
}

void SoundSaving::start()
{
    ui::SoundChoice const choice = m_dialog->choice();
    QString const title = QString::fromStdString(m_desk.session.arrangement().tune.title);
    QString const ending = '.' + choice.ending;
    QString path = QFileDialog::getSaveFileName(m_dialog, tr("Save sound files"),
                                                m_desk.filing.folder() + '/' + title + ending,
                                                tr("Sound (*%1)").arg(ending));
    if (path.isEmpty()) return;
    if (!path.endsWith(ending)) path += ending;
    m_desk.filing.setFolder(QFileInfo(path).absolutePath());
    save(choice, path);
}

void SoundSaving::save(ui::SoundChoice const& choice, QString const& path)
{
    arrange::Arrangement arrangement = m_desk.session.arrangement();
    ui::Practice const practice = m_desk.workbench.transport()->practice();
    SoundWish wish{.at = choice.percent / 100.0,
                   .left = choice.left,
                   .right = choice.right,
                   .countIn = choice.countIn,
                   .click = choice.click,
                   .times = choice.times,
                   .voice = m_hearing.voice(),
                   .pack = choice.pack,
                   .lilt = practice.lilt,
                   .tuneAlone = choice.tuneAlone || practice.tuneAlone,
                   .barBefore = practice.barBefore,
                   .balance = practice.balance,
                   .rollGapMs = practice.rollGapMs,
                   .slowing = practice.slowing};
    if (choice.steps)
        wish.steps = perform::Steps{practice.from / 100.0, practice.to / 100.0,
                                    practice.by / 100.0, practice.every};
    tune::Tune const& tune = arrangement.tune;
    bool const whole = std::ranges::all_of(tune.bars, [&choice](tune::Bar const& bar) {
        return bar.number >= choice.firstBar && bar.number <= choice.lastBar;
    });
    if (!whole) wish.passage = {choice.firstBar, choice.lastBar};
    auto files = soundFiles(path.toStdString(), wish);
    m_dialog->started();
    auto const count = static_cast<int>(files.size());
    m_work.begin(
        [arrangement = std::move(arrangement), files = std::move(files),
         ways = m_desk.tables.ways, this](ui::Aside::Wanted const& wanted) {
            double told = 0;
            return writeSoundFiles(arrangement, ways, files, [&](double part) {
                if (part - told >= 0.01) {
                    told = part;
                    QMetaObject::invokeMethod(
                        this,
                        [this, part] {
                            if (m_dialog && m_work.busy()) m_dialog->reached(part);
                        },
                        Qt::QueuedConnection);
                }
                return wanted();
            });
        },
        [this, path, count](base::Result<int> const& written) {
            QString const words =
                written ? tr("Saved: %1").arg(path) : ui::faultWords(written.error());
            bool const pack = written && count > 1;
            QString const told = pack ? tr("Saved: four files beside %1").arg(path) : words;
            if (m_dialog) m_dialog->ended(told);
            if (written)
                m_desk.workbench.tellDone(told);
            else
                m_desk.workbench.tellFault(written.error());
        });
}

} // namespace app
