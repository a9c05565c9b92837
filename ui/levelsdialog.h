#pragma once

#include <QDialog>

#include <vector>

class QCheckBox;

namespace ui {

// Which levels of a tune are exported: any of the five, all to begin with.
class LevelsDialog final : public QDialog {
    Q_OBJECT
public:
    explicit LevelsDialog(QWidget* parent = nullptr);

    std::vector<int> levels() const; // in rising order

private:
    QList<QCheckBox*> m_levels;
};

} // namespace ui
