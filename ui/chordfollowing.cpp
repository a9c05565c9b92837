#include "ui/chordfollowing.h"

#include "core/harmony/follownotes.h"
#include "ui/melodyeditor.h"
#include "ui/noteediting.h"
#include "ui/session.h"
#include "ui/workbench.h"

#include <QAction>

namespace ui {

ChordFollowing::ChordFollowing(Workbench& window, Session& session, NoteEditing& notes,
                               harmony::Learned const& learned)
    : QObject(&window), m_window(window), m_session(session), m_learned(learned), m_notes(notes)
{
    connect(&notes, &NoteEditing::opened, this, &ChordFollowing::begin);
    connect(&notes, &NoteEditing::closed, this, [this] {
        follow();
        m_typing = false;
    });
    connect(window.actions().sheet, &QAction::triggered, this, &ChordFollowing::follow);
    connect(&session, &Session::opened, this, &ChordFollowing::begin);
    connect(&session, &Session::changed, this, &ChordFollowing::notice);
}

void ChordFollowing::begin()
{
    m_typing = m_session.isOpen() && !m_notes.pane()->isHidden();
    if (!m_typing) return;
    m_before = m_last = m_session.brief().tune;
    m_followed = {};
}

// Where chords were changed and no notes, the chords are what is to be followed from now on.
void ChordFollowing::notice()
{
    if (!m_typing || !m_session.isOpen()) return;
    tune::Tune const& now = m_session.brief().tune;
    if (harmony::sameNotes(now, m_last)) m_before = now;
    m_last = now;
}

void ChordFollowing::follow()
{
    if (!m_typing || !m_session.isOpen()) return;
    tune::Tune const& now = m_session.brief().tune;
    if (harmony::sameNotes(now, m_followed)) return;
    bool const first = !hasChords(now);
    auto chorded = harmony::chordsAfterNotes(m_learned, m_before, now);
    if (!chorded || *chorded == now) return;
    m_followed = now;
    proposal::Brief next = m_session.brief();
    next.tune = *std::move(chorded);
    if (!m_session.goBackTo(std::move(next), tr("chords found from the notes"))) return;
    m_before = m_session.brief().tune;
    m_window.tellDone(first ? tr("Chords were found from the notes. Chords, Chords for the "
                                 "whole tune (Shift+C) shows other ways to put them.")
                            : tr("The chords that were found follow the new notes."));
}

} // namespace ui
