#include "core/harmony/chain.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <random>

using namespace harmony;

namespace {

// Every row of states in turn, in floating point.
std::vector<std::vector<double>> byTryingAll(Chain const& chain)
{
    std::size_t const n = chain.own.size();
    std::vector<std::vector<double>> sums(n, std::vector<double>(chain.states, 0));
    std::vector<std::size_t> row(n, 0);
    double all = 0;
    for (;;) {
        double log = 0;
        for (std::size_t t = 0; t < n; ++t) {
            log += chain.own[t][row[t]];
            if (t > 0)
                log += chain.steps[static_cast<std::size_t>(chain.places[t])]
                                  [row[t - 1] * chain.states + row[t]];
        }
        double const p = std::exp(log / nat);
        all += p;
        for (std::size_t t = 0; t < n; ++t) sums[t][row[t]] += p;
        std::size_t t = 0;
        while (t < n && ++row[t] == chain.states) row[t++] = 0;
        if (t == n) break;
    }
    for (auto& units : sums)
        for (double& p : units) p /= all;
    return sums;
}

} // namespace

TEST_CASE("Likelihoods are those of trying every row of chords", "[chain]")
{
    std::mt19937 random(20240611); // fixed, so that a failure can be seen again
    std::uniform_int_distribution<int> weight(-3 * nat, 3 * nat);
    for (int round = 0; round < 20; ++round) {
        Chain chain;
        chain.states = 4;
        for (std::size_t t = 0; t < 5; ++t) {
            chain.own.emplace_back();
            for (std::size_t s = 0; s < chain.states; ++s)
                chain.own.back().push_back(weight(random));
            chain.places.push_back(static_cast<int>(t % 2));
        }
        for (int place = 0; place < 2; ++place) {
            chain.steps.emplace_back();
            for (std::size_t i = 0; i < 16; ++i) chain.steps.back().push_back(weight(random));
        }
        if (round % 3 == 0) chain.own[2] = {impossible, 0, impossible, impossible}; // clamped
        auto const expected = byTryingAll(chain);
        auto const found = logLikelihoods(chain);
        for (std::size_t t = 0; t < 5; ++t)
            for (std::size_t s = 0; s < 4; ++s)
                CHECK(probability(found[t][s]) == Approx(expected[t][s]).margin(0.01));
    }
}

TEST_CASE("Logarithms add as numbers do", "[chain]")
{
    for (int a : {-5000, -100, 0, 700})
        for (int b : {-9000, -100, 3, 700})
            CHECK(probability(logSum(a, b)) ==
                  Approx(probability(a) + probability(b)).epsilon(0.002));
}
