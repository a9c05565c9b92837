#include "core/arrange/build.h"

#include "core/arrange/candidates.h"
#include "core/arrange/neighbours.h"
#include "core/arrange/terms.h"

#include <algorithm>
#include <deque>
#include <iterator>
#include <limits>
#include <numeric>

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

Candidates judged(std::vector<Laid> const& voicings, View const& view, Weights const& weights)
{
    Candidates candidates;
    candidates.reserve(static_cast<int>(voicings.size()));
    for (Laid const& laid : voicings) {
        Account const account = accountOf(view, laid, weights);
        candidates.push_back({laid.voicing, account, total(account)});
    }
    return candidates;
}

// So many shapes of a long tune are weighed at each chord, so that all its pairs fit in memory;
// of a tune of a thousand chords or less, every one.
std::size_t shapesWeighed(std::size_t positions)
{
    constexpr std::size_t everyShapeUpTo = 1000; // positions
    constexpr std::size_t inAll = 90'000;        // shapes
    if (positions <= everyShapeUpTo) return std::numeric_limits<std::size_t>::max();
    return std::max<std::size_t>(8, inAll / positions);
}

// The cheapest in themselves, in their order, and the rest, which stands last. A voicing for
// each candidate.
void keepCheapest(std::vector<Laid>& voicings, Candidates& candidates, std::size_t most)
{
    if (voicings.size() <= most) return;
    base::Indices<CandidateIndex> const all = candidates.indices();
    std::vector<CandidateIndex> order(all.begin(), all.end());
    order.pop_back();
    std::ranges::stable_sort(order, {}, [&](CandidateIndex i) { return candidates[i].cost; });
    order.resize(most - 1);
    std::ranges::sort(order);
    order.push_back(candidates.beyond() - 1);
    std::vector<Laid> keptVoicings;
    Candidates keptCandidates;
    for (CandidateIndex const i : order) {
        keptVoicings.push_back(std::move(voicings[static_cast<std::size_t>(i)]));
        keptCandidates.push_back(std::move(candidates[i]));
    }
    voicings = std::move(keptVoicings);
    candidates = std::move(keptCandidates);
}

// What can stand at one position, with the view it was made for. Positions that look alike
// share one: the same bar of a tune comes back many times.
struct Stock {
    View view;
    std::vector<Laid> voicings;
    CandidateList candidates;
};

class Stocks {
public:
    Stocks(Scene const& scene, std::size_t mostShapes)
        : m_scene(scene), m_figures(scene), m_longest(longestNote(scene.playing)),
          m_mostShapes(mostShapes)
    {}

    std::size_t mostShapes() const { return m_mostShapes; }

    // `scene` differs from that which was given in nothing but its levers.
    Stock const& at(Scene const& scene, Position const& position)
    {
        View view = viewOf(scene, position, m_longest);
        for (Stock const& known : m_stocks)
            if (known.view == view) return known;
        std::vector<Laid> voicings = playableVoicings(view, m_figures.of(view), m_scene.book);
        Candidates candidates = judged(voicings, view, m_scene.weights);
        keepCheapest(voicings, candidates, m_mostShapes);
        m_stocks.push_back({std::move(view), std::move(voicings), std::move(candidates)});
        return m_stocks.back();
    }

private:
    Scene const& m_scene;
    Figures m_figures;
    music::Length m_longest;
    std::size_t m_mostShapes;
    std::deque<Stock> m_stocks; // its elements stay where they are
};

// The tune that sounds on every pass of one is that of a pass of the other.
bool sameTune(std::vector<PassView> const& a, std::vector<PassView> const& b)
{
    return std::ranges::all_of(a, [&](PassView const& pass) {
        return std::ranges::any_of(
            b, [&](PassView const& other) { return pass.tune == other.tune; });
    });
}

// The same music at the same place of a bar, however the levers stand.
bool sameMusic(View const& a, View const& b)
{
    return a.chord == b.chord && a.meter == b.meter && a.fromBar == b.fromBar &&
           a.spanLength == b.spanLength && a.close == b.close && a.upbeat == b.upbeat &&
           a.turn == b.turn && sameTune(a.passes, b.passes) && sameTune(b.passes, a.passes);
}

// Voicings that are alike in what a term looks at. The term is asked once for each kind.
class Kinds {
public:
    template<typename Alike>
    Kinds(std::size_t count, Alike alike)
    {
        for (std::size_t i = 0; i < count; ++i) {
            std::size_t kind = 0;
            while (kind < m_examples.size() && !alike(i, m_examples[kind])) ++kind;
            if (kind == m_examples.size()) m_examples.push_back(i);
            m_of.push_back(kind);
        }
    }
    std::size_t of(std::size_t voicing) const { return m_of[voicing]; }
    std::vector<std::size_t> const& examples() const { return m_examples; }

private:
    std::vector<std::size_t> m_of;
    std::vector<std::size_t> m_examples; // the first voicing of each kind
};

Kinds alikeInPlace(std::vector<HandPlace> const& places)
{
    return {places.size(),
            [&](std::size_t a, std::size_t b) { return places[a] == places[b]; }};
}

bool sameStrings(Laid const& a, Laid const& b)
{
    return a.strings == b.strings &&
           std::ranges::equal(a.plucks, b.plucks, [](Pluck const& p, Pluck const& q) {
               return p.string == q.string && p.midi == q.midi;
           });
}

// Costs of all pairs of two positions, a row for each candidate of the first. The way of the
// hand depends on nothing but its two places, most other terms on nothing but the strings of
// the second: both are judged once for each kind.
std::vector<Points> pairCosts(Neighbours const& n, std::vector<Laid> const& before,
                              std::vector<Laid> const& after, Weights const& weights)
{
    std::vector<HandPlace> ends;
    for (Laid const& a : before) ends.push_back(handAtEnd(*n.before, a));
    std::vector<HandPlace> starts;
    for (Laid const& b : after) starts.push_back(handAtStart(*n.after, b));
    Kinds const endKinds = alikeInPlace(ends);
    Kinds const startKinds = alikeInPlace(starts);
    Kinds const stringKinds(after.size(), [&](std::size_t a, std::size_t b) {
        return sameStrings(after[a], after[b]);
    });

    std::vector<std::vector<Points>> ways;
    for (std::size_t end : endKinds.examples()) {
        ways.emplace_back();
        for (std::size_t start : startKinds.examples())
            ways.back().push_back(travel(n, ends[end], starts[start]));
    }
    std::vector<Points> costs;
    costs.reserve(before.size() * after.size());
    std::vector<Points> strings(stringKinds.examples().size());
    for (std::size_t a = 0; a < before.size(); ++a) {
        Ringing const ringing = ringingAfter(n, before[a]);
        for (std::size_t kind = 0; kind < strings.size(); ++kind)
            strings[kind] = stringsCost(n, before[a], ringing,
                                        after[stringKinds.examples()[kind]], weights);
        std::vector<Points> const& way = ways[endKinds.of(a)];
        for (std::size_t b = 0; b < after.size(); ++b)
            costs.push_back(pairCost(n, before[a], after[b], way[startKinds.of(b)],
                                     strings[stringKinds.of(b)], weights));
    }
    return costs;
}

// Pair tables by all that they depend on. Stocks are shared, so that neighbours which look
// alike have equal views, at one address.
class Tabled {
public:
    explicit Tabled(Weights const& weights) : m_weights(weights) {}

    PairTable const& of(Neighbours const& n, Stock const& before, Stock const& after)
    {
        for (Known const& known : m_known)
            if (known.neighbours == n) return known.table;
        m_known.push_back(
            {n,
             {pairCosts(n, before.voicings, after.voicings, m_weights), after.voicings.size()}});
        return m_known.back().table;
    }

private:
    struct Known {
        Neighbours neighbours;
        PairTable table;
    };
    Weights const& m_weights;
    std::vector<Known> m_known;
};

Laid laidCandidate(Lattice const& lattice, PositionIndex position, CandidateIndex candidate,
                   View const& view)
{
    return laidAs(lattice.candidates[position][candidate].voicing, view);
}

} // namespace

struct LatticeBuilder::Known {
    Known(Scene const& scene, std::size_t mostShapes)
        : stocks(scene, mostShapes), tabled(scene.weights)
    {}
    Stocks stocks;
    Tabled tabled;
};

LatticeBuilder::LatticeBuilder(Scene const& scene) : m_scene(scene) {}
LatticeBuilder::~LatticeBuilder() = default;

Lattice LatticeBuilder::lattice(harp::LeverTimeline const& levers, Positions positions)
{
    Scene const scene{m_scene.tune,    m_scene.playing, m_scene.harp,  m_scene.hand,
                      m_scene.level,   levers,          m_scene.tempo, m_scene.book,
                      m_scene.weights, m_scene.kind};
    std::size_t const most = shapesWeighed(static_cast<std::size_t>(positions.size()));
    if (!m_known || m_known->stocks.mostShapes() != most)
        m_known = std::make_unique<Known>(m_scene, most);
    base::List<PositionIndex, Stock const*> stockAt;
    Lattice lattice;
    for (Position const& p : positions) {
        stockAt.push_back(&m_known->stocks.at(scene, p));
        auto const first = std::ranges::find_if(stockAt, [&](Stock const* known) {
            return known == stockAt.back() || sameMusic(known->view, stockAt.back()->view);
        });
        lattice.like.push_back(stockAt.indexOf(first));
        lattice.candidates.push_back(stockAt.back()->candidates);
    }
    for (PositionIndex i = 0; i + 1 < positions.size(); ++i) {
        Stock const& before = *stockAt[i];
        Stock const& after = *stockAt[i + 1];
        Neighbours const n =
            neighboursOf(scene, positions[i], before.view, positions[i + 1], after.view);
        lattice.pairs.push_back(m_known->tabled.of(n, before, after));
    }
    lattice.locks.resize(positions.size());
    lattice.positions = std::move(positions);
    return lattice;
}

Lattice latticeFor(Scene const& scene, Positions positions)
{
    return LatticeBuilder(scene).lattice(scene.levers, std::move(positions));
}

Lattice joined(Scene const& scene, Lattice first, Lattice second)
{
    music::Length const longest = longestNote(scene.playing);
    View const before = viewOf(scene, first.positions.back(), longest);
    View const after = viewOf(scene, second.positions.front(), longest);
    auto const laidAll = [](CandidateList const& list, View const& view) {
        std::vector<Laid> out;
        for (Candidate const& candidate : list) out.push_back(laidAs(candidate.voicing, view));
        return out;
    };
    Neighbours const n =
        neighboursOf(scene, first.positions.back(), before, second.positions.front(), after);
    std::vector<Laid> const next = laidAll(second.candidates.front(), after);
    first.pairs.push_back(
        {pairCosts(n, laidAll(first.candidates.back(), before), next, scene.weights),
         next.size()});
    int const offset = first.positions.size();
    for (PositionIndex& like : second.like) like += offset;
    first.positions.append(std::move(second.positions));
    first.candidates.append(std::move(second.candidates));
    first.pairs.append(std::move(second.pairs));
    first.locks.append(std::move(second.locks));
    first.like.append(std::move(second.like));
    return first;
}

Account pairAccount(Scene const& scene, Lattice const& lattice, PositionIndex position,
                    CandidateIndex candidate, CandidateIndex nextCandidate)
{
    music::Length const longest = longestNote(scene.playing);
    Position const& before = lattice.positions[position];
    Position const& after = lattice.positions[position + 1];
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
