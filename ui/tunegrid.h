#pragma once

#include "core/hands/difficulty.h"
#include "ui/readable.h"
#include "ui/lanepainter.h"
#include "ui/passage.h"

#include <QAbstractScrollArea>
#include <QPixmap>

#include <optional>

namespace ui {

struct Palette;

// Where a snag is marked, and what it says.
struct SnagMark {
    tune::BarIndex bar = 0;
    music::Length at;
    std::optional<harp::StringIndex> string; // that it is about; none: of the left hand
    bool decided = false; // by the arranger
    QString words;
    friend bool operator==(SnagMark const&, SnagMark const&) = default;
};

// The tune on its strings: a lane for each phrase, chord names over it, plucks of both hands
// with the tails of their strings, the names of the shapes below. Shows what it is given and
// reports what is pointed at.
class TuneGrid final : public QAbstractScrollArea, public Readable {
    Q_OBJECT
public:
    explicit TuneGrid(QWidget* parent = nullptr);

    void setArrangement(arrange::Arrangement arrangement);
    // How much each bar asks of the player, and the level that is set.
    void setDifficulty(hands::Difficulty difficulty, int level);
    void clear();
    void setSelected(std::optional<arrange::PositionIndex> position);
    void setChosen(
        std::vector<arrange::PositionIndex> positions); // together, the selected one among them
    void setPlayingBar(std::optional<tune::BarIndex> bar);
    std::optional<arrange::PositionIndex> selected() const { return m_selected; }
    void setSnags(std::vector<SnagMark> snags);
    void setPassage(std::optional<Passage> passage);
    std::optional<Passage> passage() const { return m_passage; }
    // Positions that changed because another was chosen, until they have been seen.
    void setFollowed(std::vector<arrange::PositionIndex> positions);
    LaneLayout const& grid() const { return m_layout; }
    // What is painted of each lane: for tests and measurements.
    std::vector<LaneFace> const& faces() const { return m_faces; }
    // How many lanes have been painted afresh since the beginning.
    int lanesPainted() const { return m_lanesPainted; }

    // One item for each position.
    int readableCount() const override;
    ReadableItem readableItem(int index) const override;
    bool tellsPlaces() const override { return true; }
    void pressReadable(int index) override
    {
        emit positionClicked(arrange::PositionIndex(index));
    }

    QSize sizeHint() const override { return {760, 420}; }
    QSize minimumSizeHint() const override { return {300, 150}; }

signals:
    void positionClicked(arrange::PositionIndex position);
    // Ctrl and a click, Alt and an arrow key: chosen with others, or no longer.
    void positionToggled(arrange::PositionIndex position);
    void hearClicked();                   // Space: the selected bar
    void variantsClicked();               // Enter or double click: on to the list of variants
    void notesWanted();                   // double click on a note of the tune
    void chordWanted();                   // double click on a chord's name: it is selected
    void menuWanted(QPoint const& where); // on the screen, for the selected position
    // Dragged or Shift-clicked over bars, or Shift and an arrow key; none: a plain click.
    void passageChosen(std::optional<ui::Passage> passage);
    // A click on a snag's mark, or S in its bar: its place among the marks, and on the screen.
    void snagClicked(int snag, QPoint const& where);
    void rankTyped(int rank);             // 1 to 9: the variant of that rank, 0 the first

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    bool viewportEvent(QEvent* event) override;

private:
    void layOut();
    void refresh();
    LaneFace faceOf(std::size_t lane) const;
    LaneLabel labelOf(LaneChord const& chord) const;
    LaneMeasure measured() const;
    LaneFonts fonts() const;
    void showBar(LaneBar const& bar);
    void showBox(ui::Box const& box);
    void updateBox(ui::Box const& box);
    void updatePosition(std::optional<arrange::PositionIndex> position);
    bool isChosen(arrange::PositionIndex position) const;
    bool sharesStretch(std::optional<arrange::PositionIndex> position) const;
    std::optional<arrange::PositionIndex> under(QPointF const& point) const;
    std::optional<tune::BarIndex> barUnder(QPointF const& point) const;
    bool onNoteOfTune(QPointF const& point) const;
    bool onChordName(QPointF const& point) const;
    void stretchPassage(int bars);
    void go(Step step, bool together);
    double snagHeight(Lane const& lane, std::optional<harp::StringIndex> string) const;
    std::optional<LaneSnag> snagUnder(QPointF const& point) const;
    void openSnagHere();
    void updatePassage(std::optional<Passage> passage);
    QPixmap const& painted(std::size_t lane);
    void paintGround(QPainter& painter, Lane const& lane);
    void paintAbove(QPainter& painter, Lane const& lane);
    QString difficultyWords(tune::BarIndex bar) const;
    QString numberWords(LaneBar const& bar) const;

    std::optional<arrange::Arrangement> m_arrangement;
    LaneLayout m_layout;
    std::vector<LaneFace> m_faces;  // of each lane
    struct Picture {
        QPixmap pixels;
        bool stale = true; // to be painted afresh
    };
    std::vector<Picture> m_pictures; // of each lane
    int m_lanesPainted = 0;
    std::vector<arrange::PositionIndex> m_followed;
    std::vector<SnagMark> m_snags;
    int m_snagOpened = -1; // by the key, which goes from one to the next
    hands::Difficulty m_difficulty;
    int m_level = 3;
    std::optional<arrange::PositionIndex> m_selected;
    std::vector<arrange::PositionIndex> m_chosen; // more than one, or none
    std::optional<arrange::PositionIndex> m_pointed;
    std::optional<tune::BarIndex> m_playingBar;
    std::optional<Passage> m_passage;
    std::optional<tune::BarIndex> m_pressedBar; // where a drag began
    // The bar that a longer passage is stretched from.
    std::optional<tune::BarIndex> m_passageFrom;
};

} // namespace ui
