#include "ui/comparing.h"

#include "ui/session.h"
#include "ui/transport.h"

#include <QAction>

namespace ui {

Comparing::Comparing(Session& session, Actions const& actions, Transport& transport,
                     QObject* parent)
    : QObject(parent), m_session(session), m_actions(actions), m_transport(transport)
{
    connect(actions.markA, &QAction::triggered, this, [this] { rememberA(); });
    connect(actions.flip, &QAction::triggered, this, [this] { flip(); });
    connect(actions.takeA, &QAction::triggered, this, [this] { takeA(); });
}

void Comparing::enable(bool ready)
{
    m_ready = ready;
    m_actions.flip->setEnabled(ready && m_session.selected());
    m_actions.markA->setEnabled(ready);
    m_actions.takeA->setEnabled(ready && m_a);
}

void Comparing::forget()
{
    m_a.reset();
    m_compared.reset();
    show();
}

void Comparing::lookAtB()
{
    if (!m_compared) return;
    m_compared.reset();
    show();
}

arrange::Arrangement Comparing::heard() const
{
    return arrangementOf(m_compared.value_or(Compared::B));
}

void Comparing::rememberA()
{
    if (!m_ready) return;
    m_a = Setting{m_session.arrangement(), m_session.brief()};
    m_compared.reset();
    show();
    enable(m_ready);
    emit done(
        tr("This setting is A. Change what you like, then X lets you hear A and B by turns."));
}

void Comparing::flip()
{
    if (!m_ready) return;
    if (!m_a && !m_session.looksElsewhere())
        return emit told(
            tr("There is nothing to compare yet: look at another shape, or remember this "
               "setting as A (Shift+X) and change it."));
    Compared const next = m_compared == Compared::B ? Compared::A : Compared::B;
    if (arrangementOf(next).playing.bars != m_session.arrangement().playing.bars) {
        m_a.reset();
        m_compared.reset();
        show();
        return emit told(tr("A has other bars than the tune has now; it cannot be compared."));
    }
    m_compared = next;
    show();
    emit flipped();
}

void Comparing::takeA()
{
    if (!m_a) return;
    if (m_session.goBackTo(m_a->brief, tr("back to A"))) {
        m_compared.reset();
        show();
    }
}

void Comparing::show()
{
    m_transport.setCompared(m_compared || m_a ? std::optional(m_compared.value_or(Compared::B))
                                              : std::nullopt);
}

arrange::Arrangement Comparing::arrangementOf(Compared which) const
{
    if (which == Compared::B) return m_session.shownArrangement();
    return m_a ? m_a->arrangement : m_session.arrangement();
}

} // namespace ui
