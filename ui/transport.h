#pragma once

#include "core/tune/tune.h"

#include <QWidget>

class QSlider;
class QLabel;

namespace ui {

class Button;

// "dotted crotchet = 56": the tempo at a percentage of the arrangement's own.
class MetronomeMark final : public QWidget {
    Q_OBJECT
public:
    explicit MetronomeMark(QWidget* parent = nullptr);
    void setTempo(tune::Tempo tempo, int percent);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString words() const;
    tune::Tempo m_tempo;
    int m_percent = 100;
};

// Playing: what, how fast, which hands. Knows no sound; it reports what was pressed.
class Transport final : public QWidget {
    Q_OBJECT
public:
    explicit Transport(QWidget* parent = nullptr);

    void setTempo(tune::Tempo tempo);       // of the arrangement at 100 %
    // The passage that is heard instead of a bar: "Bars 5–6"; empty: none.
    void setPassageWords(QString const& words);
    void setBarWords(QString const& words); // "bar 3": what "hear" hears
    void setPlaying(bool playing);
    void setReady(bool ready); // something is open

    int tempoPercent() const; // 25 to 150
    bool loops() const;
    bool countsIn() const;
    bool hearsLeft() const;
    bool hearsRight() const;
    int rollGapMs() const { return m_rollGapMs; }

public slots:
    void toggleLoop();
    void toggleCountIn();
    void toggleLeft();
    void toggleRight();
    void stepTempo(int percent); // by so much
    void resetTempo();           // to 100 %

signals:
    void playClicked(); // the whole tune; while playing stopClicked comes instead
    void stopClicked();
    void hearBarClicked();
    void fromHereClicked();
    void settingsChanged(); // tempo, loop, count-in, hands, roll

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void setRollGap(int ms);
    void fit();

    Button* m_play;
    Button* m_hearBar;
    Button* m_fromHere;
    Button* m_loop;
    QLabel* m_tempoWord;
    QSlider* m_tempo;
    MetronomeMark* m_mark;
    Button* m_countIn;
    Button* m_left;
    Button* m_right;
    Button* m_roll;
    tune::Tempo m_ownTempo;
    QString m_barWords;
    QString m_passageWords;
    bool m_playing = false;
    int m_rollGapMs = 45;
};

} // namespace ui
