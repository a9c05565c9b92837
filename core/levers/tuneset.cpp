#include "core/levers/tuneset.h"

#include "core/base/words.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace levers {

namespace {

constexpr int perChange = 10; // against KeyFit::rank, where a lever turned in play is 30

harp::StringIndex topString(SetTune const& tune, KeyFit const& fit)
{
    return tune.highestString + fit.moved.steps;
}

// What is turned so that a tune finds its levers; `now` stands as the tune wants it afterwards.
std::vector<LeverChange> changesFor(harp::Harp const& harp, SetTune const& tune,
                                    KeyFit const& fit, harp::LeverSetting& now)
{
    std::vector<LeverChange> changes;
    harp::StringIndex const top = std::min(topString(tune, fit), harp.highest());
    for (harp::StringIndex string = 0; string <= top; ++string) {
        if (now[string] != fit.setup[string]) changes.push_back({string, fit.setup[string]});
        now[string] = fit.atEnd[string];
    }
    return changes;
}

class Search {
public:
    Search(harp::Harp const& harp, std::vector<SetTune> const& tunes, SetOrder order)
        : m_harp(harp), m_tunes(tunes), m_order(order)
    {
        go({}, std::vector<bool>(tunes.size(), false), {}, 0);
    }
    std::vector<SetStep> const& best() const { return m_best; }

private:
    void go(std::vector<SetStep> const& steps, std::vector<bool> const& used,
            harp::LeverSetting const& now, int cost)
    {
        if (cost >= m_least) return;
        if (steps.size() == m_tunes.size()) {
            m_least = cost;
            m_best = steps;
            return;
        }
        for (std::size_t tune = 0; tune < m_tunes.size(); ++tune) {
            if (used[tune]) continue;
            if (m_order == SetOrder::AsGiven && tune != steps.size()) continue;
            for (KeyFit const& fit : m_tunes[tune].keys) {
                harp::LeverSetting levers = now.empty() ? fit.setup : now;
                SetStep step{static_cast<int>(tune), fit,
                             changesFor(m_harp, m_tunes[tune], fit, levers), 0};
                step.seconds = secondsALever * static_cast<double>(step.changes.size());
                auto next = steps;
                auto taken = used;
                taken[tune] = true;
                int const more = fit.rank - m_tunes[tune].keys.front().rank +
                                 perChange * static_cast<int>(step.changes.size());
                next.push_back(std::move(step));
                go(next, taken, levers, cost + more);
            }
        }
    }

    harp::Harp const& m_harp;
    std::vector<SetTune> const& m_tunes;
    SetOrder m_order;
    int m_least = std::numeric_limits<int>::max();
    std::vector<SetStep> m_best;
};

} // namespace

std::vector<SetStep> setPlan(harp::Harp const& harp, std::vector<SetTune> const& tunes,
                             SetOrder order)
{
    for (SetTune const& tune : tunes)
        if (tune.keys.empty()) return {};
    return Search(harp, tunes, order).best();
}

SetTune setTune(harp::Harp const& harp, tune::Tune const& tune, tune::Tempo tempo,
                harp::Level const& level, std::size_t most,
                std::optional<tune::WayPrices> const& prices)
{
    SetTune out{tune.title, {}, 0};
    for (KeyFit& fit : keyFits(tune, harp, tempo, level, prices))
        if (fit.possible && out.keys.size() < most) out.keys.push_back(std::move(fit));
    int const lowest = diatonicStep(harp.string(0).open);
    for (tune::Bar const& bar : tune.bars)
        for (tune::Note const& note : bar.notes)
            for (music::Pitch const& pitch : note.pitches)
                out.highestString = std::max(out.highestString,
                                             harp::StringIndex(diatonicStep(pitch) - lowest));
    return out;
}

std::string changesInWords(harp::Harp const& harp, SetStep const& step)
{
    if (step.changes.empty()) return base::said("Leave the levers as they are");
    std::vector<std::pair<std::string, std::vector<std::string>>> byPitch;
    for (LeverChange const& change : step.changes) {
        harp::HarpString const& string = harp.string(change.string);
        std::string const name =
            music::shown(nameOf(sounding(string, change.to))) +
            (change.to == harp::Lever::Up ? base::said(" (lever up) on ")
                                          : base::said(" (lever down) on "));
        auto known = std::find_if(byPitch.begin(), byPitch.end(),
                                  [&](auto const& p) { return p.first == name; });
        if (known == byPitch.end()) known = byPitch.insert(known, {name, {}});
        known->second.push_back(fmt::format("{}{}", harp::harpOctave(string.open),
                                            music::shown(nameOf(string.open))));
    }
    std::vector<std::string> parts;
    for (auto const& [name, strings] : byPitch)
        parts.push_back(name + fmt::format("{}", fmt::join(strings, " ")));
    return base::sayCount(
        static_cast<long long>(step.changes.size()), "Flip {} lever, about {:.0f} s: {}",
        "Flip {} levers, about {:.0f} s: {}", std::ceil(step.seconds), fmt::join(parts, ", "));
}

} // namespace levers
