#include "ui/noteediting.h"

#include "core/harp/harp.h"
#include "core/tune/edit/bars.h"
#include "core/tune/edit/whole.h"
#include "ui/melodyeditor.h"
#include "ui/session.h"
#include "ui/tunedialog.h"
#include "ui/tunegrid.h"
#include "ui/workbench.h"

#include <QAction>
#include <QInputDialog>
#include <QMenu>
#include <QMenuBar>
#include <QRegularExpression>

#include <algorithm>
#include <tuple>

namespace ui {

namespace {

using music::Interval;
using tune::Tune;

// The open tune in the key that is played.
Tune heardTune(Session const& session)
{
    return transposed(session.brief().tune, session.proposal().moved);
}

proposal::KeyWish keptKey(Session const& session)
{
    proposal::KeyWish const& wish = session.brief().key;
    if (!std::holds_alternative<proposal::BestKey>(wish)) return wish;
    if (session.proposal().moved == Interval{}) return proposal::AsWritten{};
    return session.arrangement().tune.key;
}

QString name(Tune const& tune, tune::BarIndex bar)
{
    return QString::fromStdString(barName(tune, bar));
}

} // namespace

bool becomeTune(Session& session, Tune const& heard, QString const& what,
                proposal::BarsMoved moved)
{
    if (!session.isOpen()) return false;
    Tune written = transposed(heard, opposite(session.proposal().moved));
    if (written == session.brief().tune) return true;
    proposal::Brief next = withEditedTune(session.brief(), std::move(written), moved);
    next.key = keptKey(session);
    return session.goBackTo(std::move(next), what);
}

NoteEditing::NoteEditing(Workbench& window, Session& session)
    : QObject(&window), m_window(window), m_session(session), m_pane(new MelodyEditor(&window)),
      m_menu(new QMenu(tr("&Tune"), &window)), m_change(nullptr)
{
    fillMenu();
    fillPane();
    connect(m_menu, &QMenu::aboutToShow, this,
            [this] { m_change->setChecked(!m_pane->isHidden()); });
    connect(&session, &Session::changed, this, &NoteEditing::follow);
    connect(&session, &Session::selectionChanged, this, &NoteEditing::follow);
    connect(&window, &Workbench::stringPluckRequested, this,
            [this](harp::StringIndex string, int midi) {
                if (m_pane->isHidden() || !m_pane->writesWhatIsPlayed() || !m_session.isOpen())
                    return;
                music::Pitch pitch = m_session.arrangement().harp.string(string).open;
                pitch.alter += midi - music::midi(pitch);
                m_pane->play(pitch);
            });
    enable();
}

QAction* NoteEditing::add(QString const& words, std::function<void()> what,
                          QKeySequence const& keys)
{
    auto* action = new QAction(words, &m_window);
    action->setShortcut(keys);
    m_menu->addAction(action);
    connect(action, &QAction::triggered, this, std::move(what));
    return action;
}

void NoteEditing::fillMenu()
{
    m_change = add(
        tr("Change &notes"), [this] { openPane(m_pane->isHidden()); }, Qt::Key_F2);
    m_change->setCheckable(true);
    add(
        tr("&Key, time and kind…"), [this] { editWhole(); }, Qt::SHIFT | Qt::Key_F2);
    m_menu->addSeparator();
    add(tr("A bar &before this one"), [this] { insertBar(false); });
    add(tr("A bar &after this one"), [this] { insertBar(true); });
    add(tr("Take this bar &out"), [this] { removeBar(); });
    m_menu->addSeparator();
    add(tr("&Repeat this part or passage"), [this] { repeat(true); });
    add(tr("No repea&t here"), [this] { repeat(false); });
    add(tr("&1st-time and 2nd-time bar here"), [this] { timeBars(); });
    add(tr("&Part begins here…"), [this] { namePart(); });
    m_menu->addSeparator();
    add(tr("An octave &higher"), [this] { octave(+1); });
    add(tr("An octave &lower"), [this] { octave(-1); });
    constexpr qsizetype behindEdit = 2;
    QList<QAction*> const menus = m_window.menuBar()->actions();
    m_window.menuBar()->insertMenu(menus.size() > behindEdit ? menus[behindEdit] : nullptr,
                                   m_menu);
}

void NoteEditing::fillPane()
{
    m_pane->hide();
    m_window.setBelowGrid(m_pane);
    connect(m_window.grid(), &TuneGrid::notesWanted, this, [this] { openPane(); });
    connect(m_pane, &MelodyEditor::edited, this,
            [this](Tune const& heard, QString const& what) {
                tune::BarIndex const before = m_session.brief().tune.bars.beyond();
                int const more = heard.bars.beyond() - before;
                m_own = true;
                becomeTune(m_session, heard, what, {before, std::max(more, 0)});
                m_own = false;
                m_pane->setTune(heardTune(m_session)); // also where it was refused
                selectBar(m_pane->typing().at.bar);
            });
    connect(m_pane, &MelodyEditor::barChanged, this, &NoteEditing::selectBar);
    connect(m_pane, &MelodyEditor::hearWanted, this,
            [this] { m_window.actions().hearBar->trigger(); });
    connect(m_pane, &MelodyEditor::left, this, [this] { openPane(false); });
    connect(m_pane, &MelodyEditor::barWanted, this, &NoteEditing::insertBar);
    connect(m_pane, &MelodyEditor::barUnwanted, this, &NoteEditing::removeBar);
    connect(m_pane, &MelodyEditor::timeBarsWanted, this, &NoteEditing::timeBars);
}

void NoteEditing::openPane(bool open)
{
    open = open && m_session.isOpen();
    if (open) m_window.setView(Workbench::View::Grid);
    open = open && !m_window.grid()->isHidden(); // no message is in its place
    bool const wasOpen = !m_pane->isHidden();
    m_pane->setVisible(open);
    m_change->setChecked(open);
    if (!open) {
        m_window.grid()->setFocus(Qt::OtherFocusReason);
        if (wasOpen) emit closed();
        return;
    }
    follow();
    m_pane->setFocus(Qt::OtherFocusReason);
    if (!wasOpen) emit opened();
}

void NoteEditing::enable()
{
    for (QAction* action : m_menu->actions()) action->setEnabled(m_session.isOpen());
}

tune::BarIndex NoteEditing::bar() const
{
    return m_pane->isHidden() ? m_session.writtenBar() : m_pane->typing().at.bar;
}

void NoteEditing::follow()
{
    enable();
    if (m_own || m_pane->isHidden() || !m_session.isOpen()) return;
    m_pane->setTune(heardTune(m_session));
    if (m_session.selected()) m_pane->setBar(m_session.writtenBar());
}

// The first position of a bar; where the left hand has none there, what is selected stays.
void NoteEditing::selectBar(tune::BarIndex bar)
{
    bar = m_session.arrangedBar(bar);
    auto const& positions = m_session.arrangement().positions;
    auto const in = [bar](auto const& placed) { return placed.position.bar == bar; };
    auto const selected = m_session.selected();
    if (selected && in(positions[*selected])) return;
    auto const found = std::find_if(positions.begin(), positions.end(), in);
    if (found != positions.end()) m_session.select(positions.indexOf(found));
}

// The bars of the tune as read that a passage of the arrangement is made from.
std::pair<tune::BarIndex, tune::BarIndex> NoteEditing::asRead(Passage passage) const
{
    tune::BarIndex const first = writtenBar(m_session.brief(), passage.firstBar);
    return {first, std::max(first, writtenBar(m_session.brief(), passage.lastBar))};
}

std::pair<tune::BarIndex, tune::BarIndex> NoteEditing::bars() const
{
    if (auto const passage = m_window.passage()) return asRead(*passage);
    auto const part = sectionOf(m_session.brief().tune, bar());
    return {part.first, part.last};
}

void NoteEditing::insertBar(bool after)
{
    if (!m_session.isOpen()) return;
    tune::BarIndex const at = bar() + (after ? 1 : 0);
    Tune const tune = withBars(heardTune(m_session), at);
    if (becomeTune(m_session, tune, tr("a bar more at %1").arg(name(tune, at)), {at, 1}))
        selectBar(at);
}

void NoteEditing::removeBar()
{
    if (!m_session.isOpen()) return;
    tune::BarIndex const at = bar();
    Tune const before = heardTune(m_session);
    Tune const tune = withoutBars(before, at, at);
    if (tune == before) return m_window.tell(tr("A tune needs at least one bar."));
    becomeTune(m_session, tune, tr("%1 taken out").arg(name(before, at)), {at, -1});
}

void NoteEditing::repeat(bool there)
{
    auto const [first, last] = bars();
    Tune const before = heardTune(m_session);
    Tune const tune =
        there ? withRepeat(before, first, last) : withoutRepeat(before, first, last);
    becomeTune(m_session, tune,
               (there ? tr("repeat from %1 to %2") : tr("no repeat from %1 to %2"))
                   .arg(name(before, first), name(before, last)));
}

void NoteEditing::timeBars()
{
    if (!m_session.isOpen()) return;
    Tune const before = heardTune(m_session);
    tune::BarIndex first = bar();
    tune::BarIndex last = first;
    tune::BarIndex const from = sectionOf(before, first).first;
    if (auto const passage = m_window.passage()) std::tie(first, last) = asRead(*passage);
    auto const tune = withTimeBars(before, from, first, last);
    if (!tune)
        return m_window.tell(tr("There are time bars here already, or no bar is left before "
                                "them. Choose the last bar of a part."));
    becomeTune(m_session, *tune, tr("1st-time and 2nd-time bar at %1").arg(name(before, first)),
               {last + 1, last - first + 1});
}

void NoteEditing::namePart()
{
    Tune const before = heardTune(m_session);
    tune::BarIndex const at = bar();
    bool ok = false;
    QString const part =
        QInputDialog::getText(
            &m_window, tr("Part"),
            tr("The part that begins with %1 (none: empty)").arg(name(before, at)),
            QLineEdit::Normal, QString::fromStdString(before.bars[at].part), &ok)
            .trimmed()
            .toUpper();
    if (!ok) return;
    static QRegularExpression const letter(QStringLiteral("^([A-Z][0-9]?)?$"));
    if (!letter.match(part).hasMatch())
        return m_window.tell(tr("A part is named by a letter, such as A, or B2."));
    becomeTune(m_session, withPart(before, at, part.toStdString()),
               part.isEmpty() ? tr("no part at %1").arg(name(before, at))
                              : tr("part %1 at %2").arg(part, name(before, at)));
}

void NoteEditing::octave(int by)
{
    Tune const before = heardTune(m_session);
    Tune const tune = withAllOctave(before, by);
    if (tune == before) return;
    becomeTune(m_session, tune, by > 0 ? tr("an octave higher") : tr("an octave lower"));
}

// The tune as it is written, whatever key it is played in; it is then played as it is written.
void NoteEditing::editWhole()
{
    TuneDialog dialog(m_session.brief().tune, &m_window);
    if (dialog.exec() != QDialog::Accepted) return;
    Tune wished = dialog.wished();
    if (wished == m_session.brief().tune) return;
    bool const otherKey = wished.key != m_session.brief().tune.key;
    int const more = wished.bars.size() - m_session.brief().tune.bars.size();
    proposal::Brief next =
        withEditedTune(m_session.brief(), std::move(wished), {0, more}, dialog.moved());
    next.key = otherKey ? proposal::KeyWish(proposal::AsWritten{}) : keptKey(m_session);
    m_session.goBackTo(std::move(next), tr("key, time and kind"));
}

} // namespace ui
