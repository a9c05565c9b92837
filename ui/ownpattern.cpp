#include "ui/ownpattern.h"

#include "ui/button.h"
#include "ui/theme.h"
#include "ui/words.h"

#include "core/pattern/own.h"

#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace ui {

namespace {

QString readWords(pattern::Pattern const& own)
{
    return OwnPattern::tr("Read as %1, fingers %2, for level %3 and above.")
        .arg(QString::fromStdString(own.name), QString::fromStdString(fingersText(own.notes)))
        .arg(own.level);
}

} // namespace

OwnPattern::OwnPattern(QWidget* parent)
    : QWidget(parent), m_line(new QLineEdit(this)), m_said(new QLabel(this)),
      m_use(new Button(tr("Use here"), this)), m_keep(new Button(tr("Save"), this))
{
    m_line->setPlaceholderText(tr("Your own pattern: 1 5 8 10 8"));
    m_line->setAccessibleName(tr("Your own pattern"));
    m_line->setToolTip(tr("Write degrees counted up from the root: 1 5 8 10 8. Join notes with "
                          "+ to pluck them together or with ~ to roll them; low5 is the fifth "
                          "below the root. You may add fingers in brackets: 1-5-8 (4-3-1)."));
    m_said->setWordWrap(true);
    m_said->setFont(scaledFont(*this, 0.92));
    m_said->setTextFormat(Qt::PlainText);
    m_use->setLook(Button::Look::Main);
    m_use->setToolTip(tr("Use this pattern at the chosen chord and keep it there (Enter)"));
    m_keep->setToolTip(tr("Save this pattern in your pattern book, for every tune"));

    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(7);
    buttons->addWidget(m_use);
    buttons->addWidget(m_keep);
    buttons->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(5);
    column->addWidget(m_line);
    column->addWidget(m_said);
    column->addLayout(buttons);

    connect(m_line, &QLineEdit::textChanged, this, &OwnPattern::check);
    connect(m_line, &QLineEdit::returnPressed, this, &OwnPattern::useIt);
    connect(m_use, &Button::clicked, this, &OwnPattern::useIt);
    connect(m_keep, &Button::clicked, this, [this] {
        if (m_read) emit keepClicked(*m_read);
    });
    check();
}

void OwnPattern::setReady(bool ready)
{
    m_ready = ready;
    m_use->setEnabled(m_ready && m_read);
}

QString OwnPattern::said() const { return m_said->text(); }

void OwnPattern::check()
{
    m_read.reset();
    QString const typed = m_line->text().trimmed();
    if (typed.isEmpty()) {
        m_said->clear();
    } else if (auto read = pattern::ownPatternFrom(typed.toStdString())) {
        m_read = *std::move(read);
        m_said->setText(readWords(*m_read));
    } else {
        m_said->setText(faultWords(read.error()));
    }
    m_said->setVisible(!typed.isEmpty());
    m_use->setVisible(m_read.has_value());
    m_keep->setVisible(m_read.has_value());
    m_use->setEnabled(m_ready && m_read);
    emit resized();
}

void OwnPattern::useIt()
{
    if (m_ready && m_read) emit useClicked(*m_read);
}

} // namespace ui
