#pragma once

#include "ui/theme.h"

#include <QAction>
#include <QActionGroup>
#include <QList>

class QMenu;
class QMenuBar;

namespace ui {

// Everything the workbench can be asked to do, with words and keys. Who owns the workbench
// decides what each does.
struct Actions {
    explicit Actions(QWidget* owner);

    // Puts them into the menus of the bar.
    void fill(QMenuBar* bar) const;

    QAction* newTune;
    QAction* open;
    QAction* tunes;     // of her own, in folders, to find one
    QAction* otherTune; // of the book that is open
    QAction* nextTune;
    QAction* previousTune;
    QAction* demo;
    QAction* save;
    QAction* saveAs;
    QAction* goBack;  // to an earlier version
    QAction* unsaved; // work that a program left which stopped
    QAction* exportTo;
    QAction* print;
    QAction* words; // on the page
    QAction* handout;
    QAction* levels;
    QAction* tuneSet; // tunes that are played one after another
    QAction* batch; // a folder of tunes
    QAction* quit;
    QAction* pasteTune; // ABC from the clipboard
    QAction* copyShape;
    QAction* pasteShape;
    QAction* swapShapes;   // the copied and the selected
    QAction* everyChord;   // the shape at every chord like this one
    QAction* everyBar;     // wherever the tune has the same notes over the same chord
    QAction* everyClose;   // at the ends of parts and of the tune
    QAction* chooseAll;    // the chords of the passage, or of the tune
    QAction* chooseLike;   // every bar like this one
    QAction* nextLike;     // go to the next of them
    QAction* letFollow;    // other chords may change when one is kept
    QAction* taste;        // what is learned of the arranger's
    QAction* messages;     // all that were told
    QAction* showBank;
    QAction* showShapes;
    QAction* bankAbove;
    QAction* shapesLeft;
    QAction* alone;        // the grid or the sheet without panes
    QAction* lessMotion;
    QAction* firstSteps;
    QAction* undo;
    QAction* redo;
    QAction* history; // every step, to go back to
    QAction* lock;
    QAction* unlock;
    QAction* unlockAll;
    QAction* leaveEmpty;
    QAction* anotherTake; // of the whole tune
    QAction* bestTake;
    QAction* varyPasses;
    QAction* heardTempo;
    QAction* ownTempo;
    QAction* playTune;
    QAction* fromHere;
    QAction* hearBar;
    QAction* stop;
    QAction* phrase; // is the passage
    QAction* part;
    QAction* barBefore;
    QAction* click;
    QAction* stepsUp; // by itself
    QAction* typeTempo;
    QAction* practice;
    QAction* soundFiles;
    QAction* harpSound; // font, pitch, temperament, MIDI
    QAction* playAlong; // a MIDI instrument is listened to
    QAction* hearBetween; // the bars before and after
    QAction* markA;       // a setting to compare with
    QAction* flip;        // between A and B
    QAction* takeA;
    QAction* loop;
    QAction* countIn;
    QAction* left;
    QAction* right;
    QAction* faster;
    QAction* slower;
    QAction* grid;
    QAction* sheet;
    QAction* nextPane;
    QAction* system;
    QAction* light;
    QAction* dark;
    QAction* strongLight; // of high contrast
    QAction* strongDark;
    QAction* handbook;
    QAction* keys;
    QAction* care;
    QAction* about;
    QMenu* recent; // files; who opens them fills it
    QMenu* form;   // of the whole; the menus of choices fill it
    QMenu* pupil;  // whom it is arranged for; who keeps the list fills it

    QList<QAction*> all() const;
    QAction* theme(Theme theme) const; // that dresses the program in it
};

} // namespace ui
