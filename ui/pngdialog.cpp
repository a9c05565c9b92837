#include "ui/pngdialog.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <utility>

namespace ui {

namespace {

constexpr int coarsest = 50; // dots an inch, as in a call
constexpr int finest = 600;
constexpr int forPrinters = 300;

QString fileName(QString const& path) { return QFileInfo(path).fileName(); }

} // namespace

PngDialog::PngDialog(QString path, int pages, Names names, QWidget* parent)
    : QDialog(parent), m_path(std::move(path)), m_pages(pages), m_names(std::move(names)),
      m_resolution(new QSpinBox(this)),
      m_onePicture(new QCheckBox(tr("&All pages in one picture"), this)),
      m_said(new QLabel(this))
{
    setWindowTitle(tr("Export as PNG"));
    m_resolution->setRange(coarsest, finest);
    m_resolution->setSingleStep(50);
    m_resolution->setValue(forPrinters);
    m_resolution->setToolTip(tr("150 is enough for a screen, 300 for most printers"));
    m_onePicture->setToolTip(tr("One below the other, 150 dots an inch"));
    m_onePicture->setVisible(pages > 1);
    m_said->setWordWrap(true);

    auto* form = new QFormLayout;
    form->addRow(tr("&Dots an inch"), m_resolution);
    form->addRow(QString(), m_onePicture);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    buttons->button(QDialogButtonBox::Ok)->setText(tr("Export"));
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_onePicture, &QCheckBox::toggled, this, &PngDialog::check);
    auto* column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addWidget(m_said);
    column->addWidget(buttons);
    setMinimumWidth(400);
    check();
}

void PngDialog::check()
{
    m_resolution->setEnabled(!m_onePicture->isChecked());
    m_said->setText(words());
}

QString PngDialog::words() const
{
    if (m_pages < 2 || m_onePicture->isChecked())
        return tr("Makes “%1”.").arg(fileName(m_path));
    QString said = tr("Makes a file a page: “%1” to “%2”.")
                       .arg(fileName(m_names(1)), fileName(m_names(m_pages)));
    QStringList replaced;
    for (int page = 1; page <= m_pages; ++page)
        if (QFileInfo::exists(m_names(page))) replaced << fileName(m_names(page));
    if (!replaced.isEmpty())
        said += QLatin1Char(' ') +
                tr("Already there and replaced: %1.").arg(replaced.join(QStringLiteral(", ")));
    return said;
}

std::optional<int> PngDialog::resolution() const
{
    if (m_onePicture->isChecked()) return std::nullopt;
    return m_resolution->value();
}

QString PngDialog::said() const { return m_said->text(); }

} // namespace ui
