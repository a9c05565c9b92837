#include "ui/sheetpanel.h"

#include "ui/button.h"
#include "ui/pageview/pageview.h"
#include "ui/theme.h"

#include <QHBoxLayout>
#include <QMenu>
#include <QPainter>
#include <QVBoxLayout>

#include <initializer_list>

namespace ui {

namespace {

QString paperWords(sheet::Paper paper)
{
    return paper == sheet::Paper::A4 ? SheetPanel::tr("A4") : SheetPanel::tr("Letter");
}

void setWords(Button* button, QString const& caption, QString const& words)
{
    button->setText(words);
    button->setAccessibleName(caption + QLatin1Char(' ') + words);
    button->updateGeometry();
}

} // namespace

SheetPanel::SheetPanel(QWidget* parent)
    : QWidget(parent), m_view(new PageView(this)), m_kind(new Button(QString(), this)),
      m_paper(new Button(QString(), this)), m_reading(new Button(QString(), this)),
      m_readings(new ReadingMenu(this))
{
    auto* kinds = new QMenu(this);
    for (PaperKind kind :
         {PaperKind::Arrangement, PaperKind::Pattern, PaperKind::Lead, PaperKind::Drill})
        kinds->addAction(paperName(kind), this, [this, kind] { emit kindChosen(kind); });
    m_kind->setToolTip(tr("Which sheet is shown, exported and printed"));
    m_kind->setMenu(kinds);
    auto* papers = new QMenu(this);
    for (sheet::Paper paper : {sheet::Paper::A4, sheet::Paper::Letter})
        papers->addAction(paperWords(paper), this, [this, paper] { emit paperChosen(paper); });
    m_paper->setToolTip(tr("Size of the paper"));
    m_paper->setMenu(papers);

    m_reading->setToolTip(tr("Size of the notes, colours, letters and brackets"));
    m_reading->setMenu(m_readings);
    connect(m_readings, &ReadingMenu::chosen, this, &SheetPanel::readingChosen);

    auto* row = new QHBoxLayout;
    row->setContentsMargins(14, 5, 14, 5);
    row->setSpacing(7);
    row->addWidget(m_kind);
    row->addWidget(m_paper);
    row->addWidget(m_reading);
    row->addStretch(1);
    auto const add = [&](QString const& words, QString const& toolTip, auto signal) {
        auto* button = new Button(words, this);
        button->setLook(Button::Look::Flat);
        button->setToolTip(toolTip);
        button->setAccessibleName(toolTip);
        connect(button, &QAbstractButton::clicked, this, signal);
        row->addWidget(button);
    };
    add(tr("Title and notes…"), tr("Title, composer, source and notes"),
        &SheetPanel::wordsClicked);
    add(tr("Export…"), tr("Export this sheet"), &SheetPanel::exportClicked);
    add(tr("Print…"), tr("Print this sheet"), &SheetPanel::printClicked);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(row);
    column->addWidget(m_view, 1);
    setFocusProxy(m_view);
    setKind(PaperKind::Arrangement);
    setPaper(sheet::Paper::A4);
    setReading({});
}

void SheetPanel::setKind(PaperKind kind) { setWords(m_kind, tr("Sheet"), paperName(kind)); }
void SheetPanel::setPaper(sheet::Paper paper)
{
    setWords(m_paper, tr("Paper"), paperWords(paper));
}

void SheetPanel::setReading(Reading const& reading)
{
    setWords(m_reading, tr("Print"), readingWords(reading));
    m_readings->setReading(reading);
}

void SheetPanel::paintEvent(QPaintEvent*)
{
    Palette const& p = paletteOf(*this);
    QPainter painter(this);
    painter.fillRect(rect(), colour(p.card));
}

} // namespace ui
