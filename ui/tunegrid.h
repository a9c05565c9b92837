#pragma once

#include "core/hands/difficulty.h"
#include "ui/readable.h"
#include "ui/tunegridlayout.h"

#include <QAbstractScrollArea>

#include <optional>

namespace ui {

struct Palette;

// The tune in bars: chord names, the tune's contour over the strings, and the left hand's
// shape. Shows what it is given and reports what is pointed at.
class TuneGrid final : public QAbstractScrollArea, public Readable {
    Q_OBJECT
public:
    explicit TuneGrid(QWidget* parent = nullptr);

    void setArrangement(arrange::Arrangement arrangement);
    // How much each bar asks of the player, and the level that is set.
    void setDifficulty(hands::Difficulty difficulty, int level);
    void clear();
    void setSelected(std::optional<int> position);
    void setPlayingBar(std::optional<int> bar); // index into Tune::bars
    std::optional<int> selected() const { return m_selected; }
    GridLayout const& grid() const { return m_layout; }

    // One item for each position.
    int readableCount() const override;
    ReadableItem readableItem(int position) const override;
    void pressReadable(int position) override { emit positionClicked(position); }

    QSize sizeHint() const override { return {760, 420}; }
    QSize minimumSizeHint() const override { return {300, 150}; }

signals:
    void positionClicked(int position);
    void hearClicked();                   // Space: the selected bar
    void variantsClicked();               // Enter or double click: on to the list of variants
    void menuWanted(QPoint const& where); // on the screen, for the selected position
    void rankTyped(int rank);             // 1 to 9: the variant of that rank, 0 the first

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    bool viewportEvent(QEvent* event) override;

private:
    void layOut();
    void showCard(GridCard const& card);
    std::optional<int> under(QPointF const& point) const;
    void paintSection(QPainter& painter, GridSection const& section) const;
    void paintCard(QPainter& painter, GridCard const& card) const;
    void paintStrings(QPainter& painter, GridCard const& card) const;
    void paintDifficulty(QPainter& painter, GridCard const& card) const;
    QString difficultyWords(int bar) const;
    void paintTune(QPainter& painter, GridCard const& card) const;
    void paintSpan(QPainter& painter, GridCard const& card, GridSpan const& span) const;
    void paintLeftHand(QPainter& painter, GridCard const& card, GridSpan const& span) const;
    bool drawn(GridCard const& card, GridSpan const& span) const;
    QString numberWords(GridCard const& card) const;
    tune::Bar const& barOf(GridCard const& card) const;

    std::optional<arrange::Arrangement> m_arrangement;
    GridLayout m_layout;
    hands::Difficulty m_difficulty;
    int m_level = 3;
    std::optional<int> m_selected;
    std::optional<int> m_pointed;
    std::optional<int> m_playingBar;
};

} // namespace ui
