#include "ui/announcing.h"

#include "ui/announcer.h"
#include "ui/header.h"
#include "ui/session.h"
#include "ui/statusline.h"
#include "ui/words.h"

#include <QAccessible>
#include <QApplication>

namespace ui {

Announcing::Announcing(Session& session, Header const& header, QWidget* window)
    : QObject(window), m_session(session), m_header(header), m_window(window),
      m_announcer(new Announcer(window))
{
    connect(&session, &Session::changed, this, &Announcing::soon);
    connect(&session, &Session::selectionChanged, this, &Announcing::soon);
}

// Once for all that one edit changes, after the keyboard has found its place.
void Announcing::soon()
{
    if (m_waiting || !readerListens()) return;
    m_waiting = true;
    QMetaObject::invokeMethod(this, &Announcing::tell, Qt::QueuedConnection);
}

Announcing::Known Announcing::known() const
{
    Known now;
    if (!m_session.isOpen()) return now;
    arrange::Arrangement const& arrangement = m_session.arrangement();
    proposal::Brief const& brief = m_session.brief();
    now.title = QString::fromStdString(arrangement.tune.title);
    now.choices = {
        {Header::tr("Key"), QString::fromStdString(music::shown(arrangement.tune.key))},
        {Header::tr("Harp"), harpWords(brief.harp)},
        {Header::tr("Hand"), handWords(brief.hand)},
        {Header::tr("Level"), QString::number(brief.level.number)},
        {Header::tr("Manner"), styleWords(brief.weights)}};
    for (arrange::ArrangedPosition const& position : arrangement.positions) {
        now.shapes << patternWords(position.voicing);
        now.kept.push_back(position.locked);
    }
    now.toCheck = static_cast<qsizetype>(m_session.proposal().warnings.size());
    now.selected = m_session.selected().value_or(-1);
    return now;
}

// The list of shapes and the grid tell where the keyboard goes.
bool Announcing::isToldByFocus() const
{
    auto const* readable = dynamic_cast<Readable const*>(QApplication::focusWidget());
    return readable && readable->tellsPlaces();
}

QStringList Announcing::changes(Known const& now) const
{
    QStringList told;
    for (std::size_t i = 0; i < now.choices.size(); ++i)
        if (i >= m_known.choices.size() || m_known.choices[i].second != now.choices[i].second)
            told << now.choices[i].first + QLatin1Char(' ') + now.choices[i].second;
    bool const alike = now.shapes.size() == m_known.shapes.size();
    auto const at = static_cast<std::size_t>(std::max(0, now.selected));
    bool const placed = now.selected >= 0 && at < now.kept.size();
    auto const there = static_cast<qsizetype>(at);
    bool const moved = now.selected != m_known.selected && !isToldByFocus();
    bool const reshaped =
        placed && alike &&
        (now.shapes[there] != m_known.shapes[there] || now.kept[at] != m_known.kept[at]);
    if (placed && (moved || reshaped)) {
        QString const place =
            positionTitle(m_session.arrangement(), arrange::PositionIndex(now.selected)) +
            QStringLiteral(", ") + now.shapes[there];
        told << (now.kept[at] ? tr("%1, kept").arg(place) : place);
    }
    int others = 0;
    for (qsizetype i = 0; alike && i < now.shapes.size(); ++i)
        others += i != there && now.shapes[i] != m_known.shapes[i];
    if (others == 1) told << tr("1 other chord has a new shape");
    if (others > 1) told << tr("%1 other chords have new shapes").arg(others);
    if (now.toCheck != m_known.toCheck)
        told << (now.toCheck == 0 ? tr("Nothing is left to check") : toCheckWords(now.toCheck));
    return told;
}

void Announcing::tell()
{
    m_waiting = false;
    Known now = known();
    QStringList told;
    if (now.title != m_known.title) {
        told << m_header.told();
        if (now.toCheck > 0) told << toCheckWords(now.toCheck);
    } else {
        told = changes(now);
    }
    m_known = std::move(now);
    m_announcer->say(told.join(QStringLiteral(". ")));
}

} // namespace ui
