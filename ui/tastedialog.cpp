#include "ui/tastedialog.h"

#include "ui/theme.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui {

namespace {

QLabel* wrapped(QWidget* parent, QString const& name)
{
    auto* label = new QLabel(parent);
    label->setObjectName(name);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

} // namespace

TasteDialog::TasteDialog(QWidget* parent)
    : QDialog(parent), m_on(new QCheckBox(tr("&Learn from the shapes I choose"), this)),
      m_heading(wrapped(this, QStringLiteral("heading"))),
      m_standing(wrapped(this, QStringLiteral("standing"))),
      m_sentences(wrapped(this, QStringLiteral("sentences")))
{
    setWindowTitle(tr("Your taste"));
    m_on->setObjectName(QStringLiteral("on"));
    m_heading->setFont(scaledFont(*this, 1.05, QFont::Bold));
    m_standing->setForegroundRole(QPalette::PlaceholderText);
    QLabel* const what = wrapped(this, QStringLiteral("what"));
    what->setText(
        tr("Sallow remembers which shape you take where it suggested another, for each "
           "manner and level, and arranges new tunes by it. A tune that is open stays "
           "as it is. All of it stays on this machine."));

    auto* const buttons = new QDialogButtonBox(this);
    m_use = buttons->addButton(tr("&Use on this tune"), QDialogButtonBox::ActionRole);
    m_save = buttons->addButton(tr("&Save to a file…"), QDialogButtonBox::ActionRole);
    m_forget = buttons->addButton(tr("&Forget all…"), QDialogButtonBox::ActionRole);
    QPushButton* const close = buttons->addButton(QDialogButtonBox::Close);
    m_use->setObjectName(QStringLiteral("use"));
    m_save->setObjectName(QStringLiteral("save"));
    m_forget->setObjectName(QStringLiteral("forget"));
    for (QPushButton* button : {m_use, m_save, m_forget}) button->setAutoDefault(false);
    close->setDefault(true);
    m_use->setToolTip(tr("Arrange the open tune by your taste; undo takes it back"));
    m_save->setToolTip(tr("A copy of what is remembered, to keep or to look at"));
    connect(m_on, &QCheckBox::toggled, this, &TasteDialog::switched);
    connect(m_use, &QPushButton::clicked, this, &TasteDialog::useClicked);
    connect(m_save, &QPushButton::clicked, this, &TasteDialog::saveClicked);
    connect(m_forget, &QPushButton::clicked, this, &TasteDialog::askForget);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    auto* const column = new QVBoxLayout(this);
    column->setSpacing(10);
    column->addWidget(m_on);
    column->addWidget(what);
    column->addSpacing(6);
    column->addWidget(m_heading);
    column->addWidget(m_standing);
    column->addWidget(m_sentences);
    column->addStretch(1);
    column->addWidget(buttons);
    resize(560, 380);
}

void TasteDialog::tell(TasteTold const& told)
{
    QSignalBlocker const quiet(m_on);
    m_on->setChecked(told.on);
    m_heading->setText(told.heading);
    m_standing->setText(told.standing);
    QStringList lines;
    for (QString const& sentence : told.sentences) lines << QStringLiteral("• ") + sentence;
    m_sentences->setText(lines.join(QLatin1Char('\n')));
    m_sentences->setVisible(!lines.isEmpty());
    m_use->setEnabled(told.canUse);
    m_save->setEnabled(told.any);
    m_forget->setEnabled(told.any);
}

void TasteDialog::askForget()
{
    QMessageBox ask(
        QMessageBox::Question, tr("Forget your taste?"),
        tr("All choices that Sallow has remembered are forgotten, of every manner and "
           "level. This cannot be undone. Tunes stay as they are."),
        QMessageBox::NoButton, this);
    QPushButton* const forget = ask.addButton(tr("Forget all"), QMessageBox::DestructiveRole);
    ask.setDefaultButton(ask.addButton(tr("Keep"), QMessageBox::RejectRole));
    ask.exec();
    if (ask.clickedButton() == forget) emit forgetClicked();
}

} // namespace ui
