#pragma once

#include <QWidget>

class QLabel;

namespace ui {

class Button;

// The strip under the sheet: which page is in view and how large, and buttons to change both.
class PageBar final : public QWidget {
    Q_OBJECT
public:
    explicit PageBar(QWidget* parent = nullptr);

    void setPage(int page, int of); // counted from 1; 0 of 0: no sheet
    void setZoom(double zoom);      // 1: as large as on paper

signals:
    void turned(int by); // pages
    void zoomInClicked();
    void zoomOutClicked();
    void fitWidthClicked();
    void fitPageClicked();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Button* m_before;
    QLabel* m_page;
    Button* m_after;
    Button* m_smaller;
    QLabel* m_zoom;
    Button* m_larger;
    Button* m_width;
    Button* m_whole;
};

} // namespace ui
