#pragma once

#include <QDialog>
#include <QString>

class QCheckBox;
class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QSpinBox;

namespace ui {

// What a sound file is to hold. Bars as printed.
struct SoundChoice {
    int firstBar = 0;
    int lastBar = 0;
    int percent = 100; // of the tempo
    bool left = true;
    bool right = true;
    bool countIn = false;
    bool click = false;
    int times = 1;
    bool pack = false; // four files for practice instead of one
    QString ending = QStringLiteral("wav");
    bool tuneAlone = false; // the right hand without added notes
    bool steps = false;     // faster by itself, instead of one tempo
    QString stepsWords{};   // "60 to 100 % by 5, each 2 times": what the steps are
};

// Sound files of a passage or of the whole tune: what is wanted, how far it is. Who owns it
// makes them.
class SoundDialog final : public QDialog {
    Q_OBJECT
public:
    // `begin`: what it opens with; the tune has the printed bars `first` to `last`.
    SoundDialog(SoundChoice const& begin, int first, int last, QWidget* parent = nullptr);

    SoundChoice choice() const;

    void started();
    void reached(double part); // 0 to 1
    void ended(QString const& words);

signals:
    void startClicked();
    void cancelClicked();

protected:
    void reject() override; // while it runs: asks the work to stop

private:
    void enable();

    QComboBox* m_what;
    QSpinBox* m_first;
    QSpinBox* m_last;
    QSpinBox* m_tempo;
    QComboBox* m_hands;
    QCheckBox* m_countIn;
    QCheckBox* m_click;
    QSpinBox* m_times;
    QComboBox* m_kind;
    QCheckBox* m_steps;
    QProgressBar* m_progress;
    QLabel* m_words;
    QPushButton* m_start;
    bool m_running = false;
};

} // namespace ui
