#pragma once

#include <QDialog>

class QUndoStack;

namespace ui {

// Every step since the tune was opened, the latest last: a click on one goes back, or on again,
// to how things were after it.
class HistoryDialog final : public QDialog {
    Q_OBJECT
public:
    explicit HistoryDialog(QUndoStack& steps, QWidget* parent = nullptr);
};

} // namespace ui
