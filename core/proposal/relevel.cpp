#include "core/proposal/relevel.h"

#include "core/base/words.h"
#include "core/pattern/layout.h"
#include "core/proposal/barlist.h"

#include <fmt/format.h>

#include <cctype>
#include <map>
#include <set>
#include <tuple>

namespace proposal {

namespace {

using arrange::ArrangedPosition;

using Place = std::tuple<int, music::Length, int>;

Place placeOf(ArrangedPosition const& p)
{
    return {p.position.bar, p.position.at, p.position.played.front().pass};
}

// "1-5-10 from G2", "a rest"
std::string shapeName(arrange::Arrangement const& arrangement, arrange::Voicing const& voicing)
{
    if (voicing.notes.empty()) return base::said("a rest");
    music::Pitch const root = arrangement.harp.string(voicing.rootString).open;
    return base::say("{}{} from {}", voicing.pattern,
                     voicing.rolled ? base::said(" rolled") : "",
                     music::shown(music::naturalAt(diatonicStep(root))));
}

struct Change {
    std::string from;
    std::string to;
    std::set<tune::BarIndex> bars;
};

void note(std::vector<Change>& changes, tune::BarIndex bar, std::string const& from,
          std::string const& to)
{
    for (Change& change : changes)
        if (change.from == from && change.to == to) {
            change.bars.insert(bar);
            return;
        }
    changes.push_back({from, to, {bar}});
}

std::string sentence(tune::Tune const& tune, Change const& change)
{
    std::string bars = barList(tune, change.bars);
    bars.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(bars.front())));
    return base::say("{}: {} becomes {}.", bars, change.from, change.to);
}

std::string flipWords(std::size_t flips)
{
    if (flips == 0) return base::said("no lever is flipped while playing");
    return base::sayCount(static_cast<long long>(flips), "one lever is flipped while playing",
                          "there are {} lever flips while playing");
}

} // namespace

std::vector<std::string> changesBetween(Proposal const& from, Proposal const& to)
{
    std::vector<std::string> out;
    if (!(from.moved == to.moved))
        out.push_back(base::say("The key changes from {} to {}.",
                                music::shown(from.arrangement.tune.key),
                                music::shown(to.arrangement.tune.key)));
    std::map<Place, ArrangedPosition const*> before;
    for (ArrangedPosition const& p : from.arrangement.positions) before[placeOf(p)] = &p;
    std::vector<Change> changes;
    for (ArrangedPosition const& p : to.arrangement.positions) {
        auto const found = before.find(placeOf(p));
        if (found == before.end()) continue;
        std::string const was = shapeName(from.arrangement, found->second->voicing);
        std::string const is = shapeName(to.arrangement, p.voicing);
        if (was != is)
            note(changes, p.position.bar, was, is);
        else if (found->second->voicing.rhythm != p.voicing.rhythm)
            note(changes, p.position.bar,
                 fmt::format("{} ({})", was,
                             pattern::rhythmWords(found->second->voicing.rhythm)),
                 base::say("the same ({})", pattern::rhythmWords(p.voicing.rhythm)));
    }
    for (Change const& change : changes) out.push_back(sentence(to.arrangement.tune, change));
    auto const flips = to.arrangement.levers.flips.size();
    if (from.arrangement.levers.flips.size() != flips)
        out.push_back(base::say("Now {}.", flipWords(flips)));
    if (from.arrangement.added.size() != to.arrangement.added.size())
        out.push_back(base::say("The right hand adds notes in {} places; before, it was {}.",
                                to.arrangement.added.size(), from.arrangement.added.size()));
    return out;
}

base::Result<Relevelled> atLevel(Proposal const& from, harp::Level const& level)
{
    Brief next = from.brief;
    next.level = level;
    base::Result<Proposal> made = propose(next);
    if (!made || !(made->moved == from.moved)) {
        next.key = from.arrangement.tune.key;
        if (base::Result<Proposal> here = propose(next)) made = std::move(here);
    }
    if (!made) return made.error();
    std::vector<std::string> changes = changesBetween(from, *made);
    return Relevelled{*std::move(made), std::move(changes)};
}

} // namespace proposal
