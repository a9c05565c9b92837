#pragma once

#include "ui/actions.h"
#include "ui/audition.h"
#include "ui/header.h"
#include "ui/papers.h"
#include "ui/passage.h"
#include "ui/readingmenu.h"
#include "ui/theme.h"

#include "core/files/tables/tables.h"
#include "core/proposal/remedies.h"
#include "core/sheet/musicfont.h"
#include "core/sheet/papers/handout.h"

#include <QMainWindow>

#include <optional>

class QStackedWidget;
class QVBoxLayout;

namespace ui {

class FirstSteps;
class Following;
class LeftHandEditing;
class Listening;
class MessageBar;
class NotOpened;
class OpenPaper;
class PageView;
class Panes;
class Session;
class ShapesOffered;
class SheetPanel;
class SnagEditing;
class StatusLine;
class StringBank;
class StringsNow;
class Transport;
class TuneGrid;
class VariantPanel;
class Welcome;

// The window: places the views and joins them with the session. Files, sound and printing are
// asked for by signals.
class Workbench final : public QMainWindow {
    Q_OBJECT
public:
    Workbench(Session& session, files::Tables tables, QWidget* parent = nullptr);

    using View = Header::View;
    void setView(View view);
    Actions const& actions() const { return m_actions; }
    TuneGrid* grid() const { return m_grid; }
    PageView* sheet() const;
    // The paper that is shown, exported and printed.
    PaperKind paperKind() const;
    void setPaperKind(PaperKind kind);
    sheet::Paper paper() const;
    void setPaper(sheet::Paper paper);
    void setReading(Reading const& reading);
    Reading reading() const;
    // The pupil whom papers name; empty: none.
    void setPapersFor(QString const& pupil);
    // Its pages, as they are exported and printed. None: the music font is not there.
    std::optional<sheet::Document> pages();
    // What a handout begins with. Only while a tune is open.
    sheet::HandoutWish handoutWish() const;
    std::optional<sheet::MusicFont> const& font(); // told where it is not there
    void setBelowGrid(QWidget* pane);              // under the tune, above the string bank
    void addToGridMenu(QList<QAction*> const& actions); // of what is selected there
    // What is tried and not kept.
    void hearTrial(arrange::Arrangement const& trial, tune::PlayedBarIndex firstPlayed,
                   tune::PlayedBarIndex lastPlayed);
    void stopHearing();
    VariantPanel* variants() const { return m_variants; }
    StringBank* bank() const { return m_bank; }
    Transport* transport() const { return m_transport; }
    MessageBar* messages() const { return m_messages; }
    std::optional<Passage> passage() const; // heard instead of the selected bar
    // The three first steps are shown: at the first start, and when she asks.
    void showFirstSteps();
    FirstSteps* firstSteps() const { return m_firstSteps; }
    // Which panes are shown, where and how large: to be kept for the next time.
    QByteArray panes() const;
    void restorePanes(QByteArray const& panes);

public slots:
    void tell(QString const& sentence);
    void tellDone(QString const& sentence);
    // Of sound and MIDI devices, whatever tune is open.
    void tellOfDevices(QString const& sentence, bool good = false);
    void tellFault(base::Fault const& fault);
    // A file or tune that cannot be opened: the tune that is open leaves the stage, so that it is
    // not taken for this one, until the arranger goes back to it.
    void tellNotOpened(QString const& name, base::Fault const& fault);
    void tellLevel(int level, QStringList const& changes);
    // From the player.
    void playbackStarted();
    void playbackStopped();
    void barPlaying(tune::PlayedBarIndex playedBar);
    void positionPlaying(arrange::PlayedPositionIndex playedPosition);
    void roundPlaying(int round);   // of a passage that goes round
    void stringSounding(harp::StringIndex string, harp::Side hand);
    // From a MIDI keyboard: the string that sounds this key as the levers stand, if there is
    // one.
    void pluckPitch(int midi);
    // What is to be played now, while she plays along; empty: no longer.
    void awaitStrings(QString const& names);
    void chooseBarNumber(int number);    // as bars are counted on the page; 0: none
    void choosePlayedBar(tune::PlayedBarIndex playedBar);
    void stringStilled(harp::StringIndex string);

signals:
    void newTuneRequested();
    void pasteTuneRequested(); // ABC from the clipboard
    void openRequested();
    void otherTuneRequested(); // of the book that is open
    void fileDropped(QString const& path);
    void demoRequested();
    void saveRequested();
    void saveAsRequested();
    void exportRequested();
    void printRequested();
    void handoutRequested();
    void levelsRequested();
    void paperChanged(); // its size
    void playRequested(ui::Audition const& audition);
    // While playing: the same bars in another way (tempo, hands, loop).
    void hearingChanged(ui::Audition const& audition);
    void stopRequested();
    void stringPluckRequested(harp::StringIndex string, int midi);
    void keepPatternRequested(pattern::Pattern const& own); // in the arranger's own book
    void themeChosen(ui::Theme theme);
    void lessMotionChosen(bool less);
    void harpKept(harp::HarpModel const& harp); // to be saved among the user's own

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    void giveRoomBelowGrid();
    void place();
    void joinFileActions();
    void joinEditActions();
    void joinViewActions();
    void joinGrid();
    void joinParts();
    void joinListening();
    void joinSession();
    void showDocument();
    void showSelection();
    void showHeader();
    void showGrid();
    void showStatus();
    void showStage();
    void goToStage();
    void openGridMenu(QPoint const& where);
    void backToTune();
    bool showsTune() const;
    QString aboutNow() const;
    QStringList warnings() const;
    void say(QString const& sentence, bool done);
    void offer(std::vector<proposal::Remedy> const& remedies);
    void takeOffer(int choice);
    void enableActions();
    void escape();
    void wear(Theme theme);

    Session& m_session;
    std::vector<harp::Level> m_levels;
    hands::DifficultyScale m_difficultyScale;
    Actions m_actions;
    Header* m_header;
    MessageBar* m_messages;
    FirstSteps* m_firstSteps;
    QStackedWidget* m_stage;
    QVBoxLayout* m_underStage = nullptr;
    Welcome* m_welcome;
    NotOpened* m_notOpenedPage;
    TuneGrid* m_grid;
    SheetPanel* m_sheet;
    VariantPanel* m_variants;
    StringBank* m_bank;
    Transport* m_transport;
    StatusLine* m_status;
    Panes* m_panes = nullptr;
    Listening* m_listening;
    StringsNow* m_strings;
    ShapesOffered* m_shapes;
    Following* m_following;
    SnagEditing* m_snags;
    OpenPaper* m_paper;
    LeftHandEditing* m_leftHands;
    View m_view = View::Grid;
    QList<QAction*> m_gridMenu;         // beside its own
    std::optional<QString> m_notOpened; // what could not be opened, while that is on the stage
    std::vector<proposal::Remedy> m_remedies; // on offer in the message bar
    bool m_gridFresh = false; // the grid shows the arrangement itself, as it is now
};

} // namespace ui
