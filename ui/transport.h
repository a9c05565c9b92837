#pragma once

#include "core/tune/tune.h"
#include "ui/compared.h"
#include "ui/practice.h"

#include <QByteArray>
#include <QWidget>

#include <optional>

class QSlider;
class QLabel;
class QSpinBox;

namespace ui {

class Button;
class PracticeCard;

// "dotted crotchet = 56 · 60 %": the tempo, to be typed as beats a minute or as per cent of the
// arrangement's own; arrow keys and the wheel go in ones.
class TempoField final : public QWidget {
    Q_OBJECT
public:
    explicit TempoField(QWidget* parent = nullptr);
    void setOwnTempo(tune::Tempo tempo); // at 100 %
    void setScale(double scale);         // says nothing
    double scale() const { return m_scale; }

signals:
    void scaleTyped(double scale); // 0.25 to 1.5
    void entered();                // Enter: back to the music

protected:
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void type(double scale);

    QSpinBox* m_beats;
    QSpinBox* m_percent;
    tune::Tempo m_tempo;
    double m_scale = 1;
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

    double tempoScale() const; // 0.25 to 1.5
    int tempoPercent() const;  // the same, rounded
    // The tempo that is heard, where it steps up by itself.
    void showTempo(double scale);
    // Which of two settings is heard; none: nothing is compared.
    void setCompared(std::optional<Compared> which);
    Practice practice() const;
    // All that is set here, to be kept, and back again; what is not readable is passed over.
    QByteArray settings() const;
    void restoreSettings(QByteArray const& settings);
    PracticeCard* practiceCard() const { return m_card; }
    bool loops() const;
    bool countsIn() const;
    bool hearsLeft() const;
    bool hearsRight() const;

public slots:
    void toggleLoop();
    void toggleCountIn();
    void toggleLeft();
    void toggleRight();
    void stepTempo(int percent); // by so much
    void openPractice();
    void typeTempo();            // the cursor into the field
    void resetTempo();           // to 100 %

signals:
    void playClicked(); // the whole tune; while playing stopClicked comes instead
    void stopClicked();
    void hearBarClicked();
    void fromHereClicked();
    void settingsChanged(); // tempo, loop, count-in, hands, practice
    void tempoEntered();    // typed and done
    void flipClicked();     // to the other of two settings

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void setScale(double scale);
    void fit();

    Button* m_play;
    Button* m_hearBar;
    Button* m_fromHere;
    Button* m_loop;
    QLabel* m_tempoWord;
    QSlider* m_tempo;
    TempoField* m_field;
    Button* m_countIn;
    Button* m_left;
    Button* m_right;
    Button* m_compared;
    Button* m_practice;
    PracticeCard* m_card;
    double m_scale = 1;
    QString m_barWords;
    QString m_passageWords;
    bool m_playing = false;
};

} // namespace ui
