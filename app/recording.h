#pragma once

#include "core/tune/edit/take.h"

#include <QObject>

#include <vector>

namespace sound {
class Player;
}
namespace ui {
class NoteTake;
}

namespace app {

// Sounds the clicks of a take and notes what is played to them, in the time of what is heard.
class Recording final : public QObject {
    Q_OBJECT
public:
    Recording(sound::Player& player, QObject* parent);

    void serve(ui::NoteTake& take);
    bool isOn() const { return m_take != nullptr; }
    // Keys of her instrument; `at` in seconds of the steady clock, when they arrived.
    void press(int midi, double at);
    void release(int midi, double at);

signals:
    void wanted(); // before clicks are heard: the output is to be open

private:
    double inTake(double at) const;
    void finish();

    sound::Player& m_player;
    ui::NoteTake* m_take = nullptr; // while it is on
    double m_countIn = 0;
    std::vector<tune::HeardNote> m_played;
};

} // namespace app
