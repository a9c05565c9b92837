#pragma once

#include <QScrollArea>

namespace ui {

// A window's contents, as large as the window, or as their least size where that is more; then
// they scroll. Not QScrollArea's own way, which asks again and again, without end, where parts
// stand otherwise at another width, as the header does.
class ScrollSheet final : public QScrollArea {
    Q_OBJECT
public:
    explicit ScrollSheet(QWidget* parent);
    void hold(QWidget* contents); // owned from now on

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fit();

    bool m_fitting = false;
    bool m_soon = false;
};

} // namespace ui
