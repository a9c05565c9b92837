#pragma once

#include "core/sheet/pageareas.h"
#include "ui/pageview/pagestack.h"

#include "ui/readable.h"

#include <QAbstractScrollArea>
#include <QPixmap>

#include <map>
#include <optional>

namespace ui {

class PageBar;

// The pages of a sheet, scrolled and zoomed. Shows what it is given and says what was clicked.
// Paper stays white whatever the program's theme; what surrounds it follows the palette.
// Keys: + and - zoom, 0 fits the width, 9 the page, Page Up and Down turn pages, Left and Right
// go from position to position.
class PageView final : public QAbstractScrollArea, public SpokenAs {
    Q_OBJECT
public:
    explicit PageView(QWidget* parent = nullptr);

    // Keeps the place that is in view.
    void setDocument(sheet::Document document);
    sheet::Document const& document() const { return m_document; }

    // The position the arranger has chosen, and the bar that sounds; the bar is scrolled into
    // view.
    void setChosenPosition(std::optional<arrange::PositionIndex> position);
    void setSoundingBar(std::optional<tune::BarIndex> bar, int pass = 1);

    // 1: as large as on paper, where the screen tells its size.
    double zoom() const;
    int page() const; // in the middle of the view, from 1; 0: there is none
    QSize sizeHint() const override;

public slots:
    void setZoom(double zoom);
    void zoomIn();
    void zoomOut();
    void fitWidth();
    void fitPage();
    void turnPage(int by);

signals:
    void positionClicked(arrange::PositionIndex position);
    void barClicked(tune::BarIndex bar); // where no position lies
    void zoomChanged(double zoom);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void mousePressEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    enum class Fit { Width, Page, None };

    double pixelsPerMmAtOne() const;
    void setScale(double pixelsPerMm);
    void layOut();
    void reveal(sheet::PageArea const& area);
    void placeBar();
    void showPlace();
    void choose(std::optional<sheet::Place> place);
    QRectF onScreen(sheet::PageArea const& area) const;
    QPixmap const& picture(std::size_t page);
    void drawLights(QPainter& painter, std::size_t page) const;

    PageBar* m_bar;
    sheet::Document m_document;
    PageStack m_stack;
    double m_scale = 3; // pixels a millimetre
    Fit m_fit = Fit::Width;
    std::optional<arrange::PositionIndex> m_chosen;
    std::optional<tune::BarIndex> m_sounding;
    int m_soundingPass = 1;
    std::map<std::size_t, QPixmap> m_pictures; // of the pages in view
};

} // namespace ui
