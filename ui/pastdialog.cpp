#include "ui/pastdialog.h"

#include "ui/numbers.h"

#include <QDateTime>
#include <QDialogButtonBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui {

PastDialog::PastDialog(QString const& title, QString const& heading,
                       std::vector<PastWork> const& works, QString const& open,
                       QString const& later, QString const& throwAway, QWidget* parent)
    : QDialog(parent), m_works(new QListWidget(this))
{
    setWindowTitle(title);
    auto* const words = new QLabel(heading, this);
    words->setWordWrap(true);
    m_works->setAccessibleName(title);
    m_works->setWordWrap(true);
    m_works->setAlternatingRowColors(true);
    for (PastWork const& work : works)
        m_works->addItem(work.detail.isEmpty() ? work.words
                                               : work.words + QLatin1Char('\n') + work.detail);
    m_works->setCurrentRow(0);

    auto* const buttons = new QDialogButtonBox(this);
    QPushButton* const opening = buttons->addButton(open, QDialogButtonBox::AcceptRole);
    opening->setDefault(true);
    buttons->addButton(later, QDialogButtonBox::RejectRole);
    if (!throwAway.isEmpty()) {
        QPushButton* const away =
            buttons->addButton(throwAway, QDialogButtonBox::DestructiveRole);
        away->setAutoDefault(false);
        connect(away, &QPushButton::clicked, this, [this] {
            m_answer = Answer::ThrowAway;
            QDialog::accept();
        });
    }
    connect(buttons, &QDialogButtonBox::accepted, this, [this] {
        m_answer = Answer::Open;
        QDialog::accept();
    });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_works, &QListWidget::itemActivated, opening, &QPushButton::click);

    auto* const column = new QVBoxLayout(this);
    column->addWidget(words);
    column->addWidget(m_works);
    column->addWidget(buttons);
    resize(520, 360);
}

int PastDialog::chosen() const { return m_works->currentRow(); }

QString whenWords(QString const& isoTime)
{
    QDateTime const when = QDateTime::fromString(isoTime, Qt::ISODateWithMs);
    if (!when.isValid()) return isoTime;
    QLocale const locale = spokenLocale();
    QString const time = locale.toString(when.time(), QStringLiteral("H:mm"));
    qint64 const days = when.date().daysTo(QDate::currentDate());
    if (days == 0) return PastDialog::tr("today at %1").arg(time);
    if (days == 1) return PastDialog::tr("yesterday at %1").arg(time);
    bool const thisYear = when.date().year() == QDate::currentDate().year();
    QString const date = locale.toString(when.date(), thisYear ? PastDialog::tr("d MMMM")
                                                               : PastDialog::tr("d MMMM yyyy"));
    return PastDialog::tr("%1 at %2").arg(date, time);
}

} // namespace ui
