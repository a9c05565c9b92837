#pragma once

#include "core/harmony/findchords.h"

#include <QObject>

namespace ui {

class NoteEditing;
class Session;
class Workbench;

// Chords that are found follow the notes that were typed: when the pane of the notes is closed,
// or the sheet is looked at, a tune without chords gets them, and those that were found before
// are found again in the same way. One step of undo.
class ChordFollowing final : public QObject {
    Q_OBJECT
public:
    // All are to outlive it.
    ChordFollowing(Workbench& window, Session& session, NoteEditing& notes,
                   harmony::Learned const& learned);

private:
    void begin();
    void notice();
    void follow();

    Workbench& m_window;
    Session& m_session;
    harmony::Learned const& m_learned;
    NoteEditing& m_notes;
    bool m_typing = false;
    tune::Tune m_before; // as its chords were found
    tune::Tune m_last;
    tune::Tune m_followed; // for these notes it has been done: undone, it stays undone
};

} // namespace ui
