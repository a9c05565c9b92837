#include "app/setmaking.h"

#include "app/batchrun.h"
#include "app/filing.h"
#include "app/language.h"
#include "core/base/words.h"
#include "ui/session.h"
#include "ui/words.h"
#include "ui/workbench.h"

#include <QCoreApplication>
#include <QDir>
#include <QRegularExpression>

namespace app {

namespace {

QStringList readingOptions(ui::Reading const& reading)
{
    QStringList out;
    if (reading.staffMm == sheet::largeStaffMm)
        out << QStringLiteral("--print-size") << QStringLiteral("large");
    if (reading.staffMm == sheet::hugeStaffMm)
        out << QStringLiteral("--print-size") << QStringLiteral("huge");
    if (reading.helps.coloured) out << QStringLiteral("--coloured");
    if (reading.helps.noteNames) out << QStringLiteral("--note-names");
    if (reading.helps.stringPath) out << QStringLiteral("--string-path");
    return out;
}

} // namespace

SetMaking::SetMaking(ui::Workbench& workbench, ui::Session& session, Filing& filing,
                     files::Tables const& tables, QString program)
    : QObject(&workbench), m_workbench(workbench), m_session(session), m_filing(filing),
      m_tables(tables), m_program(std::move(program))
{
    connect(workbench.actions().tuneSet, &QAction::triggered, this, &SetMaking::open);
    m_process.setStandardOutputFile(QProcess::nullDevice());
    connect(&m_process, &QProcess::readyReadStandardError, this, &SetMaking::read);
    connect(&m_process, &QProcess::finished, this, &SetMaking::ended);
    connect(&m_process, &QProcess::errorOccurred, this, [this](QProcess::ProcessError error) {
        if (error == QProcess::FailedToStart) ended();
    });
}

void SetMaking::open()
{
    Book const& book = m_filing.book();
    if (book.entries.size() < 2) {
        m_workbench.tell(
            tr("A set is made of tunes of one tunebook. Open a tunebook with two or more "
               "tunes first."));
        return;
    }
    if (!m_dialog) {
        m_text = QByteArray::fromStdString(book.text);
        proposal::Brief const& brief = m_session.standing();
        m_dialog = new ui::SetDialog(
            tunesOf(book),
            tr("%1, %2 hand, level %3")
                .arg(ui::harpWords(brief.harp), ui::handWords(brief.hand))
                .arg(brief.level.number),
            m_filing.folder().isEmpty() ? QDir::homePath() : m_filing.folder(),
            m_filing.entry(), &m_workbench);
        m_dialog->setAttribute(Qt::WA_DeleteOnClose);
        connect(m_dialog, &QObject::destroyed, this, [this] { m_dialog = nullptr; });
        connect(m_dialog, &ui::SetDialog::startClicked, this, &SetMaking::start);
        connect(m_dialog, &ui::SetDialog::cancelClicked, this, [this] {
            m_cancelled = true;
            m_process.terminate();
        });
    }
    m_dialog->show();
    m_dialog->raise();
    m_dialog->activateWindow();
}

void SetMaking::start()
{
    m_cancelled = false;
    m_line.clear();
    QStringList numbers;
    for (int number : m_dialog->numbers()) numbers << QString::number(number);
    QStringList words{QStringLiteral("arrange"),
                      QStringLiteral("--language"),
                      QString::fromStdString(languageSpoken()),
                      QStringLiteral("-"),
                      QStringLiteral("--set"),
                      numbers.join(QLatin1Char(','))};
    if (!m_dialog->title().isEmpty()) words << QStringLiteral("--title=") + m_dialog->title();
    if (m_dialog->anyOrder()) words << QStringLiteral("--any-order");
    for (QString const& file : m_dialog->files()) words << QStringLiteral("-o") << file;
    if (m_workbench.paper() == sheet::Paper::Letter)
        words << QStringLiteral("--paper") << QStringLiteral("letter");
    words << readingOptions(m_workbench.reading());
    m_dialog->started();
    m_process.start(m_program.isEmpty() ? QCoreApplication::applicationFilePath() : m_program,
                    words + optionsFor(m_session, m_tables));
    m_process.write(m_text);
    m_process.closeWriteChannel();
}

void SetMaking::read()
{
    static QRegularExpression const ours(
        QStringLiteral("^sallow: (%1)?(.*)$")
            .arg(QRegularExpression::escape(QString::fromStdString(base::said("note: ")))));
    m_line += m_process.readAllStandardError();
    while (true) {
        qsizetype const end = m_line.indexOf('\n');
        if (end < 0) return;
        auto const said = ours.match(QString::fromUtf8(m_line.left(end)));
        m_line.remove(0, end + 1);
        if (said.hasMatch() && m_dialog) m_dialog->addNote(said.captured(2));
    }
}

void SetMaking::ended()
{
    read();
    if (!m_dialog) return;
    if (m_cancelled)
        m_dialog->ended(tr("Stopped."));
    else if (m_process.error() == QProcess::FailedToStart)
        m_dialog->ended(tr("The work could not be started."));
    else if (m_process.exitStatus() == QProcess::NormalExit && m_process.exitCode() == 0)
        m_dialog->ended(tr("Done: %1").arg(m_dialog->files().join(QStringLiteral(", "))));
    else
        m_dialog->ended(tr("The set could not be made."));
}

} // namespace app
