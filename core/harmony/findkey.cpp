#include "core/harmony/findkey.h"

#include "core/base/words.h"
#include "core/harmony/chain.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>

namespace harmony {

namespace {

using music::Mode;

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

// Where a tune comes home: at its end, at the end of its first strain, of another.
std::string homecoming(music::Key key, KeyHistograms const& heard)
{
    struct Place {
        KeyHeard heard;
        std::string_view words;
    };
    constexpr std::array places{Place{KeyHeard::Last, base::marked("it ends on {}")},
                                Place{KeyHeard::FirstStrainEnd, base::marked("its first part ends on {}")},
                                Place{KeyHeard::EndsOfStrains, base::marked("a part of it ends on {}")},
                                Place{KeyHeard::StartsOfStrains, base::marked("a part of it begins on {}")}};
    for (Place const& place : places)
        if (of(heard, place.heard)[static_cast<std::size_t>(pitchClass(key.tonic))] > 0)
            {
            std::string const home = music::shown(key.tonic);
            return base::saidWith(place.words, fmt::make_format_args(home));
        }
    return base::said("it does not end at home");
}

// What tells the mode: where it comes home, then third, sixth and seventh as the tune has them,
// and a raised seventh that goes home in the minor.
std::string reasonFor(music::Key key, KeyHistograms const& heard)
{
    auto const has = [&](int above) {
        int const c = (pitchClass(key.tonic) + above) % 12;
        return of(heard, KeyHeard::Present)[static_cast<std::size_t>(c)] > 0;
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
    bool const rises =
        of(heard, KeyHeard::Moves)[static_cast<std::size_t>(pitchClass(key.tonic))] > 0;
    return fmt::format("{}; {}{}", homecoming(key, heard), listed(said),
                       key.mode == Mode::Aeolian && rises
                           ? "; " + base::say("{} rises to {}", name({6, 11}), shown(key.tonic))
                           : "");
}

} // namespace

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
        std::ranges::count_if(of(heard, KeyHeard::Present), [](int v) { return v > 0; }));
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
