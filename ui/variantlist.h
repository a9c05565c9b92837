#pragma once

#include "core/arrange/lattice.h"
#include "core/proposal/proposal.h"
#include "ui/readable.h"
#include "ui/variantlistlayout.h"

#include <QAbstractScrollArea>

#include <vector>

namespace ui {

// One row: a candidate and what the score says of it.
struct VariantRow {
    proposal::Variant variant;
    arrange::Voicing voicing;
    QString where; // "root G2, quavers": told beside the name
};

// The ranked variants of one position. Shows what it is given; a click shows a variant, Enter
// or a double click uses it.
class VariantList final : public QAbstractScrollArea, public Readable {
    Q_OBJECT
public:
    explicit VariantList(QWidget* parent = nullptr);

    void setHarp(harp::Harp harp);
    void setRows(std::vector<VariantRow> rows);
    void setShown(std::optional<arrange::CandidateIndex> candidate);
    std::vector<VariantRow> const& rows() const { return m_rows; }
    std::optional<int> currentRow() const { return m_layout.current; }
    VariantListLayout const& rowLayout() const { return m_layout; }

    // One item for each row.
    int readableCount() const override { return static_cast<int>(m_rows.size()); }
    ReadableItem readableItem(int index) const override;
    bool tellsPlaces() const override { return true; }
    void pressReadable(int index) override { go(index); }

    QSize sizeHint() const override { return {340, 400}; }
    QSize minimumSizeHint() const override { return {230, 120}; }

signals:
    void shownClicked(arrange::CandidateIndex candidate); // look at it
    void hearClicked(arrange::CandidateIndex candidate);
    void useClicked(arrange::CandidateIndex candidate); // take it: it is locked
    void unlockClicked();
    void backClicked(); // Escape or Left: back to the grid

protected:
    bool event(QEvent* event) override;
    bool viewportEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    enum class Part { Row, Hear, Use };
    struct Hit {
        int row = 0;
        Part part = Part::Row;
        friend bool operator==(Hit const&, Hit const&) = default;
    };

    VariantRow const& row(int index) const { return m_rows[static_cast<std::size_t>(index)]; }
    double keySide() const;
    double actionHeight() const;
    double pictureScale() const;
    void layOut();
    void showRow(int row);
    void go(int row);
    std::optional<Hit> hitAt(QPointF const& point) const;
    void act(Hit const& hit);
    QRectF rowBox(int row) const;
    QRectF pictureBox(QRectF const& box) const;
    QRectF textBox(QRectF const& box) const;
    QRectF hearBox(int row) const;
    QRectF useBox(int row) const;
    QString reasonsOf(int row, bool all) const;
    QString useWords(int row) const;
    void paintRow(QPainter& painter, int row) const;
    void paintPicture(QPainter& painter, QRectF const& box,
                      arrange::Voicing const& voicing) const;
    void paintActions(QPainter& painter, int row) const;

    std::optional<harp::Harp> m_harp;
    std::vector<VariantRow> m_rows;
    VariantListLayout m_layout;
    std::optional<Hit> m_pointed;
};

} // namespace ui
