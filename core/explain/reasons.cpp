#include "core/explain/reasons.h"

#include "core/arrange/alike.h"
#include "core/arrange/laid.h"
#include "core/arrange/neighbours.h"
#include "core/arrange/view.h"
#include "core/base/words.h"

#include <algorithm>
#include <utility>

namespace explain {

using namespace arrange;

namespace {

constexpr std::size_t mostSentences = 3;
// Differences below this many thousandths are not worth a sentence.
constexpr Points worthSaying = 60;

Candidate const& candidateAt(Lattice const& lattice, arrange::PositionIndex position,
                             CandidateIndex candidate)
{
    return lattice.candidates[position][candidate];
}

// The candidate with the least regret that is another shape than this one.
CandidateIndex rivalOf(Lattice const& lattice, Solution const& solution,
                       arrange::PositionIndex position, CandidateIndex candidate)
{
    arrange::Costs const& regrets = solution.regrets[position];
    std::string const& shape = candidateAt(lattice, position, candidate).voicing.pattern;
    CandidateIndex rival = candidate;
    for (CandidateIndex const other : regrets.indices()) {
        if (candidateAt(lattice, position, other).voicing.pattern == shape) continue;
        if (rival == candidate || regrets[other] < regrets[rival]) rival = other;
    }
    return rival;
}

// Terms by how much more one account has than another, most first.
std::vector<Term> termsByExcess(Account const& account, Account const& other)
{
    std::vector<std::pair<Points, std::size_t>> excess;
    for (std::size_t t = 0; t < termCount; ++t)
        if (account[t] - other[t] >= worthSaying) excess.emplace_back(other[t] - account[t], t);
    std::ranges::sort(excess);
    std::vector<Term> terms;
    for (auto const& [difference, term] : excess) terms.push_back(static_cast<Term>(term));
    return terms;
}

void add(std::vector<std::string>& sentences, std::string sentence)
{
    bool const known = std::ranges::find(sentences, sentence) != sentences.end();
    if (!sentence.empty() && !known && sentences.size() < mostSentences)
        sentences.push_back(std::move(sentence));
}

} // namespace

ReasonsAt::ReasonsAt(Scene const& scene, Lattice const& lattice, Solution const& solution,
                     arrange::PositionIndex position)
    : m_scene(scene), m_lattice(lattice), m_solution(solution), m_position(position)
{
    music::Length const longest = longestNote(scene.playing);
    m_view = viewOf(scene, lattice.positions[position], longest);
    auto const beside = [&](arrange::PositionIndex there) {
        View view = viewOf(scene, lattice.positions[there], longest);
        Laid laid =
            laidAs(candidateAt(lattice, there, solution.best.candidates[there]).voicing, view);
        return Beside{std::move(view), std::move(laid), {}};
    };
    // What joins points to the views, which stay where they are from here on.
    if (position > 0) {
        m_before = beside(position - 1);
        m_before->join = neighboursOf(scene, lattice.positions[position - 1], m_before->view,
                                      lattice.positions[position], m_view);
        m_handBefore = handAtEnd(m_before->view, m_before->laid);
        m_ringingBefore = ringingAfter(m_before->join, m_before->laid);
    }
    if (position + 1 < lattice.positions.size()) {
        m_after = beside(position + 1);
        m_after->join = neighboursOf(scene, lattice.positions[position], m_view,
                                     lattice.positions[position + 1], m_after->view);
        m_handAfter = handAtStart(m_after->view, m_after->laid);
    }
}

// All that a candidate costs beside the best choice of its neighbours, by term.
Account ReasonsAt::accountOf(CandidateIndex candidate) const
{
    Candidate const& here = candidateAt(m_lattice, m_position, candidate);
    Account account = here.account;
    auto const add = [&](Account const& more) {
        for (std::size_t t = 0; t < termCount; ++t) account[t] += more[t];
    };
    Laid const laid = laidAs(here.voicing, m_view);
    if (m_before)
        add(pairAccount(m_before->join, m_before->laid, m_handBefore, m_ringingBefore, laid,
                        handAtStart(m_view, laid), m_scene.weights));
    if (m_after)
        add(pairAccount(m_after->join, laid, handAtEnd(m_view, laid),
                        ringingAfter(m_after->join, laid), m_after->laid, m_handAfter,
                        m_scene.weights));
    return account;
}

Told ReasonsAt::told(CandidateIndex candidate) const
{
    auto const voicedAt = [&](arrange::PositionIndex at) {
        return &candidateAt(m_lattice, at, m_solution.best.candidates[at]).voicing;
    };
    std::optional<tune::BarIndex> like;
    std::optional<tune::BarIndex> unlike;
    if (auto const answer = answered(m_lattice, m_position)) {
        Account const& account = candidateAt(m_lattice, m_position, candidate).account;
        bool const other = account[static_cast<std::size_t>(Term::Variety)] > 0;
        (other ? unlike : like) = m_lattice.positions[answer->position].bar;
    }
    return {m_scene,
            m_lattice.positions[m_position],
            m_before ? &m_lattice.positions[m_position - 1] : nullptr,
            m_after ? &m_lattice.positions[m_position + 1] : nullptr,
            m_view,
            laidAs(candidateAt(m_lattice, m_position, candidate).voicing, m_view),
            m_before ? voicedAt(m_position - 1) : nullptr,
            m_after ? voicedAt(m_position + 1) : nullptr,
            like,
            unlike};
}

std::vector<std::string> ReasonsAt::of(CandidateIndex candidate) const
{
    CandidateIndex const chosen = m_solution.best.candidates[m_position];
    bool const isChosen = chosen == candidate;
    CandidateIndex const rival =
        isChosen ? rivalOf(m_lattice, m_solution, m_position, candidate) : chosen;
    Told const here = told(candidate);
    if (m_lattice.candidates[m_position].size() == 1)
        return {
            character(here),
            base::said(
                "This is the only shape that can be played here, because the tune is too low "
                "or the hand has no time.")};
    Account const own = accountOf(candidate);
    Account const other = accountOf(rival);
    std::vector<Term> const better = termsByExcess(other, own);
    std::vector<Term> const worse = termsByExcess(own, other);
    std::vector<std::string> sentences;
    if (isChosen) {
        add(sentences, character(here));
        for (Term t : better) add(sentences, inFavour(t, here));
    } else {
        if (!worse.empty()) add(sentences, against(worse.front(), here));
        add(sentences, character(here));
        if (!better.empty()) add(sentences, inFavour(better.front(), here));
        for (Term t : worse) add(sentences, against(t, here));
    }
    return sentences;
}

std::vector<std::string> reasonsFor(Scene const& scene, Lattice const& lattice,
                                    Solution const& solution, arrange::PositionIndex position,
                                    CandidateIndex candidate)
{
    return ReasonsAt(scene, lattice, solution, position).of(candidate);
}

} // namespace explain
