#pragma once

#include "app/devices/midikeys.h"

#include <QObject>
#include <QTimer>

#include <string>
#include <vector>

namespace devices {

// The MIDI devices that are wanted, by name: taken when they are plugged in, let go when they are
// pulled out, and taken again when they come back.
class MidiLink final : public QObject {
    Q_OBJECT
public:
    // What stands for no device at all.
    static constexpr char const* none = "-";

    explicit MidiLink(QObject* parent = nullptr);

    // `in`: an instrument that is listened to; empty: the first that is there. `out`: one that is
    // played on; empty: none.
    void want(std::string in, std::string out);
    std::vector<std::string> inputs() const { return m_keys.ports(); }
    std::vector<std::string> outputs() const;
    std::string input() const { return m_in; }   // that is listened to now; empty: none
    std::string output() const { return m_out; } // that is there now; empty: none

    // Whether anything has come or gone; its own timer asks.
    void look();

signals:
    void keyPressed(int midi, int velocity, double at); // as of MidiKeys
    void keyReleased(int midi, double at);
    void inputCame(std::string const& port);
    void inputGone(std::string const& port);
    void outputCame(std::string const& port);
    void outputGone(std::string const& port);

private:
    void lookAtInput();
    void lookAtOutput();

    MidiKeys m_keys;
    std::string m_wantedIn;
    std::string m_wantedOut;
    std::string m_in;
    std::string m_out;
    QTimer m_timer;
};

} // namespace devices
