#pragma once

#include <QDialog>
#include <QString>
#include <QStringList>

#include <utility>
#include <vector>

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace ui {

// How the harp sounds, and which MIDI devices it is played by and plays on.
struct HarpSound {
    QString font; // a file; empty: the one that is taken by itself
    double a4 = 440;
    QString temperament = QStringLiteral("equal"); // its id, or cents by note
    int halo = 0;                                  // per cent
    QString midiIn;  // a device's name; empty: the first that is there; "-": none
    QString midiOut; // empty: none
    friend bool operator==(HarpSound const&, HarpSound const&) = default;
};

// Chooses them; each change is heard at once. Knows no sound and no MIDI.
class HarpSoundDialog final : public QDialog {
    Q_OBJECT
public:
    // `fonts`: files that are there; `temperaments`: id and name.
    HarpSoundDialog(HarpSound const& begin, QStringList const& fonts,
                    std::vector<std::pair<QString, QString>> const& temperaments,
                    QWidget* parent = nullptr);

    HarpSound chosen() const;
    // The MIDI devices that are there now; what is chosen stays in the list.
    void setDevices(QStringList const& inputs, QStringList const& outputs);
    // What is off, or what was done; empty: nothing to say.
    void tell(QString const& words);

signals:
    void changed(ui::HarpSound const& sound);
    void testNoteClicked();
    void otherFontClicked();

public slots:
    void addFont(QString const& file); // and chooses it

private:
    void say();

    QComboBox* m_font;
    QDoubleSpinBox* m_a4;
    QComboBox* m_temperament;
    QLineEdit* m_cents;
    QSpinBox* m_halo;
    QComboBox* m_in;
    QComboBox* m_out;
    QLabel* m_words;
    HarpSound m_said;
};

} // namespace ui
