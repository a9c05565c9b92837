#include "app/secondcopy.h"

#include "app/language.h"

#include <QCoreApplication>

#include <utility>

namespace app {

SecondCopy::SecondCopy(QString program, QObject* parent)
    : QObject(parent), m_program(std::move(program))
{
    m_process.setStandardOutputFile(QProcess::nullDevice());
    connect(&m_process, &QProcess::readyReadStandardError, this, &SecondCopy::read);
    connect(&m_process, &QProcess::finished, this, &SecondCopy::end);
    connect(&m_process, &QProcess::errorOccurred, this, [this](QProcess::ProcessError error) {
        if (error == QProcess::FailedToStart) end();
    });
}

void SecondCopy::start(QString const& verb, QStringList const& words, QByteArray const& input)
{
    m_stopped = false;
    m_line.clear();
    QStringList const spoken{verb, QStringLiteral("--language"),
                             QString::fromStdString(languageSpoken())};
    m_process.start(m_program.isEmpty() ? QCoreApplication::applicationFilePath() : m_program,
                    spoken + words);
    if (!input.isEmpty()) m_process.write(input);
    m_process.closeWriteChannel();
}

void SecondCopy::stop()
{
    m_stopped = true;
    m_process.terminate();
}

void SecondCopy::read()
{
    m_line += m_process.readAllStandardError();
    for (qsizetype end = m_line.indexOf('\n'); end >= 0; end = m_line.indexOf('\n')) {
        QString const line = QString::fromUtf8(m_line.left(end));
        m_line.remove(0, end + 1);
        emit said(line);
    }
}

void SecondCopy::end()
{
    read();
    bool const started = m_process.error() != QProcess::FailedToStart;
    bool const fine =
        m_process.exitStatus() == QProcess::NormalExit && m_process.exitCode() == 0;
    emit ended(m_stopped  ? End::Stopped
               : !started ? End::NotStarted
               : fine     ? End::Done
                          : End::Refused);
}

} // namespace app
