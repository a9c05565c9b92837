#pragma once

#include <QByteArray>
#include <QObject>
#include <QProcess>
#include <QString>
#include <QStringList>

namespace app {

// A second copy of this program at a command's work, so that the window stays free. It speaks
// the window's language.
class SecondCopy final : public QObject {
    Q_OBJECT
public:
    enum class End { Done, Refused, Stopped, NotStarted };

    SecondCopy(QString program, QObject* parent); // empty: the running one

    // The command, its words, and what it reads where one of them is a dash.
    void start(QString const& verb, QStringList const& words, QByteArray const& input = {});
    void stop();

signals:
    void said(QString const& line); // whole, as it was said
    void ended(app::SecondCopy::End how);

private:
    void read();
    void end();

    QString m_program;
    QProcess m_process;
    QByteArray m_line; // the beginning of one that is not whole yet
    bool m_stopped = false;
};

} // namespace app
