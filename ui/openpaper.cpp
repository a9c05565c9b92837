#include "ui/openpaper.h"

#include "ui/pageview/pageview.h"
#include "ui/paint/sheetfonts.h"
#include "ui/session.h"
#include "ui/sheetpanel.h"
#include "ui/wordsdialog.h"

namespace ui {

OpenPaper::OpenPaper(Session& session, SheetPanel& panel, QObject* parent)
    : QObject(parent), m_session(session), m_panel(panel)
{
    connect(&m_panel, &SheetPanel::kindChosen, this, &OpenPaper::setKind);
    connect(&m_panel, &SheetPanel::paperChosen, this, &OpenPaper::setSize);
    connect(&m_panel, &SheetPanel::readingChosen, this, &OpenPaper::setReading);
}

void OpenPaper::setLookedAt(bool looked)
{
    m_lookedAt = looked;
    if (m_lookedAt && m_outdated) show();
}

void OpenPaper::setKind(PaperKind kind)
{
    m_kind = kind;
    m_panel.setKind(kind);
    if (m_session.isOpen()) show();
}

void OpenPaper::setSize(sheet::Paper size)
{
    m_style.paper = size;
    m_panel.setPaper(size);
    if (m_session.isOpen()) show();
    emit sizeChanged();
}

void OpenPaper::setReading(Reading const& reading)
{
    m_style = styled(m_style, reading);
    m_panel.setReading(reading);
    if (m_session.isOpen()) show();
    emit sizeChanged();
}

void OpenPaper::setPupil(QString const& pupil)
{
    m_pupil = pupil;
    if (m_session.isOpen()) show();
}

void OpenPaper::setSlowing(perform::Slowing slowing)
{
    if (m_style.slowing == slowing) return;
    m_style.slowing = slowing;
    if (m_session.isOpen()) show();
}

std::optional<sheet::Document> OpenPaper::pages()
{
    if (!m_session.isOpen() || !font()) return std::nullopt;
    return paperOf(m_kind, forPupil(m_session.arrangement()), *m_font, m_style);
}

arrange::Arrangement OpenPaper::forPupil(arrange::Arrangement arrangement) const
{
    if (!m_pupil.isEmpty())
        arrangement.tune.notes.insert(arrangement.tune.notes.begin(),
                                      tr("For %1.").arg(m_pupil).toStdString());
    return arrangement;
}

// The pattern that the selected position has, else the first that the tune uses.
sheet::HandoutWish OpenPaper::handoutWish() const
{
    proposal::Brief const& brief = m_session.brief();
    arrange::Arrangement const& arrangement = m_session.arrangement();
    sheet::HandoutWish wish{brief.harp,           brief.hand, brief.level, brief.book,
                            arrangement.tune.key, {},         {},          {}};
    std::string wanted;
    if (auto const selected = m_session.selected())
        wanted = arrangement.positions[*selected].voicing.pattern;
    for (pattern::Pattern const& pattern : wish.book.patterns)
        if (pattern.name == wanted) wish.patterns.push_back(pattern);
    if (wish.patterns.empty() && !wish.book.patterns.empty())
        wish.patterns.push_back(wish.book.patterns.front());
    return wish;
}

std::optional<sheet::MusicFont> const& OpenPaper::font()
{
    if (m_font) return m_font;
    auto font = musicFont();
    if (font)
        m_font = *std::move(font);
    else
        emit refused(font.error());
    return m_font;
}

void OpenPaper::show()
{
    m_outdated = !m_lookedAt;
    if (m_outdated) return;
    if (!font()) return;
    m_panel.view()->setDocument(
        paperOf(m_kind, forPupil(m_session.shownArrangement()), *m_font, m_style));
    m_panel.view()->setChosenPosition(m_session.selected());
    m_panel.view()->setAccessibleName(
        tr("%1 of %2")
            .arg(paperName(m_kind),
                 QString::fromStdString(m_session.arrangement().tune.title)));
}

void OpenPaper::editWords(QWidget* window)
{
    if (!m_session.isOpen()) return;
    WordsDialog dialog(tune::pageWords(m_session.brief().tune), window);
    if (dialog.exec() == QDialog::Accepted) m_session.setWords(dialog.words());
}

} // namespace ui
