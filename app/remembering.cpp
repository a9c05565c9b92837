#include "app/remembering.h"

#include "app/filing.h"
#include "app/players.h"
#include "core/files/work/player.h"
#include "ui/session.h"
#include "ui/transport.h"
#include "ui/workbench.h"

#include <QDir>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMenu>

#include <utility>

namespace app {

namespace {

QByteArray withoutTempo(QByteArray const& settings)
{
    QJsonObject all = QJsonDocument::fromJson(settings).object();
    for (char const* ofTune : {"percent", "lilt", "slowing", "from", "to", "by", "every"})
        all.remove(QLatin1String(ofTune));
    return QJsonDocument(all).toJson(QJsonDocument::Compact);
}

} // namespace

Remembering::Remembering(Desk const& desk, Players& players)
    : QObject(&desk.workbench), m_desk(desk)
{
    m_soon.setSingleShot(true);
    m_soon.setInterval(700);
    connect(&m_soon, &QTimer::timeout, this, &Remembering::keepPlace);
    desk.filing.setFolder(desk.preferences.folder());
    // Of a pupil's harp the list of pupils knows; hers is kept here.
    connect(&desk.session, &ui::Session::standingChanged, this, [this, &players] {
        if (players.current().isEmpty())
            m_desk.preferences.keepStanding(
                files::standingText(m_desk.session.standing(), m_desk.tables));
    });
    connect(&desk.session, &ui::Session::selectionChanged, this, [this] { m_soon.start(); });
    connect(desk.workbench.transport(), &ui::Transport::settingsChanged, this, [this] {
        m_practised = true;
        m_soon.start();
    });
    // What is set for practice goes on; how fast, how uneven and what was listened to are of a tune.
    desk.workbench.transport()->restoreSettings(withoutTempo(desk.preferences.practice()));
    connect(&desk.filing, &Filing::fileUsed, this, [this](QString const& path) {
        m_desk.preferences.addRecent(QFileInfo(path).absoluteFilePath());
        m_desk.preferences.keepFolder(m_desk.filing.folder());
        fillRecent();
    });
    connect(&desk.filing, &Filing::leaving, this, [this] {
        if (m_soon.isActive()) keepPlace();
    });
    desk.filing.beginBooksAt([this](QString const& file) {
        return m_desk.preferences.place(QFileInfo(file).absoluteFilePath()).value_or(0);
    });
    connect(&desk.filing, &Filing::tuneShown, this,
            [this](QString const& name, QString const& file, int inBook) {
                m_soon.stop();
                m_tune = name;
                m_desk.preferences.keepPlace(file, inBook);
                if (auto const place = m_desk.preferences.place(name))
                    m_desk.session.select(arrange::PositionIndex(*place));
                QByteArray const practised = m_desk.preferences.practice(name);
                ui::Transport& transport = *m_desk.workbench.transport();
                if (practised.isEmpty())
                    transport.resetTempo();
                else
                    transport.restoreSettings(practised);
                m_practised = false; // nothing that is to be kept
            });
    // What was saved for one player is not written over for another.
    connect(&players, &Players::chosen, &desk.filing, [this](QString const& name) {
        m_desk.filing.becomeCopy(name.isEmpty() ? QString()
                                                : Players::tr(", for %1").arg(name));
    });
    fillRecent();
}

void Remembering::keepPlace()
{
    m_soon.stop();
    if (!m_tune.isEmpty() && m_desk.session.selected())
        m_desk.preferences.keepPlace(m_tune, *m_desk.session.selected());
    if (std::exchange(m_practised, false))
        m_desk.preferences.keepPractice(m_tune, m_desk.workbench.transport()->settings());
}

void Remembering::keepNow()
{
    keepPlace();
    m_desk.preferences.keepFrom(m_desk.workbench);
}

void Remembering::fillRecent()
{
    QMenu* const menu = m_desk.workbench.actions().recent;
    menu->clear();
    menu->setToolTipsVisible(true);
    int number = 0;
    for (QString const& file : m_desk.preferences.recent()) {
        QFileInfo const info(file);
        QString const key = ++number < 10 ? QStringLiteral("&%1  ").arg(number) : QString();
        QString name = info.fileName();
        QAction* const action = menu->addAction(key + name.replace('&', QStringLiteral("&&")));
        action->setToolTip(QDir::toNativeSeparators(info.absolutePath()));
        connect(action, &QAction::triggered, this, [this, file] { m_desk.filing.open(file); });
    }
    if (number > 0) {
        menu->addSeparator();
        connect(menu->addAction(tr("Clear this list")), &QAction::triggered, this, [this] {
            m_desk.preferences.forgetRecent();
            fillRecent();
        });
    }
    menu->setEnabled(number > 0);
}

} // namespace app
