#include "core/arrange/reasons.h"

#include "core/arrange/alike.h"
#include "core/arrange/build.h"
#include "core/arrange/telling.h"

#include <algorithm>

namespace arrange {

namespace {

constexpr std::size_t mostSentences = 3;
// Differences below this many thousandths are not worth a sentence.
constexpr Points worthSaying = 60;

Candidate const& candidateAt(Lattice const& lattice, int position, int candidate)
{
    return lattice
        .candidates[static_cast<std::size_t>(position)][static_cast<std::size_t>(candidate)];
}

// All that a candidate costs beside the best choice of its neighbours, by term.
Account accountInPlace(Scene const& scene, Lattice const& lattice, Choice const& best,
                       int position, int candidate)
{
    Account account = candidateAt(lattice, position, candidate).account;
    auto const add = [&](Account const& more) {
        for (std::size_t t = 0; t < termCount; ++t) account[t] += more[t];
    };
    auto const i = static_cast<std::size_t>(position);
    if (position > 0)
        add(pairAccount(scene, lattice, position - 1, best.candidates[i - 1], candidate));
    if (i + 1 < lattice.positions.size())
        add(pairAccount(scene, lattice, position, candidate, best.candidates[i + 1]));
    return account;
}

Told told(Scene const& scene, Lattice const& lattice, Choice const& best, int position,
          int candidate)
{
    auto const i = static_cast<std::size_t>(position);
    auto const voicedAt = [&](std::size_t at) {
        return &lattice.candidates[at][static_cast<std::size_t>(best.candidates[at])].voicing;
    };
    bool const first = i == 0;
    bool const last = i + 1 == lattice.positions.size();
    std::optional<int> like;
    std::optional<int> unlike;
    if (auto const answer = answered(lattice, position)) {
        Account const& account = candidateAt(lattice, position, candidate).account;
        bool const other = account[static_cast<std::size_t>(Term::Variety)] > 0;
        (other ? unlike : like) =
            lattice.positions[static_cast<std::size_t>(answer->position)].bar;
    }
    View view = viewOf(scene, lattice.positions[i], longestNote(scene.playing));
    Laid laid = laidAs(candidateAt(lattice, position, candidate).voicing, view);
    return {scene,
            lattice.positions[i],
            first ? nullptr : &lattice.positions[i - 1],
            last ? nullptr : &lattice.positions[i + 1],
            std::move(view),
            std::move(laid),
            first ? nullptr : voicedAt(i - 1),
            last ? nullptr : voicedAt(i + 1),
            like,
            unlike};
}

// The candidate with the least regret that is another shape than this one.
int rivalOf(Lattice const& lattice, Solution const& solution, int position, int candidate)
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

std::vector<std::string> reasonsFor(Scene const& scene, Lattice const& lattice,
                                    Solution const& solution, int position, int candidate)
{
    auto const i = static_cast<std::size_t>(position);
    int const chosen = solution.best.candidates[i];
    bool const isChosen = chosen == candidate;
    int const rival = isChosen ? rivalOf(lattice, solution, position, candidate) : chosen;
    Account const own = accountInPlace(scene, lattice, solution.best, position, candidate);
    Account const other = accountInPlace(scene, lattice, solution.best, position, rival);
    Told const here = told(scene, lattice, solution.best, position, candidate);

    std::vector<std::string> sentences;
    if (lattice.candidates[i].size() == 1)
        return {character(here),
                "This is the only shape that can be played here, because the tune is too low "
                "or the hand has no time."};
    std::vector<Term> const better = termsByExcess(other, own);
    std::vector<Term> const worse = termsByExcess(own, other);
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

} // namespace arrange
