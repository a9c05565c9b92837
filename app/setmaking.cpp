#include "app/setmaking.h"

#include "app/batchrun.h"
#include "app/filing.h"
#include "ui/session.h"
#include "ui/words.h"
#include "ui/workbench.h"

#include <QDir>

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
      m_tables(tables), m_copy(std::move(program), this)
{
    connect(workbench.actions().tuneSet, &QAction::triggered, this, &SetMaking::open);
    connect(&m_copy, &SecondCopy::said, this, &SetMaking::hear);
    connect(&m_copy, &SecondCopy::ended, this, &SetMaking::tellEnd);
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
        connect(m_dialog, &ui::SetDialog::cancelClicked, &m_copy, &SecondCopy::stop);
    }
    m_dialog->show();
    m_dialog->raise();
    m_dialog->activateWindow();
}

void SetMaking::start()
{
    QStringList numbers;
    for (int number : m_dialog->numbers()) numbers << QString::number(number);
    QStringList words{QStringLiteral("-"), QStringLiteral("--set"),
                      numbers.join(QLatin1Char(','))};
    if (!m_dialog->title().isEmpty()) words << QStringLiteral("--title=") + m_dialog->title();
    if (m_dialog->anyOrder()) words << QStringLiteral("--any-order");
    for (QString const& file : m_dialog->files()) words << QStringLiteral("-o") << file;
    if (m_workbench.paper() == sheet::Paper::Letter)
        words << QStringLiteral("--paper") << QStringLiteral("letter");
    words << readingOptions(m_workbench.reading());
    m_dialog->started();
    m_copy.start(QStringLiteral("arrange"), words + optionsFor(m_session, m_tables), m_text);
}

void SetMaking::hear(QString const& line)
{
    auto const said = batchLine(line);
    if (said && m_dialog) m_dialog->addNote(said->words);
}

void SetMaking::tellEnd(SecondCopy::End how)
{
    if (!m_dialog) return;
    switch (how) {
    case SecondCopy::End::Stopped:
        return m_dialog->ended(tr("Stopped."));
    case SecondCopy::End::NotStarted:
        return m_dialog->ended(tr("The work could not be started."));
    case SecondCopy::End::Done:
        return m_dialog->ended(
            tr("Done: %1").arg(m_dialog->files().join(QStringLiteral(", "))));
    case SecondCopy::End::Refused:
        return m_dialog->ended(tr("The set could not be made."));
    }
}

} // namespace app
