#pragma once

#include "tests/places.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QThread>

#include <functional>

// The real program on a screen of its own, with keys and clicks that come from the X server as
// those of a keyboard and a mouse do. What it has become is read from what the program keeps
// aside, as it is read after a crash.
namespace sitting {

// A machine under load is slow; nobody waits this long otherwise.
inline constexpr int patience = 60000; // ms

inline bool waitFor(std::function<bool()> const& there, int ms = patience)
{
    QElapsedTimer waiting;
    waiting.start();
    while (!there()) {
        if (waiting.hasExpired(ms)) return false;
        QThread::msleep(40);
    }
    return true;
}

inline bool isInstalled()
{
    for (char const* program : {"Xvfb", "xdotool"})
        if (QStandardPaths::findExecutable(program).isEmpty()) return false;
    return true;
}

// An X server without a screen that anybody sees; it ends with the test.
class Screen {
public:
    Screen()
    {
        m_server.setProgram("Xvfb");
        m_server.setArguments(
            {"-displayfd", "1", "-screen", "0", "1280x900x24", "-nolisten", "tcp"});
        m_server.start();
        QByteArray number;
        waitFor([&] {
            m_server.waitForReadyRead(100);
            number += m_server.readAllStandardOutput();
            return number.contains('\n') || m_server.state() == QProcess::NotRunning;
        });
        if (number.contains('\n')) m_display = ':' + number.trimmed();
    }
    ~Screen()
    {
        m_server.terminate();
        m_server.waitForFinished();
    }
    QByteArray const& display() const { return m_display; } // empty: it did not start

private:
    QProcess m_server;
    QByteArray m_display;
};

class Program {
public:
    // `more`: variables of its environment.
    explicit Program(Screen const& screen, QMap<QString, QString> const& more = {})
    {
        m_surroundings = QProcessEnvironment::systemEnvironment();
        for (char const* name :
             {"XDG_DATA_HOME", "XDG_CONFIG_HOME", "XDG_RUNTIME_DIR", "WAYLAND_DISPLAY",
              "SALLOW_SOUND_DRIVER", "SALLOW_MIDI_DRIVER"})
            m_surroundings.remove(name);
        for (auto const& [name, value] :
             {std::pair<char const*, QString>{"DISPLAY", screen.display()},
              {"QT_QPA_PLATFORM", "xcb"},
              {"HOME", m_home.path()},
              {"SALLOW_USER", m_home.filePath("user")},
              {"LC_ALL", "C.UTF-8"},
              {"CUPS_SERVER", m_home.filePath("no-printer")}}) // nothing is printed on paper
            m_surroundings.insert(name, value);
        for (auto const& [name, value] : more.asKeyValueRange())
            m_surroundings.insert(name, value);
        m_program.setProcessEnvironment(m_surroundings);
        m_program.setStandardOutputFile(QProcess::nullDevice());
        m_program.setStandardErrorFile(m_home.filePath("said"));
        m_program.start(QString::fromStdString(places::program()), QStringList());
        m_program.waitForStarted();
    }
    ~Program()
    {
        if (m_program.state() == QProcess::NotRunning) return;
        m_program.kill();
        m_program.waitForFinished();
    }

    QString at(QString const& name) const { return m_home.filePath(name); }

    // The window with these words in its title comes, and the keys go to it.
    bool goTo(QString const& title)
    {
        return waitFor([&] {
            QByteArray const found =
                asked({"search", "--all", "--onlyvisible", "--pid",
                       QString::number(m_program.processId()), "--name", title});
            QByteArray const window = found.split('\n').value(0).trimmed();
            if (window.isEmpty()) return false;
            asked({"windowfocus", "--sync", window});
            return asked({"getwindowfocus"}).trimmed() == window;
        });
    }
    bool goes(QString const& title) // it is no longer there
    {
        return waitFor([&] {
            return asked({"search", "--all", "--onlyvisible", "--pid",
                          QString::number(m_program.processId()), "--name", title})
                .trimmed()
                .isEmpty();
        });
    }
    void press(QStringList const& keys) { asked(QStringList{"key", "--delay", "60"} + keys); }
    void type(QString const& words) { asked({"type", "--delay", "40", words}); }

    // What is kept aside of the open tune, as a .sallow file holds it; `steps` too.
    QJsonObject kept() const
    {
        QDir const folder(m_home.filePath("user/unsaved"));
        for (QString const& name : folder.entryList({"*.unsaved"})) {
            QFile file(folder.filePath(name));
            if (!file.open(QIODevice::ReadOnly)) continue;
            QJsonObject const aside = QJsonDocument::fromJson(file.readAll()).object();
            QJsonObject work =
                QJsonDocument::fromJson(aside["document"].toString().toUtf8()).object();
            work["steps"] = aside["steps"];
            return work;
        }
        return {};
    }
    // Its bars, without spaces and line ends: "GABdga|gabgab|".
    QString music() const
    {
        QString bars = kept()["abc"].toString().section("\nK:", 1).section('\n', 1);
        return bars.remove('\n').remove(' ').remove("\\");
    }

    bool leave() // as she does; answers whether it ended well
    {
        press({"ctrl+q"});
        return m_program.waitForFinished(patience) &&
               m_program.exitStatus() == QProcess::NormalExit && m_program.exitCode() == 0;
    }

private:
    QByteArray asked(QStringList const& words) const
    {
        QProcess tool;
        tool.setProcessEnvironment(m_surroundings);
        tool.start("xdotool", words);
        tool.waitForFinished(patience);
        return tool.readAllStandardOutput();
    }

    QTemporaryDir m_home;
    QProcessEnvironment m_surroundings;
    QProcess m_program;
};

} // namespace sitting
