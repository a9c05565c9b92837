#pragma once

#include "ui/papers.h"
#include "ui/readingmenu.h"

#include <QWidget>

namespace ui {

class Button;
class PageView;

// The sheet with a bar over it: which paper is shown, on which size, and what can be done with
// it.
class SheetPanel final : public QWidget {
    Q_OBJECT
public:
    explicit SheetPanel(QWidget* parent = nullptr);

    PageView* view() const { return m_view; }
    void setKind(PaperKind kind);
    void setPaper(sheet::Paper paper);
    void setReading(Reading const& reading);

signals:
    void kindChosen(ui::PaperKind kind);
    void paperChosen(sheet::Paper paper);
    void readingChosen(ui::Reading const& reading);
    void wordsClicked();
    void exportClicked();
    void printClicked();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    PageView* m_view;
    Button* m_kind;
    Button* m_paper;
    Button* m_reading;
    ReadingMenu* m_readings;
};

} // namespace ui
