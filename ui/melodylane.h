#pragma once

#include "core/tune/edit/typing.h"
#include "ui/melodylayout.h"

#include <QWidget>

namespace ui {

// The enlarged lane on which notes are typed. Shows what is given and reports keys and clicks.
class MelodyLane final : public QWidget {
    Q_OBJECT
public:
    explicit MelodyLane(QWidget* parent = nullptr);

    void setTyping(tune::Typing typing);
    MelodyLayout const& layout() const { return m_layout; }
    QSize sizeHint() const override { return {600, 150}; }
    QSize minimumSizeHint() const override { return {300, 112}; }

signals:
    void signTyped(char sign);
    void stroke(tune::Stroke stroke);
    void placeClicked(tune::NoteAt at);
    void hearWanted();
    void left(); // Escape

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void layOut();

    std::optional<tune::Typing> m_typing;
    MelodyLayout m_layout;
};

} // namespace ui
