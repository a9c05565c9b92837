#include "core/arrange/terms.h"

#include <array>

namespace arrange {

namespace {

struct OneTerm {
    Term term;
    Points (*judge)(View const&, Laid const&);
};

constexpr std::array termsOfOne{
#define TERM(Name, judge) OneTerm{Term::Name, judge},
#define PAIR_TERM(Name)
#include "core/arrange/terms.def"
};

Points wayCost(Neighbours const& n, Laid const& before, Laid const& after, Points way,
               Weights const& weights)
{
    bool const unplayable = way == unplayablePair || stringTooSoon(n, before, after);
    return unplayable ? unplayablePair : weighted(way, weights, Term::Travel);
}

// Tells the terms of stringsCost, weights applied.
template<typename Tell>
void eachOfStrings(Neighbours const& n, Laid const& before, Ringing const& ringing,
                   Laid const& after, Weights const& weights, Tell tell)
{
    auto const judge = [&](Term term, Points raw) { tell(term, weighted(raw, weights, term)); };
    judge(Term::Link, link(n, ringing, before, after));
    judge(Term::RingClash, ringClash(n, ringing, after));
    judge(Term::ThumbLine, thumbLine(n, before, after));
    judge(Term::BassLine, bassLine(n, before, after));
}

} // namespace

Points weighted(Points raw, Weights const& weights, Term term)
{
    return raw * weights.byTerm[static_cast<std::size_t>(term)] / 1000;
}

Account accountOf(View const& view, Laid const& laid, Weights const& weights)
{
    Account account{};
    for (OneTerm const& t : termsOfOne)
        account[static_cast<std::size_t>(t.term)] =
            weighted(t.judge(view, laid), weights, t.term);
    return account;
}

Account pairAccount(Neighbours const& n, Laid const& before, HandPlace const& end,
                    Ringing const& ringing, Laid const& after, HandPlace const& start,
                    Weights const& weights)
{
    Account account{};
    auto const tell = [&](Term term, Points points) {
        account[static_cast<std::size_t>(term)] = points;
    };
    Points const way = wayCost(n, before, after, travel(n, end, start), weights);
    tell(Term::Travel, way);
    if (way == unplayablePair) return account; // nothing else matters
    eachOfStrings(n, before, ringing, after, weights, tell);
    tell(Term::Variety, weighted(variety(n, before, after), weights, Term::Variety));
    return account;
}

Points stringsCost(Neighbours const& n, Laid const& before, Ringing const& ringing,
                   Laid const& after, Weights const& weights)
{
    Points sum = 0;
    eachOfStrings(n, before, ringing, after, weights,
                  [&](Term, Points points) { sum += points; });
    return sum;
}

Points pairCost(Neighbours const& n, Laid const& before, Laid const& after, Points way,
                Points strings, Weights const& weights)
{
    Points const cost = wayCost(n, before, after, way, weights);
    if (cost == unplayablePair) return cost;
    return cost + strings + weighted(variety(n, before, after), weights, Term::Variety);
}

} // namespace arrange
