#include "core/learning/learn.h"

#include <algorithm>
#include <cmath>

namespace learning {

namespace {

using Factors = std::array<double, arrange::termCount>;

struct Settings {
    double prior = 1;     // standard deviation of the factors round 1
    double sharpness = 2; // a point of cost against the odds of being taken: e to this power
};

// From tight to loose, and from careless to sure.
constexpr std::array priors{0.2, 0.4, 0.7, 1.2};
constexpr std::array sharpnesses{1.0, 4.0, 16.0};
constexpr std::size_t mostLearnedFrom = 400; // the latest
constexpr int folds = 5;
constexpr std::size_t fewForFolds = 30; // up to so many, each choice is held back alone

// What guards the hand is never weighed less than the manner does, whatever is chosen; nothing
// else is quite forgotten.
double leastFactor(std::size_t term)
{
    switch (static_cast<arrange::Term>(term)) {
    case arrange::Term::Reach:
    case arrange::Term::Rate:
    case arrange::Term::Travel:
        return 1;
    default:
        return 0.2;
    }
}

Factors even()
{
    Factors factor;
    factor.fill(1);
    return factor;
}

double costOf(Offer const& offer, Factors const& factor)
{
    double cost = 0;
    for (std::size_t t = 0; t < factor.size(); ++t) cost += factor[t] * offer.judged[t];
    return cost;
}

// How the probabilities of one choice stand while a factor after the other is moved.
struct Odds {
    Choice const* choice = nullptr;
    std::vector<double> cost; // of each offer
};

// First and second derivative of the loss by one factor.
struct Slope {
    double first = 0;
    double second = 0;
};

Slope slopeOf(std::vector<Odds> const& all, std::size_t term, double sharpness)
{
    Slope slope;
    for (Odds const& odds : all) {
        auto const& offers = odds.choice->offers;
        double const least = *std::ranges::min_element(odds.cost);
        double sum = 0;
        double mean = 0;
        double square = 0;
        for (std::size_t o = 0; o < offers.size(); ++o) {
            double const weight = std::exp(sharpness * (least - odds.cost[o]));
            double const judged = offers[o].judged[term];
            sum += weight;
            mean += weight * judged;
            square += weight * judged * judged;
        }
        mean /= sum;
        slope.first += sharpness * (offers[odds.choice->taken].judged[term] - mean);
        slope.second += sharpness * sharpness * std::max(0.0, square / sum - mean * mean);
    }
    return slope;
}

double loss(std::vector<Odds> const& all, double sharpness)
{
    double sum = 0;
    for (Odds const& odds : all) {
        double const least = *std::ranges::min_element(odds.cost);
        double weights = 0;
        for (double const cost : odds.cost) weights += std::exp(sharpness * (least - cost));
        sum += sharpness * (odds.cost[odds.choice->taken] - least) + std::log(weights);
    }
    return sum;
}

std::vector<Odds> oddsOf(std::vector<Choice const*> const& choices, Factors const& factor)
{
    std::vector<Odds> all;
    for (Choice const* choice : choices) {
        Odds odds{choice, {}};
        for (Offer const& offer : choice->offers) odds.cost.push_back(costOf(offer, factor));
        all.push_back(std::move(odds));
    }
    return all;
}

struct Fit {
    Factors factor = even();
    Factors spread{};
};

// Newton's step for one factor after the other, until none moves: the loss is convex.
Fit fitted(std::vector<Choice const*> const& choices, Settings const& settings)
{
    Fit fit;
    std::vector<Odds> all = oddsOf(choices, fit.factor);
    double const tight = 1 / (settings.prior * settings.prior);
    constexpr int rounds = 60;
    constexpr double still = 1e-4;
    for (int round = 0; round < rounds; ++round) {
        double moved = 0;
        for (std::size_t t = 0; t < fit.factor.size(); ++t) {
            Slope const slope = slopeOf(all, t, settings.sharpness);
            double const second = slope.second + tight;
            fit.spread[t] = 1 / std::sqrt(second);
            constexpr double furthest = 0.5; // a step, as the loss is no parabola
            double const step = std::clamp(
                -(slope.first + tight * (fit.factor[t] - 1)) / second, -furthest, furthest);
            double const next = std::max(leastFactor(t), fit.factor[t] + step);
            double const by = next - fit.factor[t];
            if (by == 0) continue;
            fit.factor[t] = next;
            moved = std::max(moved, std::abs(by));
            for (Odds& odds : all)
                for (std::size_t o = 0; o < odds.cost.size(); ++o)
                    odds.cost[o] += by * odds.choice->offers[o].judged[t];
        }
        if (moved < still) break;
    }
    return fit;
}

struct Foretold {
    int right = 0;
    double loss = 0;
};

Foretold foretold(std::vector<Choice const*> const& choices, Factors const& factor,
                  double sharpness)
{
    Foretold out;
    for (Choice const* choice : choices) out.right += best(*choice, factor) == choice->taken;
    out.loss = loss(oddsOf(choices, factor), sharpness);
    return out;
}

// Each choice foretold by what the others teach.
Foretold crossed(std::vector<Choice const*> const& choices, Settings const& settings)
{
    Foretold sum;
    int const parts = choices.size() <= fewForFolds ? static_cast<int>(choices.size()) : folds;
    for (int fold = 0; fold < parts; ++fold) {
        std::vector<Choice const*> taught;
        std::vector<Choice const*> asked;
        for (std::size_t i = 0; i < choices.size(); ++i)
            (static_cast<int>(i) % parts == fold ? asked : taught).push_back(choices[i]);
        Foretold const here =
            foretold(asked, fitted(taught, settings).factor, settings.sharpness);
        sum.right += here.right;
        sum.loss += here.loss;
    }
    return sum;
}

} // namespace

std::size_t best(Choice const& choice, Factors const& factor)
{
    std::size_t least = 0;
    for (std::size_t o = 1; o < choice.offers.size(); ++o)
        if (costOf(choice.offers[o], factor) < costOf(choice.offers[least], factor)) least = o;
    return least;
}

std::vector<Choice> choicesFor(std::span<Choice const> choices, std::string_view manner,
                               int level)
{
    std::vector<Choice> out;
    for (Choice const& choice : choices)
        if (choice.manner == manner && choice.level == level) out.push_back(choice);
    if (out.size() > mostLearnedFrom)
        out.erase(out.begin(), out.end() - static_cast<std::ptrdiff_t>(mostLearnedFrom));
    return out;
}

Learned learnedFrom(std::span<Choice const> choices)
{
    Learned learned;
    learned.factor = even();
    learned.choices = static_cast<int>(choices.size());
    if (learned.choices < fewest) return learned;
    std::vector<Choice const*> all;
    for (Choice const& choice : choices) all.push_back(&choice);

    learned.heldBack = learned.choices;
    learned.asShipped = foretold(all, even(), 1).right;
    std::optional<Settings> settings;
    double least = 0;
    for (double const sharpness : sharpnesses) {
        // As if nothing were learned, for a loss to better.
        double const unlearned = foretold(all, even(), sharpness).loss;
        if (sharpness == sharpnesses.front() || unlearned < least) {
            least = unlearned;
            settings.reset();
        }
    }
    for (double const sharpness : sharpnesses)
        for (double const prior : priors) {
            Settings const tried{prior, sharpness};
            Foretold const found = crossed(all, tried);
            if (found.loss >= least || found.right < learned.asShipped) continue;
            least = found.loss;
            learned.asLearned = found.right;
            settings = tried;
        }
    learned.inUse = settings.has_value();
    Fit const fit = fitted(all, settings.value_or(Settings{}));
    learned.factor = fit.factor;
    learned.spread = fit.spread;
    if (!learned.inUse) {
        learned.asLearned = learned.asShipped;
        return learned;
    }
    for (std::size_t t = 0; t < learned.factor.size(); ++t)
        learned.leaning.byTerm[t] =
            static_cast<int>(std::lround(learned.factor[t] * arrange::Leaning::even));
    return learned;
}

} // namespace learning
