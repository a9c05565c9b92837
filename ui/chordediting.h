#pragma once

#include "core/arrange/arrangement.h"
#include "core/harmony/findchords.h"
#include "core/tune/chordedits.h"
#include "ui/chordeditor.h"
#include "ui/chordways.h"
#include "ui/passage.h"

#include <QObject>

#include <functional>

class QAction;
class QMainWindow;
class QMenu;
class QWidget;

namespace ui {

class Session;

// Joins the open document with the editors of chords. What they show is in the key that is
// played; what is kept stands in the key that is written.

// The beats of the bar that the selected position stands in, with the likely chords of each.
std::vector<ChordBeat> chordBeats(Session const& session, harmony::Learned const& learned);

// The beat of these at which the selected position begins.
std::size_t selectedBeat(Session const& session, std::vector<ChordBeat> const& beats);

// Does what was wished, as one step of undo. False, with a sentence said, where it cannot be.
bool editChord(Session& session, std::vector<ChordBeat> const& beats, ChordWish const& wish);

// The ways to put chords to the whole tune, and taking one of them.
std::vector<ChordWayRow> chordWayRows(Session const& session, harmony::Learned const& learned,
                                      bool keepWritten);
bool takeChordWay(Session& session, harmony::Learned const& learned, harmony::Way way,
                  bool keepWritten);

// An arrangement that is to be heard and not kept, from one played bar to another.
using HearTrial =
    std::function<void(arrange::Arrangement const& arrangement,
                       tune::PlayedBarIndex firstPlayed, tune::PlayedBarIndex lastPlayed)>;

// The dialogs, from opening to the step that is done.
void askForChord(Session& session, harmony::Learned const& learned, HearTrial const& hear,
                 QWidget* parent);
void askForChordWay(Session& session, harmony::Learned const& learned, HearTrial const& hear,
                    QWidget* parent);

// The menu of chords in the window's bar. Its actions can be used while a tune is open.
class ChordMenu final : public QObject {
    Q_OBJECT
public:
    // All are to outlive it.
    ChordMenu(QMainWindow& window, Session& session, harmony::Learned const& learned);

    QAction* chord() const { return m_chord; } // at the selected place
    QAction* ways() const { return m_ways; }   // for the whole tune
    QAction* takeOut() const { return m_takeOut; }
    QAction* earlier() const { return m_earlier; }
    QAction* later() const { return m_later; }
    QAction* copy() const { return m_copy; }   // of the passage, else of the selected bar
    QAction* paste() const { return m_paste; } // from the selected bar on
    // The bars that are chosen together; none: the selected one.
    void takePassageFrom(std::function<std::optional<Passage>()> passage)
    {
        m_passage = std::move(passage);
    }

signals:
    // Not kept.
    void hearWanted(arrange::Arrangement const& arrangement, tune::PlayedBarIndex firstPlayed,
                    tune::PlayedBarIndex lastPlayed);
    void hearEnded(); // what was heard of it is no longer wanted
    void done(QString const& sentence);

private:
    void enable();
    void edit(ChordWish::What what);
    void copyChords();
    void pasteChords();

    Session& m_session;
    harmony::Learned const& m_learned;
    QAction* m_chord;
    QAction* m_takeOut;
    QAction* m_earlier;
    QAction* m_later;
    QAction* m_copy;
    QAction* m_paste;
    QAction* m_ways;
    std::function<std::optional<Passage>()> m_passage = [] { return std::nullopt; };
    tune::ChordRow m_copied; // in the key that was played
};

} // namespace ui
