// Learns the numbers of shared/keytable.json from the keys that folk tunes are written in, and
// measures them.
//
//     learn_keys -o TABLE FOLDER...       all tunes of the folders' .abc files
//     learn_keys --folds 5 FOLDER...      cross-validation by tune; variants share a fold
//     learn_keys --by-book FOLDER...      each file measured by what the others teach
//     learn_keys --profiles FOLDER...     published profiles, measured on the same tunes
//
// One softmax over twelve tonics and four modes, maximum likelihood with a Gaussian prior. The
// numbers that ship are the learned ones rounded; what is measured is what ships.

#include "core/harmony/chordtable.h"
#include "core/harmony/findkey.h"

#include "tests/training/examples.h"
#include "tests/training/profiles.h"

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
    std::string folder;
    std::string book;
    std::string group;
    tune::Tune tune;
    KeyHistograms heard{};
    std::size_t label = 0; // mode * 12 + tonic
};

void addFolder(std::filesystem::path const& folder, std::vector<Example>& examples,
               training::Openings& openings)
{
    training::eachTune(folder, [&](std::filesystem::path const& file, tune::Tune tune) {
        if (!tune::hasNotes(tune)) return;
        auto const mode = std::find(keyModes.begin(), keyModes.end(), tune.key.mode);
        if (mode == keyModes.end()) return;
        Example e;
        e.folder = folder.filename().string();
        e.book = file.stem().string();
        e.tune = std::move(tune);
        e.heard = keyHistogramsOf(e.tune);
        int const tonic = pitchClass(e.tune.key.tonic);
        e.label = static_cast<std::size_t>(mode - keyModes.begin()) * 12 +
                  static_cast<std::size_t>(tonic);
        training::add(examples, openings, std::move(e), tonic);
    });
}

// Precisions of the Gaussian priors: of the numbers shared by signature, by tonic, of a mode's
// own.
struct Priors {
    double shared = 10;
    double tonic = 10;
    double own = 10;
};

struct Task {
    std::vector<Example const*> examples;
    Priors priors;
};

// Parameters: D numbers shared by all modes, counted from the signature's major tonic; D shared
// by all, counted from the mode's own; then D of each mode. Rare modes lean on the common ones.
constexpr std::array homeOf{0, 9, 2, 7}; // of keyModes, above the major tonic
constexpr std::size_t modeCount = keyModes.size();
constexpr std::size_t parameterCount = D * (modeCount + 2);

std::size_t sharedIndex(std::size_t mode, std::size_t i)
{
    return i / 12 * 12 + (i % 12 + static_cast<std::size_t>(homeOf[mode])) % 12;
}
std::size_t tonicIndex(std::size_t i) { return D + i; }
std::size_t ownIndex(std::size_t mode, std::size_t i) { return D * (mode + 2) + i; }

// What a histogram's degree says for a mode: [mode][histogram * 12 + degree].
std::vector<double> effective(lbfgsfloatval_t const* x)
{
    std::vector<double> weights(modeCount * D);
    for (std::size_t mode = 0; mode < modeCount; ++mode)
        for (std::size_t i = 0; i < D; ++i)
            weights[mode * D + i] =
                x[sharedIndex(mode, i)] + x[tonicIndex(i)] + x[ownIndex(mode, i)];
    return weights;
}

double precision(Priors const& priors, std::size_t i)
{
    return i < D ? priors.shared : i < 2 * D ? priors.tonic : priors.own;
}

lbfgsfloatval_t evaluate(void* instance, lbfgsfloatval_t const* x, lbfgsfloatval_t* g,
                         int const n, lbfgsfloatval_t const)
{
    Task const& task = *static_cast<Task*>(instance);
    std::vector<double> const weights = effective(x);
    std::vector<double> gradient(weights.size());
    double loss = 0;
    std::array<double, K> scores{};
    for (Example const* e : task.examples) {
        scores.fill(0);
        for (std::size_t h = 0; h < keyHistograms; ++h)
            for (std::size_t c = 0; c < 12; ++c) {
                if (e->heard[h][c] == 0) continue;
                double const v = static_cast<double>(e->heard[h][c]) / featureOne;
                for (std::size_t k = 0; k < K; ++k)
                    scores[k] += v * weights[k / 12 * D + h * 12 + (c + 12 - k % 12) % 12];
            }
        double const most = *std::max_element(scores.begin(), scores.end());
        double total = 0;
        for (double s : scores) total += std::exp(s - most);
        loss += most + std::log(total) - scores[e->label];
        for (std::size_t k = 0; k < K; ++k)
            scores[k] = std::exp(scores[k] - most) / total - (k == e->label ? 1 : 0);
        for (std::size_t h = 0; h < keyHistograms; ++h)
            for (std::size_t c = 0; c < 12; ++c) {
                if (e->heard[h][c] == 0) continue;
                double const v = static_cast<double>(e->heard[h][c]) / featureOne;
                for (std::size_t k = 0; k < K; ++k)
                    gradient[k / 12 * D + h * 12 + (c + 12 - k % 12) % 12] += v * scores[k];
            }
    }
    for (int i = 0; i < n; ++i) {
        double const half = precision(task.priors, static_cast<std::size_t>(i)) / 2;
        loss += half * x[i] * x[i];
        g[i] = 2 * half * x[i];
    }
    for (std::size_t mode = 0; mode < modeCount; ++mode)
        for (std::size_t i = 0; i < D; ++i) {
            double const slope = gradient[mode * D + i];
            g[sharedIndex(mode, i)] += slope;
            g[tonicIndex(i)] += slope;
            g[ownIndex(mode, i)] += slope;
        }
    return loss;
}

KeyTable learned(std::vector<Example const*> examples, Priors priors, bool precise)
{
    Task task{std::move(examples), priors};
    lbfgs_parameter_t parameters;
    lbfgs_parameter_init(&parameters);
    // To the bottom: the numbers do not depend on the way there.
    parameters.epsilon = precise ? 1e-8 : 1e-2;
    lbfgsfloatval_t* x = lbfgs_malloc(static_cast<int>(parameterCount));
    std::fill_n(x, parameterCount, 0.0);
    double loss = 0;
    int const status = lbfgs(static_cast<int>(parameterCount), x, &loss, evaluate, nullptr,
                             &task, &parameters);
    std::fprintf(stderr, "%zu tunes, loss %.1f, status %d\n", task.examples.size(), loss, status);
    KeyTable table;
    for (double const weight : effective(x))
        table.weights.push_back(static_cast<std::int16_t>(std::lround(weightOne * weight)));
    lbfgs_free(x);
    return table;
}

bool isMinor(music::Mode mode)
{
    return mode == music::Mode::Aeolian || mode == music::Mode::Dorian;
}

struct Measured {
    struct Tally {
        int all = 0, right = 0, signature = 0, two = 0;
        int third = 0; // tonic and third: of 24 keys
    };
    std::map<std::string, Tally> by;
    std::map<std::pair<std::string, std::string>, int> confusion;
    std::array<std::array<double, 3>, 10> bins{};
    double surprise = 0;
    int tunes = 0;
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
        for (std::string const& row : {std::string("all"), "folder " + e.folder,
                                       "folder " + e.folder + " " + mode, "mode " + mode}) {
            Tally& t = by[row];
            ++t.all;
            t.right += same(best);
            t.two += two;
            t.signature += set(best) == set(written);
            t.third += pitchClass(best.tonic) == pitchClass(written.tonic) &&
                       isMinor(best.mode) == isMinor(written.mode);
        }
        int const away =
            (pitchClass(best.tonic) - pitchClass(written.tonic) + 12) % 12;
        ++confusion[{mode, std::string(modeName(best.mode)) +
                               (away ? " " + std::to_string(away) + " up" : "")}];
        double const p = found.likely.front().probability;
        double said = 0.001; // what is not worth saying
        for (LikelyKey const& likely : found.likely)
            if (same(likely.key)) said = likely.probability;
        surprise -= std::log(said);
        ++tunes;
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
            std::printf("%-32s %5d tunes: right %.1f, among two %.1f, signature %.1f, of 24 "
                        "keys %.1f\n",
                        row.c_str(), t.all, 100.0 * t.right / t.all, 100.0 * t.two / t.all,
                        100.0 * t.signature / t.all, 100.0 * t.third / t.all);
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
        std::printf("calibration error %.3f, surprise %.4f nats a tune\n", error,
                    surprise / tunes);
    }
};

// Pearson's correlation of how long each note sounds with a profile turned to a tonic
// (Krumhansl, "Cognitive Foundations of Musical Pitch", 1990).
double correlation(std::array<int, 12> const& share, profiles::Row const& row,
                   std::size_t tonic)
{
    double sx = 0, sy = 0, xx = 0, yy = 0, xy = 0;
    for (std::size_t d = 0; d < 12; ++d) {
        double const x = share[(tonic + d) % 12];
        double const y = row[d];
        sx += x, sy += y, xx += x * x, yy += y * y, xy += x * y;
    }
    return (12 * xy - sx * sy) / std::sqrt((12 * xx - sx * sx) * (12 * yy - sy * sy));
}

// Of 24 keys: a profile knows major and minor alone.
bool profileIsRight(profiles::Profile const& profile, Example const& e)
{
    double most = -2;
    std::size_t best = 0;
    for (std::size_t k = 0; k < 24; ++k) {
        double const r = correlation(of(e.heard, KeyHeard::Sounding),
                                     k < 12 ? profile.major : profile.minor, k % 12);
        if (r > most) {
            most = r;
            best = k;
        }
    }
    return best % 12 == static_cast<std::size_t>(pitchClass(e.tune.key.tonic)) &&
           (best >= 12) == isMinor(e.tune.key.mode);
}

void printProfiles(std::vector<Example> const& examples)
{
    for (profiles::Profile const& profile : profiles::all) {
        std::map<std::string, std::pair<int, int>> by;
        for (Example const& e : examples)
            for (std::string const& row :
                 {"folder " + e.folder,
                  "folder " + e.folder +
                      (isMinor(e.tune.key.mode) ? " minor third" : " major third")}) {
                ++by[row].first;
                by[row].second += profileIsRight(profile, e);
            }
        std::printf("%s\n", std::string(profile.name).c_str());
        for (auto const& [row, count] : by)
            std::printf("  %-36s %5d tunes: of 24 keys %.1f\n", row.c_str(), count.first,
                        100.0 * count.second / count.first);
    }
}

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
    bool asProfiles = false;
    bool list = false;
    Priors priors;
    std::vector<Example> examples;
    training::Openings openings;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (words[i] == "-o" && i + 1 < words.size())
            out = words[++i];
        else if (words[i] == "--folds" && i + 1 < words.size())
            folds = std::atoi(words[++i].c_str());
        else if (words[i] == "--priors" && i + 3 < words.size()) {
            priors.shared = std::atof(words[++i].c_str());
            priors.tonic = std::atof(words[++i].c_str());
            priors.own = std::atof(words[++i].c_str());
        } else if (words[i] == "--by-book")
            byBook = true;
        else if (words[i] == "--profiles")
            asProfiles = true;
        else if (words[i] == "--list")
            list = true;
        else
            addFolder(words[i], examples, openings);
    }
    if (examples.empty()) {
        std::cerr << "learn_keys -o TABLE | --folds N | --by-book | --profiles, then folders\n";
        return 2;
    }
    if (asProfiles) {
        printProfiles(examples);
        return 0;
    }
    if (!out.empty()) {
        std::vector<Example const*> all;
        for (Example const& e : examples) all.push_back(&e);
        write(learned(all, priors, true), out);
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
        KeyTable const table = learned(training, priors, false);
        for (Example const* e : testing) measured.measure(*e, table);
    }
    measured.print();
    return 0;
}
