#include "ui/workbench.h"

#include "ui/announcing.h"
#include "ui/choicemenus.h"
#include "ui/comparing.h"
#include "ui/fingermenu.h"
#include "ui/firststeps.h"
#include "ui/following.h"
#include "ui/helppages.h"
#include "ui/historydialog.h"
#include "ui/lefthandediting.h"
#include "ui/listening.h"
#include "ui/messagebar.h"
#include "ui/motion.h"
#include "ui/notopened.h"
#include "ui/openpaper.h"
#include "ui/opentunewords.h"
#include "ui/pageview/pageview.h"
#include "ui/panes.h"
#include "ui/scrollsheet.h"
#include "ui/session.h"
#include "ui/shapesoffered.h"
#include "ui/sheetpanel.h"
#include "ui/snagediting.h"
#include "ui/statusline.h"
#include "ui/stringbank.h"
#include "ui/stringsnow.h"
#include "ui/taborder.h"
#include "ui/transport.h"
#include "ui/tunegrid.h"
#include "ui/variantpanel.h"
#include "ui/welcome.h"
#include "ui/withinreach.h"
#include "ui/words.h"

#include <QApplication>
#include <QDragEnterEvent>
#include <QMenu>
#include <QMenuBar>
#include <QMimeData>
#include <QScreen>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace ui {

Workbench::Workbench(Session& session, files::Tables tables, QWidget* parent)
    : QMainWindow(parent), m_session(session), m_levels(tables.levels),
      m_difficultyScale(tables.difficulty), m_actions(this), m_header(new Header(this)),
      m_messages(new MessageBar(this)), m_firstSteps(new FirstSteps(session, this)),
      m_stage(new QStackedWidget(this)), m_welcome(new Welcome(this)),
      m_notOpenedPage(new NotOpened(this)), m_grid(new TuneGrid(this)),
      m_sheet(new SheetPanel(this)), m_variants(new VariantPanel(this)),
      m_bank(new StringBank(this)), m_transport(new Transport(this)),
      m_status(new StatusLine(this)),
      m_listening(new Listening(session, m_actions, *m_transport, tables.ways, this)),
      m_strings(new StringsNow(session, *m_listening, *m_transport, *m_bank, this)),
      m_shapes(new ShapesOffered(session, *m_variants, this)),
      m_following(
          new Following(session, *m_grid, *m_variants->followed(), *m_actions.letFollow, this)),
      m_snags(new SnagEditing(session, *m_grid, *m_bank, this)),
      m_paper(new OpenPaper(session, *m_sheet, this)),
      m_leftHands(new LeftHandEditing(
          session, m_actions, [this] { return m_listening->passage(); }, this))
{
    setWindowTitle(tr("Sallow"));
    setAcceptDrops(true);
    setMinimumSize(320, 240);
    resize(QSize(1280, 820).boundedTo(screen()->availableGeometry().size()));
    auto* menus = new ChoiceMenus(session, std::move(tables), *m_header, m_actions.form, this);
    connect(menus, &ChoiceMenus::harpKept, this, &Workbench::harpKept);
    m_actions.fill(menuBar());
    place();
    joinFileActions();
    joinEditActions();
    joinViewActions();
    joinGrid();
    joinParts();
    joinListening();
    joinSession();
    new Announcing(m_session, *m_header, this);
    new WithinReach(*qApp, this);
    showDocument();
    if (m_session.isOpen()) showSelection();
}

void Workbench::place()
{
    for (QWidget* page :
         {static_cast<QWidget*>(m_welcome), static_cast<QWidget*>(m_notOpenedPage),
          static_cast<QWidget*>(m_grid), static_cast<QWidget*>(m_sheet)})
        m_stage->addWidget(page);
    auto* above = new QWidget(this);
    m_underStage = new QVBoxLayout(above);
    m_underStage->setContentsMargins(0, 0, 0, 0);
    m_underStage->setSpacing(0);
    m_underStage->addWidget(m_stage, 1);
    m_panes = new Panes(m_actions, above, m_variants, m_bank, {m_header, m_transport, m_status},
                        this);
    auto* middle = new QWidget(this);
    middle->setMinimumSize(760, 490); // in a smaller window it scrolls
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_header);
    column->addWidget(m_messages);
    column->addWidget(m_firstSteps);
    column->addWidget(m_panes->all(), 1);
    column->addWidget(m_transport);
    column->addWidget(m_status);
    // With very large letters all this needs more room than there is.
    auto* sheet = new ScrollSheet(this);
    sheet->hold(middle);
    setCentralWidget(sheet);
}

void Workbench::setBelowGrid(QWidget* pane)
{
    m_underStage->addWidget(pane);
    pane->installEventFilter(this);
}

bool Workbench::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::ShowToParent || event->type() == QEvent::HideToParent)
        giveRoomBelowGrid();
    return QMainWindow::eventFilter(watched, event);
}

void Workbench::resizeEvent(QResizeEvent* event)
{
    QMainWindow::resizeEvent(event);
    giveRoomBelowGrid();
}

// In a low window what is open below the grid is worked with: grid and strings give way to it.
void Workbench::giveRoomBelowGrid()
{
    constexpr int lowWindow = 760;
    constexpr int lowGrid = 56;
    constexpr int lowBank = 110;
    bool open = false;
    for (int i = 1; i < m_underStage->count(); ++i)
        open = open || !m_underStage->itemAt(i)->widget()->isHidden();
    bool const low = open && height() < lowWindow;
    m_stage->setMinimumHeight(low ? lowGrid : 0);
    m_bank->setMinimumHeight(low ? lowBank : 0);
}

void Workbench::showFirstSteps() { m_firstSteps->begin(); }

void Workbench::joinFileActions()
{
    auto const on = [this](QAction* action, auto what) {
        connect(action, &QAction::triggered, this, what);
    };
    on(m_actions.newTune, &Workbench::newTuneRequested);
    on(m_actions.pasteTune, &Workbench::pasteTuneRequested);
    on(m_actions.open, &Workbench::openRequested);
    on(m_actions.otherTune, &Workbench::otherTuneRequested);
    on(m_actions.demo, &Workbench::demoRequested);
    on(m_actions.save, &Workbench::saveRequested);
    on(m_actions.saveAs, &Workbench::saveAsRequested);
    on(m_actions.exportTo, &Workbench::exportRequested);
    on(m_actions.print, &Workbench::printRequested);
    on(m_actions.words, [this] { m_paper->editWords(this); });
    on(m_actions.handout, &Workbench::handoutRequested);
    on(m_actions.levels, &Workbench::levelsRequested);
    on(m_actions.quit, [this] { close(); });
    connect(m_welcome, &Welcome::openClicked, this, &Workbench::openRequested);
    connect(m_welcome, &Welcome::newClicked, this, &Workbench::newTuneRequested);
    connect(m_welcome, &Welcome::demoClicked, this, &Workbench::demoRequested);
    connect(m_notOpenedPage, &NotOpened::openClicked, this, &Workbench::openRequested);
    connect(m_notOpenedPage, &NotOpened::backClicked, this, &Workbench::backToTune);
}

void Workbench::joinEditActions()
{
    auto const on = [this](QAction* action, auto what) {
        connect(action, &QAction::triggered, this, what);
    };
    QUndoStack& undo = m_session.undoStack();
    on(m_actions.undo, [&undo] { undo.undo(); });
    on(m_actions.redo, [&undo] { undo.redo(); });
    on(m_actions.history, [this, &undo] {
        auto* const dialog = new HistoryDialog(undo, this);
        dialog->setAttribute(Qt::WA_DeleteOnClose);
        dialog->show();
    });
    connect(&undo, &QUndoStack::undoTextChanged, this, [this](QString const& text) {
        m_actions.undo->setText(text.isEmpty() ? tr("&Undo") : tr("&Undo: %1").arg(text));
    });
    connect(&undo, &QUndoStack::redoTextChanged, this, [this](QString const& text) {
        m_actions.redo->setText(text.isEmpty() ? tr("&Redo") : tr("&Redo: %1").arg(text));
    });
    connect(&undo, &QUndoStack::indexChanged, this, &Workbench::enableActions);
    on(m_actions.lock, [this] { m_session.lockShown(); });
    on(m_actions.unlock, [this] { m_session.unlock(); });
    on(m_actions.unlockAll, [this] { m_session.unlockAll(); });
    on(m_actions.leaveEmpty, [this] { m_session.leaveEmpty(); });
    on(m_actions.anotherTake, [this] { m_session.anotherTake(); });
    on(m_actions.bestTake, [this] { m_session.bestTake(); });
    on(m_actions.varyPasses, [this](bool vary) {
        m_session.setPasses(vary ? proposal::Passes::Varied : proposal::Passes::Written);
    });
}

void Workbench::joinViewActions()
{
    auto const on = [this](QAction* action, auto what) {
        connect(action, &QAction::triggered, this, what);
    };
    on(m_actions.messages, [this] { m_messages->openList(); });
    on(m_actions.stop, [this] { escape(); });
    on(m_actions.grid, [this] { setView(View::Grid); });
    on(m_actions.sheet, [this] { setView(View::Sheet); });
    on(m_actions.nextPane, [this] { m_panes->goToNext(m_stage->currentWidget()); });
    for (Theme const theme :
         {Theme::System, Theme::Light, Theme::Dark, Theme::StrongLight, Theme::StrongDark})
        on(m_actions.theme(theme), [this, theme] { wear(theme); });
    connect(m_actions.lessMotion, &QAction::toggled, this, [this](bool less) {
        setLessMotion(less);
        emit lessMotionChosen(less);
    });
    on(m_actions.firstSteps, [this] { showFirstSteps(); });
    on(m_actions.keys, [this] { showKeys(this, m_actions); });
    on(m_actions.care, [this] { showCare(this); });
    on(m_actions.about, [this] { showAbout(this); });
}

void Workbench::joinGrid()
{
    connect(m_grid, &TuneGrid::positionClicked, &m_session, &Session::select);
    connect(m_grid, &TuneGrid::positionToggled, &m_session, &Session::toggleChosen);
    connect(m_grid, &TuneGrid::rankTyped, &m_session, &Session::chooseRanked);
    connect(m_grid, &TuneGrid::hearClicked, m_listening, &Listening::hearSelected);
    connect(m_grid, &TuneGrid::variantsClicked, this,
            [this] { m_variants->list()->setFocus(Qt::OtherFocusReason); });
    connect(m_grid, &TuneGrid::passageChosen, m_listening, &Listening::setPassage);
    connect(m_grid, &TuneGrid::menuWanted, this, &Workbench::openGridMenu);
}

void Workbench::openGridMenu(QPoint const& where)
{
    QMenu menu(this);
    menu.addActions({m_actions.hearBar, m_actions.fromHere});
    menu.addSeparator();
    menu.addActions({m_actions.lock, m_actions.unlock, m_actions.leaveEmpty});
    if (!m_gridMenu.isEmpty()) menu.addSeparator();
    menu.addActions(m_gridMenu);
    menu.addSeparator();
    menu.addActions({m_actions.chooseLike, m_actions.nextLike});
    menu.addSeparator();
    menu.addActions({m_actions.copyShape, m_actions.pasteShape, m_actions.swapShapes,
                     m_actions.everyChord, m_actions.everyBar, m_actions.everyClose});
    menu.addSeparator();
    addFingerMenu(menu, m_session);
    menu.exec(where);
}

void Workbench::addToGridMenu(QList<QAction*> const& actions) { m_gridMenu += actions; }

void Workbench::hearTrial(arrange::Arrangement const& trial, tune::PlayedBarIndex firstPlayed,
                          tune::PlayedBarIndex lastPlayed)
{
    m_listening->hear(trial, firstPlayed, lastPlayed);
}

void Workbench::stopHearing() { m_listening->stop(); }

void Workbench::joinParts()
{
    connect(m_header, &Header::viewClicked, this, &Workbench::setView);
    connect(m_leftHands, &LeftHandEditing::told, this, &Workbench::tell);
    connect(m_leftHands, &LeftHandEditing::done, this, &Workbench::tellDone);
    connect(m_snags, &SnagEditing::done, this, &Workbench::tellDone);
    connect(m_snags, &SnagEditing::hearWanted, m_listening,
            qOverload<arrange::Arrangement, tune::PlayedBarIndex, tune::PlayedBarIndex>(
                &Listening::hear));
    connect(m_shapes, &ShapesOffered::hearWanted, m_listening, &Listening::hearSelected);
    connect(m_shapes, &ShapesOffered::leave, this, &Workbench::goToStage);
    connect(m_shapes, &ShapesOffered::keepPatternRequested, this,
            &Workbench::keepPatternRequested);
    connect(m_sheet->view(), &PageView::positionClicked, &m_session, &Session::select);
    connect(m_sheet, &SheetPanel::wordsClicked, this, [this] { m_paper->editWords(this); });
    connect(m_sheet, &SheetPanel::exportClicked, this, &Workbench::exportRequested);
    connect(m_sheet, &SheetPanel::printClicked, this, &Workbench::printRequested);
    connect(m_paper, &OpenPaper::refused, this, &Workbench::tellFault);
    connect(m_paper, &OpenPaper::sizeChanged, this, &Workbench::paperChanged);
    connect(m_status, &StatusLine::warningsClicked, this,
            [this] { tell(warnings().join(QLatin1Char('\n'))); });
}

void Workbench::joinListening()
{
    connect(m_transport, &Transport::settingsChanged, this,
            [this] { m_paper->setSlowing(m_listening->slowingTold()); });
    connect(m_listening, &Listening::playRequested, this, &Workbench::playRequested);
    connect(m_listening, &Listening::hearingChanged, this, &Workbench::hearingChanged);
    connect(m_listening, &Listening::stopRequested, this, &Workbench::stopRequested);
    connect(m_listening, &Listening::passageChanged, m_grid, &TuneGrid::setPassage);
    connect(m_listening->comparing(), &Comparing::told, this, &Workbench::tell);
    connect(m_listening->comparing(), &Comparing::done, this, &Workbench::tellDone);
    connect(m_transport, &Transport::tempoEntered, this, &Workbench::goToStage);
    connect(m_strings, &StringsNow::pluckRequested, this, &Workbench::stringPluckRequested);
    connect(m_strings, &StringsNow::told, this, &Workbench::tell);
    connect(m_strings, &StringsNow::done, this, &Workbench::tellDone);
}

void Workbench::joinSession()
{
    connect(&m_session, &Session::opened, this, [this] {
        m_listening->stop();
        m_messages->dismissAll();
        m_notOpened.reset();
        m_following->forget();
        m_leftHands->forget();
        m_listening->forget();
        showStage();
        goToStage();
    });
    connect(&m_session, &Session::changed, this, [this] {
        m_messages->withdrawChoices();
        m_snags->forget();
        m_notOpened.reset();
        m_gridFresh = false;
        m_following->note();
        showDocument();
    });
    connect(&m_session, &Session::selectionChanged, this, [this] {
        if (m_notOpened) return;
        m_following->see();
        m_listening->comparing()->lookAtB();
        showSelection();
    });
    connect(&m_session, &Session::turnedAway, this, [this](QString const& title) {
        m_notOpened = title;
        m_listening->stop();
        showDocument();
        showSelection();
    });
    connect(&m_session, &Session::refused, this, &Workbench::tellFault);
    connect(&m_session, &Session::offered, this, &Workbench::offer);
    connect(m_messages, &MessageBar::choiceClicked, this, &Workbench::takeOffer);
    connect(&m_session, &Session::noticed, this, &Workbench::tell);
    connect(&m_session, &Session::relevelled, this, &Workbench::tellLevel);
}

void Workbench::offer(std::vector<proposal::Remedy> const& remedies)
{
    m_remedies = remedies;
    QStringList choices;
    for (proposal::Remedy const& remedy : remedies)
        choices << QString::fromStdString(remedy.sentence);
    m_messages->offer(choices);
}

void Workbench::takeOffer(int choice)
{
    proposal::Remedy const remedy = m_remedies[static_cast<std::size_t>(choice)];
    m_messages->dismiss();
    if (m_session.take(remedy)) tellDone(QString::fromStdString(remedy.sentence));
}

void Workbench::goToStage() { m_stage->currentWidget()->setFocus(Qt::OtherFocusReason); }

void Workbench::setView(View view)
{
    m_view = view;
    m_header->setView(view);
    (view == View::Grid ? m_actions.grid : m_actions.sheet)->setChecked(true);
    showStage();
    if (m_session.isOpen()) goToStage();
}

void Workbench::showStage()
{
    QWidget* wanted = m_welcome;
    if (showsTune() && m_view == View::Grid) wanted = m_grid;
    if (showsTune() && m_view == View::Sheet) wanted = m_sheet;
    if (m_session.isOpen() && m_notOpened) {
        wanted = m_notOpenedPage;
        m_notOpenedPage->setWords(
            *m_notOpened, QString::fromStdString(m_session.arrangement().tune.title));
    }
    m_stage->setCurrentWidget(wanted);
    for (int i = 1; wanted != m_grid && i < m_underStage->count(); ++i)
        m_underStage->itemAt(i)->widget()->hide(); // what is below the grid goes with it
    m_paper->setLookedAt(wanted == m_sheet);
    if (wanted == m_sheet) m_firstSteps->sheetShown();
}

PageView* Workbench::sheet() const { return m_sheet->view(); }

void Workbench::tell(QString const& sentence) { say(sentence, false); }
void Workbench::tellDone(QString const& sentence) { say(sentence, true); }

// A dialog that is over the window is told what comes of its buttons itself.
void Workbench::say(QString const& sentence, bool done)
{
    auto const tone = done ? MessageBar::Tone::Done : MessageBar::Tone::Notice;
    QWidget const* over = QApplication::activeModalWidget();
    if (auto* nearer = over && over != this ? over->findChild<MessageBar*>() : nullptr)
        nearer->tell(sentence, tone);
    m_messages->tell(sentence, tone, aboutNow());
}

void Workbench::tellOfDevices(QString const& sentence, bool good)
{
    m_messages->tell(sentence, good ? MessageBar::Tone::Done : MessageBar::Tone::Notice,
                     tr("This computer"));
}

// The tune that a message is of.
QString Workbench::aboutNow() const
{
    if (m_notOpened) return *m_notOpened;
    return m_session.isOpen() ? QString::fromStdString(m_session.arrangement().tune.title)
                              : QString();
}

bool Workbench::showsTune() const { return m_session.isOpen() && !m_notOpened; }

void Workbench::tellNotOpened(QString const& name, base::Fault const& fault)
{
    m_notOpened = name;
    m_listening->stop();
    tellFault(fault);
    showDocument();
    if (m_session.isOpen()) showSelection();
}

void Workbench::backToTune()
{
    m_notOpened.reset();
    m_gridFresh = false;
    showDocument();
    showSelection();
    goToStage();
}

// The first few changes; all of them would fill the window.
void Workbench::tellLevel(int level, QStringList const& changes)
{
    constexpr int told = 4;
    QStringList sentences{changes.isEmpty() ? tr("Nothing changes at level %1.").arg(level)
                                            : tr("Arranged for level %1.").arg(level)};
    sentences << changes.mid(0, told);
    if (changes.size() > told) sentences << tr("And %1 more.").arg(changes.size() - told);
    tellDone(sentences.join(QLatin1Char('\n')));
}
void Workbench::tellFault(base::Fault const& fault) { tell(faultWords(fault)); }

void Workbench::showDocument()
{
    showHeader();
    showStage();
    if (!m_session.isOpen()) m_bank->setHarp(m_session.brief().harp);
    if (m_session.isOpen()) m_transport->setTempo(m_session.arrangement().tempo);
    m_listening->beginLilt();
    m_paper->setSlowing(m_listening->slowingTold());
    m_transport->setReady(showsTune());
    if (!m_session.isOpen()) showSelection(); // else it is told of next
}

void Workbench::showHeader()
{
    proposal::Brief const& brief = m_session.brief();
    m_header->setHarpWords(harpWords(brief.harp));
    m_header->setHandWords(handWords(brief.hand));
    m_header->setLevelWords(QString::number(brief.level.number));
    m_header->setStyleWords(styleWords(brief.weights));
    if (!showsTune()) {
        m_header->setTitle(m_notOpened.value_or(tr("Sallow")),
                           m_notOpened ? tr("could not be opened") : tr("no tune is open"));
        m_header->setKeyWords(tr("best"));
        return;
    }
    arrange::Arrangement const& arrangement = m_session.arrangement();
    m_header->setKeyWords(QString::fromStdString(music::shown(arrangement.tune.key)));
    hands::Difficulty difficulty =
        hands::difficultyOf(arrangement, m_levels, brief.book, m_difficultyScale);
    QString const title = QString::fromStdString(arrangement.tune.title);
    m_header->setTitle(title, detailWords(arrangement, difficulty.level));
    m_grid->setDifficulty(std::move(difficulty), brief.level.number);
    setWindowTitle(tr("%1[*] – Sallow").arg(title));
}

void Workbench::showSelection()
{
    bool const ready = showsTune();
    if (ready) {
        showGrid();
        m_paper->show();
    } else {
        m_gridFresh = false;
        m_grid->clear();
    }
    m_shapes->show(ready);
    m_following->show(ready);
    m_snags->show(ready);
    m_strings->show(ready);
    showStatus();
    enableActions();
}

// Afresh only where it does not show the arrangement as it is, with what is looked at.
void Workbench::showGrid()
{
    bool const kept = !m_session.looksElsewhere();
    if (!m_gridFresh || !kept) m_grid->setArrangement(m_session.shownArrangement());
    m_gridFresh = kept;
    auto const selected = m_session.selected();
    m_grid->setSelected(selected);
    m_grid->setChosen(m_session.chosen());
    if (!selected) return;
    arrange::Arrangement const& arrangement = m_session.arrangement();
    tune::BarIndex const bar = arrangement.positions[*selected].position.bar;
    m_transport->setBarWords(barTitle(arrangement.tune, bar));
}

void Workbench::showStatus()
{
    m_status->setWarnings(showsTune() ? warnings() : QStringList());
    if (showsTune())
        m_status->setWords(answerWords(m_session),
                           tr("%1 shapes can be played here").arg(m_session.variants().size()));
    else
        m_status->setWords(m_session.isOpen() ? QString() : tr("Open a tune to begin."), {});
}

QStringList Workbench::warnings() const
{
    QStringList sentences;
    for (std::string const& warning : m_session.proposal().warnings)
        sentences << QString::fromStdString(warning);
    return sentences;
}

void Workbench::enableActions()
{
    bool const open = showsTune();
    m_leftHands->enable(open);
    m_listening->enable(open);
    for (QAction* action :
         {m_actions.save, m_actions.saveAs, m_actions.exportTo, m_actions.print,
          m_actions.words, m_actions.handout, m_actions.levels, m_actions.varyPasses,
          m_actions.anotherTake, m_actions.form->menuAction()})
        action->setEnabled(open);
    for (QAction* action : {m_actions.lock, m_actions.leaveEmpty})
        action->setEnabled(open && m_session.selected());
    bool const locked =
        open && std::ranges::any_of(m_session.chosen(), [this](arrange::PositionIndex at) {
            return m_session.proposal().lattice.locks[at].has_value();
        });
    m_actions.unlock->setEnabled(locked);
    m_actions.unlockAll->setEnabled(open && !m_session.brief().locks.empty());
    m_actions.bestTake->setEnabled(open && m_session.brief().take > 0);
    m_actions.varyPasses->setChecked(m_session.brief().passes == proposal::Passes::Varied);
    m_actions.undo->setEnabled(m_session.undoStack().canUndo());
    m_actions.redo->setEnabled(m_session.undoStack().canRedo());
}

void Workbench::chooseBarNumber(int number)
{
    if (!m_session.isOpen() || number <= 0) return;
    auto const& bars = m_session.arrangement().tune.bars;
    auto const found = std::ranges::find(bars, number, &tune::Bar::number);
    if (found != bars.end()) m_session.selectBar(bars.indexOf(found));
}

void Workbench::choosePlayedBar(tune::PlayedBarIndex playedBar)
{
    if (!m_session.isOpen()) return;
    auto const& bars = m_session.arrangement().playing.bars;
    if (bars.holds(playedBar)) m_session.selectBar(bars[playedBar].bar);
}

// One key for "enough": the sound, then the message.
void Workbench::escape()
{
    if (m_listening->playing())
        m_listening->stop();
    else if (m_messages->shownCount() > 0)
        m_messages->dismiss();
    else if (m_firstSteps->step() > 0)
        m_firstSteps->end();
    else if (m_notOpened && m_session.isOpen())
        backToTune();
    else if (m_listening->passage())
        m_listening->setPassage(std::nullopt);
    else if (m_variants->list()->hasFocus())
        goToStage();
    else
        m_actions.alone->setChecked(false);
}

// Panes move and come later; Qt's own order is that in which they were made.
bool Workbench::focusNextPrevChild(bool next)
{
    QWidget* const beside = besideInOrder(*this, next);
    if (beside == nullptr) return QMainWindow::focusNextPrevChild(next);
    beside->setFocus(next ? Qt::TabFocusReason : Qt::BacktabFocusReason);
    static_cast<QScrollArea*>(centralWidget())->ensureWidgetVisible(beside);
    return true;
}

void Workbench::wear(Theme theme)
{
    dress(*qApp, theme);
    emit themeChosen(theme);
}

std::optional<Passage> Workbench::passage() const { return m_listening->passage(); }

void Workbench::playbackStarted() { m_listening->playbackStarted(); }

void Workbench::playbackStopped()
{
    m_listening->playbackStopped();
    m_grid->setPlayingBar(std::nullopt);
    m_sheet->view()->setSoundingBar(std::nullopt);
    m_strings->playbackStopped();
}

void Workbench::barPlaying(tune::PlayedBarIndex playedBar)
{
    if (!m_listening->barPlaying(playedBar)) return;
    auto const& bars = m_session.arrangement().playing.bars;
    auto const& [bar, pass, at] = bars[playedBar];
    m_grid->setPlayingBar(bar);
    m_sheet->view()->setSoundingBar(bar, pass);
    m_strings->showLevers();
}

void Workbench::positionPlaying(arrange::PlayedPositionIndex playedPosition)
{
    m_strings->positionPlaying(playedPosition);
}
void Workbench::roundPlaying(int round) { m_listening->roundPlaying(round); }
void Workbench::pluckPitch(int midi) { m_strings->pluckPitch(midi); }
void Workbench::awaitStrings(QString const& names) { m_strings->awaitStrings(names); }

PaperKind Workbench::paperKind() const { return m_paper->kind(); }
void Workbench::setPaperKind(PaperKind kind) { m_paper->setKind(kind); }
sheet::Paper Workbench::paper() const { return m_paper->size(); }
void Workbench::setPaper(sheet::Paper paper) { m_paper->setSize(paper); }
void Workbench::setReading(Reading const& reading) { m_paper->setReading(reading); }
Reading Workbench::reading() const { return m_paper->reading(); }
void Workbench::setPapersFor(QString const& pupil) { m_paper->setPupil(pupil); }
std::optional<sheet::Document> Workbench::pages() { return m_paper->pages(); }
sheet::HandoutWish Workbench::handoutWish() const { return m_paper->handoutWish(); }
std::optional<sheet::MusicFont> const& Workbench::font() { return m_paper->font(); }

QByteArray Workbench::panes() const { return m_panes->kept(); }
void Workbench::restorePanes(QByteArray const& panes) { m_panes->restore(panes); }

void Workbench::stringSounding(harp::StringIndex string, harp::Side hand)
{
    m_bank->ring(string, hand);
}
void Workbench::stringStilled(harp::StringIndex string) { m_bank->still(string); }

void Workbench::dragEnterEvent(QDragEnterEvent* event)
{
    if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void Workbench::dropEvent(QDropEvent* event)
{
    for (QUrl const& url : event->mimeData()->urls()) {
        if (!url.isLocalFile()) continue;
        emit fileDropped(url.toLocalFile());
        return;
    }
}

} // namespace ui
