#include "app/cautions.h"

#include "app/preferences.h"
#include "ui/session.h"
#include "ui/workbench.h"

#include <QTimer>

#include <algorithm>

namespace app {

namespace {

// Common practice, no source: an octave (eight strings) lies well in most hands, a tenth is what
// small hands roll or leave.
constexpr int wideForSmallHands = 9;
constexpr int fastLevel = 4;

QString whereItHurts()
{
    return Cautions::tr(
        "If anything hurts, stop; ask your teacher, and see a doctor or physiotherapist.");
}

bool isSmall(harp::HandModel const& hand) { return hand.id == "small" || hand.id.starts_with("child"); }

bool hasWideShape(arrange::Arrangement const& arrangement)
{
    return std::ranges::any_of(
        arrangement.positions, [](arrange::ArrangedPosition const& position) {
            auto const& notes = position.voicing.notes;
            if (notes.empty()) return false;
            auto const [low, high] = std::ranges::minmax_element(notes, {}, &arrange::VoicedNote::string);
            return high->string - low->string + 1 >= wideForSmallHands;
        });
}

} // namespace

bool isRetuned(harp::Harp const& from, harp::Harp const& to)
{
    if (from.id() != to.id() || from.count() != to.count()) return false;
    for (harp::StringIndex const string : from.indices())
        if (music::midi(from.string(string).open) != music::midi(to.string(string).open)) return true;
    return false;
}

Cautions::Cautions(Desk const& desk)
    : QObject(&desk.workbench), m_desk(desk), m_harp(desk.session.brief().harp)
{
    connect(&desk.session, &ui::Session::opened, this,
            [this] { m_harp = m_desk.session.brief().harp; }); // a saved harp is tuned as it is
    connect(&desk.session, &ui::Session::changed, this, &Cautions::look);
}

void Cautions::look()
{
    harp::Harp const before = std::exchange(m_harp, m_desk.session.brief().harp);
    if (isRetuned(before, m_harp))
        tellOnce(QStringLiteral("tuning"),
                 tr("Before you tune strings up or down, ask the harp's maker: strings can break, "
                    "and not every harp bears every tuning."));
    if (!m_desk.session.isOpen()) return;
    if (isSmall(m_desk.session.brief().hand) && hasWideShape(m_desk.session.arrangement()))
        tellOnce(QStringLiteral("wide"),
                 tr("There are wide shapes for a small hand here. Roll them or choose smaller "
                    "ones, and do not hold a stretch.") +
                     ' ' + whereItHurts());
    if (m_desk.session.brief().level.number >= fastLevel)
        tellOnce(QStringLiteral("fast"),
                 tr("From level %1 on shapes change quickly. Begin slowly, and rest your hands for "
                    "five minutes in every half hour.")
                         .arg(fastLevel) +
                     ' ' + whereItHurts());
}

// After what the choice itself has to say.
void Cautions::tellOnce(QString const& caution, QString const& words)
{
    if (m_desk.preferences.toldBefore(caution)) return;
    QTimer::singleShot(0, this, [this, words] { m_desk.workbench.tell(words); });
}

} // namespace app
