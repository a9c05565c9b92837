#pragma once

#include "ui/actions.h"
#include "ui/aside.h"
#include "ui/audition.h"
#include "ui/compared.h"
#include "ui/followed.h"
#include "ui/header.h"
#include "ui/papers.h"
#include "ui/passage.h"
#include "ui/practice.h"
#include "ui/theme.h"

#include "core/files/tables/tables.h"
#include "core/harp/levers.h"
#include "core/proposal/remedies.h"
#include "core/sheet/musicfont.h"
#include "core/sheet/papers/handout.h"

#include <QMainWindow>

#include <optional>

class QSplitter;
class QStackedWidget;
class QVBoxLayout;

namespace ui {

enum class Like;
class LeftHandEditing;
class MessageBar;
class NotOpened;
class PageView;
class SheetPanel;
class SnagCard;
class Session;
class StatusLine;
class StringBank;
class Transport;
class TuneGrid;
class VariantPanel;

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
    PaperKind paperKind() const { return m_paperKind; }
    void setPaperKind(PaperKind kind);
    sheet::Paper paper() const { return m_style.paper; }
    void setPaper(sheet::Paper paper);
    // The pupil whom papers name; empty: none.
    void setPapersFor(QString const& pupil);
    // Its pages, as they are exported and printed. None: the music font is not there.
    std::optional<sheet::Document> pages();
    // What a handout begins with. Only while a tune is open.
    sheet::HandoutWish handoutWish() const;
    std::optional<sheet::MusicFont> const& font(); // told where it is not there
    void setBelowGrid(QWidget* pane);              // under the tune, above the string bank
    VariantPanel* variants() const { return m_variants; }
    StringBank* bank() const { return m_bank; }
    Transport* transport() const { return m_transport; }
    MessageBar* messages() const { return m_messages; }
    std::optional<Passage> passage() const { return m_passage; }
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
    void barPlaying(int playedBar); // index into Playing::bars
    void positionPlaying(int playedPosition); // in the order of arrange::playedPositions
    void roundPlaying(int round);   // of a passage that goes round
    void stringSounding(int string, harp::Side hand);
    // From a MIDI keyboard: the string that sounds this key as the levers stand, if there is
    // one.
    void pluckPitch(int midi);
    // What is to be played now, while she plays along; empty: no longer.
    void awaitStrings(QString const& names);
    void chooseBarNumber(int number);    // as bars are counted on the page; 0: none
    void choosePlayedBar(int playedBar); // index into Playing::bars
    void stringStilled(int string);

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
    void stringPluckRequested(int string, int midi);
    void keepPatternRequested(pattern::Pattern const& own); // in the arranger's own book
    void themeChosen(ui::Theme theme);
    void harpKept(harp::HarpModel const& harp); // to be saved among the user's own

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void place();
    void joinActions();
    void joinViews();
    void joinSession();
    void showDocument();
    void showSelection();
    void showHeader();
    void showStatus();
    void showBank();
    void showFingers(arrange::Arrangement const& arrangement, int position);
    void showSheet();
    void showStage();
    void showVariants();
    void showWhyNot();
    void showFollowed();
    void showSnags();
    void openSnag(int snag, QPoint const& where);
    void hearSnagWay(int way);
    void arrangeAnew(std::function<void()> const& edit);
    void selectBar(int bar);
    void lookForWholeTune();
    void tellWholeTune();
    void showPanes();
    void setPassage(std::optional<Passage> passage);
    void noteChanges();
    void keepOnlyThis();
    void backToTune();
    bool showsTune() const;
    QString aboutNow() const;
    void say(QString const& sentence, bool done);
    void enableActions();
    void hear(int firstPlayedBar, std::optional<int> lastPlayedBar);
    void hearSelected();
    void playOrStop();
    void stop();
    void changeHearing();
    void pluck(int string);
    void turnLever(int string, harp::Lever to);
    void escape();
    void editWords();
    void wear(Theme theme);
    perform::Hearing hearing() const;
    ui::Audition auditionOf(arrange::Arrangement arrangement, int firstPlayedBar,
                            int lastPlayedBar) const;
    void request(ui::Audition audition);
    void choosePassage(Passage (*around)(tune::Tune const&, int));
    void showLilt();
    void hearBetween();
    void rememberA();
    void flip();
    void takeA();
    void showCompared();
    arrange::Arrangement arrangementOf(Compared which) const;
    arrange::Arrangement forPupil(arrange::Arrangement arrangement) const;
    std::optional<int> selectedPlayedBar() const;
    harp::LeverSetting leversNow() const;

    Session& m_session;
    std::vector<harp::Level> m_levels;
    hands::DifficultyScale m_difficultyScale;
    Actions m_actions;
    Header* m_header;
    MessageBar* m_messages;
    QSplitter* m_halves;
    QSplitter* m_sides;
    QStackedWidget* m_stage;
    QVBoxLayout* m_underStage;
    QWidget* m_welcome;
    NotOpened* m_notOpenedPage;
    std::optional<QString> m_notOpened; // what could not be opened, while that is on the stage
    TuneGrid* m_grid;
    SheetPanel* m_sheet;
    PaperKind m_paperKind = PaperKind::Arrangement;
    sheet::SheetStyle m_style;
    QString m_papersFor;
    std::optional<sheet::MusicFont> m_musicFont;
    bool m_sheetOutdated = true; // drawn afresh when it is next looked at
    VariantPanel* m_variants;
    StringBank* m_bank;
    Transport* m_transport;
    StatusLine* m_status;
    View m_view = View::Grid;
    std::vector<proposal::Remedy> m_remedies; // on offer in the message bar
    std::optional<int> m_playedBar;  // what sounds now: index into Playing::bars
    std::optional<Audition> m_heard; // what was last asked for
    bool m_playing = false;
    struct Setting {
        arrange::Arrangement arrangement;
        proposal::Brief brief;
    };
    std::optional<Setting> m_a;         // to compare with; none: A is what is kept
    std::optional<Compared> m_compared; // which of the two is heard; none: nothing is compared
    int m_round = 0;                    // of what is played
    Practice m_practised;               // as it was last heard
    int m_waited = 0; // times that a passage was heard that waits before each faster one
    std::vector<perform::KindOfLilt> m_lilts;
    std::optional<perform::LiltWay> m_lilt; // of the open tune
    QString m_liltOf;                       // the tune it was set up for
    std::optional<Passage> m_passage; // heard instead of the selected bar
    std::optional<ShapesThen> m_then; // before the latest change
    std::vector<Followed> m_followed; // not yet seen
    SnagCard* m_snagCard;
    std::size_t m_snag = 0; // of the card: index into Proposal::snags
    Aside* m_trial;         // of a way round a snag, to be heard
    Aside* m_search;        // for what helps in the whole tune
    std::optional<std::vector<proposal::WholeTuneWay>> m_wholeTune; // found for what is open
    LeftHandEditing* m_leftHands;
    bool m_gridFresh = false; // the grid shows the arrangement itself, as it is now
};

} // namespace ui
