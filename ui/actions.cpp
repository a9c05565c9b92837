#include "ui/actions.h"

#include <QCoreApplication>
#include <QMenu>
#include <QMenuBar>
#include <QWidget>

#include <array>

namespace ui {

namespace {

QString tr(char const* text) { return QCoreApplication::translate("Actions", text); }

QAction* made(QWidget* owner, QString const& words, QKeySequence const& keys = {})
{
    auto* action = new QAction(words, owner);
    action->setShortcut(keys);
    owner->addAction(action);
    return action;
}

void chooseOne(QWidget* owner, std::initializer_list<QAction*> actions)
{
    auto* group = new QActionGroup(owner);
    for (QAction* action : actions) {
        action->setCheckable(true);
        group->addAction(action);
    }
    (*actions.begin())->setChecked(true);
}

} // namespace

Actions::Actions(QWidget* owner)
    : newTune(made(owner, tr("&New tune…"), QKeySequence::New)),
      open(made(owner, tr("&Open…"), QKeySequence::Open)),
      tunes(made(owner, tr("&Your tunes…"), Qt::CTRL | Qt::SHIFT | Qt::Key_O)),
      otherTune(made(owner, tr("Another &tune of this tunebook…"), Qt::CTRL | Qt::Key_T)),
      nextTune(made(owner, tr("Ne&xt tune of this tunebook"), Qt::Key_N)),
      previousTune(made(owner, tr("Pre&vious tune of this tunebook"), Qt::SHIFT | Qt::Key_N)),
      demo(made(owner, tr("Open &demo tune"), Qt::CTRL | Qt::Key_D)),
      save(made(owner, tr("&Save"), QKeySequence::Save)),
      saveAs(made(owner, tr("Save &as…"), Qt::CTRL | Qt::SHIFT | Qt::Key_S)),
      goBack(made(owner, tr("&Go back to…"))), unsaved(made(owner, tr("Work left &unsaved…"))),
      exportTo(made(owner, tr("&Export…"), Qt::CTRL | Qt::Key_E)),
      print(made(owner, tr("&Print…"), QKeySequence::Print)),
      words(made(owner, tr("T&itle and notes…"), Qt::CTRL | Qt::Key_W)),
      handout(made(owner, tr("Pattern &handout…"), Qt::CTRL | Qt::Key_H)),
      levels(made(owner, tr("Export &levels…"), Qt::CTRL | Qt::SHIFT | Qt::Key_E)),
      tuneSet(made(owner, tr("&Make a set of tunes…"))),
      batch(made(owner, tr("A &folder of tunes…"))),
      quit(made(owner, tr("&Quit"), QKeySequence::Quit)),
      pasteTune(made(owner, tr("Paste a &tune (ABC)"), Qt::CTRL | Qt::ALT | Qt::Key_V)),
      copyShape(made(owner, tr("&Copy the left hand"), QKeySequence::Copy)),
      pasteShape(made(owner, tr("&Paste the left hand"), QKeySequence::Paste)),
      swapShapes(
          made(owner, tr("S&wap with the copied bar"), Qt::CTRL | Qt::SHIFT | Qt::Key_V)),
      everyChord(made(owner, tr("Use at every chor&d like this"), Qt::Key_A)),
      everyBar(made(owner, tr("Use wherever the &bar comes again"), Qt::SHIFT | Qt::Key_A)),
      everyClose(made(owner, tr("Use at every cl&ose"))),
      chooseAll(made(owner, tr("Choose all c&hords together"), QKeySequence::SelectAll)),
      chooseLike(
          made(owner, tr("Choo&se every bar like this"), Qt::CTRL | Qt::SHIFT | Qt::Key_A)),
      nextLike(made(owner, tr("Go to the next bar like this"), Qt::Key_J)),
      letFollow(made(owner, tr("Let the rest &follow"))),
      taste(made(owner, tr("&Your taste…"))),
      messages(made(owner, tr("&Messages"), Qt::CTRL | Qt::SHIFT | Qt::Key_L)),
      showBank(made(owner, tr("String &bank"), Qt::Key_F7)),
      showShapes(made(owner, tr("S&hapes"), Qt::Key_F8)),
      bankAbove(made(owner, tr("String bank at the &top"))),
      shapesLeft(made(owner, tr("Shapes on the le&ft"))),
      alone(made(owner, tr("Without &panes"), Qt::Key_F11)),
      lessMotion(made(owner, tr("Less m&otion"))), firstSteps(made(owner, tr("&First steps"))),
      undo(made(owner, tr("&Undo"), QKeySequence::Undo)), redo(made(owner, tr("&Redo"))),
      history(made(owner, tr("H&istory…"), Qt::CTRL | Qt::SHIFT | Qt::Key_H)),
      lock(made(owner, tr("&Keep this shape"), Qt::Key_L)),
      unlock(made(owner, tr("&Let this shape change"), Qt::Key_U)),
      unlockAll(made(owner, tr("Let &all shapes change"), Qt::SHIFT | Qt::Key_U)),
      leaveEmpty(made(owner, tr("Left hand r&ests here"), Qt::Key_Delete)),
      anotherTake(made(owner, tr("A&nother setting of the whole tune"), Qt::Key_T)),
      bestTake(made(owner, tr("The best settin&g"), Qt::SHIFT | Qt::Key_T)),
      varyPasses(made(owner, tr("&Vary the shapes on repeats"))),
      heardTempo(made(owner, tr("Arrange for the te&mpo you hear"), Qt::CTRL | Qt::Key_M)),
      ownTempo(made(owner, tr("Arrange for the tune's own tempo"))),
      playTune(made(owner, tr("Hear the whole t&une, or stop"), Qt::CTRL | Qt::Key_Space)),
      fromHere(made(owner, tr("Hear on from h&ere"), Qt::SHIFT | Qt::Key_Space)),
      hearBar(made(owner, tr("Hear this &bar"), Qt::Key_B)),
      stop(made(owner, tr("&Stop"), Qt::Key_Escape)),
      phrase(made(owner, tr("Only this &phrase"), Qt::Key_P)),
      part(made(owner, tr("Only this par&t"), Qt::SHIFT | Qt::Key_P)),
      barBefore(made(owner, tr("The bar bef&ore as well"), Qt::CTRL | Qt::SHIFT | Qt::Key_K)),
      click(made(owner, tr("Clic&k on every beat"), Qt::Key_M)),
      stepsUp(made(owner, tr("Faster by &itself"))),
      typeTempo(made(owner, tr("T&ype the tempo"), Qt::CTRL | Qt::Key_G)),
      practice(made(owner, tr("&More for practice…"), Qt::CTRL | Qt::Key_J)),
      soundFiles(made(owner, tr("Save sou&nd files…"), Qt::CTRL | Qt::SHIFT | Qt::Key_N)),
      harpSound(made(owner, tr("&Harp sound and MIDI…"))),
      playAlong(made(owner, tr("P&lay it with me"), Qt::Key_Y)),
      hearBetween(made(owner, tr("Hear it between its neighbours"), Qt::Key_V)),
      markA(made(owner, tr("Remember this as A"), Qt::SHIFT | Qt::Key_X)),
      flip(made(owner, tr("Compare A an&d B"), Qt::Key_X)),
      takeA(made(owner, tr("Go back to A"))),
      loop(made(owner, tr("A&gain"), Qt::CTRL | Qt::Key_R)),
      countIn(made(owner, tr("&Count-in"), Qt::CTRL | Qt::Key_K)),
      left(made(owner, tr("Le&ft hand"), Qt::CTRL | Qt::Key_Left)),
      right(made(owner, tr("&Right hand"), Qt::CTRL | Qt::Key_Right)),
      faster(made(owner, tr("F&aster"), Qt::CTRL | Qt::Key_Up)),
      slower(made(owner, tr("Slo&wer"), Qt::CTRL | Qt::Key_Down)),
      grid(made(owner, tr("&Grid"), Qt::CTRL | Qt::Key_1)),
      sheet(made(owner, tr("&Sheet"), Qt::CTRL | Qt::Key_2)),
      nextPane(made(owner, tr("&Next pane"), Qt::Key_F6)),
      system(made(owner, tr("As the s&ystem"))), light(made(owner, tr("&Light"))),
      dark(made(owner, tr("&Dark"))), strongLight(made(owner, tr("High &contrast, light"))),
      strongDark(made(owner, tr("High contrast, da&rk"))),
      handbook(made(owner, tr("&Handbook"), QKeySequence::HelpContents)),
      keys(made(owner, tr("&Keyboard shortcuts"), Qt::CTRL | Qt::Key_F1)),
      care(made(owner, tr("&Care of hands and harp"))), about(made(owner, tr("&About Sallow")))
{
    redo->setShortcuts({Qt::CTRL | Qt::SHIFT | Qt::Key_Z, Qt::CTRL | Qt::Key_Y});
    for (QAction* ofBook : {otherTune, nextTune, previousTune})
        ofBook->setEnabled(false); // until a tunebook with several tunes is open
    for (QAction* later : {goBack, unsaved}) later->setEnabled(false);
    recent = new QMenu(tr("Open &recent"), owner);
    recent->setEnabled(false);
    form = new QMenu(tr("Introduction and times through"), owner);
    pupil = new QMenu(tr("&Pupil"), owner);
    varyPasses->setCheckable(true);
    for (QAction* toggle :
         {letFollow, showBank, showShapes, bankAbove, shapesLeft, alone, lessMotion})
        toggle->setCheckable(true);
    for (QAction* toggle : {letFollow, showBank, showShapes}) toggle->setChecked(true);
    for (QAction* toggle : {loop, countIn, left, right, barBefore, click, stepsUp, playAlong})
        toggle->setCheckable(true);
    chooseOne(owner, {grid, sheet});
    chooseOne(owner, {system, light, dark, strongLight, strongDark});
}

void Actions::fill(QMenuBar* bar) const
{
    auto const menu = [bar](QString const& title,
                            std::initializer_list<std::initializer_list<QAction*>> groups) {
        QMenu* made = bar->addMenu(title);
        for (auto const& group : groups) {
            if (!made->isEmpty()) made->addSeparator();
            for (QAction* action : group) made->addAction(action);
        }
    };
    menu(tr("&File"), {{newTune, open, tunes, recent->menuAction(), demo},
                       {otherTune, nextTune, previousTune},
                       {save, saveAs, goBack, unsaved},
                       {words},
                       {exportTo, print},
                       {levels, handout, tuneSet, batch},
                       {quit}});
    menu(tr("&Edit"),
         {{undo, redo, history},
          {lock, unlock, unlockAll, leaveEmpty},
          {chooseAll, chooseLike, nextLike},
          {copyShape, pasteShape, swapShapes, everyChord, everyBar, everyClose, letFollow},
          {pasteTune},
          {anotherTake, bestTake, taste},
          {form->menuAction(), varyPasses, heardTempo, ownTempo}});
    bar->addMenu(pupil);
    menu(tr("&Hear"), {{playTune, fromHere, hearBar, stop},
                       {phrase, part},
                       {loop, countIn, barBefore, click, left, right},
                       {faster, slower, typeTempo, stepsUp},
                       {hearBetween, flip, markA, takeA},
                       {playAlong, practice, soundFiles, harpSound}});
    menu(tr("&View"), {{grid, sheet},
                       {showShapes, showBank, shapesLeft, bankAbove, alone},
                       {nextPane, messages},
                       {system, light, dark, strongLight, strongDark},
                       {lessMotion}});
    menu(tr("He&lp"), {{handbook, firstSteps, keys, care}, {about}});
}

QAction* Actions::theme(Theme theme) const
{
    std::array const byTheme{system, light, dark, strongLight, strongDark};
    return byTheme[static_cast<std::size_t>(theme)];
}

QList<QAction*> Actions::all() const
{
    return {
        newTune,     pasteTune,    copyShape,  pasteShape,  swapShapes, everyChord,  everyBar,
        everyClose,  chooseAll,    chooseLike, nextLike,    letFollow,  taste,       messages,
        showBank,    showShapes,   bankAbove,  shapesLeft,  alone,      open,        otherTune,
        nextTune,    previousTune, demo,       goBack,      unsaved,    batch,       save,
        saveAs,      exportTo,     print,      words,       handout,    levels,      quit,
        undo,        redo,         history,    lock,        unlock,     unlockAll,   leaveEmpty,
        anotherTake, bestTake,     varyPasses, heardTempo,  ownTempo,   playTune,    fromHere,
        hearBar,     stop,         phrase,     part,        barBefore,  click,       stepsUp,
        typeTempo,   practice,     soundFiles, hearBetween, markA,      flip,        takeA,
        loop,        countIn,      left,       right,       faster,     slower,      grid,
        sheet,       nextPane,     system,     light,       dark,       strongLight, strongDark,
        handbook,    keys,         care,       about,       harpSound,  playAlong,   tunes,
        tuneSet,     lessMotion,   firstSteps};
}

} // namespace ui
