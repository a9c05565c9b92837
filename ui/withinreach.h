#pragma once

#include <QObject>

class QApplication;
class QWidget;

namespace ui {

// What every dialog and card of ours is given before it is seen: Tab goes through it as it is
// read, its choices tell their names, and what is larger than the screen, as with letters of
// 300 %, scrolls. Qt's own dialogs are left alone.
class WithinReach final : public QObject {
    Q_OBJECT
public:
    explicit WithinReach(QApplication& application, QObject* parent = nullptr);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

// A reader of the screen finds the name of a choice in a label that belongs to it; where there
// is none in sight, one that is not seen says QWidget::accessibleName().
void nameChoices(QWidget& window);

// Puts what is in the window on a sheet that scrolls, where its least size is more than the
// screen's; what is on it keeps its order and its focus.
void fitOnScreen(QWidget& window);

} // namespace ui
