#include "ui/wordsdialog.h"

#include <QAbstractButton>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace ui {

namespace {

QString shownText(std::string const& text) { return QString::fromStdString(text); }
std::string typed(QLineEdit const* field) { return field->text().trimmed().toStdString(); }

} // namespace

WordsDialog::WordsDialog(tune::PageWords const& words, QWidget* parent)
    : QDialog(parent), m_title(new QLineEdit(shownText(words.title), this)),
      m_composer(new QLineEdit(shownText(words.composer), this)),
      m_origin(new QLineEdit(shownText(words.origin), this)),
      m_source(new QLineEdit(shownText(words.source), this)),
      m_arranger(new QLineEdit(shownText(words.arranger), this)),
      m_copyright(new QLineEdit(shownText(words.copyright), this)),
      m_notes(new QPlainTextEdit(this))
{
    setWindowTitle(tr("Title, composer, source and notes"));
    QStringList notes;
    for (std::string const& note : words.notes) notes << shownText(note);
    m_notes->setPlainText(notes.join(QLatin1Char('\n')));
    m_notes->setTabChangesFocus(true);
    m_notes->setMinimumHeight(90);

    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    form->addRow(tr("&Title"), m_title);
    form->addRow(tr("&Composer"), m_composer);
    form->addRow(tr("&From (place)"), m_origin);
    form->addRow(tr("&Source"), m_source);
    form->addRow(tr("&Arranger"), m_arranger);
    form->addRow(tr("Copyright &line"), m_copyright);
    form->addRow(tr("&Notes for the\nplayer"), m_notes);
    m_copyright->setPlaceholderText(tr("exactly as it should be printed at the foot"));
    m_notes->setPlaceholderText(tr("one paragraph on each line, printed after the music"));
    for (auto* field : {m_title, m_composer, m_origin, m_source, m_arranger, m_copyright})
        field->setCursorPosition(0);

    auto* hint = new QLabel(tr("An empty field prints nothing. The file you opened is not "
                               "changed; these words are saved with your arrangement."),
                            this);
    hint->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    auto* column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addWidget(hint);
    column->addWidget(buttons);
    resize(520, 430);
}

tune::PageWords WordsDialog::words() const
{
    tune::PageWords words{typed(m_title),
                          typed(m_composer),
                          typed(m_origin),
                          typed(m_source),
                          typed(m_arranger),
                          typed(m_copyright),
                          {}};
    for (QString const& line :
         m_notes->toPlainText().split(QLatin1Char('\n'), Qt::SkipEmptyParts))
        if (!line.trimmed().isEmpty()) words.notes.push_back(line.trimmed().toStdString());
    return words;
}

} // namespace ui
