#include "core/arrange/alike.h"

#include "core/arrange/solve.h"
#include "core/arrange/terms.h"

#include <algorithm>

namespace arrange {

namespace {

bool looksLike(Lattice const& lattice, PositionIndex a, PositionIndex b)
{
    return lattice.like.holds(a) && lattice.like.holds(b) && lattice.like[a] == lattice.like[b];
}

tune::BarIndex barOf(Lattice const& lattice, PositionIndex position)
{
    return lattice.positions[position].bar;
}

// Bars that the like positions round two like ones touch.
int barsAlike(Lattice const& lattice, PositionIndex early, PositionIndex late)
{
    PositionIndex first = late;
    while (looksLike(lattice, first - 1, early - (late - first) - 1)) --first;
    PositionIndex last = late;
    while (looksLike(lattice, last + 1, early + (last - late) + 1)) ++last;
    return barOf(lattice, last) - barOf(lattice, first) + 1;
}

bool sameFigure(Voicing const& a, Voicing const& b)
{
    return a.pattern == b.pattern && a.rhythm == b.rhythm && a.rootString == b.rootString &&
           a.rolled == b.rolled;
}

// The candidate that plays what another position does; none where the levers do not give it.
std::optional<CandidateIndex> playingLike(CandidateList const& list, Voicing const& voicing)
{
    for (CandidateIndex const c : list.indices())
        if (sameFigure(list[c].voicing, voicing)) return c;
    return std::nullopt;
}

} // namespace

std::optional<Answer> answered(Lattice const& lattice, PositionIndex position)
{
    std::optional<Answer> best;
    for (PositionIndex early = 0; early < position; ++early) {
        if (!looksLike(lattice, early, position)) continue;
        int const bars = barsAlike(lattice, early, position);
        if (!best || bars > best->bars) best = Answer{early, bars};
    }
    return best;
}

void drawLikeTogether(Lattice& lattice, Scene const& scene)
{
    Taste::Variety const& taste = scene.weights.taste.variety;
    auto const level = static_cast<std::size_t>(scene.level.number - 1);
    if (taste.unlikePhrase[level] == 0 && taste.unlikeBar[level] == 0) return;
    base::List<PositionIndex, std::optional<Answer>> answers;
    for (PositionIndex const i : lattice.positions.indices())
        answers.push_back(answered(lattice, i));
    if (std::none_of(answers.begin(), answers.end(), [](auto const& a) { return a.has_value(); }))
        return;
    auto wanted = solved(lattice).best.candidates;
    for (PositionIndex const i : answers.indices()) {
        if (!answers[i]) continue;
        PositionIndex const early = answers[i]->position;
        Voicing const& there = lattice.candidates[early][wanted[early]].voicing;
        std::optional<CandidateIndex> const like = playingLike(lattice.candidates[i], there);
        if (!like) continue;
        wanted[i] = *like;
        bool const phrase = answers[i]->bars > 1;
        Points const unlike =
            weighted(phrase ? taste.unlikePhrase[level] : taste.unlikeBar[level],
                     scene.weights, Term::Variety);
        Candidates list = lattice.candidates[i].copy();
        for (CandidateIndex const c : list.indices()) {
            if (c == wanted[i]) continue;
            Candidate& candidate = list[c];
            candidate.account[static_cast<std::size_t>(Term::Variety)] += unlike;
            candidate.cost += unlike;
        }
        lattice.candidates[i] = std::move(list);
    }
}

} // namespace arrange
