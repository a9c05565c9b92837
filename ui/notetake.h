#pragma once

#include "core/perform/course.h"
#include "core/tune/edit/take.h"

#include <QObject>

#include <optional>
#include <vector>

namespace ui {

class NoteEditing;
class Session;
class TakeBar;
class Workbench;

// Notes that are played in time on a MIDI instrument: a bar is counted in, what is played is
// put on the beat and shown on the pane of the melody, and it becomes part of the tune only
// when she keeps it, as one step of undo. Who owns it sounds the clicks and hands over what was
// played.
class NoteTake final : public QObject {
    Q_OBJECT
public:
    // All are to outlive it.
    NoteTake(Workbench& window, Session& session, NoteEditing& notes);

    void begin(); // the pane and the strip, ready to start
    TakeBar* bar() const { return m_bar; }
    // The tune with what was played, while it is shown and not kept.
    std::optional<tune::Tune> const& shown() const { return m_shown; }

    // The clicks have ended. What was played, in seconds from the first beat behind the
    // count-in.
    void ended(std::vector<tune::HeardNote> const& played);
    void beat(bool accented); // a click sounds
    void noteHeard();

signals:
    // Clicks alone; `countIn`: seconds until the first beat that is played on.
    void clicksWanted(perform::Course const& course, double countIn);
    void stopWanted();

private:
    void start();
    void keep();
    void again();
    void leave();
    void show(tune::Taken const& taken);
    tune::BarIndex barNow() const;
    double wholeSeconds() const;

    Workbench& m_window;
    Session& m_session;
    NoteEditing& m_notes;
    TakeBar* m_bar;
    std::optional<tune::Tune> m_shown;
    tune::BarIndex m_at = 0; // the bar that is played into
    int m_heard = 0;         // notes
    int m_countIn = 0;       // beats that are still to be counted
    int m_beatsSince = 0;    // the last note
    bool m_sounding = false; // clicks are asked for and have not ended
    bool m_keeping = false;
};

// Clicks for a tune that is played in: a bar before (two, where one is shorter than 1.5 s, as
// everywhere [science-9]), then `bars` more. `countIn` is set to the seconds before the first.
perform::Schedule takeClicks(music::Meter meter, double secondsAWhole, int bars,
                             double& countIn);

} // namespace ui
