#pragma once

#include "core/tune/tune.h"

#include <QWidget>

class QBoxLayout;
class QLabel;
class QSpinBox;

namespace ui {

class Button;

// The strip over the melody while notes are played in time: what to do now, how fast the clicks
// go, and what becomes of what was played. Enter or Space does what comes next, R plays it
// again, Esc gives it up.
class TakeBar final : public QWidget {
    Q_OBJECT
public:
    enum class Stage { Ready, Playing, Played };

    explicit TakeBar(QWidget* parent = nullptr);

    void setStage(Stage stage, QString const& words);
    void setTempo(tune::Tempo tempo);
    tune::Tempo tempo() const; // of the clicks, as it is set
    Stage stage() const { return m_stage; }
    QString words() const;

signals:
    void startClicked();
    void stopClicked();
    void keepClicked();
    void againClicked();
    void leaveClicked(); // what was played is thrown away

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void next(); // what Enter does
    void lay();  // the words beside the rest, or over it where there is no room

    Stage m_stage = Stage::Ready;
    music::Length m_beat{music::Rational(1, 4)};
    QLabel* m_words;
    QLabel* m_beatWords;
    QSpinBox* m_tempo;
    Button* m_next;
    Button* m_again;
    Button* m_leave;
    QBoxLayout* m_all;
    QBoxLayout* m_row;
};

} // namespace ui
