#include "core/proposal/remedies.h"

#include "core/base/words.h"
#include "core/levers/keyfit.h"
#include "core/levers/leverplan.h"
#include "core/proposal/keywish.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <functional>

namespace proposal {

namespace {

using tune::Change;
using tune::NoteChange;
using tune::NotePlace;

// A tune that needs more notes changed than this is another tune.
constexpr std::size_t mostChanges = 24;

// The move in which a brief is mended: the one it asks for, else the best of those in which
// only some notes stand in the way.
music::Interval moveToMend(Brief const& brief)
{
    auto const* const wished = std::get_if<music::Key>(&brief.key);
    auto const fits = levers::keyFits(tune::changed(brief.tune, brief.changes), brief.harp,
                                      tempoWished(brief), brief.level);
    std::optional<music::Interval> found;
    for (levers::KeyFit const& fit : fits) {
        if (fit.possible || !fit.why || fit.why->code == base::FaultCode::KeyBeyondTuning)
            continue;
        if (wished && !(fit.key.tonic == wished->tonic)) continue;
        if (!found || fit.moved == music::Interval{}) found = fit.moved;
    }
    return found.value_or(music::Interval{});
}

// Where the levers of a brief stand in the way.
std::optional<levers::Refusal> refusalOf(Brief const& brief, music::Interval moved)
{
    tune::Tune const tune =
        tune::transposed(tune::changed(brief.tune, brief.changes), moved);
    auto const planning = levers::leverPlanFor(brief.harp, tune, tune::played(tune),
                                               tempoWished(brief), brief.level);
    return planning.refusal;
}

bool inKey(tune::Tune const& tune, NotePlace place)
{
    auto const pitch = tune::pitchOf(tune, place);
    auto const key = tune.bars[place.bar].key;
    return pitch && pitch->alter == music::alterIn(music::signature(key), pitch->letter);
}

// The note to be changed first: of two on one string the one with the accidental.
std::vector<NotePlace> inQuestion(tune::Tune const& tune, levers::Refusal const& refusal)
{
    std::vector<NotePlace> places;
    if (refusal.note) places.push_back(*refusal.note);
    if (refusal.after) places.push_back(*refusal.after);
    std::stable_partition(places.begin(), places.end(),
                          [&](NotePlace place) { return !inKey(tune, place); });
    return places;
}

// The changes a kind of help makes, one after the other, until the levers can serve the tune;
// none where it leads nowhere.
std::optional<Brief> withChanges(Brief brief, std::vector<Change> const& kinds,
                                 bool onlyAccidentals)
{
    music::Interval const moved = moveToMend(brief);
    auto refusal = refusalOf(brief, moved);
    if (!refusal) return std::nullopt;
    std::size_t const before = brief.changes.size();
    while (refusal) {
        if (!refusal->note || brief.changes.size() - before == mostChanges)
            return std::nullopt;
        tune::Tune const tune = tune::changed(brief.tune, brief.changes);
        bool done = false;
        for (NotePlace const place : inQuestion(tune, *refusal)) {
            if (onlyAccidentals && inKey(tune, place)) continue;
            for (Change const kind : kinds) {
                bool const again =
                    std::any_of(brief.changes.begin(), brief.changes.end(),
                                [&](NoteChange const& c) { return c.place == place; });
                if (again) continue;
                Brief tried = brief;
                tried.changes.push_back({place, kind});
                auto next = refusalOf(tried, moved);
                // Led on: to the end, or to another note.
                if (next && (next->note == refusal->note || next->note == refusal->after))
                    continue;
                brief = std::move(tried);
                refusal = std::move(next);
                done = true;
                break;
            }
            if (done) break;
        }
        if (!done) return std::nullopt;
    }
    return brief;
}

std::string joined(std::vector<std::string> const& names)
{
    if (names.size() == 1) return names.front();
    return base::say("{} and {}", fmt::join(names.begin(), names.end() - 1, ", "),
                     names.back());
}

// "the C♯5 in bar 7 and the F♯4 in bars 9, 11": the notes of a remedy's own changes.
std::string notesChanged(Brief const& before, Brief const& after, std::optional<Change> only)
{
    std::vector<std::pair<std::string, std::vector<tune::BarIndex>>> byPitch; // and bars
    for (std::size_t i = before.changes.size(); i < after.changes.size(); ++i) {
        NoteChange const& change = after.changes[i];
        if (only && change.change != *only) continue;
        std::vector<NoteChange> const earlier(after.changes.begin(),
                                              after.changes.begin() + std::ptrdiff_t(i));
        auto const pitch =
            tune::pitchOf(tune::changed(before.tune, earlier), change.place);
        std::string const name = pitch ? music::shown(*pitch) : base::said("remedy|note");
        auto known = std::find_if(byPitch.begin(), byPitch.end(),
                                  [&](auto const& p) { return p.first == name; });
        if (known == byPitch.end()) known = byPitch.insert(known, {name, {}});
        if (known->second.empty() || known->second.back() != change.place.bar)
            known->second.push_back(change.place.bar);
    }
    std::vector<std::string> names;
    for (auto const& [name, bars] : byPitch) {
        std::vector<std::string> numbers;
        for (tune::BarIndex bar : bars) {
            int const number = before.tune.bars[bar].number;
            numbers.push_back(number > 0 ? std::to_string(number) : base::said("the pick-up"));
        }
        names.push_back(numbers.size() == 1
                            ? base::say("the {} in bar {}", name, joined(numbers))
                            : base::say("the {} in bars {}", name, joined(numbers)));
    }
    return names.empty() ? std::string() : joined(names);
}

std::string octaveSentence(Brief const& before, Brief const& after)
{
    std::vector<std::string> parts;
    std::string const higher = notesChanged(before, after, Change::OctaveHigher);
    std::string const lower = notesChanged(before, after, Change::OctaveLower);
    if (!higher.empty()) parts.push_back(base::say("{} an octave higher", higher));
    if (!lower.empty()) parts.push_back(base::say("{} an octave lower", lower));
    return base::say("Play {}.", joined(parts));
}

std::string keySentence(Proposal const& proposal)
{
    music::Key const key = proposal.arrangement.tune.key;
    int const semitones = proposal.moved.semitones;
    std::string const where = semitones == 0  ? base::said("where it is written")
                              : semitones > 0 ? base::say("{} semitones higher", semitones)
                                              : base::say("{} semitones lower", -semitones);
    return base::say("Play it in {}, {}.", music::shown(key), where);
}

// Adds the remedy if its brief is arranged.
void tryOne(std::vector<Remedy>& out, Help help, Brief const& brief,
            std::function<std::string(Proposal const&)> const& sentence)
{
    if (auto const proposal = propose(brief)) out.push_back({help, sentence(*proposal), brief});
}

void tryChanges(std::vector<Remedy>& out, Brief const& brief)
{
    struct Kind {
        Help help;
        std::vector<Change> changes;
        bool onlyAccidentals;
    };
    std::array const kinds{
        Kind{Help::OtherOctave, {Change::OctaveLower, Change::OctaveHigher}, false},
        Kind{Help::LeaveOut, {Change::LeftOut}, false},
        Kind{Help::Plain, {Change::AsKeySays}, true}};
    for (Kind const& kind : kinds) {
        auto const after = withChanges(brief, kind.changes, kind.onlyAccidentals);
        if (!after) continue;
        tryOne(out, kind.help, *after, [&](Proposal const&) {
            if (kind.help == Help::OtherOctave) return octaveSentence(brief, *after);
            std::string const notes = notesChanged(brief, *after, std::nullopt);
            if (kind.help == Help::LeaveOut) return base::say("Leave out {}.", notes);
            return base::say("Play {} without the accidental.", notes);
        });
    }
}

void trySlower(std::vector<Remedy>& out, Brief const& brief)
{
    tune::Tempo const tempo = tempoWished(brief);
    double const own = tune::quartersPerMinute(tempo);
    for (double share : {0.9, 0.8, 0.7, 0.6, 0.5}) {
        Brief slower = brief;
        slower.quartersPerMinute = own * share;
        std::size_t const before = out.size();
        tryOne(out, Help::Slower, slower, [&](Proposal const& proposal) {
            return base::say(
                "Play it at {}.",
                tune::tempoWords(music::beatLength(proposal.arrangement.tune.meter),
                                 own * share));
        });
        if (out.size() > before) return;
    }
}

void tryLevels(std::vector<Remedy>& out, Brief const& brief,
               std::vector<harp::Level> const& levels)
{
    for (harp::Level const& level : levels) {
        if (level.number <= brief.level.number) continue;
        Brief higher = brief;
        higher.level = level;
        std::size_t const before = out.size();
        tryOne(out, Help::Level, higher, [&](Proposal const&) {
            return base::say("Arrange it for level {} ({}).", level.number, level.name);
        });
        if (out.size() > before) return;
    }
}

} // namespace

std::vector<Remedy> remediesFor(Brief const& brief, std::vector<harp::Level> const& levels)
{
    std::vector<Remedy> out;
    if (!tune::hasNotes(brief.tune) || !tune::hasChords(brief.tune)) return out;
    if (!std::holds_alternative<BestKey>(brief.key)) {
        Brief best = brief;
        best.key = BestKey{};
        tryOne(out, Help::OtherKey, best,
               [](Proposal const& proposal) { return keySentence(proposal); });
    }
    tryChanges(out, brief);
    trySlower(out, brief);
    tryLevels(out, brief, levels);
    return out;
}

std::string_view helpId(Help help)
{
    constexpr std::array ids{"key", "octave", "leave-out", "plain", "slower", "level"};
    return ids[static_cast<std::size_t>(help)];
}

} // namespace proposal
