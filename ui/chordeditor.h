#pragma once

#include "core/harmony/findchords.h"
#include "core/music/chord.h"

#include <QDialog>

#include <optional>
#include <vector>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;

namespace ui {

class Button;

// A place of the bar where a chord may begin, in the key that is played.
struct ChordBeat {
    QString name;        // "beat 2", "beat 1, G begins"
    music::Length at;    // from the start of the bar
    bool begins = false; // a chord begins here
    std::optional<music::Chord> chord;   // that sounds here
    std::vector<harmony::Likely> likely; // likeliest first
};

// What the arranger wants of a chord.
struct ChordWish {
    enum class What { Set, TakeOut, Split, Earlier, Later };
    What what = What::Set;
    std::size_t beat = 0; // index into the beats that were given
    music::Chord chord;   // to set, in the key that is played
    bool everywhere = false;
};

// One chord of the tune, typed or chosen among the likely ones. What is typed is checked at
// every letter.
class ChordEditor final : public QDialog {
    Q_OBJECT
public:
    // `alike`: how many bars have the same notes, this one counted.
    ChordEditor(QString const& place, std::vector<ChordBeat> beats, std::size_t beat, int alike,
                QWidget* parent);

    // What was decided when it was accepted.
    ChordWish const& wish() const { return m_wish; }

    QLineEdit* line() const { return m_line; }
    QComboBox* beats() const { return m_beat; }
    QListWidget* likely() const { return m_likely; }
    QCheckBox* everywhere() const { return m_everywhere; }
    QString said() const;

signals:
    void hearWanted(ui::ChordWish const& wish); // what would be set now, in its bar

private:
    void showBeat();
    void check();
    void done(ChordWish::What what);
    void set();

    std::vector<ChordBeat> m_beats;
    QComboBox* m_beat;
    QLineEdit* m_line;
    QLabel* m_said;
    QListWidget* m_likely;
    QCheckBox* m_everywhere;
    Button* m_set;
    Button* m_hear;
    Button* m_takeOut;
    Button* m_split;
    Button* m_earlier;
    Button* m_later;
    std::optional<music::Chord> m_read;
    ChordWish m_wish;
};

} // namespace ui
