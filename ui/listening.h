#pragma once

#include "ui/actions.h"
#include "ui/audition.h"
#include "ui/passage.h"
#include "ui/practice.h"

#include "core/perform/danceways.h"

#include <QObject>

#include <optional>
#include <vector>

namespace ui {

class Comparing;
class Session;
class Transport;

// What is heard of the open tune: which bars, how fast, which hands, once or again and again.
// Joins the transport and the actions for it to the session. Knows no sound: what is to be
// played is asked for by signals, and what plays is told to it.
class Listening final : public QObject {
    Q_OBJECT
public:
    Listening(Session& session, Actions const& actions, Transport& transport,
              perform::DanceWays ways, QObject* parent);

    void enable(bool ready); // the actions; not ready: no tune is shown
    void forget();           // another tune: its passage, and what was to be compared
    void beginLilt();        // of the tune that is open now
    Comparing* comparing() const { return m_comparing; }
    perform::Slowing slowing() const;     // of the open tune's end, as it is set for practice
    perform::Slowing slowingTold() const; // what a page tells of it

    void hear(tune::PlayedBarIndex firstPlayedBar,
              std::optional<tune::PlayedBarIndex> lastPlayedBar); // none: to the end
    // Another arrangement of the tune than is kept.
    void hear(arrange::Arrangement arrangement, tune::PlayedBarIndex firstPlayedBar,
              tune::PlayedBarIndex lastPlayedBar);
    void hearSelected(); // the passage, else the selected bar
    void stop();

    bool playing() const { return m_playing; }
    std::optional<tune::PlayedBarIndex> playedBar() const { return m_playedBar; } // sounds now
    std::optional<Audition> const& heard() const { return m_heard; } // was asked for last
    // Heard instead of the selected bar.
    std::optional<Passage> passage() const { return m_passage; }
    void setPassage(std::optional<Passage> passage);

    // From the player.
    void playbackStarted();
    void playbackStopped();
    bool barPlaying(tune::PlayedBarIndex playedBar); // answers whether there is such a bar
    void roundPlaying(int round);   // of a passage that goes round

signals:
    void playRequested(ui::Audition const& audition);
    // While playing: the same bars in another way (tempo, hands, loop).
    void hearingChanged(ui::Audition const& audition);
    void stopRequested();
    void passageChanged(std::optional<ui::Passage> passage);

private:
    void joinActions();
    void playOrStop();
    void hearBetween();
    void hearCompared();
    void changeHearing();
    void keepHeardTempo();
    void choosePassage(Passage (*around)(tune::Tune const&, tune::BarIndex));
    std::optional<tune::PlayedBarIndex> selectedPlayedBar() const;
    perform::Hearing hearing() const;
    Audition auditionOf(arrange::Arrangement arrangement, tune::PlayedBarIndex firstPlayedBar,
                        std::optional<tune::PlayedBarIndex> lastPlayedBar) const;
    void request(Audition audition);

    Session& m_session;
    Actions const& m_actions;
    Transport& m_transport;
    Comparing* m_comparing;
    bool m_ready = false;
    std::optional<tune::PlayedBarIndex> m_playedBar;
    std::optional<Audition> m_heard;
    bool m_playing = false;
    int m_round = 0;      // of what is played
    Practice m_practised; // as it was last heard
    int m_waited = 0;     // times that a passage was heard that waits before each faster one
    perform::DanceWays m_ways;
    std::optional<perform::LiltWay> m_lilt;          // of the open tune
    std::optional<perform::KindOfSlowing> m_slowing; // likewise
    QString m_liltOf;                       // the tune it was set up for
    std::optional<Passage> m_passage;
};

} // namespace ui
