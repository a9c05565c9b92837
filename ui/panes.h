#pragma once

#include "ui/actions.h"

#include <QByteArray>
#include <QObject>

#include <vector>

class QSplitter;

namespace ui {

class StringBank;
class VariantPanel;

// The panes round the tune: the shapes beside it and the string bank above or below, shown or
// not, on the side and in the size that the arranger likes.
class Panes final : public QObject {
    Q_OBJECT
public:
    // `tune` stands in the middle; `frame` goes with the panes where the tune stands alone.
    Panes(Actions const& actions, QWidget* tune, VariantPanel* shapes, StringBank* bank,
          std::vector<QWidget*> frame, QWidget* window);

    QSplitter* all() const { return m_halves; }
    void goToNext(QWidget* tune); // what is shown of the tune now
    QByteArray kept() const;      // which are shown, where and how large
    void restore(QByteArray const& kept);

private:
    void show();

    Actions const& m_actions;
    QSplitter* m_halves;
    QSplitter* m_sides;
    VariantPanel* m_shapes;
    StringBank* m_bank;
    std::vector<QWidget*> m_frame;
};

} // namespace ui
