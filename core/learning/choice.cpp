#include "core/learning/choice.h"

#include "core/arrange/build.h"
#include "core/tune/kind.h"

#include <fmt/format.h>

#include <algorithm>

namespace learning {

namespace {

using arrange::Account;

constexpr double inAPoint = 1000;

void add(std::array<double, arrange::termCount>& sum, Account const& account)
{
    for (std::size_t t = 0; t < sum.size(); ++t)
        sum[t] += static_cast<double>(account[t]) / inAPoint;
}

// A candidate alone and with its neighbours as they stand.
Offer offerOf(proposal::Proposal const& proposal, arrange::Scene const& scene,
              arrange::PositionIndex position, arrange::CandidateIndex candidate)
{
    auto const& lattice = proposal.lattice;
    auto const& standing = proposal.solution.best.candidates;
    arrange::Candidate const& one = lattice.candidates[position][candidate];
    Offer offer{one.voicing.pattern, {}};
    add(offer.judged, one.account);
    if (position > 0)
        add(offer.judged, arrange::pairAccount(scene, lattice, position - 1,
                                               standing[position - 1], candidate));
    if (position + 1 < standing.size())
        add(offer.judged,
            arrange::pairAccount(scene, lattice, position, candidate, standing[position + 1]));
    // As the manner weighs it, without what is learned already and without the sliders.
    for (std::size_t t = 0; t < offer.judged.size(); ++t) {
        int const now = proposal.weightsByBar.at(lattice.positions[position].bar).byTerm[t];
        offer.judged[t] =
            now == 0 ? 0 : offer.judged[t] * proposal.brief.weights.byTerm[t] / now;
    }
    return offer;
}

bool playable(Offer const& offer)
{
    constexpr double beyond =
        static_cast<double>(arrange::unplayablePair) / inAPoint / 2; // no sum of judgements
    return std::ranges::all_of(offer.judged, [](double points) { return points < beyond; });
}

} // namespace

std::optional<Choice> choiceOf(proposal::Proposal const& proposal,
                               arrange::PositionIndex position,
                               arrange::CandidateIndex candidate)
{
    auto const& regrets = proposal.solution.regrets[position];
    arrange::CandidateIndex const stood = proposal.solution.best.candidates[position];
    base::Indices<arrange::CandidateIndex> const all = regrets.indices();
    std::vector<arrange::CandidateIndex> order(all.begin(), all.end());
    std::ranges::stable_sort(order, {}, [&](arrange::CandidateIndex c) {
        return std::pair(c != candidate && c != stood, regrets[c]);
    });
    arrange::Scene const scene = sceneAt(proposal, position);
    Choice choice;
    choice.manner = proposal.brief.weights.style;
    choice.level = proposal.brief.level.number;
    choice.kind = tune::kindName(proposal.kind);
    arrange::Position const& place = proposal.lattice.positions[position];
    choice.place = fmt::format("{}/{}/{}/{}", proposal.brief.tune.title, place.bar,
                               music::text(place.at.wholes), place.played.front().pass);
    for (arrange::CandidateIndex const c : order) {
        if (choice.offers.size() == offersKept) break;
        Offer offer = offerOf(proposal, scene, position, c);
        if (c != candidate && c != stood && !playable(offer)) continue;
        if (c == candidate) choice.taken = choice.offers.size();
        if (c == stood) choice.proposed = choice.offers.size();
        choice.offers.push_back(std::move(offer));
    }
    if (choice.offers.size() < 2 || !playable(choice.offers[choice.taken])) return std::nullopt;
    return choice;
}

std::vector<Choice> withChoice(std::vector<Choice> choices, Choice choice)
{
    std::erase_if(choices, [&](Choice const& other) {
        return other.place == choice.place && other.manner == choice.manner &&
               other.level == choice.level;
    });
    choices.push_back(std::move(choice));
    if (choices.size() > choicesKept)
        choices.erase(choices.begin(),
                      choices.end() - static_cast<std::ptrdiff_t>(choicesKept));
    return choices;
}

} // namespace learning
