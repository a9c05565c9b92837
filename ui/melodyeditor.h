#pragma once

#include "core/tune/edit/typing.h"

#include <QWidget>

class QBoxLayout;
class QLabel;
class QLineEdit;

namespace ui {

class Button;
class MelodyLane;

// The pane on which the notes of a tune are changed: an enlarged lane with a caret, the same
// bar as a line of ABC, and buttons for what the keys do. Works on a tune in the key that is
// played and says what it has become.
class MelodyEditor final : public QWidget {
    Q_OBJECT
public:
    explicit MelodyEditor(QWidget* parent = nullptr);

    // The tune as it is now; the caret stays where it was as far as it can.
    void setTune(tune::Tune tune);
    void setBar(tune::BarIndex bar); // the caret goes there
    tune::Typing const& typing() const { return m_typing; }

    // A string that was plucked, or a key of a keyboard.
    void play(music::Pitch pitch);
    bool writesWhatIsPlayed() const;
    void holdStepEntry(bool hold) { m_held = hold; } // what is played is not written one by one

    MelodyLane* lane() const { return m_lane; }
    QLineEdit* line() const { return m_line; }
    QString said() const;
    QSize minimumSizeHint() const override;

signals:
    void edited(tune::Tune const& tune, QString const& what);
    void barChanged(tune::BarIndex bar); // the caret is in another one
    void hearWanted();
    void left();                // she is done
    void barWanted(bool after); // one bar of rest before this one, or after it
    void barUnwanted();
    void timeBarsWanted();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void take(tune::Typed typed);
    void sign(char sign);
    void readLine();
    void show();
    QString stateWords() const;

    tune::Typing m_typing;
    QBoxLayout* m_tools; // the buttons, in two halves
    MelodyLane* m_lane;
    QLineEdit* m_line;
    QLabel* m_state;
    QLabel* m_said;
    QLabel* m_help;
    Button* m_plays;
    bool m_held = false;
    Button* m_triplet;
    Button* m_grace;
    struct LengthButton {
        music::Length length;
        Button* button;
    };
    std::vector<LengthButton> m_lengths;
};

} // namespace ui
