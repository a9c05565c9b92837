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
                             int candidate)
{
    return lattice
        .candidates[static_cast<std::size_t>(position)][static_cast<std::size_t>(candidate)];
}

// The candidate with the least regret that is another shape than this one.
int rivalOf(Lattice const& lattice, Solution const& solution, arrange::PositionIndex position,
            int candidate)
{
    std::vector<Points> const& regrets = solution.regrets[static_cast<std::size_t>(position)];
    std::string const& shape = candidateAt(lattice, position, candidate).voicing.pattern;
    int rival = candidate;
    for (std::size_t c = 0; c < regrets.size(); ++c) {
        int const other = static_cast<int>(c);
        if (candidateAt(lattice, position, other).voicing.pattern == shape) continue;
        if (rival == candidate || regrets[c] < regrets[static_cast<std::size_t>(rival)])
            rival = other;
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
    auto const i = static_cast<std::size_t>(position);
    music::Length const longest = longestNote(scene.playing);
    m_view = viewOf(scene, lattice.positions[i], longest);
    auto const beside = [&](arrange::PositionIndex there) {
        auto const at = static_cast<std::size_t>(there);
        View view = viewOf(scene, lattice.positions[at], longest);
        Laid laid =
            laidAs(candidateAt(lattice, there, solution.best.candidates[at]).voicing, view);
        return Beside{std::move(view), std::move(laid), {}};
    };
    // What joins points to the views, which stay where they are from here on.
    if (position > 0) {
        m_before = beside(position - 1);
        m_before->join = neighboursOf(scene, lattice.positions[i - 1], m_before->view,
                                      lattice.positions[i], m_view);
        m_handBefore = handAtEnd(m_before->view, m_before->laid);
        m_ringingBefore = ringingAfter(m_before->join, m_before->laid);
    }
    if (i + 1 < lattice.positions.size()) {
        m_after = beside(position + 1);
        m_after->join = neighboursOf(scene, lattice.positions[i], m_view,
                                     lattice.positions[i + 1], m_after->view);
        m_handAfter = handAtStart(m_after->view, m_after->laid);
    }
}

// All that a candidate costs beside the best choice of its neighbours, by term.
Account ReasonsAt::accountOf(int candidate) const
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

Told ReasonsAt::told(int candidate) const
{
    auto const i = static_cast<std::size_t>(m_position);
    auto const voicedAt = [&](std::size_t at) {
        auto const chosen = static_cast<std::size_t>(m_solution.best.candidates[at]);
        return &m_lattice.candidates[at][chosen].voicing;
    };
    std::optional<int> like;
    std::optional<int> unlike;
    if (auto const answer = answered(m_lattice, m_position)) {
        Account const& account = candidateAt(m_lattice, m_position, candidate).account;
        bool const other = account[static_cast<std::size_t>(Term::Variety)] > 0;
        (other ? unlike : like) = m_lattice.positions[answer->position].bar;
    }
    return {m_scene,
            m_lattice.positions[i],
            m_before ? &m_lattice.positions[i - 1] : nullptr,
            m_after ? &m_lattice.positions[i + 1] : nullptr,
            m_view,
            laidAs(candidateAt(m_lattice, m_position, candidate).voicing, m_view),
            m_before ? voicedAt(i - 1) : nullptr,
            m_after ? voicedAt(i + 1) : nullptr,
            like,
            unlike};
}

std::vector<std::string> ReasonsAt::of(int candidate) const
{
    auto const i = static_cast<std::size_t>(m_position);
    int const chosen = m_solution.best.candidates[i];
    bool const isChosen = chosen == candidate;
    int const rival = isChosen ? rivalOf(m_lattice, m_solution, m_position, candidate) : chosen;
    Told const here = told(candidate);
    if (m_lattice.candidates[i].size() == 1)
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
                                    int candidate)
{
    return ReasonsAt(scene, lattice, solution, position).of(candidate);
}

} // namespace explain
