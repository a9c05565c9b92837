#pragma once

#include "core/base/result.h"
#include "core/sheet/papers/handout.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace ui {

class PageView;

// A handout in the making: key, patterns and a title at the left, its pages at the right.
class HandoutDialog final : public QDialog {
    Q_OBJECT
public:
    // Harp, hand, level, pattern book and key to begin with are those of the wish.
    HandoutDialog(sheet::HandoutWish wish, sheet::MusicFont font, sheet::SheetStyle style,
                  QWidget* parent = nullptr);

    sheet::Document const& document() const { return m_document; }

signals:
    void exportClicked();
    void printClicked();

private:
    void fillKeys();
    void fillPatterns();
    void draw();

    sheet::HandoutWish m_wish;
    sheet::MusicFont m_font;
    sheet::SheetStyle m_style;
    sheet::Document m_document;
    QComboBox* m_key;
    QListWidget* m_patterns;
    QLineEdit* m_title;
    QLabel* m_refusal;
    PageView* m_pages;
    QPushButton* m_export;
    QPushButton* m_print;
};

} // namespace ui
