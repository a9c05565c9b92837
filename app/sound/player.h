#pragma once

#include "app/sound/output.h"
#include "core/perform/course.h"

#include <QObject>
#include <QTimer>

#include <memory>

namespace sound {

// Plays courses and says, on the thread it lives on, what is being played, so that strings
// and bars can light. Without a device, or when it goes away, it
// plays silently and says the same.
class Player final : public QObject {
    Q_OBJECT
public:
    explicit Player(std::unique_ptr<Output> output, QObject* parent = nullptr);
    ~Player() override;

    // From the beginning; what rang before is damped. A course without end: until stopped.
    void play(perform::Course course);
    // The same bars in another way (tempo, muted hands, another left hand, again or no longer),
    // going on in the present round from the same place of the music. Does nothing while
    // nothing is played.
    void replace(perform::Course course);
    // Damps all strings.
    void stop();
    // Another output from now on; what is played goes on there from the same place.
    void useOutput(std::unique_ptr<Output> output);
    // Another one beside the first, such as a MIDI device, on which the same is played; none: no
    // longer. Who is listened to for time is the first.
    void alsoOn(std::unique_ptr<Output> second);
    bool isPlaying() const { return !m_course.rounds.empty(); }
    perform::Place place() const; // in the course; of no meaning while nothing is played

    // One string by hand. `midi` is the key it sounds as its lever stands.
    void pluck(harp::StringIndex string, int midi);

    // Says everything that has sounded since it last looked. The player's own timer calls this.
    void look();

signals:
    void started();
    // After the last counted beat, while strings may still ring, or when stopped.
    void stopped();
    void roundReached(int round);
    void stringPlucked(harp::StringIndex string, harp::Side hand);
    void stringDamped(harp::StringIndex string);
    void barReached(tune::PlayedBarIndex playedBar);
    void positionReached(arrange::PlayedPositionIndex
                             playedPosition); // a left-hand note of that position sounds
    void clicked(bool accented);
    void outputLost(); // once: from then on it plays silently

private:
    void begin(perform::Course course, perform::Place from);
    void goSilentIfLost();
    void announceUntil(perform::Seconds at);
    void announce(perform::Event const& event);
    void skipTo(perform::Seconds at);
    void finish();

    std::unique_ptr<Output> m_output;
    std::unique_ptr<Output> m_second; // none: the first alone
    perform::Course m_course; // without rounds: nothing is played
    int m_begun = 0;          // courses so far
    int m_round = 0;
    std::size_t m_nextEvent = 0; // not yet said
    std::size_t m_nextBar = 0;
    std::size_t m_nextClick = 0;
    QTimer m_timer;
};

} // namespace sound
