#include "core/harmony/findkey.h"

#include "core/base/words.h"
#include "core/harmony/chain.h"
#include "core/harmony/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>

namespace harmony {

namespace {

using music::Length;
using music::Mode;
using music::Rational;

using Lengths = std::array<Length, 12>;
using Counts = std::array<int, 12>;

std::size_t classOf(tune::Note const& note)
{
    return static_cast<std::size_t>(pitchClass(note.pitches.back()));
}

tune::Note const* firstOf(tune::Bar const& bar)
{
    auto const at = std::find_if(bar.notes.begin(), bar.notes.end(),
                                 [](tune::Note const& n) { return !n.pitches.empty(); });
    return at == bar.notes.end() ? nullptr : &*at;
}

tune::Note const* lastOf(tune::Bar const& bar)
{
    auto const at = std::find_if(bar.notes.rbegin(), bar.notes.rend(),
                                 [](tune::Note const& n) { return !n.pitches.empty(); });
    return at == bar.notes.rend() ? nullptr : &*at;
}

std::array<int, 12> shares(Lengths const& lengths)
{
    Length whole;
    for (Length const& length : lengths) whole = whole + length;
    std::array<int, 12> out{};
    if (whole == Length{}) return out;
    for (std::size_t i = 0; i < 12; ++i)
        out[i] = static_cast<int>(
            floorOf(lengths[i] / whole * Rational(featureOne) + Rational(1, 2)));
    return out;
}

std::array<int, 12> shares(Counts const& counts)
{
    int const whole = std::accumulate(counts.begin(), counts.end(), 0);
    std::array<int, 12> out{};
    if (whole == 0) return out;
    for (std::size_t i = 0; i < 12; ++i) out[i] = (counts[i] * featureOne + whole / 2) / whole;
    return out;
}

struct Gathered {
    Lengths sounding{};
    Lengths lastButOne{};
    Counts last{};
    Counts strainEnds{};
    Counts first{};
    Counts strainStarts{};
    Counts barStarts{};
    Counts lowest{};
};

void gatherBar(Gathered& out, tune::Bar const& bar, Unit const* unit)
{
    for (tune::Note const& note : bar.notes) {
        if (note.pitches.empty()) continue;
        std::size_t const c = classOf(note);
        out.sounding[c] = out.sounding[c] + note.length;
        if (unit && unit->barsToEnd == 1) out.lastButOne[c] = out.lastButOne[c] + note.length;
    }
    if (unit == nullptr) return;
    if (tune::Note const* const first = firstOf(bar)) {
        if (first->at == Length{}) ++out.barStarts[classOf(*first)];
        if (unit->firstBar) ++out.first[classOf(*first)];
        if (unit->barOfStrain == 0) ++out.strainStarts[classOf(*first)];
    }
    if (tune::Note const* const last = lastOf(bar); last && unit->barsToEnd == 0)
        ++out.strainEnds[classOf(*last)];
}

music::PitchName spelt(int tonic, Mode mode, double fifthsOfNotes)
{
    // The spelling whose signature lies nearest to the notes as they are spelt; a major scale's
    // notes lie two fifths above its tonic on average.
    music::PitchName best;
    double least = 1000;
    for (int fifths = -9; fifths <= 12; ++fifths) {
        music::PitchName const name = music::nameAtFifths(fifths);
        if (pitchClass(name) != tonic) continue;
        int const s = music::signature({name, mode});
        if (s < -7 || s > 7) continue;
        double const apart = std::abs(s + 2 - fifthsOfNotes);
        if (apart < least) {
            least = apart;
            best = name;
        }
    }
    return best;
}

double meanFifths(tune::Tune const& tune)
{
    double sum = 0;
    double weight = 0;
    for (tune::Bar const& bar : tune.bars)
        for (tune::Note const& note : bar.notes) {
            if (note.pitches.empty()) continue;
            double const length = note.length.wholes.toDouble();
            sum += length * fifths(nameOf(note.pitches.back()));
            weight += length;
        }
    return weight > 0 ? sum / weight : 0;
}

std::string listed(std::vector<std::string> const& items)
{
    std::string out;
    for (std::size_t i = 0; i < items.size(); ++i)
        out += (i == 0 ? "" : i + 1 == items.size() ? base::said(" and ") : ", ") + items[i];
    return out;
}

// What tells the mode: the last note, then third, sixth and seventh as the tune has them.
std::string reasonFor(music::Key key, KeyHistograms const& heard)
{
    auto const has = [&](int above) {
        int const c = (pitchClass(key.tonic) + above) % 12;
        return heard[1][static_cast<std::size_t>(c)] > 0;
    };
    auto const name = [&](music::Interval above) {
        return shown(transposed(key.tonic, above));
    };
    struct Told {
        char const* degree;
        music::Interval low;
        music::Interval high;
    };
    constexpr std::array told{Told{base::marked("mode|third"), {2, 3}, {2, 4}},
                              Told{base::marked("mode|sixth"), {5, 8}, {5, 9}},
                              Told{base::marked("mode|seventh"), {6, 10}, {6, 11}}};
    std::vector<std::string> said;
    for (Told const& t : told) {
        bool const low = has(t.low.semitones);
        bool const high = has(t.high.semitones);
        if (low && high)
            said.push_back(base::say("its {} both {} and {}", base::said(t.degree), name(t.low),
                                     name(t.high)));
        else if (low || high)
            said.push_back(
                base::say("its {} {}", base::said(t.degree), name(low ? t.low : t.high)));
        else
            said.push_back(base::say("it has no {}", base::said(t.degree)));
    }
    bool const ends = heard[2][static_cast<std::size_t>(pitchClass(key.tonic))] > 0;
    return fmt::format("{}; {}",
                       ends ? base::say("it ends on {}", shown(key.tonic))
                            : base::said("it does not end at home"),
                       listed(said));
}

} // namespace

KeyHistograms keyHistogramsOf(tune::Tune const& tune)
{
    Gathered out;
    std::vector<Unit> const units = unitsOf(tune);
    std::vector<Unit const*> unitOf(tune.bars.size(), nullptr);
    for (Unit const& unit : units)
        if (unit.opensBar) unitOf[static_cast<std::size_t>(unit.bar)] = &unit;
    int lowest = 1000;
    for (std::size_t i = 0; i < tune.bars.size(); ++i) {
        tune::Bar const& bar = tune.bars[i];
        gatherBar(out, bar, unitOf[i]);
        if (tune::Note const* const last = lastOf(bar)) {
            out.last = {};
            out.last[classOf(*last)] = 1;
        }
        for (tune::Note const& note : bar.notes)
            if (!note.pitches.empty() && midi(note.pitches.back()) < lowest) {
                lowest = midi(note.pitches.back());
                out.lowest = {};
                out.lowest[classOf(note)] = 1;
            }
    }
    KeyHistograms heard{};
    heard[0] = shares(out.sounding);
    for (std::size_t c = 0; c < 12; ++c)
        heard[1][c] = out.sounding[c] > Length{} ? featureOne : 0;
    heard[2] = shares(out.last);
    heard[3] = shares(out.strainEnds);
    heard[4] = shares(out.first);
    heard[5] = shares(out.strainStarts);
    heard[6] = shares(out.barStarts);
    heard[7] = shares(out.lowest);
    heard[8] = shares(out.lastButOne);
    return heard;
}

std::optional<FoundKey> foundKey(KeyTable const& table, tune::Tune const& tune)
{
    if (!hasNotes(tune) || table.weights.size() != keyTableSize) return std::nullopt;
    KeyHistograms const heard = keyHistogramsOf(tune);
    std::vector<int> logs;
    for (std::size_t mode = 0; mode < keyModes.size(); ++mode)
        for (std::size_t tonic = 0; tonic < 12; ++tonic) {
            long sum = 0;
            for (std::size_t h = 0; h < keyHistograms; ++h)
                for (std::size_t d = 0; d < 12; ++d)
                    sum += static_cast<long>(table.weights[(mode * keyHistograms + h) * 12 + d]) *
                           heard[h][(tonic + d) % 12];
            logs.push_back(static_cast<int>(sum / (static_cast<long>(featureOne) * weightOne / nat)));
        }
    normalise(logs);
    std::vector<std::size_t> order(logs.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&logs](std::size_t a, std::size_t b) { return logs[a] > logs[b]; });
    double const fifths = meanFifths(tune);
    FoundKey found;
    constexpr double worthSaying = 0.005;
    for (std::size_t i : order) {
        double const p = probability(logs[i]);
        if (p < worthSaying && !found.likely.empty()) break;
        Mode const mode = keyModes[i / 12];
        found.likely.push_back({{spelt(static_cast<int>(i % 12), mode, fifths), mode}, p});
    }
    found.tones = static_cast<int>(
        std::count_if(heard[1].begin(), heard[1].end(), [](int v) { return v > 0; }));
    found.reason = reasonFor(found.likely.front().key, heard);
    return found;
}

std::optional<std::string> keyContradiction(FoundKey const& found, music::Key written)
{
    LikelyKey const& best = found.likely.front();
    if (best.key == written || best.probability < sureOfKey) return std::nullopt;
    bool const told = std::find(keyModes.begin(), keyModes.end(), written.mode) != keyModes.end();
    bool const sameTonic = pitchClass(best.key.tonic) == pitchClass(written.tonic);
    if (sameTonic && (!told || best.key.mode == written.mode)) return std::nullopt;
    return base::say("it says {}, but from its notes it is {}: {}", shown(written),
                     shown(best.key), found.reason);
}

} // namespace harmony
