// Learns the numbers of shared/chordtable.json from folk tunes with chords, and measures them.
//
//     learn_chords FOLDER -o TABLE      all tunes of the folder's .abc files
//     learn_chords FOLDER --folds 5     cross-validation by tune; variants share a fold
//     learn_chords FOLDER --by-book     each file measured by what the others teach
//
// A linear-chain conditional random field, trained by maximum likelihood with Gaussian priors
// (Lafferty, McCallum and Pereira 2001). The numbers that ship are the learned ones rounded;
// what is measured is what ships, by the program's own inference.

#include "core/harmony/chain.h"
#include "core/harmony/findchords.h"
#include "core/tune/playing.h"
#include "tests/training/examples.h"

#include <lbfgs.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <map>
#include <numeric>
#include <set>
#include <string>
#include <vector>

using namespace harmony;

namespace {

constexpr int unlabelled = -1; // before the first chord
constexpr int outside = -2;    // a chord that is none of the states

struct Example {
    std::string book;
    std::string group; // variants of one tune share it
    tune::Tune tune;
    std::vector<Unit> units;
    Frames frames;
    std::vector<Heard> heard;
    std::vector<std::optional<Degree>> written; // none: unlabelled or no triad
    std::vector<int> labels;
    bool minor = false;
    std::string meter;
};

// The chord that lasts longest in a unit.
std::vector<std::optional<Degree>> writtenChords(Example const& example)
{
    auto const spans = tune::chordSpans(example.tune);
    std::vector<std::optional<Degree>> out;
    for (Unit const& unit : example.units) {
        std::optional<Degree> best;
        music::Length longest;
        for (tune::ChordSpan const& span : spans) {
            if (span.bar != unit.bar || (span.pass && *span.pass != 1)) continue;
            auto const from = std::max(span.at, unit.at);
            auto const to = std::min(span.at + span.length, unit.at + unit.length);
            if (to <= from || to - from <= longest) continue;
            longest = to - from;
            auto const& frame = example.frames[unit.bar];
            best = degreeOf(span.chord, frame.tonic);
        }
        out.push_back(best);
    }
    return out;
}

std::vector<Example> examplesIn(std::filesystem::path const& folder)
{
    std::vector<Example> examples;
    training::Openings openings;
    training::eachTune(folder, [&](std::filesystem::path const& file, tune::Tune tune) {
        if (!tune::hasChords(tune)) return;
        Example e;
        e.book = file.stem().string();
        e.tune = std::move(tune);
        e.units = unitsOf(e.tune);
        e.frames = framesOf(e.tune);
        e.heard = heard(e.tune, e.units, e.frames);
        e.written = writtenChords(e);
        e.minor = e.tune.key.mode == music::Mode::Aeolian;
        e.meter = music::text(e.tune.meter);
        int const tonic = e.frames.front().tonic;
        training::add(examples, openings, std::move(e), tonic);
    });
    return examples;
}

// Chords that stand often enough to be learned.
std::vector<Degree> statesOf(std::vector<Example> const& examples, int atLeast)
{
    std::map<std::string, int> counts;
    for (Example const& e : examples)
        for (auto const& degree : e.written)
            if (degree) ++counts[text(*degree)];
    std::vector<std::pair<int, std::string>> order;
    for (auto const& [name, count] : counts)
        if (count >= atLeast) order.emplace_back(-count, name);
    std::sort(order.begin(), order.end());
    std::vector<Degree> states;
    for (auto const& [count, name] : order) states.push_back(*degreeFrom(name));
    return states;
}

void label(std::vector<Example>& examples, std::vector<Degree> const& states)
{
    for (Example& e : examples) {
        e.labels.clear();
        for (auto const& degree : e.written) {
            if (!degree) {
                e.labels.push_back(unlabelled);
                continue;
            }
            auto const at = std::find(states.begin(), states.end(), *degree);
            e.labels.push_back(at == states.end() ? outside
                                                  : static_cast<int>(at - states.begin()));
        }
    }
}

// The parameters and how they make up the weights that are used.
class Model {
public:
    explicit Model(std::vector<Degree> states)
        : m_states(std::move(states)), S(m_states.size()), free(0),
          tied(featureCount * S), first(tied + histogramCount * 36), later(first + 2 * S * S),
          steps(later + phrasePlaces * S * S), count(steps + 2 * 12 * 9)
    {}

    std::vector<Degree> const& states() const { return m_states; }

    // Index of a histogram's weight relative to the root.
    std::size_t tiedIndex(std::size_t feature, std::size_t s) const
    {
        Degree const degree = m_states[s];
        std::size_t const fromRoot =
            (feature % 12 + 12 - static_cast<std::size_t>(degree.semitones)) % 12;
        return tied + (feature / 12 * 12 + fromRoot) * 3 +
               static_cast<std::size_t>(degree.quality);
    }
    std::size_t stepIndex(std::size_t place, std::size_t from, std::size_t to) const
    {
        Degree const a = m_states[from];
        Degree const b = m_states[to];
        auto const step = static_cast<std::size_t>((b.semitones - a.semitones + 12) % 12);
        return steps + ((place * 12 + step) * 3 + static_cast<std::size_t>(a.quality)) * 3 +
               static_cast<std::size_t>(b.quality);
    }

    template<typename Visit>
    void eachWeight(Visit visit) const
    {
        constexpr std::size_t histograms = histogramCount * 12;
        for (std::size_t f = 0; f < featureCount; ++f)
            for (std::size_t s = 0; s < S; ++s)
                visit(f * S + s, free + f * S + s,
                      f < histograms ? std::optional(tiedIndex(f, s)) : std::nullopt);
    }
    template<typename Visit>
    void eachStep(Visit visit) const
    {
        for (std::size_t p = 0; p < phrasePlaces; ++p)
            for (std::size_t a = 0; a < S; ++a)
                for (std::size_t b = 0; b < S; ++b)
                    visit((p * S + a) * S + b, first + (p % 2 * S + a) * S + b,
                          later + (p * S + a) * S + b, stepIndex(p % 2, a, b));
    }

    // Half the precision of each parameter's prior.
    double prior(std::size_t i) const
    {
        if (i < tied) return freeWeight / 2;
        if (i < first) return tiedWeight / 2;
        return i < steps ? freeStep / 2 : tiedWeight / 2;
    }

    static constexpr double freeWeight = 30;
    static constexpr double freeStep = 8;
    static constexpr double tiedWeight = 1;

private:
    std::vector<Degree> m_states;

public:
    std::size_t S;
    std::size_t free, tied, first, later, steps, count;
};

using Doubles = std::vector<double>;

struct Effective {
    Doubles weights; // [feature][state]
    Doubles steps;   // [place][from][to]
};

Effective effective(Model const& model, double const* x)
{
    Effective e{Doubles(featureCount * model.S), Doubles(phrasePlaces * model.S * model.S)};
    model.eachWeight([&](std::size_t i, std::size_t f, std::optional<std::size_t> t) {
        e.weights[i] = x[f] + (t ? x[*t] : 0);
    });
    model.eachStep([&](std::size_t i, std::size_t a, std::size_t b, std::size_t c) {
        e.steps[i] = x[a] + x[b] + x[c];
    });
    return e;
}

// Sums of one tune: log of the sum over all chord rows that the mask lets through, and, added
// with a sign, how often each feature and step is expected.
class Sums {
public:
    Sums(Model const& model, Effective const& e) : m_model(model), m_e(e), m_exp(e.steps.size())
    {
        for (std::size_t i = 0; i < m_exp.size(); ++i) m_exp[i] = std::exp(e.steps[i]);
    }

    double of(Example const& example, bool masked, double sign, Effective& gradient)
    {
        std::size_t const S = m_model.S;
        std::size_t const n = example.units.size();
        m_own.assign(n * S, 0);
        m_forward.assign(n * S, 0);
        m_backward.assign(n * S, 0);
        double total = 0;
        for (std::size_t t = 0; t < n; ++t) {
            double* own = &m_own[t * S];
            for (Feature const& f : example.heard[t]) {
                double const value = static_cast<double>(f.value) / featureOne;
                double const* w = &m_e.weights[static_cast<std::size_t>(f.index) * S];
                for (std::size_t s = 0; s < S; ++s) own[s] += value * w[s];
            }
            double const most = *std::max_element(own, own + S);
            total += most;
            for (std::size_t s = 0; s < S; ++s) {
                bool const let = !masked || example.labels[t] < 0 ||
                                 example.labels[t] == static_cast<int>(s);
                own[s] = let ? std::exp(own[s] - most) : 0;
            }
        }
        for (std::size_t t = 0; t < n; ++t) {
            double* now = &m_forward[t * S];
            if (t == 0) {
                std::copy_n(&m_own[0], S, now);
            } else {
                double const* step = stepsInto(example, t);
                double const* before = now - S;
                for (std::size_t a = 0; a < S; ++a) {
                    if (before[a] == 0) continue;
                    for (std::size_t b = 0; b < S; ++b) now[b] += before[a] * step[a * S + b];
                }
                for (std::size_t b = 0; b < S; ++b) now[b] *= m_own[t * S + b];
            }
            double const sum = std::accumulate(now, now + S, 0.0);
            total += std::log(sum);
            for (std::size_t s = 0; s < S; ++s) now[s] /= sum;
        }
        std::fill_n(&m_backward[(n - 1) * S], S, 1.0);
        Doubles ahead(S);
        for (std::size_t t = n; t-- > 1;) {
            double const* step = stepsInto(example, t);
            for (std::size_t b = 0; b < S; ++b)
                ahead[b] = m_backward[t * S + b] * m_own[t * S + b];
            double* before = &m_backward[(t - 1) * S];
            for (std::size_t a = 0; a < S; ++a)
                for (std::size_t b = 0; b < S; ++b) before[a] += step[a * S + b] * ahead[b];
            double pairs = 0;
            double const* from = &m_forward[(t - 1) * S];
            for (std::size_t a = 0; a < S; ++a) pairs += from[a] * before[a];
            double* counts =
                &gradient.steps[static_cast<std::size_t>(phrasePlace(example.units[t])) * S * S];
            for (std::size_t a = 0; a < S; ++a)
                for (std::size_t b = 0; b < S; ++b)
                    counts[a * S + b] +=
                        sign * from[a] * step[a * S + b] * ahead[b] / pairs;
            double const sum = std::accumulate(before, before + S, 0.0);
            for (std::size_t a = 0; a < S; ++a) before[a] /= sum;
        }
        for (std::size_t t = 0; t < n; ++t) {
            double sum = 0;
            for (std::size_t s = 0; s < S; ++s) {
                ahead[s] = m_forward[t * S + s] * m_backward[t * S + s];
                sum += ahead[s];
            }
            for (double& share : ahead) share *= sign / sum;
            for (Feature const& f : example.heard[t]) {
                double const value = static_cast<double>(f.value) / featureOne;
                double* g = &gradient.weights[static_cast<std::size_t>(f.index) * S];
                for (std::size_t s = 0; s < S; ++s) g[s] += value * ahead[s];
            }
        }
        return total;
    }

private:
    double const* stepsInto(Example const& example, std::size_t t) const
    {
        std::size_t const S = m_model.S;
        return &m_exp[static_cast<std::size_t>(phrasePlace(example.units[t])) * S * S];
    }

    Model const& m_model;
    Effective const& m_e;
    Doubles m_exp, m_own, m_forward, m_backward;
};

struct Task {
    Model const& model;
    std::vector<Example const*> examples;
};

// Minus the log likelihood, with the priors.
lbfgsfloatval_t evaluate(void* instance, lbfgsfloatval_t const* x, lbfgsfloatval_t* g,
                         int const n, lbfgsfloatval_t const)
{
    Task const& task = *static_cast<Task*>(instance);
    Model const& model = task.model;
    Effective const e = effective(model, x);
    Effective gradient{Doubles(e.weights.size()), Doubles(e.steps.size())};
    Sums sums(model, e);
    double loss = 0;
    for (Example const* example : task.examples) {
        loss += sums.of(*example, false, 1, gradient);
        loss -= sums.of(*example, true, -1, gradient);
    }
    for (int i = 0; i < n; ++i) {
        auto const at = static_cast<std::size_t>(i);
        g[i] = 2 * model.prior(at) * x[i];
        loss += model.prior(at) * x[i] * x[i];
    }
    model.eachWeight([&](std::size_t i, std::size_t f, std::optional<std::size_t> t) {
        g[f] += gradient.weights[i];
        if (t) g[*t] += gradient.weights[i];
    });
    model.eachStep([&](std::size_t i, std::size_t a, std::size_t b, std::size_t c) {
        g[a] += gradient.steps[i];
        g[b] += gradient.steps[i];
        g[c] += gradient.steps[i];
    });
    return loss;
}

std::int16_t rounded(double weight)
{
    return static_cast<std::int16_t>(std::lround(weight * weightOne));
}

ChordTable learned(Model const& model, std::vector<Example const*> examples)
{
    Task task{model, std::move(examples)};
    lbfgs_parameter_t parameters;
    lbfgs_parameter_init(&parameters);
    parameters.max_iterations = 60;
    parameters.m = 8;
    lbfgsfloatval_t* x = lbfgs_malloc(static_cast<int>(model.count));
    std::fill_n(x, model.count, 0.0);
    double loss = 0;
    int const status = lbfgs(static_cast<int>(model.count), x, &loss, evaluate, nullptr, &task,
                             &parameters);
    std::fprintf(stderr, "%zu tunes, loss %.1f, status %d\n", task.examples.size(), loss, status);
    Effective const e = effective(model, x);
    lbfgs_free(x);
    ChordTable table{model.states(), {}, {}};
    for (double w : e.weights) table.weights.push_back(rounded(w));
    for (double w : e.steps) table.transitions.push_back(rounded(w));
    return table;
}

// What is counted of how well chords are found.
struct Tally {
    int units = 0;
    int right = 0;
    int chosen = 0; // by the usual way, all its rules considered
    int three = 0;
    int bars = 0;
    int barsRight = 0;
};

struct Measured {
    std::map<std::string, Tally> by;
    struct Bin {
        int count = 0;
        int right = 0;
        double stated = 0;
    };
    std::array<Bin, 20> bins;
    std::vector<double> byTune; // share right

    void measure(Example const& e, ChordTable const& table)
    {
        auto const likely = likelihoods(table, e.tune, e.units, e.heard);
        std::map<int, std::pair<bool, bool>> bars; // all right, any labelled
        auto const usual = usualDegrees(table, e.tune);
        Tally tally;
        for (std::size_t t = 0; t < e.units.size(); ++t) {
            if (e.labels[t] == unlabelled) continue;
            auto const& logs = likely[t];
            std::vector<std::size_t> order(logs.size());
            std::iota(order.begin(), order.end(), std::size_t{0});
            std::stable_sort(order.begin(), order.end(),
                             [&](std::size_t a, std::size_t b) { return logs[a] > logs[b]; });
            auto const is = [&](std::size_t rank) {
                return static_cast<int>(order[rank]) == e.labels[t];
            };
            bool const right = is(0);
            ++tally.units;
            tally.right += right;
            tally.chosen += usual[t] == e.written[t];
            tally.three += right || is(1) || is(2);
            auto& bar = bars.emplace(e.units[t].bar, std::pair{true, true}).first->second;
            bar.first = bar.first && right;
            double const stated = probability(logs[order[0]]);
            auto& bin = bins[static_cast<std::size_t>(std::min(19.0, stated * 20))];
            ++bin.count;
            bin.right += right;
            bin.stated += stated;
        }
        for (auto const& [index, bar] : bars) {
            ++tally.bars;
            tally.barsRight += bar.first;
        }
        if (tally.units > 0) byTune.push_back(100.0 * tally.right / tally.units);
        for (std::string const& row :
             {std::string("all"), e.meter, std::string(e.minor ? "minor" : "major")}) {
            Tally& sum = by[row];
            sum.units += tally.units;
            sum.right += tally.right;
            sum.chosen += tally.chosen;
            sum.three += tally.three;
            sum.bars += tally.bars;
            sum.barsRight += tally.barsRight;
        }
    }

    void print() const
    {
        std::printf("%-8s %7s %6s %6s %7s %6s %7s\n", "", "units", "right", "three", "bars",
                    "right", "chosen");
        for (auto const& [row, t] : by)
            std::printf("%-8s %7d %6.1f %6.1f %7d %6.1f %7.1f\n", row.c_str(), t.units,
                        100.0 * t.right / t.units, 100.0 * t.three / t.units, t.bars,
                        100.0 * t.barsRight / t.bars, 100.0 * t.chosen / t.units);
        double error = 0;
        int all = 0;
        for (Bin const& bin : bins) all += bin.count;
        for (Bin const& bin : bins)
            if (bin.count > 0) error += std::abs(bin.stated - bin.right) / all;
        std::printf("calibration error %.4f\n", error);
        for (Bin const& bin : bins)
            if (bin.count > 0)
                std::printf("  stated %.3f true %.3f of %d\n", bin.stated / bin.count,
                            static_cast<double>(bin.right) / bin.count, bin.count);
        double mean = 0;
        for (double t : byTune) mean += t / static_cast<double>(byTune.size());
        double square = 0;
        for (double t : byTune) square += (t - mean) * (t - mean);
        auto const n = static_cast<double>(byTune.size());
        std::printf("mean over tunes %.1f, standard error %.2f\n", mean,
                    std::sqrt(square / (n - 1) / n));
    }
};

void crossValidate(std::vector<Example>& examples, Model const& model,
                   std::map<std::string, int> const& foldOf, bool byBook)
{
    std::set<int> folds;
    for (auto const& [group, fold] : foldOf) folds.insert(fold);
    Measured all;
    for (int fold : folds) {
        std::vector<Example const*> training;
        std::vector<Example const*> testing;
        for (Example const& e : examples)
            (foldOf.at(byBook ? e.book : e.group) == fold ? testing : training).push_back(&e);
        ChordTable const table = learned(model, training);
        Measured own;
        for (Example const* e : testing) {
            all.measure(*e, table);
            own.measure(*e, table);
        }
        Tally const& t = own.by["all"];
        std::printf("%s: %d units, right %.1f, three %.1f\n",
                    byBook ? testing.front()->book.c_str() : "fold", t.units,
                    100.0 * t.right / t.units, 100.0 * t.three / t.units);
        std::fflush(stdout);
    }
    all.print();
}

void write(ChordTable const& table, std::string const& file)
{
    std::ofstream out(file);
    out << "{\n  \"sources\": [\"own-chords\"],\n  \"degrees\": [";
    for (std::size_t i = 0; i < table.degrees.size(); ++i)
        out << (i ? ", " : "") << '"' << text(table.degrees[i]) << '"';
    out << "],\n";
    auto const rows = [&out, &table](char const* name, std::vector<std::int16_t> const& values) {
        out << "  \"" << name << "\": [\n";
        std::size_t const S = table.degrees.size();
        for (std::size_t i = 0; i < values.size(); ++i) {
            out << (i % S ? "," : "    [") << values[i];
            if (i % S == S - 1) out << (i + 1 == values.size() ? "]\n" : "],\n");
        }
        out << "  ]";
    };
    rows("weights", table.weights);
    out << ",\n";
    rows("transitions", table.transitions);
    out << "\n}\n";
}

} // namespace

int main(int argc, char** argv)
{
    if (argc < 3) {
        std::cerr << "learn_chords FOLDER -o TABLE | --folds N | --by-book\n";
        return 2;
    }
    std::vector<Example> examples = examplesIn(argv[1]);
    constexpr int oftenEnough = 10;
    Model const model(statesOf(examples, oftenEnough));
    label(examples, model.states());
    int units = 0;
    for (Example const& e : examples) units += static_cast<int>(e.units.size());
    std::fprintf(stderr, "%zu tunes, %d units, %zu states, %zu numbers\n", examples.size(), units,
                 model.S, model.count);

    std::string const what = argv[2];
    if (what == "-o" && argc > 3) {
        std::vector<Example const*> all;
        for (Example const& e : examples) all.push_back(&e);
        write(learned(model, all), argv[3]);
        return 0;
    }
    std::map<std::string, int> foldOf;
    int const folds = what == "--folds" && argc > 3 ? std::atoi(argv[3]) : 5;
    bool const byBook = what == "--by-book";
    for (Example const& e : examples) {
        std::string const& key = byBook ? e.book : e.group;
        int const next = static_cast<int>(foldOf.size());
        foldOf.emplace(key, byBook ? next : next % folds);
    }
    crossValidate(examples, model, foldOf, byBook);
    return 0;
}
