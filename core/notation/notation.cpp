#include "core/notation/notation.h"

#include "core/notation/lefthand.h"
#include "core/notation/levercues.h"
#include "core/notation/melody.h"
#include "core/notation/placings.h"
#include "core/notation/words.h"
#include "core/tune/repeatsigns.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace notation {

using music::Length;

namespace {

// Tune, chords and words over the staff: what every sheet has.
Notation lead(tune::Tune tune, std::vector<arrange::NoteFingers> const& fingers,
              std::vector<arrange::AddedBelow> const& added)
{
    tune = tune::withRepeatSigns(std::move(tune));
    Notation out;
    out.grand = false;
    for (tune::BarIndex const i : tune.bars.indices()) {
        tune::Bar const& written = tune.bars[i];
        PrintedBar bar;
        bar.upper = melodyBar(tune, i, fingers, added);
        bar.chords = chordLabels(written);
        bar.annotations = annotationLabels(written);
        bar.navigation = navigationLabels(written);
        bar.dynamics = dynamicLabels(written);
        out.bars.push_back(std::move(bar));
    }
    out.hairpins = hairpins(tune);
    out.tune = std::move(tune);
    return out;
}

// What the right hand plucks at a moment of a written bar: names by key of the keyboard.
using Plucked = std::map<std::pair<int, Length>, std::map<int, music::Pitch>>;

Plucked pluckedByTheRight(arrange::Arrangement const& arrangement)
{
    Plucked out;
    for (arrange::HandNote const& note : arrange::handNotes(arrangement)) {
        if (note.hand != harp::Side::Right || note.position) continue;
        tune::PlayedBar const& played = arrangement.playing.bars[note.playedBar];
        out[{played.bar, note.at - played.at}].emplace(music::midi(note.pitch), note.pitch);
    }
    return out;
}

// Notes are named by the strings that are plucked; where that is not the tune's own name, it
// stands above in brackets, once a bar.
void spellByString(Notation& notation, arrange::Arrangement const& arrangement)
{
    Plucked const plucked = pluckedByTheRight(arrangement);
    for (tune::BarIndex const b : notation.bars.indices()) {
        PrintedBar& bar = notation.bars[b];
        std::map<int, music::Pitch> renamed; // by key of the keyboard, for signs that are tied
        std::set<std::string> told;
        for (StaffNote& sign : bar.upper.notes) {
            auto const at = plucked.find({static_cast<int>(b), sign.at});
            for (music::Pitch& pitch : sign.pitches) {
                music::Pitch const written = pitch;
                if (at != plucked.end()) {
                    auto const found = at->second.find(music::midi(pitch));
                    if (found == at->second.end() || found->second == written) continue;
                    pitch = found->second;
                    renamed[music::midi(written)] = pitch;
                    std::string const name = '(' + music::shown(nameOf(written)) + ')';
                    if (told.insert(name).second)
                        bar.annotations.push_back({sign.at, name, std::nullopt});
                } else if (auto const same = renamed.find(music::midi(written)); same != renamed.end()) {
                    pitch = same->second;
                }
            }
        }
        std::stable_sort(bar.annotations.begin(), bar.annotations.end(),
                         [](Label const& x, Label const& y) { return x.at < y.at; });
    }
}

} // namespace

Notation of(tune::Tune tune) { return lead(std::move(tune), {}, {}); }

Notation of(arrange::Arrangement const& arrangement, Kind kind, perform::Slowing slowing)
{
    tune::Tune tune = kind == Kind::Lead ? writtenTune(arrangement) : arrangement.tune;
    tune.tempo = arrangement.tempo;
    if (kind == Kind::Lead) return of(std::move(tune));
    bool const grand = kind == Kind::Arrangement;
    Notation out = grand
                       ? lead(std::move(tune), arrangement.rightFingers, arrangement.added)
                       : of(std::move(tune));
    out.grand = grand;
    out.slowing = slowingMark(arrangement, slowing);
    out.setupLine = harp::setupLine(arrangement.harp, arrangement.levers.setup);
    for (arrange::GaveWay const& one : arrangement.gaveWay)
        out.bars[one.bar].gaveWay.push_back({one.at, one.words, std::nullopt});
    for (tune::BarIndex const i : out.bars.indices()) {
        PrintedBar& bar = out.bars[i];
        bar.labels = patternLabels(arrangement, i);
        if (!grand) continue;
        bar.lower = leftBar(arrangement, i);
        bar.leverCues = leverCues(arrangement, i);
    }
    if (grand) {
        spellByString(out, arrangement);
        out.placings = placingBrackets(arrangement);
    }
    return out;
}

} // namespace notation
