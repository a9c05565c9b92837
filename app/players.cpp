#include "app/players.h"

#include "app/keeping/userfolder.h"
#include "app/preferences.h"
#include "core/files/textfile.h"
#include "ui/session.h"
#include "ui/words.h"
#include "ui/workbench.h"

#include <QActionGroup>
#include <QInputDialog>
#include <QMenu>
#include <QMessageBox>

#include <algorithm>
#include <utility>

namespace app {

namespace {

QString playerWords(files::Player const& player)
{
    return Players::tr("%1, %2 hand, level %3")
        .arg(ui::harpWords(player.harp), ui::handWords(player.hand))
        .arg(player.level.number);
}

} // namespace

Players::Players(Desk const& desk)
    : QObject(&desk.workbench), m_desk(desk), m_file(userFolder() / "pupils.json")
{
    std::error_code failed;
    if (std::filesystem::exists(m_file, failed)) {
        auto const text = files::readTextFile(m_file);
        auto read = text ? files::readPupils(*text, desk.tables, m_file.string())
                         : base::Result<files::Pupils>(text.error());
        m_readable = bool(read);
        if (!read)
            desk.workbench.tellFault(read.error());
        else
            m_pupils = std::move(read->players);
    }
    // Whoever was arranged for last is so again.
    QString const last = desk.preferences.pupil();
    if (std::ranges::any_of(m_pupils, [&](files::Player const& pupil) {
            return QString::fromStdString(pupil.name) == last;
        }))
        choose(last);
    connect(desk.workbench.actions().pupil, &QMenu::aboutToShow, this, &Players::fill);
    fill();
}

files::Player Players::asShown(std::string name) const
{
    proposal::Brief const& brief = m_desk.session.brief();
    return {std::move(name), brief.harp, brief.hand, brief.level};
}

files::Player Players::herself() const
{
    proposal::Brief const own = files::withStanding(
        m_desk.session.standing(), m_desk.preferences.standing(), m_desk.tables);
    return {{}, own.harp, own.hand, own.level};
}

void Players::fill()
{
    QMenu* const menu = m_desk.workbench.actions().pupil;
    menu->clear();
    auto* const group = new QActionGroup(menu);
    auto const entry = [&](QString const& words, QString const& name) {
        QAction* const action = menu->addAction(words);
        action->setCheckable(true);
        action->setChecked(name == m_current);
        group->addAction(action);
        connect(action, &QAction::triggered, this, [this, name] { choose(name); });
    };
    QString const own = m_current.isEmpty() ? playerWords(asShown({})) : playerWords(herself());
    entry(tr("&Yourself  (%1)").arg(own), {});
    for (files::Player const& pupil : m_pupils) {
        QString const name = QString::fromStdString(pupil.name);
        QString shown = name;
        entry(tr("%1  (%2)").arg(shown.replace('&', QStringLiteral("&&")), playerWords(pupil)),
              name);
    }
    menu->addSeparator();
    connect(menu->addAction(tr("&Add a pupil…")), &QAction::triggered, this, &Players::add);
    if (!m_current.isEmpty()) {
        connect(menu->addAction(tr("&Give %1 what is chosen now").arg(m_current)),
                &QAction::triggered, this, &Players::change);
        connect(menu->addAction(tr("&Remove %1…").arg(m_current)), &QAction::triggered, this,
                &Players::remove);
    }
    menu->addSeparator();
    QAction* const names = menu->addAction(tr("&Name the pupil on papers"));
    names->setCheckable(true);
    names->setChecked(m_desk.preferences.namesPupil());
    connect(names, &QAction::toggled, this, [this](bool on) {
        m_desk.preferences.keepNamesPupil(on);
        tellPapers();
    });
}

void Players::choose(QString const& name)
{
    if (name == m_current) return;
    files::Player player = herself();
    for (files::Player const& pupil : m_pupils)
        if (QString::fromStdString(pupil.name) == name) player = pupil;
    // What she chose for the one before stays hers or theirs: first the name changes, so that the
    // harp of a pupil is not kept as her own.
    QString const before = std::exchange(m_current, name);
    if (before.isEmpty())
        m_desk.preferences.keepStanding(
            files::standingText(m_desk.session.standing(), m_desk.tables));
    bool const open = m_desk.session.isOpen();
    if (!m_desk.session.setPlayer(player.harp, player.hand, player.level,
                                  name.isEmpty() ? tr("for yourself")
                                                 : tr("for %1").arg(name))) {
        m_current = before;
        return;
    }
    m_desk.preferences.keepPupil(name);
    tellPapers();
    if (open) emit chosen(name);
}

void Players::add()
{
    bool good = false;
    QString const name =
        QInputDialog::getText(&m_desk.workbench, tr("Add a pupil"),
                              tr("Name of the pupil, for whom you have chosen\n%1.\nThe list "
                                 "stays on this machine.")
                                  .arg(playerWords(asShown({}))),
                              QLineEdit::Normal, {}, &good)
            .trimmed();
    if (!good || name.isEmpty()) return;
    m_pupils = files::withPupil(std::move(m_pupils), asShown(name.toStdString()));
    keep();
    m_desk.workbench.tellDone(tr("%1 is in the list of pupils.").arg(name));
}

void Players::change()
{
    m_pupils = files::withPupil(std::move(m_pupils), asShown(m_current.toStdString()));
    keep();
    m_desk.workbench.tellDone(
        tr("%1 has %2 from now on.").arg(m_current, playerWords(asShown({}))));
}

void Players::remove()
{
    auto const answer = QMessageBox::question(
        &m_desk.workbench, tr("Remove a pupil"),
        tr("Take %1 out of the list? Saved arrangements stay as they are.").arg(m_current));
    if (answer != QMessageBox::Yes) return;
    std::erase_if(m_pupils, [this](files::Player const& pupil) {
        return QString::fromStdString(pupil.name) == m_current;
    });
    keep();
    choose({});
}

void Players::keep()
{
    if (!m_readable) return; // told at the start
    std::error_code failed;
    std::filesystem::create_directories(m_file.parent_path(), failed);
    auto const done = files::writeWhole(m_file, files::pupilsText(m_pupils, m_desk.tables));
    if (!done) m_desk.workbench.tellFault(done.error());
    fill();
}

void Players::tellPapers()
{
    m_desk.workbench.setPapersFor(m_desk.preferences.namesPupil() ? m_current : QString());
}

} // namespace app
