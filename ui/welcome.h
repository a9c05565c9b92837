#pragma once

#include <QWidget>

namespace ui {

class Button;

// What stands in the middle while no tune is open.
class Welcome final : public QWidget {
    Q_OBJECT
public:
    explicit Welcome(QWidget* parent = nullptr);

signals:
    void openClicked();
    void newClicked();
    void demoClicked();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    QRect wordsBox() const;

    Button* m_open;
    Button* m_new;
    Button* m_demo;
};

} // namespace ui
