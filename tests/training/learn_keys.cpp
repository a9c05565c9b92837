// Learns the numbers of shared/keytable.json from the keys that folk tunes are written in, and
// measures them.
//
//     learn_keys -o TABLE FOLDER...       all tunes of the folders' .abc files
//     learn_keys --folds 5 FOLDER...      cross-validation by tune; variants share a fold
//     learn_keys --by-book FOLDER...      each file measured by what the others teach
//
// One softmax over twelve tonics and four modes, maximum likelihood with a Gaussian prior. The
// numbers that ship are the learned ones rounded; what is measured is what ships.

#include "core/files/abc/read.h"
#include "core/files/textfile.h"
#include "core/harmony/chordtable.h"
#include "core/harmony/findkey.h"

#include <lbfgs.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <map>
#include <set>
#include <string>
#include <vector>

using namespace harmony;

namespace {

constexpr std::size_t K = keyModes.size() * 12; // candidates
constexpr std::size_t D = static_cast<std::size_t>(keyHistograms) * 12;

struct Example {
    std::string book;
    std::string group;
    tune::Tune tune;
    KeyHistograms heard{};
    std::size_t label = 0; // mode * 12 + tonic
};

std::string opening(tune::Tune const& tune, bool pickUp)
{
    std::string out;
    int count = 0;
    for (tune::Bar const& bar : tune.bars) {
        if (!pickUp && bar.upbeat.wholes > music::Rational(0)) continue;
        for (tune::Note const& note : bar.notes) {
            if (note.pitches.empty()) continue;
            int const degree = midi(note.pitches.back()) - pitchClass(tune.key.tonic);
            out += std::to_string((degree % 12 + 12) % 12) + ' ';
            if (++count == 12) return out;
        }
    }
    return out;
}

void addFolder(std::filesystem::path const& folder, std::vector<Example>& examples,
               std::map<std::string, std::size_t>& openings)
{
    std::vector<std::filesystem::path> files;
    for (auto const& entry : std::filesystem::directory_iterator(folder))
        if (entry.path().extension() == ".abc") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    for (auto const& file : files) {
        auto const text = files::readTextFile(file);
        if (!text) continue;
        auto const entries = files::abcTunes(*text);
        if (!entries) continue;
        for (files::AbcEntry const& entry : *entries) {
            auto tune = files::readAbc(*text, entry, file.string());
            if (!tune || !tune::hasNotes(*tune)) continue;
            auto const mode = std::find(keyModes.begin(), keyModes.end(), tune->key.mode);
            if (mode == keyModes.end()) continue;
            Example e;
            e.book = file.stem().string();
            e.tune = *std::move(tune);
            e.heard = keyHistogramsOf(e.tune);
            e.label = static_cast<std::size_t>(mode - keyModes.begin()) * 12 +
                      static_cast<std::size_t>(pitchClass(e.tune.key.tonic));
            std::array const keys{opening(e.tune, true), opening(e.tune, false)};
            e.group = std::to_string(examples.size());
            for (auto const& key : keys)
                if (auto const found = openings.find(key); found != openings.end())
                    e.group = examples[found->second].group;
            for (auto const& key : keys) openings.emplace(key, examples.size());
            examples.push_back(std::move(e));
        }
    }
}

struct Task {
    std::vector<Example const*> examples;
    double prior = 1;
};

// Parameters: D numbers shared by all modes, counted from the signature's major tonic; D shared
// by all, counted from the mode's own; then D of each mode. Rare modes lean on the common ones.
constexpr std::array homeOf{0, 9, 2, 7}; // of keyModes, above the major tonic
constexpr std::size_t parameterCount = D * (keyModes.size() + 2);

std::size_t sharedIndex(std::size_t mode, std::size_t h, std::size_t degree)
{
    return h * 12 + (degree + static_cast<std::size_t>(homeOf[mode])) % 12;
}
std::size_t tonicIndex(std::size_t h, std::size_t degree) { return D + h * 12 + degree; }
std::size_t ownIndex(std::size_t mode, std::size_t h, std::size_t degree)
{
    return D * (mode + 2) + h * 12 + degree;
}

lbfgsfloatval_t evaluate(void* instance, lbfgsfloatval_t const* x, lbfgsfloatval_t* g,
                         int const n, lbfgsfloatval_t const)
{
    Task const& task = *static_cast<Task*>(instance);
    std::fill_n(g, n, 0.0);
    double loss = 0;
    std::array<double, K> scores{};
    for (Example const* e : task.examples) {
        auto const value = [e](std::size_t h, std::size_t c) {
            return static_cast<double>(e->heard[h][c]) / featureOne;
        };
        for (std::size_t k = 0; k < K; ++k) {
            std::size_t const mode = k / 12;
            double sum = 0;
            for (std::size_t h = 0; h < keyHistograms; ++h)
                for (std::size_t d = 0; d < 12; ++d)
                    if (double const v = value(h, (k + d) % 12); v != 0)
                        sum += v * (x[sharedIndex(mode, h, d)] + x[tonicIndex(h, d)] +
                                    x[ownIndex(mode, h, d)]);
            scores[k] = sum;
        }
        double const most = *std::max_element(scores.begin(), scores.end());
        double total = 0;
        for (double s : scores) total += std::exp(s - most);
        loss += most + std::log(total) - scores[e->label];
        for (std::size_t k = 0; k < K; ++k) {
            std::size_t const mode = k / 12;
            double const weight = std::exp(scores[k] - most) / total - (k == e->label ? 1 : 0);
            if (std::abs(weight) < 1e-9) continue;
            for (std::size_t h = 0; h < keyHistograms; ++h)
                for (std::size_t d = 0; d < 12; ++d)
                    if (double const v = value(h, (k + d) % 12); v != 0) {
                        g[sharedIndex(mode, h, d)] += weight * v;
                        g[tonicIndex(h, d)] += weight * v;
                        g[ownIndex(mode, h, d)] += weight * v;
                    }
        }
    }
    for (int i = 0; i < n; ++i) {
        loss += task.prior / 2 * x[i] * x[i];
        g[i] += task.prior * x[i];
    }
    return loss;
}

KeyTable learned(std::vector<Example const*> examples, double prior)
{
    Task task{std::move(examples), prior};
    lbfgs_parameter_t parameters;
    lbfgs_parameter_init(&parameters);
    parameters.max_iterations = 200;
    lbfgsfloatval_t* x = lbfgs_malloc(static_cast<int>(parameterCount));
    std::fill_n(x, parameterCount, 0.0);
    double loss = 0;
    int const status = lbfgs(static_cast<int>(parameterCount), x, &loss, evaluate, nullptr,
                             &task, &parameters);
    std::fprintf(stderr, "%zu tunes, loss %.1f, status %d\n", task.examples.size(), loss, status);
    KeyTable table;
    for (std::size_t mode = 0; mode < keyModes.size(); ++mode)
        for (std::size_t h = 0; h < keyHistograms; ++h)
            for (std::size_t d = 0; d < 12; ++d)
                table.weights.push_back(static_cast<std::int16_t>(std::lround(
                    weightOne * (x[sharedIndex(mode, h, d)] + x[tonicIndex(h, d)] +
                                 x[ownIndex(mode, h, d)]))));
    lbfgs_free(x);
    return table;
}

struct Measured {
    struct Tally {
        int all = 0;
        int right = 0;
        int signature = 0;
        int two = 0;
    };
    std::map<std::string, Tally> by;
    std::map<std::pair<std::string, std::string>, int> confusion;
    std::array<std::array<double, 3>, 10> bins{};
    bool list = false;

    void measure(Example const& e, KeyTable const& table)
    {
        FoundKey const found = *foundKey(table, e.tune);
        music::Key const best = found.likely.front().key;
        music::Key const written = e.tune.key;
        auto const same = [&written](music::Key k) {
            return k.mode == written.mode && pitchClass(k.tonic) == pitchClass(written.tonic);
        };
        auto const set = [](music::Key k) {
            return pitchClass(keyOf(signature(k), music::Mode::Ionian).tonic);
        };
        bool const two = same(best) || (found.likely.size() > 1 && same(found.likely[1].key));
        std::string const mode(modeName(written.mode));
        for (std::string const& row : {std::string("all"), e.book, "mode " + mode}) {
            Tally& t = by[row];
            ++t.all;
            t.right += same(best);
            t.two += two;
            t.signature += set(best) == set(written);
        }
        int const away =
            (pitchClass(best.tonic) - pitchClass(written.tonic) + 12) % 12;
        ++confusion[{mode, std::string(modeName(best.mode)) +
                               (away ? " " + std::to_string(away) + " up" : "")}];
        double const p = found.likely.front().probability;
        auto& bin = bins[static_cast<std::size_t>(std::min(9.0, p * 10))];
        bin[0] += 1;
        bin[1] += p;
        bin[2] += same(best);
        if (list && !same(best))
            std::printf("  %s %d %s: K %s, found %s %.2f (%s)\n", e.book.c_str(), e.tune.number,
                        e.tune.title.c_str(), shown(written).c_str(), shown(best).c_str(), p,
                        found.reason.c_str());
    }

    void print() const
    {
        for (auto const& [row, t] : by)
            std::printf("%-28s %5d tunes: right %.1f, among two %.1f, signature %.1f\n",
                        row.c_str(), t.all, 100.0 * t.right / t.all, 100.0 * t.two / t.all,
                        100.0 * t.signature / t.all);
        for (auto const& [pair, count] : confusion)
            std::printf("  written %-10s found %-20s %d\n", pair.first.c_str(),
                        pair.second.c_str(), count);
        double error = 0;
        double all = 0;
        for (auto const& bin : bins) all += bin[0];
        for (auto const& bin : bins) {
            error += std::abs(bin[1] - bin[2]) / all;
            if (bin[0] > 0)
                std::printf("  stated %.2f true %.2f of %.0f\n", bin[1] / bin[0],
                            bin[2] / bin[0], bin[0]);
        }
        std::printf("calibration error %.3f\n", error);
    }
};

void write(KeyTable const& table, std::string const& file)
{
    std::ofstream out(file);
    out << "{\n  \"sources\": [\"own-keys\"],\n  \"weights\": [\n";
    for (std::size_t i = 0; i < table.weights.size(); ++i) {
        out << (i % 12 ? "," : "    [") << table.weights[i];
        if (i % 12 == 11) out << (i + 1 == table.weights.size() ? "]\n" : "],\n");
    }
    out << "  ]\n}\n";
}

} // namespace

int main(int argc, char** argv)
{
    std::vector<std::string> words(argv + 1, argv + argc);
    std::string out;
    int folds = 0;
    bool byBook = false;
    bool list = false;
    double prior = 1;
    std::string only; // measure this book alone
    std::vector<Example> examples;
    std::map<std::string, std::size_t> openings;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (words[i] == "-o" && i + 1 < words.size())
            out = words[++i];
        else if (words[i] == "--folds" && i + 1 < words.size())
            folds = std::atoi(words[++i].c_str());
        else if (words[i] == "--prior" && i + 1 < words.size())
            prior = std::atof(words[++i].c_str());
        else if (words[i] == "--by-book")
            byBook = true;
        else if (words[i] == "--list")
            list = true;
        else
            addFolder(words[i], examples, openings);
    }
    if (examples.empty()) {
        std::cerr << "learn_keys -o TABLE | --folds N | --by-book, then folders\n";
        return 2;
    }
    if (!out.empty()) {
        std::vector<Example const*> all;
        for (Example const& e : examples) all.push_back(&e);
        write(learned(all, prior), out);
        return 0;
    }
    std::map<std::string, int> foldOf;
    for (Example const& e : examples) {
        int const next = static_cast<int>(foldOf.size());
        foldOf.emplace(byBook ? e.book : e.group, byBook ? next : next % std::max(2, folds));
    }
    std::set<int> all;
    for (auto const& [key, fold] : foldOf) all.insert(fold);
    Measured measured;
    measured.list = list;
    for (int fold : all) {
        std::vector<Example const*> training;
        std::vector<Example const*> testing;
        for (Example const& e : examples)
            (foldOf.at(byBook ? e.book : e.group) == fold ? testing : training).push_back(&e);
        KeyTable const table = learned(training, prior);
        for (Example const* e : testing) measured.measure(*e, table);
    }
    measured.print();
    return 0;
}
