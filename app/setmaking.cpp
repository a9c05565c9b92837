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
    if (reading.placings == sheet::Placings::All)
        out << QStringLiteral("--brackets") << QStringLiteral("all");
    if (reading.placings == sheet::Placings::None)
        out << QStringLiteral("--brackets") << QStringLiteral("none");
    return out;
}

} // namespace

SetMaking::SetMaking(Desk const& desk, QString program)
    : BesideWindow(desk, desk.workbench.actions().tuneSet, std::move(program))
{
}

void SetMaking::open()
{
    Book const& book = m_desk.filing.book();
    if (book.entries.size() < 2) {
        m_desk.workbench.tell(
            tr("A set is made of tunes of one tunebook. Open a tunebook with two or more "
               "tunes first."));
        return;
    }
    if (!m_dialog) {
        m_text = QByteArray::fromStdString(book.text);
        m_dialog = new ui::SetDialog(tunesOf(book), forWhom(),
                                     m_desk.filing.folder().isEmpty() ? QDir::homePath()
                                                                      : m_desk.filing.folder(),
                                     m_desk.filing.entry(), &m_desk.workbench);
        connect(m_dialog, &ui::SetDialog::startClicked, this, &SetMaking::start);
        connect(m_dialog, &ui::SetDialog::cancelClicked, &m_copy, &SecondCopy::stop);
    }
    show(*m_dialog);
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
    if (m_desk.workbench.paper() == sheet::Paper::Letter)
        words << QStringLiteral("--paper") << QStringLiteral("letter");
    words << readingOptions(m_desk.workbench.reading());
    m_dialog->started();
    m_copy.start(QStringLiteral("arrange"), words + optionsFor(m_desk.session, m_desk.tables),
                 m_text);
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
