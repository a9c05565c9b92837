#include "ui/handbook.h"

#include <QDir>
#include <QFile>
#include <QFontMetrics>
#include <QHBoxLayout>
#include <QImage>
#include <QListWidget>
#include <QTextBrowser>
#include <QUrl>

#include <algorithm>

namespace ui {

namespace {

// "Chords" of a page that begins with "# Chords".
QString titleOf(QString const& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return {};
    return QString::fromUtf8(file.readLine()).remove(QLatin1Char('#')).trimmed();
}

// Pictures no wider than the page.
class Page final : public QTextBrowser {
public:
    using QTextBrowser::QTextBrowser;

    QVariant loadResource(int type, QUrl const& name) override
    {
        QVariant found = QTextBrowser::loadResource(type, name);
        if (type != QTextDocument::ImageResource) return found;
        QImage picture = found.canConvert<QImage>() ? found.value<QImage>() : QImage();
        if (picture.isNull()) picture.loadFromData(found.toByteArray());
        if (picture.isNull()) return found;
        int const margins = 3 * static_cast<int>(document()->documentMargin());
        int const room = std::max(viewport()->width() - margins, 200);
        if (picture.width() <= room) return picture;
        QImage small =
            picture.scaledToWidth(qRound(room * devicePixelRatioF()), Qt::SmoothTransformation);
        small.setDevicePixelRatio(devicePixelRatioF());
        return small;
    }
};

} // namespace

Handbook::Handbook(QString folder, QWidget* parent)
    : QDialog(parent), m_folder(std::move(folder)),
      m_files(QDir(m_folder).entryList({QStringLiteral("*.md")}, QDir::Files, QDir::Name)),
      m_titles(new QListWidget(this)), m_text(new Page(this))
{
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Handbook"));
    m_titles->setAccessibleName(tr("Pages"));
    m_titles->setFrameShape(QFrame::NoFrame);
    m_titles->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_titles->setSpacing(5);
    m_text->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_text->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    m_text->setFrameShape(QFrame::NoFrame);
    m_text->document()->setDocumentMargin(18);
    m_text->setOpenExternalLinks(false);

    int width = 0;
    for (QString const& file : m_files) {
        QString const title = titleOf(QDir(m_folder).filePath(file));
        m_titles->addItem(title);
        width = std::max(width, m_titles->fontMetrics().horizontalAdvance(title));
    }
    constexpr int margins = 34;
    m_titles->setFixedWidth(width + margins);
    if (m_files.isEmpty())
        m_text->setPlainText(
            tr("The handbook's pages are not beside the program. Install Sallow again."));

    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 12, 0, 0);
    row->setSpacing(8);
    row->addWidget(m_titles);
    row->addWidget(m_text, 1);
    resize(width + margins + 700, 620);

    connect(m_titles, &QListWidget::currentRowChanged, this, &Handbook::openPage);
    connect(m_text, &QTextBrowser::sourceChanged, this, [this](QUrl const& url) {
        auto const page = m_files.indexOf(url.fileName());
        if (page >= 0) m_titles->setCurrentRow(static_cast<int>(page));
    });
    m_titles->setCurrentRow(0);
    m_titles->setFocus();
}

void Handbook::openPage(int page)
{
    if (page < 0 || page >= pages()) return;
    QString const path = QDir(m_folder).filePath(m_files[page]);
    m_text->setSource(QUrl::fromLocalFile(path), QTextDocument::MarkdownResource);
    m_text->setAccessibleName(m_titles->item(page)->text());
}

} // namespace ui
