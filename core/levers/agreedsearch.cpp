#include "core/levers/agreedsearch.h"

#include "core/base/at.h"

#include <algorithm>
#include <utility>

namespace levers {

namespace {

constexpr int mostParted = 20;

using base::at;

} // namespace

AgreedSearch::AgreedSearch(BestWindows& windows, MomentOrder const& order,
                           StringGroup const& group, NoteOptions const& options,
                           NoteChoices const& choices)
    : m_windows(windows), m_order(order), m_group(group), m_options(options),
      m_choices(choices), m_ringsUntil(options.size(), UseIndex(-1))
{
    bool chosen = false;
    for (UseIndex const note : group.notes) {
        chosen = chosen || (!choices.empty() && !choices[note].ways.empty());
        for (NoteOption const& option : options[note])
            if (option.holds) m_ringsUntil[*option.holds] = note;
    }
    std::optional<GroupSearch::Pruning> pruning;
    if (chosen) pruning.emplace(GroupSearch::Pruning{m_order, m_ringsUntil});
    if (auto whole = searched(GroupSearch(m_windows, group, pruning), 0, {}))
        m_branches.push_back(*std::move(whole));
}

std::optional<std::int64_t> AgreedSearch::atLeast()
{
    if (!m_told.empty()) return m_told.front().cost;
    auto const best = cheapestBranch();
    if (!best) return std::nullopt;
    return m_branches[*best].search->way(m_branches[*best].rank)->cost;
}

std::optional<Turn> AgreedSearch::stuck()
{
    return way(0) ? std::nullopt : std::optional(m_stuck.value_or(Turn{}));
}

GroupWay const* AgreedSearch::way(std::size_t rank)
{
    while (m_told.size() <= rank && next()) {
    }
    return rank < m_told.size() ? &m_told[rank] : nullptr;
}

// Goes on from a search that has played so many notes.
std::optional<AgreedSearch::Branch> AgreedSearch::searched(GroupSearch begun,
                                                           std::size_t played, Bound bound)
{
    auto search = std::make_unique<GroupSearch>(std::move(begun));
    for (; played < m_group.notes.size(); ++played) {
        UseIndex const note = m_group.notes[played];
        auto const stuck = search->play(note, allowed(note, bound));
        if (!stuck) continue;
        if (!m_stuck && bound.empty()) m_stuck = stuck;
        return std::nullopt;
    }
    return Branch{std::move(search), std::move(bound), 0};
}

// The options that the bound leaves a note; hold until the next are asked for.
std::span<NoteOption const> AgreedSearch::allowed(UseIndex note, Bound const& bound)
{
    if (bound.empty()) return m_options[note];
    auto const found = bound.find(m_choices[note].figure);
    if (found == bound.end()) return m_options[note];
    m_allowed.clear();
    for (NoteOption const& option : m_options[note])
        if (goes(option.way, note) == found->second) m_allowed.push_back(option);
    return m_allowed;
}

// The way a note goes for its figure: a quick flip is as written with leave to hurry.
std::optional<int> AgreedSearch::goes(std::optional<int> way, UseIndex note) const
{
    if (way && m_choices[note].ways[at(*way)].way == tune::Way::LeftLightened)
        return std::nullopt;
    return way;
}

// A figure whose notes go different ways.
std::optional<int> AgreedSearch::atOdds(GroupWay const& whole) const
{
    if (whole.ways.empty()) return std::nullopt;
    std::map<int, int> taken(whole.ways.begin(), whole.ways.end());
    std::map<int, std::optional<int>> figures;
    for (UseIndex const note : m_group.notes) {
        if (m_choices[note].ways.empty()) continue;
        auto const found = taken.find(note);
        std::optional<int> const way =
            found == taken.end() ? std::nullopt : goes(found->second, note);
        auto const [known, isNew] = figures.try_emplace(m_choices[note].figure, way);
        if (!isNew && known->second != way) return known->first;
    }
    return std::nullopt;
}

void AgreedSearch::part(Branch const& branch, int figure)
{
    std::set<std::optional<int>> ways;
    for (UseIndex const note : m_group.notes)
        if (m_choices[note].figure == figure)
            for (NoteOption const& option : m_options[note])
                ways.insert(goes(option.way, note));
    // Up to the figure's first note all parts are as the whole is.
    auto const first = std::ranges::find(
        m_group.notes, figure, [this](UseIndex note) { return m_choices[note].figure; });
    auto const alike = static_cast<std::size_t>(first - m_group.notes.begin());
    std::vector<Branch> parts;
    for (std::optional<int> const& way : ways) {
        Bound bound = branch.bound;
        bound[figure] = way;
        if (auto part = searched(GroupSearch(*branch.search, alike), alike, std::move(bound)))
            parts.push_back(*std::move(part));
    }
    if (++m_parted > mostParted && !parts.empty()) {
        auto const cheapest = std::ranges::min_element(
            parts, {}, [](Branch const& part) { return part.search->way(0)->cost; });
        std::iter_swap(parts.begin(), cheapest);
        parts.erase(parts.begin() + 1, parts.end());
    }
    std::ranges::move(parts, std::back_inserter(m_branches));
}

// The branch whose next way is the cheapest; branches without one are dropped.
std::optional<std::size_t> AgreedSearch::cheapestBranch()
{
    std::erase_if(m_branches,
                  [](Branch const& branch) { return !branch.search->way(branch.rank); });
    std::optional<std::size_t> best;
    std::int64_t least = 0;
    for (std::size_t b = 0; b < m_branches.size(); ++b) {
        std::int64_t const cost = m_branches[b].search->way(m_branches[b].rank)->cost;
        if (best && cost >= least) continue;
        best = b;
        least = cost;
    }
    return best;
}

bool AgreedSearch::next()
{
    while (auto const best = cheapestBranch()) {
        Branch& branch = m_branches[*best];
        if (m_most && branch.search->way(branch.rank)->cost > *m_most) return false;
        GroupWay const way = *branch.search->way(branch.rank);
        auto const figure = atOdds(way);
        if (figure && !branch.bound.contains(*figure)) {
            Branch const parted = std::move(branch);
            m_branches.erase(m_branches.begin() + static_cast<std::ptrdiff_t>(*best));
            part(parted, *figure);
            continue;
        }
        ++branch.rank;
        if (!m_known.insert(way).second) continue;
        m_told.push_back(way);
        return true;
    }
    return false;
}

} // namespace levers
