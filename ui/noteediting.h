#pragma once

#include "core/proposal/edited.h"
#include "ui/passage.h"

#include <QKeySequence>
#include <QObject>

#include <functional>
#include <utility>

class QAction;
class QMenu;

namespace ui {

class MelodyEditor;
class Session;
class Workbench;

// Joins the open document with the pane on which its notes are changed, and the menu of edits
// of the whole tune. What they show is in the key that is played; what is kept stands in the
// key that is written. Each edit is one step of undo.

// The open tune becomes this one, given in the key that is played. A key that was chosen
// because it fits best is kept as it is, so that no note typed moves the whole tune.
bool becomeTune(Session& session, tune::Tune const& heard, QString const& what,
                proposal::BarsMoved moved = {});

class NoteEditing final : public QObject {
    Q_OBJECT
public:
    // Both are to outlive it.
    NoteEditing(Workbench& window, Session& session);

    MelodyEditor* pane() const { return m_pane; }
    void openPane(bool open = true);
    QAction* changeNotes() const { return m_change; }
    QMenu* menu() const { return m_menu; }

signals:
    void opened(); // the pane
    void closed();

private:
    QAction* add(QString const& words, std::function<void()> what,
                 QKeySequence const& keys = {});
    void fillMenu();
    void fillPane();
    void enable();
    void follow(); // the pane what is open and selected
    void selectBar(tune::BarIndex bar);
    tune::BarIndex bar() const; // that edits are about
    std::pair<tune::BarIndex, tune::BarIndex> asRead(Passage passage) const;
    // A passage, or the part that the bar is in.
    std::pair<tune::BarIndex, tune::BarIndex> bars() const;
    void insertBar(bool after);
    void removeBar();
    void repeat(bool there);
    void timeBars();
    void namePart();
    void octave(int by);
    void editWhole();

    Workbench& m_window;
    Session& m_session;
    MelodyEditor* m_pane;
    QMenu* m_menu;
    QAction* m_change;
    bool m_own = false; // the edit comes from the pane
};

} // namespace ui
