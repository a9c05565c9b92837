#include "core/harmony/findchords.h"

#include "core/base/words.h"
#include "core/harmony/lean.h"
#include "core/harmony/reasons.h"
#include "core/harmony/ways.h"
#include "core/music/typedchord.h"
#include "core/tune/chordorigin.h"
#include "core/tune/playing.h"

#include <algorithm>
#include <numeric>

namespace harmony {

namespace {

using music::Key;
using music::Length;
using music::Mode;

using Logs = std::vector<int>;

// Which chord is kept in each unit; none where it is to be found.
using Kept = std::vector<std::optional<music::Chord>>;

bool isKept(tune::ChordMark const& mark, ChordWishes const& wishes)
{
    switch (originOf(mark)) {
    case tune::ChordOrigin::Written:
        return wishes.keepWritten;
    case tune::ChordOrigin::Set:
        return wishes.keepSet;
    case tune::ChordOrigin::Found:
        break;
    }
    return false;
}

// The mark of its bar that holds where a unit begins; none where a chord is carried in.
tune::ChordMark const* governing(tune::Bar const& bar, Unit const& unit)
{
    tune::ChordMark const* last = nullptr;
    for (tune::ChordMark const& mark : bar.chords)
        if (mark.at <= unit.at && mark.pass.value_or(1) == 1) last = &mark;
    return last;
}

// A kept chord lasts to the next chord of its bar, whoever that is from, or the bar's end.
Kept keptChords(tune::Tune const& tune, std::vector<Unit> const& units,
                ChordWishes const& wishes)
{
    Kept kept(units.size());
    for (std::size_t t = 0; t < units.size(); ++t) {
        tune::Bar const& bar = tune.bars[units[t].bar];
        tune::ChordMark const* const mark = governing(bar, units[t]);
        if (mark && isKept(*mark, wishes)) kept[t] = mark->chord;
    }
    return kept;
}

// The chord that the marks so far put over a unit's start, in written order.
std::optional<music::Chord> inForce(tune::Tune const& tune, Unit const& unit)
{
    if (tune::ChordMark const* const own = governing(tune.bars[unit.bar], unit))
        return own->chord;
    for (tune::BarIndex b = unit.bar - 1; b >= 0; --b)
        if (!tune.bars[b].chords.empty()) return tune.bars[b].chords.back().chord;
    return std::nullopt;
}

// Origins of which something was kept.
std::vector<tune::ChordOrigin> originsKept(tune::Tune const& tune, Suggestion const& suggestion)
{
    std::vector<tune::ChordOrigin> origins;
    for (FoundChord const& found : suggestion.chords) {
        if (!found.kept) continue;
        tune::Bar const& bar = tune.bars[found.unit.bar];
        if (tune::ChordMark const* const mark = governing(bar, found.unit))
            origins.push_back(originOf(*mark));
    }
    return origins;
}

// Units that stand at the same place of bars with equal notes.
std::vector<std::vector<std::size_t>> twinsOf(tune::Tune const& tune,
                                              std::vector<Unit> const& units)
{
    auto const equal = [&tune](Unit const& a, Unit const& b) {
        tune::Bar const& barA = tune.bars[a.bar];
        tune::Bar const& barB = tune.bars[b.bar];
        return a.at == b.at &&
               std::equal(barA.notes.begin(), barA.notes.end(), barB.notes.begin(),
                          barB.notes.end(), [](tune::Note const& x, tune::Note const& y) {
                              return x.at == y.at && x.length == y.length &&
                                     x.pitches == y.pitches;
                          });
    };
    std::vector<std::vector<std::size_t>> twins(units.size());
    std::vector<bool> done(units.size(), false);
    for (std::size_t i = 0; i < units.size(); ++i) {
        if (done[i]) continue;
        std::vector<std::size_t> group{i};
        for (std::size_t k = i + 1; k < units.size(); ++k)
            if (!done[k] && equal(units[i], units[k])) group.push_back(k);
        for (std::size_t member : group) {
            done[member] = true;
            twins[member] = group;
        }
    }
    return twins;
}

// Half of what each hears itself, half of what its twins hear. Kept units neither give nor
// take.
void hearTwins(std::vector<Logs>& rows, tune::Tune const& tune, std::vector<Unit> const& units,
               Kept const& kept)
{
    std::vector<Logs> const alone = rows;
    auto const twins = twinsOf(tune, units);
    for (std::size_t t = 0; t < rows.size(); ++t) {
        if (kept[t]) continue;
        std::vector<std::size_t> others;
        for (std::size_t twin : twins[t])
            if (twin != t && !kept[twin]) others.push_back(twin);
        if (others.empty()) continue;
        for (std::size_t s = 0; s < rows[t].size(); ++s) {
            long sum = 0;
            for (std::size_t twin : others) sum += alone[twin][s];
            auto const mean = static_cast<int>(sum / static_cast<long>(others.size()));
            rows[t][s] = (alone[t][s] + mean) / 2;
        }
        normalise(rows[t]);
    }
}

void clamp(Chain& chain, ChordTable const& table, std::vector<Unit> const& units,
           Frames const& frames, Kept const& kept)
{
    for (std::size_t t = 0; t < units.size(); ++t) {
        if (!kept[t]) continue;
        auto const degree = degreeOf(*kept[t], frames[units[t].bar].tonic);
        if (!degree) continue;
        auto const at = std::find(table.degrees.begin(), table.degrees.end(), *degree);
        if (at == table.degrees.end()) continue; // its neighbours are found without it
        auto const state = static_cast<std::size_t>(at - table.degrees.begin());
        for (std::size_t s = 0; s < chain.states; ++s)
            if (s != state) chain.own[t][s] = impossible;
    }
}

// The key whose tonic the chords go by: the file's, unless the notes say surely enough that
// another tonic of the same signature is home, or that the signature itself is another.
Key homeOf(tune::Tune const& tune, std::optional<FoundKey> const& found)
{
    if (!found) return tune.key;
    LikelyKey const& best = found->likely.front();
    constexpr double sureOfSignature = 0.95;
    bool const same = signature(best.key) == signature(tune.key);
    bool const oneKey = std::all_of(tune.bars.begin(), tune.bars.end(),
                                    [&tune](tune::Bar const& b) { return b.key == tune.key; });
    // Files say the signature more often than the mode: "K:G" may stand over A dorian, but who
    // writes "K:Em" means it.
    bool const modeSaid = tune.key.mode != Mode::Ionian;
    if (best.probability < (same && !modeSaid ? sureOfKey : sureOfSignature)) return tune.key;
    return same || oneKey ? best.key : tune.key;
}

Frames framesFor(tune::Tune const& tune, Key home)
{
    if (home == tune.key) return framesOf(tune);
    tune::Tune heardAs = tune;
    for (tune::Bar& bar : heardAs.bars)
        if (bar.key == tune.key) bar.key = home;
    return framesOf(heardAs);
}

// Whether the mode stays open: the found key is not sure, or the tune has five notes and the
// next likely key shares its tonic.
bool modeIsUnsure(std::optional<FoundKey> const& found)
{
    if (!found) return true;
    constexpr int gapped = 6;
    LikelyKey const& best = found->likely.front();
    if (best.probability >= sureOfKey || found->likely.size() < 2) return false;
    LikelyKey const& next = found->likely[1];
    bool const sameTonic = best.key.tonic == next.key.tonic;
    return sameTonic || found->tones < gapped;
}

// Whether all tones of a chord lie in the signature, or the tune has those that do not in this
// bar.
bool fitsSignature(tune::Tune const& tune, Unit const& unit, music::Chord const& chord,
                   int inSignature)
{
    tune::Bar const& bar = tune.bars[unit.bar];
    auto const sounds = [&bar](music::PitchName name) {
        return std::any_of(bar.notes.begin(), bar.notes.end(), [&name](tune::Note const& note) {
            return std::any_of(note.pitches.begin(), note.pitches.end(), [&](music::Pitch p) {
                return pitchClass(p) == pitchClass(name);
            });
        });
    };
    for (music::PitchName const& name : toneNames(chord))
        if (name.alter != music::alterIn(inSignature, name.letter) && !sounds(name))
            return false;
    return true;
}

constexpr std::size_t likelyShown = 5;

std::vector<std::size_t> ranked(Logs const& logs)
{
    std::vector<std::size_t> order(logs.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&logs](std::size_t a, std::size_t b) { return logs[a] > logs[b]; });
    return order;
}

// The likeliest degree; but where it is no sure thing, one whose tones the tune or its
// signature has, since every other tone turns a lever of the harp.
Degree chosenDegree(ChordTable const& table, Logs const& row, tune::Tune const& tune,
                    Unit const& unit, int inSignature)
{
    constexpr double sureEnough = 0.6;
    auto const order = ranked(row);
    if (probability(row[order.front()]) < sureEnough)
        for (std::size_t i = 0; i < std::min(likelyShown, order.size()); ++i)
            if (fitsSignature(tune, unit, chordOn(table.degrees[order[i]], inSignature),
                              inSignature))
                return table.degrees[order[i]];
    return table.degrees[order.front()];
}

void fillLikely(Suggestion& out, tune::Tune const& tune, ChordTable const& table,
                std::vector<Logs> const& rows, std::vector<int> const& signatures)
{
    auto& chords = out.chords;
    std::vector<music::Chord> const best = [&chords] {
        std::vector<music::Chord> list;
        for (FoundChord const& found : chords) list.push_back(found.chord);
        return list;
    }();
    for (std::size_t t = 0; t < chords.size(); ++t) {
        auto const order = ranked(rows[t]);
        for (std::size_t r = 0; r < std::min(likelyShown, order.size()); ++r) {
            music::Chord chord = chordOn(table.degrees[order[r]], signatures[t]);
            std::string reason =
                chordReason(tune, chords[t].unit, chord, t > 0 ? &best[t - 1] : nullptr,
                            t + 1 < best.size() ? &best[t + 1] : nullptr, out.heardIn);
            chords[t].likely.push_back(
                {std::move(chord), probability(rows[t][order[r]]), std::move(reason)});
        }
    }
}

std::vector<std::size_t> leastSureFirst(std::vector<FoundChord> const& chords)
{
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < chords.size(); ++i)
        if (!chords[i].kept) order.push_back(i);
    std::stable_sort(order.begin(), order.end(), [&chords](std::size_t a, std::size_t b) {
        return chords[a].sure() < chords[b].sure();
    });
    return order;
}

struct Finding {
    tune::Tune const& tune;
    std::vector<Unit> const& units;
    Frames const& frames;
    Kept const& kept;
};

// What is left of a bar after its last whole unit, as the pick-up to an ending: no chord is
// changed for it.
bool isTail(tune::Tune const& tune, Unit const& unit)
{
    music::Length const whole = unitLength(tune.bars[unit.bar].meter);
    return !unit.opensBar && unit.length * music::Rational(2) < whole;
}

// How likely each chord is in each unit, by the table, what leans on it and what is kept.
std::vector<Logs> rowsOf(ChordTable const& table, Finding const& at, Key home, Way way)
{
    auto const notes = heard(at.tune, at.units, at.frames);
    Chain chain = chainOf(table, at.units, notes);
    lean(chain, table, at.tune, at.units, notes, home, way);
    clamp(chain, table, at.units, at.frames, at.kept);
    auto rows = logLikelihoods(chain);
    hearTwins(rows, at.tune, at.units, at.kept);
    for (std::size_t t = 1; t < rows.size(); ++t)
        if (!at.kept[t] && !at.kept[t - 1] && isTail(at.tune, at.units[t]))
            rows[t] = rows[t - 1];
    return rows;
}

struct WayRow {
    Way way;
    std::string_view id;
    std::string_view name;
    std::string_view words;
};
constexpr std::array wayRows{
    WayRow{Way::Usual, "usual", base::marked("Usual"), base::marked("as most players would")},
    WayRow{Way::Plainer, "plainer", base::marked("Plainer"),
           base::marked("fewer chords, fewer changes")},
    WayRow{Way::Richer, "richer", base::marked("Richer"),
           base::marked("sevenths at closes, a moving bass")},
    WayRow{Way::Open, "open", base::marked("Open"), base::marked("fifths, the mode unsaid")},
    WayRow{Way::Drone, "drone", base::marked("Drone"),
           base::marked("one open fifth under all")},
};
WayRow const& rowOf(Way way)
{
    return *std::find_if(wayRows.begin(), wayRows.end(),
                         [way](WayRow const& row) { return row.way == way; });
}

} // namespace

std::string_view wayId(Way way) { return rowOf(way).id; }
std::string_view wayName(Way way) { return base::wordsFor(rowOf(way).name); }
std::string_view wayWords(Way way) { return base::wordsFor(rowOf(way).words); }
std::optional<Way> wayFrom(std::string_view id)
{
    for (WayRow const& row : wayRows)
        if (row.id == id) return row.way;
    return std::nullopt;
}

std::vector<std::vector<int>> likelihoods(ChordTable const& table, tune::Tune const& tune,
                                          std::vector<Unit> const& units,
                                          std::vector<Heard> const& heard)
{
    if (units.empty()) return {};
    auto rows = logLikelihoods(chainOf(table, units, heard));
    hearTwins(rows, tune, units, Kept(units.size()));
    return rows;
}

std::vector<Degree> usualDegrees(ChordTable const& table, tune::Tune const& tune)
{
    std::vector<Unit> const units = unitsOf(tune);
    if (units.empty()) return {};
    auto const frames = framesOf(tune);
    Kept const kept(units.size());
    auto const rows = rowsOf(table, {tune, units, frames, kept}, tune.key, Way::Usual);
    std::vector<Degree> degrees;
    for (std::size_t t = 0; t < units.size(); ++t)
        degrees.push_back(chosenDegree(table, rows[t], tune, units[t],
                                       signature(tune.bars[units[t].bar].key)));
    return degrees;
}

Suggestion suggestChords(Learned const& learned, tune::Tune const& tune,
                         ChordWishes const& wishes)
{
    Suggestion out;
    constexpr int mostBars = 3000; // more than can be arranged
    if (tune.bars.size() > mostBars) return out;
    out.key = foundKey(learned.keys, tune);
    out.heardIn = homeOf(tune, out.key);
    out.modeUnsure = modeIsUnsure(out.key);
    std::vector<Unit> const units = unitsOf(tune);
    if (units.empty() || learned.chords.degrees.empty()) return out;

    Frames const frames = framesFor(tune, out.heardIn);
    Kept const kept = keptChords(tune, units, wishes);
    std::vector<Logs> const rows =
        rowsOf(learned.chords, {tune, units, frames, kept}, out.heardIn, wishes.way);

    std::vector<int> signatures;
    for (std::size_t t = 0; t < units.size(); ++t) {
        Key const inBar = tune.bars[units[t].bar].key;
        signatures.push_back(signature(inBar == tune.key ? out.heardIn : inBar));
        Degree const best =
            chosenDegree(learned.chords, rows[t], tune, units[t], signatures.back());
        out.chords.push_back({units[t],
                              kept[t] ? *kept[t] : chordOn(best, signatures[t]),
                              {},
                              kept[t].has_value()});
    }
    fillLikely(out, tune, learned.chords, rows, signatures);
    out.leastSure = leastSureFirst(out.chords);
    dress(out, tune, wishes.way);
    return out;
}

tune::Tune withChords(tune::Tune tune, Suggestion const& suggestion)
{
    auto kept = originsKept(tune, suggestion);
    kept.push_back(tune::ChordOrigin::Set); // also where one begins in the middle of a unit
    for (tune::Bar& bar : tune.bars)
        std::erase_if(bar.chords, [&kept](tune::ChordMark const& mark) {
            return std::find(kept.begin(), kept.end(), originOf(mark)) == kept.end();
        });
    for (FoundChord const& found : suggestion.chords) {
        tune::Bar& bar = tune.bars[found.unit.bar];
        bool const begins =
            found.unit.opensBar && (found.unit.barOfStrain == 0 || !bar.endings.empty());
        if (found.kept || (!begins && inForce(tune, found.unit) == found.chord)) continue;
        bar.chords.push_back(
            tune::chordMark(found.unit.at, found.chord, tune::ChordOrigin::Found));
        std::stable_sort(
            bar.chords.begin(), bar.chords.end(),
            [](tune::ChordMark const& a, tune::ChordMark const& b) { return a.at < b.at; });
    }
    return tune;
}

std::vector<std::pair<tune::BarIndex, tune::BarIndex>> unletteredBars(tune::Tune const& tune)
{
    constexpr int leastBars = 8;
    std::vector<std::pair<tune::BarIndex, tune::BarIndex>> runs;
    int const bars = tune.bars.size();
    int lettered = 0;
    bool silent = false; // as the chord before says
    for (tune::BarIndex from = 0; from < bars;) {
        auto const& marks = tune.bars[from].chords;
        if (!marks.empty()) {
            silent = music::isNoChord(marks.back().chord);
            ++lettered;
            ++from;
            continue;
        }
        tune::BarIndex past = from + 1;
        while (past < bars && tune.bars[past].chords.empty()) ++past;
        if (past - from >= leastBars && !silent) runs.emplace_back(from, past - 1);
        from = past;
    }
    int without = 0;
    for (auto const& [from, to] : runs) without += to - from + 1;
    if (lettered < leastBars || 2 * lettered < bars - without) runs.clear();
    return runs;
}

std::optional<music::Chord> homeAtEnd(tune::Tune const& tune)
{
    if (tune.bars.empty() || !tune.bars.back().chords.empty()) return std::nullopt;
    auto const spans = tune::chordSpans(tune);
    int const last = tune.bars.size() - 1;
    if (spans.empty() || spans.back().bar != last) return std::nullopt;
    Key const key = tune.bars.back().key;
    music::Chord home = chordOn(homeDegree(key.mode), signature(key));
    if (music::contains(spans.back().chord, pitchClass(key.tonic))) return std::nullopt;
    std::optional<int> end;
    for (tune::Note const& note : tune.bars.back().notes)
        for (music::Pitch const& pitch : note.pitches) {
            end = pitchClass(pitch);
            if (!music::contains(home, *end)) return std::nullopt;
        }
    if (end != pitchClass(key.tonic)) return std::nullopt;
    return home;
}

tune::Tune withHomeAtEnd(tune::Tune tune)
{
    if (auto const home = homeAtEnd(tune))
        tune.bars.back().chords = {tune::chordMark({}, *home, tune::ChordOrigin::Found)};
    return tune;
}

tune::Tune withUnletteredFilled(Learned const& learned, tune::Tune tune)
{
    auto const runs = unletteredBars(tune);
    if (runs.empty()) return tune;
    Suggestion found = suggestChords(learned, tune, {Way::Usual, true, true});
    std::erase_if(found.chords, [&runs](FoundChord const& chord) {
        return !chord.kept && std::ranges::none_of(runs, [&chord](auto const& run) {
            return chord.unit.bar >= run.first && chord.unit.bar <= run.second;
        });
    });
    // Each run says its first chord, whatever was carried up to it.
    tune::Tune filled = withChords(tune, found);
    for (auto const& [from, to] : runs) {
        auto const first =
            std::ranges::find_if(found.chords, [from = from](FoundChord const& chord) {
                return chord.unit.bar >= from;
            });
        if (first == found.chords.end() || first->unit.bar > to)
            continue; // pick-ups, or too long
        tune::Bar& bar = filled.bars[first->unit.bar];
        if (bar.chords.empty() || bar.chords.front().at > first->unit.at)
            bar.chords.insert(bar.chords.begin(), tune::chordMark(first->unit.at, first->chord,
                                                                  tune::ChordOrigin::Found));
    }
    return filled;
}

tune::Tune withFoundChords(Learned const& learned, tune::Tune tune, ChordWishes const& wishes)
{
    if (!wishes.keepSet)
        for (tune::Bar& bar : tune.bars)
            std::erase_if(bar.chords, [](tune::ChordMark const& mark) {
                return originOf(mark) == tune::ChordOrigin::Set;
            });
    Suggestion const suggestion = suggestChords(learned, tune, wishes);
    return withChords(std::move(tune), suggestion);
}

} // namespace harmony
