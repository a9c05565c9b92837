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
    Points const way = stringTooSoon(n, before, after) ? unplayablePair : travel(n, end, start);
    Account account{};
    account[static_cast<std::size_t>(Term::Travel)] =
        way == unplayablePair ? way : weighted(way, weights, Term::Travel);
    account[static_cast<std::size_t>(Term::RingClash)] =
        weighted(ringClash(n, ringing, after), weights, Term::RingClash);
    account[static_cast<std::size_t>(Term::Variety)] =
        weighted(variety(n, before, after), weights, Term::Variety);
    return account;
}

} // namespace arrange
