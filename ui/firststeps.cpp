#include "ui/firststeps.h"

#include "ui/button.h"
#include "ui/session.h"
#include "ui/theme.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

namespace ui {

FirstSteps::FirstSteps(Session& session, QWidget* parent)
    : QWidget(parent), SpokenAs(QAccessible::AlertMessage), m_session(session),
      m_words(new QLabel(this)), m_next(new Button(tr("Next step"), this)),
      m_close(new Button(tr("No more steps"), this))
{
    m_words->setWordWrap(true);
    m_words->setTextFormat(Qt::PlainText);
    m_close->setLook(Button::Look::Flat);
    m_close->setToolTip(tr("They are in the menu Help (Esc)"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(16, 5, 10, 5);
    row->addWidget(m_words, 1);
    row->addWidget(m_next);
    row->addWidget(m_close);
    connect(m_next, &QAbstractButton::clicked, this, [this] { go(m_step + 1); });
    connect(m_close, &QAbstractButton::clicked, this, &FirstSteps::end);
    connect(&session, &Session::opened, this, [this] {
        if (m_step == 1) go(2);
    });
    connect(&session, &Session::changed, this, [this] {
        if (m_step == 2 && m_session.isOpen() && !m_session.brief().locks.empty()) go(3);
    });
    hide();
}

void FirstSteps::begin() { go(m_session.isOpen() ? 2 : 1); }
void FirstSteps::end() { go(0); }

void FirstSteps::sheetShown()
{
    if (m_step == count) end();
}

QString FirstSteps::words() const { return m_words->text(); }

void FirstSteps::go(int step)
{
    m_step = step > count ? 0 : step;
    setVisible(m_step > 0);
    if (m_step == 0) return;
    QString const what =
        m_step == 1 ? tr("Open a tune with chord symbols (Ctrl+O), or the demo tune (Ctrl+D).")
        : m_step == 2
            ? tr("Choose a chord with the arrow keys. 1 to 9 keeps one of its shapes, the best "
                 "first, and Space lets you hear the bar.")
            : tr("Ctrl+2 shows the sheet and Ctrl+P prints it. F1 opens the handbook.");
    m_words->setText(tr("First steps, %1 of %2: %3").arg(m_step).arg(count).arg(what));
    m_next->setVisible(m_step < count);
    setAccessibleName(m_words->text());
    if (!readerListens()) return;
    QAccessibleEvent alert(this, QAccessible::Alert);
    tellReader(alert);
}

void FirstSteps::paintEvent(QPaintEvent*)
{
    Palette const& p = paletteOf(*this);
    QPainter painter(this);
    painter.fillRect(rect(), colour(p.leafWash));
    painter.setPen(colour(p.edge));
    painter.drawLine(0, height() - 1, width(), height() - 1);
}

} // namespace ui
