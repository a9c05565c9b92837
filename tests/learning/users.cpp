#include "tests/learning/users.h"

#include <array>
#include <cmath>

namespace users {

namespace {

// Those that what is learned may weigh less, too.
constexpr std::array termsInPlay{2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 15, 16};
constexpr std::size_t offered = 8;
constexpr double speaks = 0.3; // a term has something to say
constexpr double most = 2;     // points

} // namespace

User user(std::mt19937& random, double careless)
{
    std::normal_distribution<double> spread(0, 0.7);
    User out;
    out.own.fill(1);
    out.careless = careless;
    for (int const t : termsInPlay)
        out.own[static_cast<std::size_t>(t)] = std::exp(spread(random));
    return out;
}

learning::Choice choice(std::mt19937& random, User const& user)
{
    std::uniform_real_distribution<double> share(0, 1);
    learning::Choice out;
    out.manner = "plain";
    out.level = 3;
    out.kind = "jig";
    for (std::size_t o = 0; o < offered; ++o) {
        learning::Offer offer{"shape", {}};
        for (int const t : termsInPlay)
            if (share(random) < speaks)
                offer.judged[static_cast<std::size_t>(t)] = most * share(random);
        out.offers.push_back(offer);
    }
    std::array<double, arrange::termCount> shipped;
    shipped.fill(1);
    out.proposed = learning::best(out, shipped);
    out.taken = learning::best(out, user.own);
    if (share(random) < user.careless)
        out.taken = std::uniform_int_distribution<std::size_t>(0, offered - 1)(random);
    return out;
}

} // namespace users
