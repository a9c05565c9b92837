#include "ui/stringsnow.h"

#include "ui/listening.h"
#include "ui/session.h"
#include "ui/stringbank.h"
#include "ui/transport.h"
#include "ui/words.h"

#include "core/harp/seats.h"
#include "core/levers/leverstory.h"

#include <algorithm>

namespace ui {

StringsNow::StringsNow(Session& session, Listening const& listening, Transport const& transport,
                       StringBank& bank, QObject* parent)
    : QObject(parent), m_session(session), m_listening(listening), m_transport(transport),
      m_bank(bank)
{
    connect(&m_bank, &StringBank::stringPlucked, this, &StringsNow::pluck);
    connect(&m_bank, &StringBank::leverTurned, this, &StringsNow::turnLever);
    // The strings of one hand alone where one alone is heard.
    connect(&m_transport, &Transport::settingsChanged, this, [this] { show(m_ready); });
}

void StringsNow::showLevers() { m_bank.setLevers(leversNow()); }

void StringsNow::playbackStopped()
{
    m_bank.setAhead({});
    show(m_ready);
}

void StringsNow::show(bool ready)
{
    m_ready = ready;
    if (!ready) {
        m_bank.setTitle({});
        m_bank.setFingers({});
        return;
    }
    // A copy is dear.
    std::optional<arrange::Arrangement> looked;
    if (m_session.looksElsewhere()) looked = m_session.shownArrangement();
    arrange::Arrangement const& shown = looked ? *looked : m_session.arrangement();
    m_bank.setHarp(shown.harp);
    m_bank.setLevers(leversNow());
    if (auto const position = m_session.selected()) {
        showFingers(shown, *position);
    } else {
        m_bank.setTitle({});
        m_bank.setFingers({});
    }
}

// The strings of one hand alone where one alone is heard.
void StringsNow::showFingers(arrange::Arrangement const& arrangement,
                             arrange::PositionIndex position)
{
    bool const left = m_transport.hearsLeft();
    bool const right = m_transport.hearsRight();
    std::vector<FingerDisc> fingers = fingersAt(arrangement, position);
    if (left != right)
        std::erase_if(fingers, [left](FingerDisc const& disc) {
            return (disc.hand == harp::Side::Left) != left;
        });
    QString const place = positionTitle(arrangement, position);
    m_bank.setTitle(left == right ? place
                    : left        ? tr("%1 · left hand").arg(place)
                                  : tr("%1 · right hand").arg(place));
    m_bank.setFingers(std::move(fingers));
}

// The bank shows the fingers that play, and where the left hand goes after them.
void StringsNow::positionPlaying(arrange::PlayedPositionIndex playedPosition)
{
    auto const& asked = m_listening.heard();
    if (!m_listening.playing() || !asked || !m_ready) return;
    arrange::Arrangement const& heard = asked->arrangement;
    auto const played = arrange::playedPositions(heard);
    if (!played.holds(playedPosition)) return;
    auto const now = played.from(playedPosition);
    showFingers(heard, now->position);
    auto const plays = [&heard](arrange::PlayedPosition const& p) {
        return !heard.positions[p.position].voicing.notes.empty();
    };
    tune::PlayedBarIndex const first = asked->hearing.firstPlayedBar;
    auto const last = asked->hearing.lastPlayedBar;
    auto next = std::find_if(now + 1, played.end(), plays);
    bool const over = next == played.end() || (last && next->when.playedBar > *last);
    if (over && asked->loop)
        next = std::find_if(played.begin(), played.end(), [&](auto const& p) {
            return p.when.playedBar >= first && plays(p);
        });
    std::vector<FingerDisc> ahead;
    if (next != played.end() && (!over || asked->loop)) {
        ahead = fingersAt(heard, next->position);
        std::erase_if(ahead,
                      [](FingerDisc const& disc) { return disc.hand == harp::Side::Right; });
    }
    m_bank.setAhead(std::move(ahead));
}

void StringsNow::awaitStrings(QString const& names)
{
    if (names.isEmpty())
        show(m_ready);
    else
        m_bank.setTitle(tr("Now: %1").arg(names));
}

// The levers as they stand at what sounds now, or else at the selected position.
harp::LeverSetting StringsNow::leversNow() const
{
    arrange::Arrangement const& arrangement = m_session.arrangement();
    music::Moment at;
    if (auto const bar = m_listening.playedBar())
        at = arrangement.playing.bars[*bar].at;
    else if (auto const position = m_session.selected())
        at = arrangement.positions[*position].position.played.front().at;
    return leversAt(arrangement, at);
}

void StringsNow::pluck(harp::StringIndex string)
{
    harp::Harp const& harp =
        m_session.isOpen() ? m_session.arrangement().harp : m_session.brief().harp;
    harp::Lever const lever = m_session.isOpen() ? leversNow()[string] : harp::Lever::Down;
    emit pluckRequested(string, music::midi(harp::sounding(harp.string(string), lever)));
}

// A lever that the tune needs stays as it is planned, and the arranger is told why; any other
// is hers to set.
void StringsNow::turnLever(harp::StringIndex string, harp::Lever to)
{
    if (!m_session.isOpen()) return;
    if (levers::tunePlays(m_session.arrangement(), string))
        emit told(QString::fromStdString(levers::leverStory(m_session.arrangement(), string)));
    else if (m_session.wishLever(string, to))
        emit done(tr("%1: lever %2 at the start. The left hand has been arranged again; Undo "
                     "takes this back.")
                      .arg(QString::fromStdString(
                               harp::stringName(m_session.arrangement().harp, string)),
                           to == harp::Lever::Up ? tr("up") : tr("down")));
}

void StringsNow::pluckPitch(int midi)
{
    if (!m_session.isOpen()) return;
    auto const string = harp::stringForKey(m_session.arrangement().harp, leversNow(), midi);
    if (string) pluck(*string);
}

} // namespace ui
