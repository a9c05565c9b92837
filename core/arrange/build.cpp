#include "core/arrange/build.h"

#include "core/arrange/candidates.h"
#include "core/arrange/neighbours.h"
#include "core/arrange/terms.h"

#include <algorithm>

namespace arrange {

namespace {

// Figures by meter and span: positions of one kind share them.
class Figures {
public:
    explicit Figures(Scene const& scene) : m_scene(scene) {}

    std::vector<Figure> const& of(View const& view)
    {
        for (Known const& known : m_known)
            if (known.meter == view.meter && known.span == view.spanLength)
                return known.figures;
        m_known.push_back(
            {view.meter, view.spanLength,
             figuresFor(m_scene.book, m_scene.level, view.meter, view.spanLength)});
        return m_known.back().figures;
    }

private:
    struct Known {
        music::Meter meter;
        music::Length span;
        std::vector<Figure> figures;
    };
    Scene const& m_scene;
    std::vector<Known> m_known;
};

std::vector<Candidate> judged(std::vector<Laid> const& voicings, View const& view,
                              Weights const& weights)
{
    std::vector<Candidate> candidates;
    candidates.reserve(voicings.size());
    for (Laid const& laid : voicings) {
        Account const account = accountOf(view, laid, weights);
        candidates.push_back({laid.voicing, account, total(account)});
    }
    return candidates;
}

// Costs of all pairs of two positions, a row for each candidate of the first.
std::vector<Points> pairCosts(Neighbours const& n, std::vector<Laid> const& before,
                              std::vector<Laid> const& after, Weights const& weights)
{
    std::vector<HandPlace> starts;
    starts.reserve(after.size());
    for (Laid const& b : after) starts.push_back(handAtStart(*n.after, b));

    std::vector<Points> costs;
    costs.reserve(before.size() * after.size());
    for (Laid const& a : before) {
        HandPlace const end = handAtEnd(*n.before, a);
        Ringing const ringing = ringingAfter(n, a);
        for (std::size_t b = 0; b < after.size(); ++b)
            costs.push_back(
                total(pairAccount(n, a, end, ringing, after[b], starts[b], weights)));
    }
    return costs;
}

Laid laidCandidate(Lattice const& lattice, int position, int candidate, View const& view)
{
    return laidAs(
        lattice
            .candidates[static_cast<std::size_t>(position)][static_cast<std::size_t>(candidate)]
            .voicing,
        view);
}

} // namespace

Lattice latticeFor(Scene const& scene, std::vector<Position> positions)
{
    Figures figures(scene);
    music::Length const longest = longestNote(scene.playing);
    std::vector<View> views;
    std::vector<std::vector<Laid>> voicings;
    Lattice lattice;
    for (Position const& p : positions) {
        views.push_back(viewOf(scene, p, longest));
        voicings.push_back(
            playableVoicings(views.back(), figures.of(views.back()), scene.book));
        lattice.candidates.push_back(judged(voicings.back(), views.back(), scene.weights));
    }
    for (std::size_t i = 0; i + 1 < positions.size(); ++i) {
        Neighbours const n =
            neighboursOf(scene, positions[i], views[i], positions[i + 1], views[i + 1]);
        lattice.pairs.push_back(pairCosts(n, voicings[i], voicings[i + 1], scene.weights));
    }
    lattice.locks.resize(positions.size());
    lattice.positions = std::move(positions);
    return lattice;
}

Account pairAccount(Scene const& scene, Lattice const& lattice, int position, int candidate,
                    int nextCandidate)
{
    music::Length const longest = longestNote(scene.playing);
    Position const& before = lattice.positions[static_cast<std::size_t>(position)];
    Position const& after = lattice.positions[static_cast<std::size_t>(position) + 1];
    View const viewBefore = viewOf(scene, before, longest);
    View const viewAfter = viewOf(scene, after, longest);
    Neighbours const n = neighboursOf(scene, before, viewBefore, after, viewAfter);
    Laid const a = laidCandidate(lattice, position, candidate, viewBefore);
    Laid const b = laidCandidate(lattice, position + 1, nextCandidate, viewAfter);
    return pairAccount(n, a, handAtEnd(viewBefore, a), ringingAfter(n, a), b,
                       handAtStart(viewAfter, b), scene.weights);
}

bool playableInTurn(Scene const& scene, Position const& before, Voicing const& first,
                    Position const& after, Voicing const& second)
{
    music::Length const longest = longestNote(scene.playing);
    View const viewBefore = viewOf(scene, before, longest);
    View const viewAfter = viewOf(scene, after, longest);
    Neighbours const n = neighboursOf(scene, before, viewBefore, after, viewAfter);
    Laid const a = laidAs(first, viewBefore);
    Laid const b = laidAs(second, viewAfter);
    return !stringTooSoon(n, a, b) &&
           travel(n, handAtEnd(viewBefore, a), handAtStart(viewAfter, b)) < unplayablePair;
}

} // namespace arrange
