#pragma once

#include "app/sound/output.h"
#include "core/perform/schedule.h"

#include <QObject>
#include <QTimer>

#include <memory>

namespace sound {

// Plays schedules and says, on the thread it lives on, what is being played, so that strings
// and bars can light. Without a device it plays silently and says the same.
class Player final : public QObject {
    Q_OBJECT
public:
    explicit Player(std::unique_ptr<Output> output, QObject* parent = nullptr);
    ~Player() override;

    // From the beginning; what rang before is damped. With `loop`, until stopped.
    void play(perform::Schedule schedule, bool loop);
    // The same bars in another way (tempo, muted hands), going on from the present place. Does
    // nothing while nothing is played.
    void replace(perform::Schedule schedule);
    // Keeps on playing, and turns back at the end or no longer does.
    void setLoop(bool loop);
    // Damps all strings.
    void stop();
    bool isPlaying() const { return m_schedule != nullptr; }

    // One string by hand. `midi` is the key it sounds as its lever stands.
    void pluck(int string, int midi);

    // Says everything that has sounded since it last looked. The player's own timer calls this.
    void look();

signals:
    void started();
    // After the last counted beat, while strings may still ring, or when stopped.
    void stopped();
    void stringPlucked(int string, harp::Side hand);
    void stringDamped(int string);
    void barReached(int playedBar);
    void positionReached(int playedPosition); // a left-hand note of that position sounds
    void clicked(bool accented);

private:
    void begin(perform::Schedule schedule, perform::Seconds from);
    void announceUntil(perform::Seconds at);
    void announce(perform::Event const& event);
    void skipTo(perform::Seconds at);
    void finish();

    std::unique_ptr<Output> m_output;
    std::shared_ptr<perform::Schedule const> m_schedule; // none: nothing is played
    bool m_loop = false;
    int m_round = 0;
    std::size_t m_nextEvent = 0; // not yet said
    std::size_t m_nextBar = 0;
    std::size_t m_nextClick = 0;
    QTimer m_timer;
};

// The place in `now` that is the same place of the music as `at` in `before`. Both schedules
// are of the same bars.
perform::Seconds samePlace(perform::Schedule const& before, perform::Seconds at,
                           perform::Schedule const& now);

} // namespace sound
