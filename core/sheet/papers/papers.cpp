#include "core/sheet/papers/papers.h"

#include "core/sheet/geometry.h"
#include "core/sheet/heading.h"
#include "core/sheet/system.h"

#include <algorithm>

namespace sheet {

Papers::Papers(MusicFont const& font, SheetStyle const& style)
    : m_font(font), m_space(style.staffMm / 4), m_paper(sizeOf(style.paper)),
      m_marginMm(style.marginMm), m_width((m_paper.widthMm - 2 * style.marginMm) / m_space),
      m_height((m_paper.heightMm - 2 * style.marginMm) / m_space), m_foot(font)
{}

double Papers::room() const { return m_height - m_footHeight - m_y; }

void Papers::setFoot(Pen foot, double height)
{
    m_foot = std::move(foot);
    m_footHeight = height;
}

void Papers::newPage()
{
    Page page{m_paper.widthMm, m_paper.heightMm, {}, {}};
    page.marks = m_foot.marksAt({m_marginMm, m_marginMm + (m_height - 0.3) * m_space}, m_space);
    m_pages.push_back(std::move(page));
    m_y = 0;
    m_fresh = true;
    if (m_runningTitle.empty() || m_pages.size() < 2) return;
    Score named;
    named.tune.title = m_runningTitle;
    Pen head(m_font);
    double const height =
        drawRunningHead(head, named, std::to_string(m_pages.size()), m_width);
    add(head, height, 0);
}

void Papers::add(Pen const& piece, double height, double gap, double with)
{
    if (m_pages.empty()) newPage();
    if (!m_fresh && gap + height + with > room()) newPage();
    if (!m_fresh) m_y += gap;
    for (Mark& mark : piece.marksAt({m_marginMm, m_marginMm + m_y * m_space}, m_space))
        m_pages.back().marks.push_back(std::move(mark));
    m_y += height;
    m_fresh = false;
}

Document Papers::document(std::string title, std::string author) &&
{
    return {std::move(title), std::move(author), std::move(m_pages)};
}

std::vector<MusicLine> musicLines(Score const& score, MusicFont const& font, double width,
                                  int barsToALine)
{
    SetScore const set = setScore(score, font);
    std::vector<MusicLine> lines;
    double before = 1;
    for (tune::BarIndex first = 0; first < set.beyond(); first += barsToALine) {
        BarRange const range{first, std::min(first + barsToALine, set.beyond())};
        double const stretch = systemStretch(set, range, width);
        bool const tooShort = range.end - range.first < barsToALine && first > 0 &&
                              stretch > before * geometry::longestStretch;
        System const line = system(set, range, width, tooShort ? before : stretch);
        before = stretch;
        Pen pen(font);
        pen.take(line.pen, -line.top);
        std::vector<Area> areas = line.areas;
        for (Area& area : areas) {
            area.topLeft.y -= line.top;
            area.bottomRight.y -= line.top;
        }
        lines.push_back({std::move(pen), line.bottom - line.top, std::move(areas)});
    }
    return lines;
}

double drawEmptyStaves(Pen& pen, int count, double gap, double width)
{
    double const thickness = engravingOf(pen.font(), "staffLineThickness", 0.13);
    double y = 0;
    for (int staff = 0; staff < count; ++staff) {
        for (int line = 0; line < 5; ++line)
            pen.line({0, y + line}, {width, y + line}, thickness, Ink::Staff);
        y += 4 + gap;
    }
    return count > 0 ? y - gap : 0;
}

} // namespace sheet
