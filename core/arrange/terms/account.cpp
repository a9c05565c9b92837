#include "core/arrange/terms.h"

#include <array>

namespace arrange {

namespace {

struct OneTerm {
    Term term;
    Points (*judge)(View const&, Laid const&);
};

constexpr std::array termsOfOne{
    OneTerm{Term::Reach, reach},         OneTerm{Term::Rate, rate},
    OneTerm{Term::ChordFit, chordFit},   OneTerm{Term::MelodyClash, melodyClash},
    OneTerm{Term::Collision, collision}, OneTerm{Term::Mud, mud},
    OneTerm{Term::MeterFit, meterFit},   OneTerm{Term::Cadence, cadence},
    OneTerm{Term::Liking, liking},
};

// Tells every term of a pair with its points, weights applied.
template<typename Tell>
void eachOfPair(Neighbours const& n, Laid const& before, Laid const& after, Points way,
                Points clash, Weights const& weights, Tell tell)
{
    bool const unplayable = way == unplayablePair || stringTooSoon(n, before, after);
    tell(Term::Travel, unplayable ? unplayablePair : weighted(way, weights, Term::Travel));
    tell(Term::RingClash, weighted(clash, weights, Term::RingClash));
    tell(Term::Variety, weighted(variety(n, before, after), weights, Term::Variety));
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
    eachOfPair(n, before, after, travel(n, end, start), ringClash(n, ringing, after), weights,
               [&](Term term, Points points) {
                   account[static_cast<std::size_t>(term)] = points;
               });
    return account;
}

Points pairCost(Neighbours const& n, Laid const& before, Laid const& after, Points way,
                Points clash, Weights const& weights)
{
    Points sum = 0;
    eachOfPair(n, before, after, way, clash, weights,
               [&](Term, Points points) { sum += points; });
    return sum;
}

} // namespace arrange
