#include "ui/handoutdialog.h"

#include "ui/messagebar.h"
#include "ui/pageview/pageview.h"
#include "ui/words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui {

HandoutDialog::HandoutDialog(sheet::HandoutWish wish, sheet::MusicFont font,
                             sheet::SheetStyle style, QWidget* parent)
    : QDialog(parent), m_wish(std::move(wish)), m_font(std::move(font)),
      m_style(std::move(style)), m_key(new QComboBox(this)), m_patterns(new QListWidget(this)),
      m_title(new QLineEdit(this)), m_refusal(new QLabel(this)), m_pages(new PageView(this)),
      m_export(new QPushButton(tr("&Export…"), this)),
      m_print(new QPushButton(tr("P&rint…"), this))
{
    setWindowTitle(tr("Pattern handout"));
    m_patterns->setAccessibleName(tr("Patterns"));
    m_title->setPlaceholderText(tr("none", "title"));
    m_refusal->setWordWrap(true);
    m_refusal->hide();
    fillKeys();
    fillPatterns();

    auto* form = new QFormLayout;
    form->addRow(tr("&Key"), m_key);
    form->addRow(tr("&Title"), m_title);
    auto* patternsLabel = new QLabel(tr("&Patterns, one page each"), this);
    patternsLabel->setBuddy(m_patterns);
    auto* close = new QPushButton(tr("Close"), this);
    for (QPushButton* button : {m_export, m_print, close}) button->setAutoDefault(false);
    auto* buttons = new QHBoxLayout;
    for (QPushButton* button : {m_export, m_print, close}) buttons->addWidget(button);

    auto* left = new QVBoxLayout;
    left->addLayout(form);
    left->addWidget(patternsLabel);
    left->addWidget(m_patterns, 1);
    left->addWidget(m_refusal);
    // What comes of the buttons is told here, not behind the dialog.
    left->addWidget(new MessageBar(this));
    left->addLayout(buttons);
    auto* row = new QHBoxLayout(this);
    row->addLayout(left);
    row->addWidget(m_pages, 1);
    resize(900, 640);

    connect(m_key, &QComboBox::currentIndexChanged, this, &HandoutDialog::draw);
    connect(m_patterns, &QListWidget::itemChanged, this, &HandoutDialog::draw);
    connect(m_title, &QLineEdit::textChanged, this, &HandoutDialog::draw);
    connect(m_export, &QPushButton::clicked, this, &HandoutDialog::exportClicked);
    connect(m_print, &QPushButton::clicked, this, &HandoutDialog::printClicked);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    draw();
}

// Every key in the mode of the wish that the harp can be set to.
void HandoutDialog::fillKeys()
{
    constexpr int flats = -5;
    constexpr int sharps = 6;
    for (int signature = flats; signature <= sharps; ++signature) {
        music::Key const key = music::keyOf(signature, m_wish.key.mode);
        if (!harp::settingFor(m_wish.harp, key)) continue;
        m_key->addItem(QString::fromStdString(music::shown(key)),
                       QString::fromStdString(music::plain(key)));
        if (key == m_wish.key) m_key->setCurrentIndex(m_key->count() - 1);
    }
}

void HandoutDialog::fillPatterns()
{
    for (pattern::Pattern const& pattern : m_wish.book.patterns) {
        auto* item = new QListWidgetItem(QString::fromStdString(pattern.name), m_patterns);
        item->setToolTip(QString::fromStdString(pattern.feel));
        bool const chosen =
            std::any_of(m_wish.patterns.begin(), m_wish.patterns.end(),
                        [&](pattern::Pattern const& p) { return p.name == pattern.name; });
        item->setCheckState(chosen ? Qt::Checked : Qt::Unchecked);
        if (chosen) m_patterns->setCurrentItem(item);
    }
}

void HandoutDialog::draw()
{
    m_wish.patterns.clear();
    for (int row = 0; row < m_patterns->count(); ++row)
        if (m_patterns->item(row)->checkState() == Qt::Checked)
            m_wish.patterns.push_back(m_wish.book.patterns[static_cast<std::size_t>(row)]);
    if (auto const key = music::keyFrom(m_key->currentData().toString().toStdString()))
        m_wish.key = *key;
    m_wish.words.title = m_title->text().trimmed().toStdString();

    auto made = m_wish.patterns.empty() ? base::Result<sheet::Document>(sheet::Document{})
                                        : sheet::handout(m_wish, m_font, m_style);
    m_refusal->setVisible(!made);
    if (!made) m_refusal->setText(faultWords(made.error()));
    m_document = made ? *std::move(made) : sheet::Document{};
    m_pages->setDocument(m_document);
    bool const any = !m_document.pages.empty();
    m_export->setEnabled(any);
    m_print->setEnabled(any);
}

} // namespace ui
