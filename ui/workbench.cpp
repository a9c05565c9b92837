#include "ui/workbench.h"

#include "ui/choicemenus.h"
#include "ui/fingermenu.h"
#include "ui/followedbox.h"
#include "ui/helppages.h"
#include "ui/historydialog.h"
#include "ui/lefthandediting.h"
#include "ui/messagebar.h"
#include "ui/notopened.h"
#include "ui/ownpattern.h"
#include "ui/pageview/pageview.h"
#include "ui/paint/sheetfonts.h"
#include "ui/practicecard.h"
#include "ui/session.h"
#include "ui/sheetpanel.h"
#include "ui/snagcard.h"
#include "ui/statusline.h"
#include "ui/stringbank.h"
#include "ui/transport.h"
#include "ui/tunegrid.h"
#include "ui/variantpanel.h"
#include "ui/welcome.h"
#include "ui/whynotlist.h"
#include "ui/words.h"
#include "ui/wordsdialog.h"

#include "core/levers/leverstory.h"
#include "core/perform/practice.h"
#include "core/sheet/sheet.h"

#include <QApplication>
#include <QDataStream>
#include <QDragEnterEvent>
#include <QMenu>
#include <QMenuBar>
#include <QMimeData>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace ui {

Workbench::Workbench(Session& session, files::Tables tables, QWidget* parent)
    : QMainWindow(parent), m_session(session), m_actions(this), m_header(new Header(this)),
      m_messages(new MessageBar(this)), m_halves(new QSplitter(Qt::Vertical, this)),
      m_sides(new QSplitter(Qt::Horizontal, this)), m_stage(new QStackedWidget(this)),
      m_grid(new TuneGrid(this)), m_sheet(new SheetPanel(this)),
      m_variants(new VariantPanel(this)), m_bank(new StringBank(this)),
      m_transport(new Transport(this)), m_status(new StatusLine(this))
{
    setWindowTitle(tr("Sallow"));
    setAcceptDrops(true);
    setMinimumSize(760, 520);
    resize(1280, 820);
    auto* welcome = new Welcome(this);
    connect(welcome, &Welcome::openClicked, this, &Workbench::openRequested);
    connect(welcome, &Welcome::newClicked, this, &Workbench::newTuneRequested);
    connect(welcome, &Welcome::demoClicked, this, &Workbench::demoRequested);
    m_welcome = welcome;
    m_notOpenedPage = new NotOpened(this);
    connect(m_notOpenedPage, &NotOpened::openClicked, this, &Workbench::openRequested);
    connect(m_notOpenedPage, &NotOpened::backClicked, this, &Workbench::backToTune);
    m_snagCard = new SnagCard(this);
    m_trial = new Aside(this);
    m_search = new Aside(this);
    m_levels = tables.levels;
    m_lilts = tables.lilts;
    m_difficultyScale = tables.difficulty;
    auto* menus = new ChoiceMenus(session, std::move(tables), *m_header, this);
    connect(menus, &ChoiceMenus::harpKept, this, &Workbench::harpKept);
    m_actions.fill(menuBar());
    m_leftHands = new LeftHandEditing(
        m_session, m_actions, [this] { return m_passage; }, this);
    place();
    joinActions();
    joinViews();
    joinSession();
    showDocument();
    if (m_session.isOpen()) showSelection();
}

void Workbench::place()
{
    m_stage->addWidget(m_welcome);
    m_stage->addWidget(m_notOpenedPage);
    m_stage->addWidget(m_grid);
    m_stage->addWidget(m_sheet);
    auto* above = new QWidget(this);
    m_underStage = new QVBoxLayout(above);
    m_underStage->setContentsMargins(0, 0, 0, 0);
    m_underStage->setSpacing(0);
    m_underStage->addWidget(m_stage, 1);
    m_sides->addWidget(above);
    m_sides->addWidget(m_variants);
    m_sides->setStretchFactor(0, 1);
    m_sides->setSizes({900, 350});
    m_halves->addWidget(m_sides);
    m_halves->addWidget(m_bank);
    m_halves->setStretchFactor(0, 3);
    m_halves->setStretchFactor(1, 1);
    m_halves->setSizes({480, 214});
    for (QSplitter* splitter : {m_sides, m_halves}) {
        splitter->setChildrenCollapsible(false);
        splitter->setHandleWidth(3);
    }
    auto* middle = new QWidget(this);
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_header);
    column->addWidget(m_messages);
    column->addWidget(m_halves, 1);
    column->addWidget(m_transport);
    column->addWidget(m_status);
    setCentralWidget(middle);
}

void Workbench::setBelowGrid(QWidget* pane) { m_underStage->addWidget(pane); }

void Workbench::joinActions()
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
    on(m_actions.words, [this] { editWords(); });
    on(m_actions.handout, &Workbench::handoutRequested);
    on(m_actions.levels, &Workbench::levelsRequested);
    on(m_actions.quit, [this] { close(); });
    QUndoStack& undo = m_session.undoStack();
    on(m_actions.undo, [&undo] { undo.undo(); });
    on(m_actions.history, [this, &undo] {
        auto* const dialog = new HistoryDialog(undo, this);
        dialog->setAttribute(Qt::WA_DeleteOnClose);
        dialog->show();
    });
    on(m_actions.redo, [&undo] { undo.redo(); });
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
    on(m_actions.messages, [this] { m_messages->openList(); });
    for (QAction* pane : {m_actions.showBank, m_actions.showShapes, m_actions.bankAbove,
                          m_actions.shapesLeft, m_actions.alone})
        connect(pane, &QAction::toggled, this, &Workbench::showPanes);
    on(m_actions.anotherTake, [this] { m_session.anotherTake(); });
    on(m_actions.bestTake, [this] { m_session.bestTake(); });
    on(m_actions.varyPasses, [this](bool vary) {
        m_session.setPasses(vary ? proposal::Passes::Varied : proposal::Passes::Written);
    });
    on(m_actions.heardTempo, [this] {
        double const own = quartersPerMinute(m_session.arrangement().tempo);
        if (m_session.setTempo(own * m_transport->tempoScale())) m_transport->resetTempo();
    });
    on(m_actions.ownTempo, [this] { m_session.setTempo(std::nullopt); });
    on(m_actions.playTune, [this] { playOrStop(); });
    on(m_actions.fromHere, [this] {
        if (auto const bar = selectedPlayedBar()) hear(*bar, std::nullopt);
    });
    on(m_actions.hearBar, [this] { hearSelected(); });
    on(m_actions.stop, [this] { escape(); });
    on(m_actions.loop, [this] { m_transport->toggleLoop(); });
    on(m_actions.countIn, [this] { m_transport->toggleCountIn(); });
    on(m_actions.left, [this] { m_transport->toggleLeft(); });
    on(m_actions.right, [this] { m_transport->toggleRight(); });
    on(m_actions.faster, [this] { m_transport->stepTempo(+5); });
    on(m_actions.slower, [this] { m_transport->stepTempo(-5); });
    on(m_actions.phrase, [this] { choosePassage(phraseAround); });
    on(m_actions.part, [this] { choosePassage(partAround); });
    on(m_actions.barBefore, [this] { m_transport->practiceCard()->toggleBarBefore(); });
    on(m_actions.click, [this] { m_transport->practiceCard()->toggleClicks(); });
    on(m_actions.stepsUp, [this] { m_transport->practiceCard()->toggleFaster(); });
    on(m_actions.typeTempo, [this] { m_transport->typeTempo(); });
    on(m_actions.playAlong, [this] { m_transport->practiceCard()->toggleListens(); });
    on(m_actions.practice, [this] { m_transport->openPractice(); });
    on(m_actions.hearBetween, [this] { hearBetween(); });
    on(m_actions.markA, [this] { rememberA(); });
    on(m_actions.flip, [this] { flip(); });
    on(m_actions.takeA, [this] { takeA(); });
    on(m_actions.grid, [this] { setView(View::Grid); });
    on(m_actions.sheet, [this] { setView(View::Sheet); });
    on(m_actions.nextPane, [this] {
        std::array<QWidget*, 3> const panes{m_stage->currentWidget(), m_variants->list(),
                                            m_bank};
        std::size_t here = panes.size() - 1;
        for (std::size_t i = 0; i < panes.size(); ++i)
            if (panes[i]->hasFocus()) here = i;
        std::size_t next = (here + 1) % panes.size();
        while (next != here && !panes[next]->isVisible()) next = (next + 1) % panes.size();
        panes[next]->setFocus(Qt::TabFocusReason);
    });
    on(m_actions.system, [this] { wear(Theme::System); });
    on(m_actions.light, [this] { wear(Theme::Light); });
    on(m_actions.dark, [this] { wear(Theme::Dark); });
    on(m_actions.strongLight, [this] { wear(Theme::StrongLight); });
    on(m_actions.strongDark, [this] { wear(Theme::StrongDark); });
    on(m_actions.keys, [this] { showKeys(this, m_actions); });
    on(m_actions.care, [this] { showCare(this); });
    on(m_actions.about, [this] { showAbout(this); });
}

void Workbench::joinViews()
{
    connect(m_header, &Header::viewClicked, this, &Workbench::setView);
    connect(m_grid, &TuneGrid::positionClicked, &m_session, &Session::select);
    connect(m_grid, &TuneGrid::positionToggled, &m_session, &Session::toggleChosen);
    connect(m_leftHands, &LeftHandEditing::told, this, &Workbench::tell);
    connect(m_leftHands, &LeftHandEditing::done, this, &Workbench::tellDone);
    connect(m_grid, &TuneGrid::rankTyped, &m_session, &Session::chooseRanked);
    connect(m_grid, &TuneGrid::hearClicked, this, &Workbench::hearSelected);
    connect(m_grid, &TuneGrid::variantsClicked, this,
            [this] { m_variants->list()->setFocus(Qt::OtherFocusReason); });

    connect(m_grid, &TuneGrid::snagClicked, this, &Workbench::openSnag);
    connect(m_snagCard, &SnagCard::hearClicked, this, &Workbench::hearSnagWay);
    connect(m_snagCard, &SnagCard::wayChosen, this, [this](int way, bool alike) {
        auto const& snags = m_session.proposal().snags;
        if (m_snag >= snags.size() || way >= static_cast<int>(snags[m_snag].ways.size())) return;
        tune::Way const wanted = snags[m_snag].ways[static_cast<std::size_t>(way)].way;
        arrangeAnew([&] { m_session.takeSnagWay(m_snag, wanted, alike); });
    });
    connect(m_snagCard, &SnagCard::letChooseClicked, this,
            [this] { arrangeAnew([this] { m_session.letSnagChange(m_snag); }); });
    connect(m_snagCard, &SnagCard::wholeTuneChosen, this, [this](int which) {
        auto const index = static_cast<std::size_t>(which);
        if (!m_wholeTune || index >= m_wholeTune->size()) return;
        proposal::WholeTuneWay const way = (*m_wholeTune)[index];
        arrangeAnew([&] {
            if (m_session.takeForWholeTune(way)) tellDone(QString::fromStdString(way.sentence));
        });
    });
    connect(m_grid, &TuneGrid::passageChosen, this, &Workbench::setPassage);
    connect(m_variants->followed(), &FollowedBox::onlyThisClicked, this,
            &Workbench::keepOnlyThis);
    connect(m_variants->followed(), &FollowedBox::letFollowClicked, this, [this] {
        m_followed.clear();
        showFollowed();
    });
    connect(m_grid, &TuneGrid::menuWanted, this, [this](QPoint const& where) {
        QMenu menu(this);
        menu.addActions({m_actions.hearBar, m_actions.fromHere});
        menu.addSeparator();
        menu.addActions({m_actions.lock, m_actions.unlock, m_actions.leaveEmpty});
        menu.addSeparator();
        menu.addActions({m_actions.chooseLike, m_actions.nextLike});
        menu.addSeparator();
        menu.addActions({m_actions.copyShape, m_actions.pasteShape, m_actions.swapShapes,
                         m_actions.everyChord, m_actions.everyBar, m_actions.everyClose});
        menu.addSeparator();
        addFingerMenu(menu, m_session);
        menu.exec(where);
    });
    connect(m_sheet->view(), &PageView::positionClicked, &m_session, &Session::select);
    connect(m_sheet, &SheetPanel::kindChosen, this, &Workbench::setPaperKind);
    connect(m_sheet, &SheetPanel::paperChosen, this, &Workbench::setPaper);
    connect(m_sheet, &SheetPanel::wordsClicked, this, &Workbench::editWords);
    connect(m_sheet, &SheetPanel::exportClicked, this, &Workbench::exportRequested);
    connect(m_sheet, &SheetPanel::printClicked, this, &Workbench::printRequested);

    VariantList* list = m_variants->list();
    connect(list, &VariantList::shownClicked, &m_session, &Session::show);
    connect(list, &VariantList::useClicked, &m_session, &Session::choose);
    connect(list, &VariantList::unlockClicked, &m_session, &Session::unlock);
    connect(list, &VariantList::hearClicked, this, [this](int candidate) {
        m_session.show(candidate);
        hearSelected();
    });
    connect(list, &VariantList::backClicked, this,
            [this] { m_stage->currentWidget()->setFocus(Qt::OtherFocusReason); });
    connect(m_variants->own(), &OwnPattern::useClicked, &m_session, &Session::usePattern);
    connect(m_variants->own(), &OwnPattern::keepClicked, this,
            [this](pattern::Pattern const& own) {
                if (m_session.addPattern(own)) emit keepPatternRequested(own);
            });
    connect(m_variants, &VariantPanel::whyNotWanted, this, &Workbench::showWhyNot);
    connect(m_bank, &StringBank::stringPlucked, this, &Workbench::pluck);
    connect(m_bank, &StringBank::leverTurned, this, &Workbench::turnLever);

    connect(m_transport, &Transport::playClicked, this, &Workbench::playOrStop);
    connect(m_transport, &Transport::stopClicked, this, &Workbench::stop);
    connect(m_transport, &Transport::hearBarClicked, this, &Workbench::hearSelected);
    connect(m_transport, &Transport::fromHereClicked, m_actions.fromHere, &QAction::trigger);
    connect(m_transport, &Transport::settingsChanged, this, &Workbench::changeHearing);
    connect(m_transport, &Transport::flipClicked, this, &Workbench::flip);
    connect(m_transport, &Transport::tempoEntered, this,
            [this] { m_stage->currentWidget()->setFocus(Qt::OtherFocusReason); });
    connect(m_status, &StatusLine::warningsClicked, this, [this] {
        QStringList sentences;
        for (std::string const& warning : m_session.proposal().warnings)
            sentences << QString::fromStdString(warning);
        tell(sentences.join(QLatin1Char('\n')));
    });
}

void Workbench::joinSession()
{
    connect(&m_session, &Session::opened, this, [this] {
        stop();
        m_messages->dismissAll();
        m_notOpened.reset();
        m_then.reset();
        m_followed.clear();
        m_leftHands->forget();
        m_a.reset();
        m_compared.reset();
        showCompared();
        setPassage(std::nullopt);
        showStage();
        m_stage->currentWidget()->setFocus(Qt::OtherFocusReason);
    });
    connect(&m_session, &Session::changed, this, [this] {
        m_messages->withdrawChoices();
        m_trial->giveUp();
        m_search->giveUp();
        m_wholeTune.reset();
        m_notOpened.reset();
        m_gridFresh = false;
        noteChanges();
        showDocument();
    });
    connect(&m_session, &Session::selectionChanged, this, [this] {
        if (m_notOpened) return;
        if (auto const selected = m_session.selected()) // seen
            std::erase_if(m_followed,
                          [&](Followed const& f) { return f.position == *selected; });
        if (m_compared) { // what is looked at now is B
            m_compared.reset();
            showCompared();
        }
        showSelection();
    });
    connect(&m_session, &Session::turnedAway, this, [this](QString const& title) {
        m_notOpened = title;
        stop();
        showDocument();
        showSelection();
    });
    connect(&m_session, &Session::refused, this, &Workbench::tellFault);
    connect(&m_session, &Session::offered, this,
            [this](std::vector<proposal::Remedy> const& remedies) {
                m_remedies = remedies;
                QStringList choices;
                for (proposal::Remedy const& remedy : remedies)
                    choices << QString::fromStdString(remedy.sentence);
                m_messages->offer(choices);
            });
    connect(m_messages, &MessageBar::choiceClicked, this, [this](int choice) {
        proposal::Remedy const remedy = m_remedies[static_cast<std::size_t>(choice)];
        m_messages->dismiss();
        if (m_session.take(remedy)) tellDone(QString::fromStdString(remedy.sentence));
    });
    connect(&m_session, &Session::noticed, this, &Workbench::tell);
    connect(&m_session, &Session::relevelled, this, &Workbench::tellLevel);
}

void Workbench::setView(View view)
{
    m_view = view;
    m_header->setView(view);
    (view == View::Grid ? m_actions.grid : m_actions.sheet)->setChecked(true);
    showStage();
    if (m_session.isOpen()) m_stage->currentWidget()->setFocus(Qt::OtherFocusReason);
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
    if (wanted == m_sheet && m_sheetOutdated) showSheet();
}

// Engraves what is shown. Costs nothing while the sheet is not looked at.
void Workbench::showSheet()
{
    m_sheetOutdated = m_stage->currentWidget() != m_sheet;
    if (m_sheetOutdated) return;
    if (!font()) return;
    m_sheet->view()->setDocument(
        paperOf(m_paperKind, forPupil(m_session.shownArrangement()), *m_musicFont, m_style));
    m_sheet->view()->setChosenPosition(m_session.selected());
}

std::optional<sheet::MusicFont> const& Workbench::font()
{
    if (m_musicFont) return m_musicFont;
    auto font = musicFont();
    if (font)
        m_musicFont = *std::move(font);
    else
        tellFault(font.error());
    return m_musicFont;
}

PageView* Workbench::sheet() const { return m_sheet->view(); }

std::optional<sheet::Document> Workbench::pages()
{
    if (!m_session.isOpen() || !font()) return std::nullopt;
    return paperOf(m_paperKind, forPupil(m_session.arrangement()), *m_musicFont, m_style);
}

void Workbench::setPapersFor(QString const& pupil)
{
    m_papersFor = pupil;
    if (m_session.isOpen()) showSheet();
}

arrange::Arrangement Workbench::forPupil(arrange::Arrangement arrangement) const
{
    if (!m_papersFor.isEmpty())
        arrangement.tune.notes.insert(arrangement.tune.notes.begin(),
                                      tr("For %1.").arg(m_papersFor).toStdString());
    return arrangement;
}

void Workbench::setPaperKind(PaperKind kind)
{
    m_paperKind = kind;
    m_sheet->setKind(kind);
    if (m_session.isOpen()) showSheet();
}

void Workbench::setPaper(sheet::Paper paper)
{
    m_style.paper = paper;
    m_sheet->setPaper(paper);
    if (m_session.isOpen()) showSheet();
    emit paperChanged();
}

// The pattern that the selected position has, else the first that the tune uses.
sheet::HandoutWish Workbench::handoutWish() const
{
    proposal::Brief const& brief = m_session.brief();
    arrange::Arrangement const& arrangement = m_session.arrangement();
    sheet::HandoutWish wish{brief.harp,           brief.hand, brief.level, brief.book,
                            arrangement.tune.key, {},         {},          {}};
    std::string wanted;
    if (auto const selected = m_session.selected())
        wanted = arrangement.positions[static_cast<std::size_t>(*selected)].voicing.pattern;
    for (pattern::Pattern const& pattern : wish.book.patterns)
        if (pattern.name == wanted) wish.patterns.push_back(pattern);
    if (wish.patterns.empty() && !wish.book.patterns.empty())
        wish.patterns.push_back(wish.book.patterns.front());
    return wish;
}

void Workbench::editWords()
{
    if (!m_session.isOpen()) return;
    WordsDialog dialog(tune::pageWords(m_session.brief().tune), this);
    if (dialog.exec() == QDialog::Accepted) m_session.setWords(dialog.words());
}

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
    stop();
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
    m_stage->currentWidget()->setFocus(Qt::OtherFocusReason);
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
    showLilt();
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
    tune::Tune const& tune = arrangement.tune;
    m_header->setKeyWords(QString::fromStdString(music::shown(tune.key)));
    QStringList detail;
    if (!tune.rhythm.empty()) detail << QString::fromStdString(tune.rhythm);
    detail << QString::fromStdString(music::text(tune.meter));
    // The levers first: they are what must not be cut off in a narrow window.
    detail.prepend(
        tr("levers up: %1").arg(setupWords(arrangement.harp, arrangement.levers.setup)));
    auto const flips = arrangement.levers.flips.size();
    if (flips == 1) detail << tr("1 lever flip");
    if (flips > 1) detail << tr("%1 lever flips").arg(flips);
    hands::Difficulty difficulty =
        hands::difficultyOf(arrangement, m_levels, brief.book, m_difficultyScale);
    detail.insert(1, tr("difficulty %1").arg(difficulty.level, 0, 'f', 1));
    m_grid->setDifficulty(std::move(difficulty), brief.level.number);
    QString const title = QString::fromStdString(tune.title);
    m_header->setTitle(title, detail.join(QStringLiteral(" · ")));
    setWindowTitle(tr("%1[*] – Sallow").arg(title));
}

void Workbench::showSelection()
{
    if (!showsTune()) {
        m_gridFresh = false;
        m_grid->clear();
        m_variants->setHeading(tr("Shapes"), tr("for the chord you choose"));
        m_variants->list()->setRows({});
    } else {
        auto const selected = m_session.selected();
        auto const looked = m_session.shown();
        bool const best =
            !selected || !looked ||
            *looked == m_session.proposal()
                           .solution.best.candidates[static_cast<std::size_t>(*selected)];
        if (!m_gridFresh || !best) m_grid->setArrangement(m_session.shownArrangement());
        m_gridFresh = best;
        m_grid->setSelected(selected);
        m_grid->setChosen(m_session.chosen());
        showSheet();
        showVariants();
        if (auto const position = m_session.selected()) {
            auto const& where =
                m_session.arrangement().positions[static_cast<std::size_t>(*position)].position;
            m_transport->setBarWords(barTitle(m_session.arrangement().tune, where.bar));
        }
    }
    showFollowed();
    showSnags();
    showBank();
    showStatus();
    enableActions();
}

namespace {

// "root G2 · quavers"
QString whereWords(harp::Harp const& harp, arrange::Voicing const& voicing)
{
    if (voicing.notes.empty()) return {};
    music::Pitch const root = harp.string(voicing.rootString).open;
    QString words = Workbench::tr("root %1").arg(
        QString::fromStdString(music::shown(music::naturalAt(diatonicStep(root)))));
    if (!voicing.rhythm.empty())
        words += QStringLiteral(" · ") + QString::fromStdString(voicing.rhythm);
    if (voicing.rolled) words += QStringLiteral(" · ") + Workbench::tr("rolled");
    return words;
}

} // namespace

void Workbench::showVariants()
{
    auto const position = m_session.selected();
    m_variants->own()->setReady(position.has_value());
    if (m_variants->showsWhyNot()) showWhyNot();
    if (!position) {
        m_variants->setHeading(tr("No chords"), {});
        m_variants->list()->setRows({});
        return;
    }
    harp::Harp const& harp = m_session.arrangement().harp;
    auto const& candidates =
        m_session.proposal().lattice.candidates[static_cast<std::size_t>(*position)];
    std::vector<VariantRow> rows;
    for (proposal::Variant const& variant : m_session.variants()) {
        auto const& voicing = candidates[static_cast<std::size_t>(variant.candidate)].voicing;
        rows.push_back({variant, voicing, whereWords(harp, voicing)});
    }
    auto const together = m_session.chosen().size();
    m_variants->setHeading(positionTitle(m_session.arrangement(), *position),
                           together == 1 ? tr("%1 shapes, best first").arg(rows.size())
                           : together == 2
                               ? tr("for this and one more chord")
                               : tr("for this and %1 more chords").arg(together - 1));
    m_variants->list()->setHarp(harp);
    m_variants->list()->setRows(std::move(rows));
    m_variants->list()->setShown(m_session.shown());
}

void Workbench::showWhyNot()
{
    auto const position = m_session.selected();
    m_variants->whyNot()->setRows(position
                                      ? proposal::unplayable(m_session.proposal(), *position)
                                      : std::vector<proposal::Unplayable>{});
}

// What changed elsewhere since the arranger last looked there.
void Workbench::noteChanges()
{
    if (!m_session.isOpen()) return;
    auto const selected = m_session.selected();
    ShapesThen now = shapesOf(m_session.proposal());
    bool justKept = false;
    if (m_then) {
        m_followed = followedAfter(m_followed, *m_then, m_session.proposal(), selected);
        auto const here = static_cast<std::size_t>(selected.value_or(0));
        justKept = selected && here < m_then->kept.size() && here < now.kept.size() &&
                   !m_then->kept[here] && now.kept[here];
    }
    m_then = std::move(now);
    if (justKept && !m_followed.empty() && !m_actions.letFollow->isChecked() &&
        !m_session.undoStack().canRedo())
        QMetaObject::invokeMethod(this, &Workbench::keepOnlyThis, Qt::QueuedConnection);
}

void Workbench::showFollowed()
{
    QStringList lines;
    std::vector<int> positions;
    if (showsTune())
        for (Followed const& f : m_followed) {
            lines << followedWords(m_session.arrangement(), f);
            positions.push_back(f.position);
        }
    m_variants->followed()->setLines(lines);
    m_grid->setFollowed(std::move(positions));
}

namespace {

music::Length placeInBar(arrange::Arrangement const& arrangement, proposal::Snag const& snag)
{
    auto const bar = static_cast<std::size_t>(snag.place.bar);
    if (snag.hand == harp::Side::Left || bar >= arrangement.tune.bars.size()) return {};
    auto const& notes = arrangement.tune.bars[bar].notes;
    auto const note = static_cast<std::size_t>(snag.place.note);
    return note < notes.size() ? notes[note].at : music::Length{};
}

// "Bar 11 · D♯5"
QString snagTitle(arrange::Arrangement const& arrangement, proposal::Snag const& snag)
{
    QString title = barTitle(arrangement.tune, snag.place.bar);
    if (snag.written)
        title += QStringLiteral(" · ") + QString::fromStdString(music::shown(*snag.written));
    return title;
}

// A sentence as a line of its own.
QString asLine(std::string const& sentence)
{
    QString words = QString::fromStdString(sentence);
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    return words;
}

} // namespace

void Workbench::showSnags()
{
    std::vector<SnagMark> marks;
    std::vector<int> strings;
    if (showsTune()) {
        arrange::Arrangement const& arrangement = m_session.arrangement();
        auto const selected = m_session.selected();
        int const bar =
            selected ? arrangement.positions[static_cast<std::size_t>(*selected)].position.bar
                     : -1;
        for (proposal::Snag const& snag : m_session.proposal().snags) {
            QString words = snagTitle(arrangement, snag);
            for (proposal::SnagWay const& way : snag.ways)
                if (way.way == snag.way)
                    words += QStringLiteral(": ") +
                             QString::fromStdString(proposal::wayWords(snag, way));
            marks.push_back({snag.place.bar, placeInBar(arrangement, snag),
                             snag.strings.empty() ? std::nullopt
                                                  : std::optional(snag.strings.front()),
                             snag.decided, words});
            if (snag.place.bar == bar)
                strings.insert(strings.end(), snag.strings.begin(), snag.strings.end());
        }
    }
    m_grid->setSnags(std::move(marks));
    m_bank->setSnags(std::move(strings));
}

void Workbench::openSnag(int snag, QPoint const& where)
{
    if (!showsTune() || snag < 0 ||
        snag >= static_cast<int>(m_session.proposal().snags.size()))
        return;
    m_snag = static_cast<std::size_t>(snag);
    proposal::Snag const here = m_session.proposal().snags[m_snag];
    selectBar(here.place.bar);
    SnagTold told;
    told.title = snagTitle(m_session.arrangement(), here);
    told.why = asLine(here.what) + QLatin1Char('.');
    int cheapest = here.ways.empty() ? 0 : here.ways.front().cost;
    for (proposal::SnagWay const& way : here.ways) cheapest = std::min(cheapest, way.cost);
    told.choice = here.hand == harp::Side::Right;
    for (proposal::SnagWay const& way : here.ways)
        told.ways.push_back({asLine(proposal::wayWords(here, way)),
                             told.choice ? wayPlaceWords(way.cost - cheapest) : QString(),
                             tr("score %1, lower is better").arg(way.cost / 100.0, 0, 'f', 1),
                             way.way == here.way});
    told.alike = static_cast<int>(
        std::ranges::count_if(m_session.proposal().snags, [&here](proposal::Snag const& other) {
            return other.hand == here.hand && other.group == here.group;
        }));
    told.decided = here.decided;
    m_snagCard->tell(told);
    tellWholeTune();
    m_snagCard->openAt(where);
    lookForWholeTune();
}

// The first chord of a bar, so that the strings are shown as they are there.
void Workbench::selectBar(int bar)
{
    auto const& positions = m_session.arrangement().positions;
    if (auto const now = m_session.selected())
        if (positions[static_cast<std::size_t>(*now)].position.bar == bar) return;
    for (std::size_t i = 0; i < positions.size(); ++i)
        if (positions[i].position.bar == bar)
            return m_session.select(static_cast<int>(i));
}

// The bar with that way in it, and nothing kept.
void Workbench::hearSnagWay(int way)
{
    auto const& snags = m_session.proposal().snags;
    if (m_snag >= snags.size()) return;
    proposal::Snag const& snag = snags[m_snag];
    if (way < 0 || way >= static_cast<int>(snag.ways.size())) return;
    auto const hearBar = [this, bar = snag.place.bar](arrange::Arrangement arrangement) {
        auto const played = playedPassage(arrangement.playing, {bar, bar});
        if (!played) return;
        request(auditionOf(std::move(arrangement), played->first, played->last));
    };
    m_trial->giveUp();
    m_snagCard->setWaiting(std::nullopt);
    tune::Way const wanted = snag.ways[static_cast<std::size_t>(way)].way;
    if (wanted == snag.way) return hearBar(m_session.arrangement());
    m_snagCard->setWaiting(way);
    m_trial->begin([trial = m_session.trial(m_snag, wanted)](auto const&) { return trial(); },
                   [this, hearBar](std::optional<arrange::Arrangement> made) {
                       m_snagCard->setWaiting(std::nullopt);
                       if (made && m_snagCard->isVisible()) hearBar(*std::move(made));
                   });
}

// The card goes first, so that nothing of it is left in sight while the tune is arranged.
void Workbench::arrangeAnew(std::function<void()> const& edit)
{
    m_trial->giveUp();
    m_search->giveUp();
    QApplication::setOverrideCursor(Qt::WaitCursor);
    QApplication::processEvents(QEventLoop::ExcludeUserInputEvents);
    edit();
    QApplication::restoreOverrideCursor();
}

// Another key, tempo or level: each is tried, which takes a while.
void Workbench::lookForWholeTune()
{
    if (m_wholeTune || m_search->busy()) return;
    m_search->begin(m_session.wholeTuneSearch(),
                    [this](std::vector<proposal::WholeTuneWay> found) {
                        m_wholeTune = std::move(found);
                        tellWholeTune();
                    });
}

void Workbench::tellWholeTune()
{
    if (!m_wholeTune) return m_snagCard->setWholeTune(std::nullopt);
    QStringList sentences;
    for (proposal::WholeTuneWay const& way : *m_wholeTune)
        sentences << QString::fromStdString(way.sentence);
    m_snagCard->setWholeTune(sentences);
}

void Workbench::keepOnlyThis()
{
    std::vector<ShapeAt> asBefore;
    for (Followed const& f : m_followed) asBefore.push_back({f.position, f.before});
    m_session.chooseAll(asBefore, tr("the rest as it was"));
}

void Workbench::setPassage(std::optional<Passage> passage)
{
    m_passage = passage;
    m_grid->setPassage(passage);
    m_transport->setPassageWords(
        passage && m_session.isOpen() ? passageWords(m_session.arrangement().tune, *passage)
                                      : QString());
}

void Workbench::showPanes()
{
    bool const alone = m_actions.alone->isChecked();
    m_sides->insertWidget(m_actions.shapesLeft->isChecked() ? 0 : 1, m_variants);
    m_halves->insertWidget(m_actions.bankAbove->isChecked() ? 0 : 1, m_bank);
    m_variants->setVisible(!alone && m_actions.showShapes->isChecked());
    m_bank->setVisible(!alone && m_actions.showBank->isChecked());
    for (QWidget* part : {static_cast<QWidget*>(m_header), static_cast<QWidget*>(m_transport),
                          static_cast<QWidget*>(m_status)})
        part->setVisible(!alone);
}

QByteArray Workbench::panes() const
{
    QByteArray out;
    QDataStream stream(&out, QIODevice::WriteOnly);
    stream << m_actions.showShapes->isChecked() << m_actions.showBank->isChecked()
           << m_actions.shapesLeft->isChecked() << m_actions.bankAbove->isChecked()
           << m_actions.letFollow->isChecked() << m_sides->saveState()
           << m_halves->saveState();
    return out;
}

void Workbench::restorePanes(QByteArray const& panes)
{
    QDataStream stream(panes);
    bool shapes = true, bank = true, left = false, above = false, follow = true;
    QByteArray sides, halves;
    stream >> shapes >> bank >> left >> above >> follow >> sides >> halves;
    if (stream.status() != QDataStream::Ok) return;
    m_actions.showShapes->setChecked(shapes);
    m_actions.showBank->setChecked(bank);
    m_actions.shapesLeft->setChecked(left);
    m_actions.bankAbove->setChecked(above);
    m_actions.letFollow->setChecked(follow);
    showPanes();
    m_sides->restoreState(sides);
    m_halves->restoreState(halves);
}

void Workbench::showBank()
{
    if (!showsTune()) {
        m_bank->setTitle({});
        m_bank->setFingers({});
        return;
    }
    // The grid has what is looked at as well; a copy is dear.
    std::optional<arrange::Arrangement> looked;
    if (!m_gridFresh) looked = m_session.shownArrangement();
    arrange::Arrangement const& shown = looked ? *looked : m_session.arrangement();
    m_bank->setHarp(shown.harp);
    m_bank->setLevers(leversNow());
    if (auto const position = m_session.selected()) {
        showFingers(shown, *position);
    } else {
        m_bank->setTitle({});
        m_bank->setFingers({});
    }
}

// The strings of one hand alone where one alone is heard.
void Workbench::showFingers(arrange::Arrangement const& arrangement, int position)
{
    bool const left = m_transport->hearsLeft();
    bool const right = m_transport->hearsRight();
    std::vector<FingerDisc> fingers = fingersAt(arrangement, position);
    if (left != right)
        std::erase_if(fingers, [left](FingerDisc const& disc) {
            return (disc.hand == harp::Side::Left) != left;
        });
    QString const place = positionTitle(arrangement, position);
    m_bank->setTitle(left == right ? place
                     : left        ? tr("%1 · left hand").arg(place)
                                   : tr("%1 · right hand").arg(place));
    m_bank->setFingers(std::move(fingers));
}

void Workbench::showStatus()
{
    if (m_notOpened && m_session.isOpen()) {
        m_status->setWords({}, {});
        m_status->setWarnings({});
        return;
    }
    if (!m_session.isOpen()) {
        m_status->setWords(tr("Open a tune to begin."), {});
        m_status->setWarnings({});
        return;
    }
    proposal::Proposal const& proposal = m_session.proposal();
    QStringList left;
    left << tr("Score %1, lower is better")
                .arg(static_cast<double>(proposal.solution.best.cost) / 1000, 0, 'f', 1);
    if (proposal.take) left << QString::fromStdString(takeWords(*proposal.take)).chopped(1);
    int locks = 0;
    for (auto const& lock : proposal.lattice.locks) locks += lock.has_value() ? 1 : 0;
    if (locks == 1) left << tr("1 shape kept");
    if (locks > 1) left << tr("%1 shapes kept").arg(locks);
    auto const shown = m_session.shown();
    for (proposal::Variant const& variant : m_session.variants())
        if (variant.candidate == shown && !variant.chosen)
            left << tr("looking at another shape: %1").arg(regretWords(variant.regret));
    QStringList warnings;
    for (std::string const& warning : proposal.warnings)
        warnings << QString::fromStdString(warning);
    m_status->setWords(left.join(QStringLiteral(" · ")),
                       tr("%1 shapes can be played here").arg(m_session.variants().size()));
    m_status->setWarnings(warnings);
}

void Workbench::enableActions()
{
    bool const open = showsTune();
    auto const position = m_session.selected();
    m_leftHands->enable(open);
    bool const locked =
        open && std::ranges::any_of(m_session.chosen(), [this](int at) {
            return m_session.proposal().lattice.locks[static_cast<std::size_t>(at)].has_value();
        });
    for (QAction* action : {m_actions.save, m_actions.saveAs, m_actions.exportTo,
                            m_actions.print, m_actions.words, m_actions.handout,
                            m_actions.levels, m_actions.playTune, m_actions.varyPasses})
        action->setEnabled(open);
    for (QAction* action :
         {m_actions.lock, m_actions.leaveEmpty, m_actions.hearBar, m_actions.fromHere,
          m_actions.phrase, m_actions.part, m_actions.hearBetween, m_actions.flip})
        action->setEnabled(open && position);
    m_actions.heardTempo->setEnabled(open);
    m_actions.soundFiles->setEnabled(open);
    m_actions.markA->setEnabled(open);
    m_actions.takeA->setEnabled(open && m_a);
    m_actions.anotherTake->setEnabled(open);
    m_actions.bestTake->setEnabled(open && m_session.brief().take > 0);
    m_actions.ownTempo->setEnabled(open && m_session.brief().quartersPerMinute);
    m_actions.unlock->setEnabled(locked);
    m_actions.unlockAll->setEnabled(open && !m_session.brief().locks.empty());
    m_actions.varyPasses->setChecked(m_session.brief().passes == proposal::Passes::Varied);
    m_actions.undo->setEnabled(m_session.undoStack().canUndo());
    m_actions.redo->setEnabled(m_session.undoStack().canRedo());
}

// The levers as they stand at what sounds now, or else at the selected position.
harp::LeverSetting Workbench::leversNow() const
{
    arrange::Arrangement const& arrangement = m_session.arrangement();
    music::Moment at;
    if (m_playedBar)
        at = arrangement.playing.bars[static_cast<std::size_t>(*m_playedBar)].at;
    else if (auto const position = m_session.selected())
        at = arrangement.positions[static_cast<std::size_t>(*position)]
                 .position.played.front()
                 .at;
    return leversAt(arrangement, at);
}

std::optional<int> Workbench::selectedPlayedBar() const
{
    auto const position = m_session.selected();
    if (!position) return std::nullopt;
    return m_session.arrangement()
        .positions[static_cast<std::size_t>(*position)]
        .position.played.front()
        .playedBar;
}

perform::Hearing Workbench::hearing() const
{
    perform::Hearing hearing;
    Practice const practice = m_transport->practice();
    hearing.tempoScale = m_transport->tempoScale();
    hearing.left = m_transport->hearsLeft();
    hearing.right = m_transport->hearsRight();
    hearing.countIn = m_transport->countsIn();
    hearing.barBefore = practice.barBefore;
    hearing.rollGap = practice.rollGapMs / 1000.0;
    hearing.added = !practice.tuneAlone;
    hearing.balance = practice.balance / 100.0;
    if (m_lilt) hearing.lilt = {*m_lilt, practice.lilt / 100.0};
    return hearing;
}

namespace {

perform::Steps stepsOf(Practice const& practice)
{
    return {practice.from / 100.0, practice.to / 100.0, practice.by / 100.0, practice.every};
}

double tempoOfRound(std::vector<double> const& tempos, int round)
{
    auto const last = static_cast<int>(tempos.size()) - 1;
    return tempos[static_cast<std::size_t>(std::clamp(round, 0, last))];
}

} // namespace

Audition Workbench::auditionOf(arrange::Arrangement arrangement, int firstPlayedBar,
                               int lastPlayedBar) const
{
    Audition audition{std::move(arrangement), hearing(), m_transport->loops(), false, {}};
    audition.hearing.firstPlayedBar = firstPlayedBar;
    audition.hearing.lastPlayedBar = lastPlayedBar;
    Practice const practice = m_transport->practice();
    audition.clicks = practice.clicks;
    if (practice.faster && audition.loop) {
        audition.tempos = perform::temposOf(stepsOf(practice));
        if (practice.waits) {
            audition.loop = false;
            audition.tempos = {tempoOfRound(audition.tempos, m_waited)};
        }
    }
    return audition;
}

void Workbench::request(Audition audition)
{
    m_round = 0;
    m_practised = m_transport->practice();
    bool const same = m_heard && m_heard->hearing.firstPlayedBar == audition.hearing.firstPlayedBar &&
                      m_heard->hearing.lastPlayedBar == audition.hearing.lastPlayedBar;
    if (!same && std::exchange(m_waited, 0) > 0 && !audition.tempos.empty())
        audition.tempos = {perform::temposOf(stepsOf(m_practised)).front()};
    m_heard = std::move(audition);
    if (!m_heard->tempos.empty()) m_transport->showTempo(m_heard->tempos.front());
    emit playRequested(*m_heard);
}

void Workbench::hear(int firstPlayedBar, std::optional<int> lastPlayedBar)
{
    if (!m_session.isOpen()) return;
    request(auditionOf(arrangementOf(m_compared.value_or(Compared::B)), firstPlayedBar,
                       lastPlayedBar.value_or(-1)));
}

void Workbench::hearSelected()
{
    if (m_passage && m_session.isOpen())
        if (auto const played = playedPassage(m_session.arrangement().playing, *m_passage))
            return hear(played->first, played->last);
    if (auto const bar = selectedPlayedBar()) hear(*bar, *bar);
}

void Workbench::playOrStop()
{
    if (m_playing)
        stop();
    else
        hear(0, std::nullopt);
}

void Workbench::stop()
{
    if (m_playing) m_waited = -1; // the next time begins with the first step, see playbackStopped()
    emit stopRequested();
}

void Workbench::changeHearing()
{
    m_actions.loop->setChecked(m_transport->loops());
    m_actions.countIn->setChecked(m_transport->countsIn());
    m_actions.left->setChecked(m_transport->hearsLeft());
    m_actions.right->setChecked(m_transport->hearsRight());
    Practice const practice = m_transport->practice();
    m_actions.barBefore->setChecked(practice.barBefore);
    m_actions.click->setChecked(practice.clicks);
    m_actions.stepsUp->setChecked(practice.faster);
    m_actions.playAlong->setChecked(practice.listens);
    showBank();
    if (!m_playing || !m_heard) return;
    perform::Hearing changed = hearing();
    changed.firstPlayedBar = m_heard->hearing.firstPlayedBar;
    changed.lastPlayedBar = m_heard->hearing.lastPlayedBar;
    changed.barBefore = m_heard->hearing.barBefore; // has been heard, or not
    m_heard->hearing = changed;
    bool const waits = practice.faster && practice.waits;
    m_heard->loop = m_transport->loops() && !waits;
    m_heard->clicks = practice.clicks;
    bool const steps = practice.faster && m_heard->loop;
    auto const stepped = [](Practice p) { // what the steps are made of
        return std::array{p.faster ? 1 : 0, p.from, p.to, p.by, p.every};
    };
    bool const kept = !m_heard->tempos.empty() && stepped(practice) == stepped(m_practised) &&
                      tempoOfRound(m_heard->tempos, m_round) == m_transport->tempoScale();
    if (!steps)
        m_heard->tempos.clear();
    else if (!kept)
        m_heard->tempos =
            perform::temposOf(stepsOf(practice), m_round, m_transport->tempoScale());
    m_practised = practice;
    emit hearingChanged(*m_heard);
}

void Workbench::pluck(int string)
{
    harp::Harp const& harp =
        m_session.isOpen() ? m_session.arrangement().harp : m_session.brief().harp;
    harp::Lever const lever =
        m_session.isOpen() ? leversNow()[static_cast<std::size_t>(string)] : harp::Lever::Down;
    emit stringPluckRequested(string, music::midi(harp::sounding(harp.string(string), lever)));
}

// A lever that the tune needs stays as it is planned, and the arranger is told why; any other is
// hers to set.
void Workbench::turnLever(int string, harp::Lever to)
{
    if (!m_session.isOpen()) return;
    if (levers::tunePlays(m_session.arrangement(), string))
        tell(QString::fromStdString(levers::leverStory(m_session.arrangement(), string)));
    else if (m_session.wishLever(string, to))
        tellDone(tr("%1: lever %2 at the start. The left hand has been arranged again; Undo "
                    "takes this back.")
                     .arg(QString::fromStdString(
                              harp::stringName(m_session.arrangement().harp, string)),
                          to == harp::Lever::Up ? tr("up") : tr("down")));
}

void Workbench::pluckPitch(int midi)
{
    if (!m_session.isOpen()) return;
    harp::Harp const& harp = m_session.arrangement().harp;
    harp::LeverSetting const levers = leversNow();
    for (int string = 0; string < harp.count(); ++string) {
        harp::Lever const lever = levers[static_cast<std::size_t>(string)];
        if (music::midi(harp::sounding(harp.string(string), lever)) == midi)
            return pluck(string);
    }
}

void Workbench::chooseBarNumber(int number)
{
    if (!m_session.isOpen() || number <= 0) return;
    auto const& bars = m_session.arrangement().tune.bars;
    auto const found = std::ranges::find(bars, number, &tune::Bar::number);
    if (found != bars.end()) selectBar(static_cast<int>(found - bars.begin()));
}

void Workbench::choosePlayedBar(int playedBar)
{
    if (!m_session.isOpen()) return;
    auto const& bars = m_session.arrangement().playing.bars;
    if (playedBar >= 0 && playedBar < static_cast<int>(bars.size()))
        selectBar(bars[static_cast<std::size_t>(playedBar)].bar);
}

void Workbench::awaitStrings(QString const& names)
{
    if (names.isEmpty())
        showBank();
    else
        m_bank->setTitle(tr("Now: %1").arg(names));
}

// One key for "enough": the sound, then the message.
void Workbench::escape()
{
    if (m_playing)
        stop();
    else if (m_messages->shownCount() > 0)
        m_messages->dismiss();
    else if (m_notOpened && m_session.isOpen())
        backToTune();
    else if (m_passage)
        setPassage(std::nullopt);
    else
        m_actions.alone->setChecked(false);
}

void Workbench::wear(Theme theme)
{
    dress(*qApp, theme);
    emit themeChosen(theme);
}

void Workbench::playbackStarted()
{
    m_playing = true;
    m_transport->setPlaying(true);
}

void Workbench::playbackStopped()
{
    m_playing = false;
    ++m_waited;
    m_playedBar.reset();
    m_transport->setPlaying(false);
    m_grid->setPlayingBar(std::nullopt);
    m_sheet->view()->setSoundingBar(std::nullopt);
    m_bank->setAhead({});
    showBank();
}

void Workbench::barPlaying(int playedBar)
{
    auto const& bars = m_session.arrangement().playing.bars;
    if (playedBar < 0 || playedBar >= static_cast<int>(bars.size())) return;
    m_playedBar = playedBar;
    auto const& [bar, pass, at] = bars[static_cast<std::size_t>(playedBar)];
    m_grid->setPlayingBar(bar);
    m_sheet->view()->setSoundingBar(bar, pass);
    m_bank->setLevers(leversNow());
}

// The bank shows the fingers that play, and where the left hand goes after them.
void Workbench::positionPlaying(int playedPosition)
{
    if (!m_playing || !m_heard || !showsTune()) return;
    arrange::Arrangement const& heard = m_heard->arrangement;
    auto const played = arrange::playedPositions(heard);
    if (playedPosition < 0 || playedPosition >= static_cast<int>(played.size())) return;
    auto const now = played.begin() + playedPosition;
    showFingers(heard, now->position);
    auto const plays = [&heard](arrange::PlayedPosition const& p) {
        return !heard.positions[static_cast<std::size_t>(p.position)].voicing.notes.empty();
    };
    int const first = m_heard->hearing.firstPlayedBar;
    int const last = m_heard->hearing.lastPlayedBar;
    auto next = std::find_if(now + 1, played.end(), plays);
    bool const over = next == played.end() || (last >= 0 && next->when.playedBar > last);
    if (over && m_heard->loop)
        next = std::find_if(played.begin(), played.end(), [&](auto const& p) {
            return p.when.playedBar >= first && plays(p);
        });
    std::vector<FingerDisc> ahead;
    if (next != played.end() && (!over || m_heard->loop)) {
        ahead = fingersAt(heard, next->position);
        std::erase_if(ahead,
                      [](FingerDisc const& disc) { return disc.hand == harp::Side::Right; });
    }
    m_bank->setAhead(std::move(ahead));
}

void Workbench::roundPlaying(int round)
{
    m_round = round;
    if (m_heard && !m_heard->tempos.empty())
        m_transport->showTempo(tempoOfRound(m_heard->tempos, round));
}

// The shape that is looked at in its place: the bar before, its own, the bar after. Nothing is
// kept.
void Workbench::hearBetween()
{
    auto const bar = selectedPlayedBar();
    if (!bar) return;
    auto const last = static_cast<int>(m_session.arrangement().playing.bars.size()) - 1;
    hear(std::max(0, *bar - 1), std::min(last, *bar + 1));
}

arrange::Arrangement Workbench::arrangementOf(Compared which) const
{
    if (which == Compared::B) return m_session.shownArrangement();
    return m_a ? m_a->arrangement : m_session.arrangement();
}

void Workbench::rememberA()
{
    if (!showsTune()) return;
    m_a = Setting{m_session.arrangement(), m_session.brief()};
    m_compared.reset();
    showCompared();
    enableActions();
    tellDone(
        tr("This setting is A. Change what you like, then X lets you hear A and B by turns."));
}

void Workbench::flip()
{
    if (!showsTune()) return;
    bool const looksElsewhere =
        m_session.selected() &&
        m_session.shown() !=
            std::optional(
                m_session.proposal()
                    .solution.best.candidates[static_cast<std::size_t>(*m_session.selected())]);
    if (!m_a && !looksElsewhere)
        return tell(
            tr("There is nothing to compare yet: look at another shape, or remember this "
               "setting as A (Shift+X) and change it."));
    Compared const next = m_compared == Compared::B ? Compared::A : Compared::B;
    arrange::Arrangement arrangement = arrangementOf(next);
    if (arrangement.playing.bars != m_session.arrangement().playing.bars) {
        m_a.reset();
        m_compared.reset();
        showCompared();
        return tell(tr("A has other bars than the tune has now; it cannot be compared."));
    }
    m_compared = next;
    showCompared();
    if (!m_playing || !m_heard) {
        if (m_passage) return hearSelected();
        return hearBetween();
    }
    m_heard->arrangement = std::move(arrangement);
    emit hearingChanged(*m_heard);
}

void Workbench::takeA()
{
    if (!m_a) return;
    if (m_session.goBackTo(m_a->brief, tr("back to A"))) {
        m_compared.reset();
        showCompared();
    }
}

void Workbench::showCompared()
{
    m_transport->setCompared(m_compared || m_a ? std::optional(m_compared.value_or(Compared::B))
                                               : std::nullopt);
}

void Workbench::choosePassage(Passage (*around)(tune::Tune const&, int))
{
    auto const selected = m_session.selected();
    if (!showsTune() || !selected) return;
    auto const& arrangement = m_session.arrangement();
    int const bar = arrangement.positions[static_cast<std::size_t>(*selected)].position.bar;
    setPassage(around(arrangement.tune, bar));
}

// A tune that is opened begins with the lilt of its kind; what is set for it stays.
void Workbench::showLilt()
{
    if (!m_session.isOpen()) return;
    tune::Tune const& tune = m_session.arrangement().tune;
    QString const name = QString::fromStdString(tune.title + '\n' + tune.rhythm);
    if (name == m_liltOf) return;
    m_liltOf = name;
    m_lilt = perform::liltOf(m_lilts, m_session.brief().tune);
    if (!m_lilt) return m_transport->practiceCard()->setLilt({}, {}, 0);
    bool const pairs = m_lilt->of == perform::LiltWay::Of::Pairs;
    m_transport->practiceCard()->setLilt(
        pairs ? tr("&Swing") : tr("&Lilt"),
        pairs ? tr("0 % as written; 100 %: the first of two lasts twice as long as the second")
              : tr("0 % as written; 100 %: the first of three as a dotted quaver, the second "
                   "as a "
                   "semiquaver"),
        m_lilt->usual);
}

void Workbench::stringSounding(int string, harp::Side hand) { m_bank->ring(string, hand); }
void Workbench::stringStilled(int string) { m_bank->still(string); }

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
