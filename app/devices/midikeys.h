#pragma once

#include "core/base/result.h"

#include <QObject>

#include <memory>
#include <string>
#include <vector>

namespace devices {

// A MIDI keyboard on which the harper tries strings. Signals come on the thread this lives on.
// The system is asked through its usual MIDI interface, or the one named by the variable
// SALLOW_MIDI_DRIVER ("alsa", "jack").
class MidiKeys final : public QObject {
    Q_OBJECT
public:
    explicit MidiKeys(QObject* parent = nullptr);
    ~MidiKeys() override;

    // Names of the keyboards that are there now; none where the system has no MIDI.
    std::vector<std::string> ports() const;

    // Listens to this keyboard and no longer to another. Fault: NoMidiPort.
    base::Result<base::Done> open(std::string const& port);
    void close();
    bool isOpen() const;

signals:
    // Velocity 1 to 127; `at`: when it arrived, in seconds of the steady clock.
    void keyPressed(int midi, int velocity, double at);
    void keyReleased(int midi, double at);

private:
    struct Input;
    std::unique_ptr<Input> m_input; // none while closed
};

} // namespace devices
