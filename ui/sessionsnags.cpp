#include "ui/session.h"

namespace ui {

using proposal::Brief;

// Left-hand snags have no ways to choose from.
bool Session::takeSnagWay(std::size_t snag, tune::Way way, bool alike)
{
    if (!isOpen() || snag >= m_proposal->snags.size()) return false;
    proposal::Snag const here = m_proposal->snags[snag];
    if (here.hand == harp::Side::Left) return false;
    if (!become(proposal::withSnagWay(*m_proposal, snag, way, alike),
                alike ? tr("a way round snags that are alike") : tr("a way round a snag")))
        return false;
    for (proposal::Snag const& now : m_proposal->snags)
        if (now.hand == here.hand && now.place == here.place && now.way != way)
            emit noticed(tr("That cannot be had here: %1.")
                             .arg(QString::fromStdString(proposal::snagLine(
                                 now, tune::barName(arrangement().tune, now.place.bar)))));
    return true;
}

bool Session::letSnagChange(std::size_t snag)
{
    if (!isOpen() || snag >= m_proposal->snags.size()) return false;
    return become(proposal::withoutSnagChoice(*m_proposal, snag), tr("let a snag change"));
}

bool Session::takeForWholeTune(proposal::WholeTuneWay const& way)
{
    if (!isOpen()) return false;
    QString const text = way.way == tune::Way::Key     ? tr("change of key")
                         : way.way == tune::Way::Level ? tr("change of level")
                                                       : tr("change of tempo");
    if (!way.tried) return become(way.brief, text);
    step(way.brief, *way.tried, text);
    tellOfWaitingLocks();
    return true;
}

std::function<std::optional<arrange::Arrangement>()> Session::trial(std::size_t snag,
                                                                    tune::Way way) const
{
    if (!isOpen() || snag >= m_proposal->snags.size()) return [] { return std::nullopt; };
    return trial(proposal::withSnagWay(*m_proposal, snag, way, false));
}

std::function<std::optional<arrange::Arrangement>()> Session::trial(Brief asked) const
{
    if (!isOpen()) return [] { return std::nullopt; };
    // It is heard in its place: in the key that is there, which need not be looked for again.
    if (m_proposal->moved.semitones == 0)
        asked.key = proposal::AsWritten{};
    else
        asked.key = m_proposal->arrangement.tune.key;
    return [propose = m_engine.propose,
            brief = std::move(asked)]() -> std::optional<arrange::Arrangement> {
        auto made = propose(brief);
        if (!made) return std::nullopt;
        return std::move(made->arrangement);
    };
}

Session::WholeTuneSearch Session::wholeTuneSearch() const
{
    if (!isOpen() || !m_engine.wholeTuneWays)
        return [](auto const&) { return std::vector<proposal::WholeTuneWay>(); };
    return [search = m_engine.wholeTuneWays, proposal = *m_proposal](
               std::function<bool()> const& wanted) { return search(proposal, wanted); };
}

} // namespace ui
