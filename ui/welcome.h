#pragma once

#include <QWidget>

#include <array>

namespace ui {

class Button;

// What stands in the middle while no tune is open.
class Welcome final : public QWidget {
    Q_OBJECT
public:
    explicit Welcome(QWidget* parent = nullptr);

    QSize minimumSizeHint() const override;

signals:
    void openClicked();
    void newClicked();
    void demoClicked();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    QString question() const;
    QString answer() const;
    QRect wordsBox() const;
    int questionHeight(int across) const;
    int answerHeight(int across) const;
    std::array<Button*, 3> buttons() const { return {m_open, m_new, m_demo}; }

    Button* m_open;
    Button* m_new;
    Button* m_demo;
};

} // namespace ui
