#include "core/harmony/chain.h"

#include <algorithm>
#include <cmath>

namespace harmony {

namespace {

// log(1 + e^-d) for d = 0, 1/nat, 2/nat ... until it rounds to nothing.
std::vector<int> const& sumTable()
{
    static std::vector<int> const table = [] {
        std::vector<int> values;
        for (int d = 0;; ++d) {
            double const sum = std::log1p(std::exp(-static_cast<double>(d) / nat));
            values.push_back(static_cast<int>(std::lround(sum * nat)));
            if (values.back() == 0) return values;
        }
    }();
    return table;
}

using Logs = std::vector<int>;

} // namespace

int logSum(int a, int b)
{
    auto const& table = sumTable();
    auto const apart = static_cast<std::size_t>(std::abs(a - b));
    return std::max(a, b) + (apart < table.size() ? table[apart] : 0);
}

void normalise(std::vector<int>& logs)
{
    int sum = logs.front();
    for (std::size_t i = 1; i < logs.size(); ++i) sum = logSum(sum, logs[i]);
    for (int& log : logs) log -= sum;
}

double probability(int log) { return std::exp(static_cast<double>(log) / nat); }

std::vector<std::vector<int>> logLikelihoods(Chain const& chain)
{
    std::size_t const n = chain.own.size();
    std::size_t const states = chain.states;
    std::vector<Logs> forward = chain.own;
    std::vector<Logs> backward(n, Logs(states, 0));
    for (std::size_t t = 1; t < n; ++t) {
        Logs const& steps = chain.steps[static_cast<std::size_t>(chain.places[t])];
        for (std::size_t to = 0; to < states; ++to) {
            int sum = forward[t - 1][0] + steps[to];
            for (std::size_t from = 1; from < states; ++from)
                sum = logSum(sum, forward[t - 1][from] + steps[from * states + to]);
            forward[t][to] += sum;
        }
        normalise(forward[t]);
    }
    for (std::size_t t = n; t-- > 1;) {
        Logs const& steps = chain.steps[static_cast<std::size_t>(chain.places[t])];
        Logs ahead(states);
        for (std::size_t to = 0; to < states; ++to)
            ahead[to] = backward[t][to] + chain.own[t][to];
        for (std::size_t from = 0; from < states; ++from) {
            int sum = ahead[0] + steps[from * states];
            for (std::size_t to = 1; to < states; ++to)
                sum = logSum(sum, ahead[to] + steps[from * states + to]);
            backward[t - 1][from] = sum;
        }
        normalise(backward[t - 1]);
    }
    for (std::size_t t = 0; t < n; ++t) {
        for (std::size_t s = 0; s < states; ++s) forward[t][s] += backward[t][s];
        normalise(forward[t]);
    }
    return forward;
}

Chain chainOf(ChordTable const& table, std::vector<Unit> const& units,
              std::vector<Heard> const& heard)
{
    std::size_t const states = table.degrees.size();
    Chain chain;
    chain.states = states;
    for (std::size_t t = 0; t < units.size(); ++t) {
        std::vector<long> sums(states, 0);
        for (Feature const& feature : heard[t])
            for (std::size_t s = 0; s < states; ++s)
                sums[s] += static_cast<long>(table.weight(feature.index, s)) * feature.value;
        Logs own(states);
        // From 1/(weightOne * featureOne) nats; the sum of many small ones is rounded once.
        constexpr long scale = weightOne * featureOne / nat;
        for (std::size_t s = 0; s < states; ++s)
            own[s] = static_cast<int>((sums[s] + (sums[s] >= 0 ? scale / 2 : -scale / 2)) / scale);
        chain.own.push_back(std::move(own));
        chain.places.push_back(phrasePlace(units[t]));
    }
    for (int place = 0; place < phrasePlaces; ++place) {
        Logs steps(states * states);
        for (std::size_t from = 0; from < states; ++from)
            for (std::size_t to = 0; to < states; ++to)
                steps[from * states + to] =
                    table.transition(place, from, to) * (nat / weightOne);
        chain.steps.push_back(std::move(steps));
    }
    return chain;
}

} // namespace harmony
