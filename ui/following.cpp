#include "ui/following.h"

#include "ui/followedbox.h"
#include "ui/session.h"
#include "ui/tunegrid.h"

#include <QAction>

namespace ui {

Following::Following(Session& session, TuneGrid& grid, FollowedBox& box,
                     QAction const& letFollow, QObject* parent)
    : QObject(parent), m_session(session), m_grid(grid), m_box(box), m_letFollow(letFollow)
{
    connect(&m_box, &FollowedBox::onlyThisClicked, this, &Following::keepOnlyThis);
    connect(&m_box, &FollowedBox::letFollowClicked, this, [this] {
        m_followed.clear();
        show(m_ready);
    });
}

void Following::forget()
{
    m_then.reset();
    m_followed.clear();
}

void Following::see()
{
    if (auto const selected = m_session.selected())
        std::erase_if(m_followed, [&](Followed const& f) { return f.position == *selected; });
}

// What changed elsewhere since the arranger last looked there.
void Following::note()
{
    if (!m_session.isOpen()) return;
    auto const selected = m_session.selected();
    ShapesThen now = shapesOf(m_session.proposal());
    bool justKept = false;
    if (m_then) {
        m_followed = followedAfter(m_followed, *m_then, m_session.proposal(), selected);
        justKept = selected && m_then->positions.holds(*selected) &&
                   !m_then->kept.contains(*selected) && now.kept.contains(*selected);
    }
    m_then = std::move(now);
    if (justKept && !m_followed.empty() && !m_letFollow.isChecked() &&
        !m_session.undoStack().canRedo())
        QMetaObject::invokeMethod(this, &Following::keepOnlyThis, Qt::QueuedConnection);
}

void Following::show(bool ready)
{
    m_ready = ready;
    QStringList lines;
    std::vector<arrange::PositionIndex> positions;
    if (ready)
        for (Followed const& f : m_followed) {
            lines << followedWords(m_session.arrangement(), f);
            positions.push_back(f.position);
        }
    m_box.setLines(lines);
    m_grid.setFollowed(std::move(positions));
}

void Following::keepOnlyThis()
{
    std::vector<ShapeAt> asBefore;
    for (Followed const& f : m_followed) asBefore.push_back({f.position, f.before});
    m_session.chooseAll(asBefore, tr("the rest as it was"));
}

} // namespace ui
