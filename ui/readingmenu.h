#pragma once

#include "core/sheet/sheet.h"

#include <QMenu>

namespace ui {

// How a sheet is made easy to read: the size of its notes, what helps players who do not read
// music yet, and which brackets tell what is placed together.
struct Reading {
    double staffMm = sheet::usualStaffMm;
    sheet::Helps helps{};
    sheet::Placings placings = sheet::Placings::Helpful;
    friend bool operator==(Reading const&, Reading const&) = default;
};

sheet::SheetStyle styled(sheet::SheetStyle style, Reading const& reading);
Reading readingOf(sheet::SheetStyle const& style);

// Huge notes with everything that helps.
Reading beginnersReading();

// "Normal print", "Large print, coloured", "Beginner's paper": for the button of the menu.
QString readingWords(Reading const& reading);

// Chooses among them.
class ReadingMenu final : public QMenu {
    Q_OBJECT
public:
    explicit ReadingMenu(QWidget* parent = nullptr);

    void setReading(Reading const& reading);

signals:
    void chosen(ui::Reading const& reading);

private:
    QAction* size(QString const& words, double staffMm);
    QAction* help(QString const& words, bool sheet::Helps::* which);
    QAction* brackets(QString const& words, sheet::Placings which);

    Reading m_reading;
    QList<QPair<QAction*, double>> m_sizes;
    QList<QPair<QAction*, bool sheet::Helps::*>> m_helps;
    QList<QPair<QAction*, sheet::Placings>> m_brackets;
    QAction* m_beginners;
};

} // namespace ui
