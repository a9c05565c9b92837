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
    for (char const* ofTune : {"percent", "lilt", "from", "to", "by", "every"})
        all.remove(QLatin1String(ofTune));
    return QJsonDocument(all).toJson(QJsonDocument::Compact);
}

} // namespace

Remembering::Remembering(Preferences& preferences, ui::Workbench& workbench,
                         ui::Session& session, Filing& filing, Players& players,
                         files::Tables const& tables)
    : QObject(&workbench), m_preferences(preferences), m_workbench(workbench),
      m_session(session), m_filing(filing)
{
    m_soon.setSingleShot(true);
    m_soon.setInterval(700);
    connect(&m_soon, &QTimer::timeout, this, &Remembering::keepPlace);
    filing.setFolder(preferences.folder());
    // Of a pupil's harp the list of pupils knows; hers is kept here.
    connect(&session, &ui::Session::standingChanged, this, [this, &players, &tables] {
        if (players.current().isEmpty())
            m_preferences.keepStanding(files::standingText(m_session.standing(), tables));
    });
    connect(&session, &ui::Session::selectionChanged, this, [this] { m_soon.start(); });
    connect(workbench.transport(), &ui::Transport::settingsChanged, this, [this] {
        m_practised = true;
        m_soon.start();
    });
    // What is set for practice goes on; how fast, how uneven and what was listened to are of a tune.
    workbench.transport()->restoreSettings(withoutTempo(preferences.practice()));
    connect(&filing, &Filing::fileUsed, this, [this](QString const& path) {
        m_preferences.addRecent(QFileInfo(path).absoluteFilePath());
        m_preferences.keepFolder(QFileInfo(path).absolutePath());
        fillRecent();
    });
    connect(&filing, &Filing::leaving, this, [this] {
        if (m_soon.isActive()) keepPlace();
    });
    filing.beginBooksAt([this](QString const& file) {
        return m_preferences.place(QFileInfo(file).absoluteFilePath()).value_or(0);
    });
    connect(&filing, &Filing::tuneShown, this,
            [this](QString const& name, QString const& file, int inBook) {
                m_soon.stop();
                m_tune = name;
                m_preferences.keepPlace(file, inBook);
                if (auto const place = m_preferences.place(name)) m_session.select(*place);
                QByteArray const practised = m_preferences.practice(name);
                ui::Transport& transport = *m_workbench.transport();
                if (practised.isEmpty())
                    transport.resetTempo();
                else
                    transport.restoreSettings(practised);
                m_practised = false; // nothing that is to be kept
            });
    // What was saved for one player is not written over for another.
    connect(&players, &Players::chosen, &filing, [&filing](QString const& name) {
        filing.becomeCopy(name.isEmpty() ? QString() : Players::tr(", for %1").arg(name));
    });
    fillRecent();
}

void Remembering::keepPlace()
{
    m_soon.stop();
    if (!m_tune.isEmpty() && m_session.selected())
        m_preferences.keepPlace(m_tune, *m_session.selected());
    if (std::exchange(m_practised, false))
        m_preferences.keepPractice(m_tune, m_workbench.transport()->settings());
}

void Remembering::keepNow()
{
    keepPlace();
    m_preferences.keepFrom(m_workbench);
}

void Remembering::fillRecent()
{
    QMenu* const menu = m_workbench.actions().recent;
    menu->clear();
    menu->setToolTipsVisible(true);
    int number = 0;
    for (QString const& file : m_preferences.recent()) {
        QFileInfo const info(file);
        QString const key = ++number < 10 ? QStringLiteral("&%1  ").arg(number) : QString();
        QString name = info.fileName();
        QAction* const action = menu->addAction(key + name.replace('&', QStringLiteral("&&")));
        action->setToolTip(QDir::toNativeSeparators(info.absolutePath()));
        connect(action, &QAction::triggered, this, [this, file] { m_filing.open(file); });
    }
    if (number > 0) {
        menu->addSeparator();
        connect(menu->addAction(tr("Clear this list")), &QAction::triggered, this, [this] {
            m_preferences.forgetRecent();
            fillRecent();
        });
    }
    menu->setEnabled(number > 0);
}

} // namespace app
