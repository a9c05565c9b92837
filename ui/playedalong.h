#pragma once

#include "core/arrange/arrangement.h"
#include "core/perform/playalong.h"

#include <QDialog>
#include <QString>

#include <vector>

namespace ui {

// What is told of a bar that was played along.
struct PlayedBarWords {
    tune::PlayedBarIndex playedBar = 0;
    QString words; // "Bar 5: G4 came a little late; C5 was D5."
};

// What was well, and each bar in which something was not, in kind words.
struct PlayedWords {
    QString summary;
    std::vector<PlayedBarWords> bars;
};
PlayedWords playedWords(arrange::Arrangement const& arrangement,
                        perform::Judgement const& judgement);

// The same to be looked at after a passage. Nothing of it is kept.
class PlayedDialog final : public QDialog {
    Q_OBJECT
public:
    PlayedDialog(PlayedWords const& words, QWidget* parent = nullptr);

signals:
    void barChosen(tune::PlayedBarIndex playedBar);
};

} // namespace ui
