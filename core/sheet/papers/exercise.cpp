#include "core/sheet/papers/exercise.h"

#include "core/base/words.h"
#include "core/notation/lefthand.h"
#include "core/pattern/layout.h"

#include <array>

namespace sheet {

using arrange::VoicedNote;
using music::Length;
using pattern::Pattern;

namespace {

constexpr int usualLowestRoot = 43; // G2 in MIDI keys: open fifths are clear from here up
constexpr int wideLowestRoot = 40;  // E2
constexpr int tenth = 10;           // strings
constexpr std::size_t mostTriads = 6;
constexpr int highestOnBass = music::diatonicStep({music::Letter::B, 0, 4});
constexpr int lowestOnTreble = music::diatonicStep({music::Letter::C, 0, 4});

int alterIn(music::Key key, music::Letter letter)
{
    return music::alterIn(music::signature(key), letter);
}

// The note so many steps above another in the scale of the key.
music::PitchName scaleStep(music::Key key, music::Letter from, int steps)
{
    auto const letter = static_cast<music::Letter>((music::index(from) + steps) % 7);
    return {letter, alterIn(key, letter)};
}

int semitonesUp(music::PitchName from, music::PitchName to)
{
    return (music::pitchClass(to) - music::pitchClass(from) + 12) % 12;
}

tune::Tune silentTune(music::Key key, music::Meter meter, std::vector<music::Chord> chords)
{
    tune::Tune tune;
    tune.key = key;
    tune.meter = meter;
    for (music::Chord& chord : chords) {
        tune::Bar bar;
        bar.meter = meter;
        bar.key = key;
        bar.length = music::barLength(meter);
        tune::Note rest;
        rest.length = bar.length;
        rest.hidden = true;
        bar.notes.push_back(std::move(rest));
        std::string written = music::plain(chord);
        bar.chords.push_back({{}, std::move(chord), std::move(written), std::nullopt});
        tune.bars.push_back(std::move(bar));
    }
    tune.bars.back().closes = tune::BarLine::Final;
    tune::numberBars(tune.bars);
    return tune;
}

arrange::Voicing voicingOf(Pattern const& pattern, pattern::Rhythm const& rhythm,
                           harp::StringIndex rootString)
{
    arrange::Voicing voicing{pattern.name, rootString, rhythm.name, false, {}};
    for (std::size_t i = 0; i < rhythm.onsets.size(); ++i) {
        Length const end = i + 1 < rhythm.onsets.size() ? rhythm.onsets[i + 1] : rhythm.span;
        for (int index : rhythm.plays[i]) {
            pattern::PatternNote const& note = pattern.notes[static_cast<std::size_t>(index)];
            voicing.notes.push_back({rhythm.onsets[i], end - rhythm.onsets[i],
                                     pattern::stringOf(rootString, note.degree), note.finger,
                                     note.degree, 0});
        }
    }
    return voicing;
}

bool reachesFarAbove(Score const& score)
{
    for (PrintedBar const& bar : score.bars)
        for (StaffNote const& note : bar.upper.notes)
            for (music::Pitch pitch : note.pitches)
                if (music::diatonicStep(pitch) > highestOnBass) return true;
    return false;
}

// The notes of a staff on one side of middle C; where others stand, a rest that is not printed.
StaffBar side(StaffBar const& bar, bool upper)
{
    StaffBar out;
    for (StaffNote note : bar.notes) {
        std::vector<music::Pitch> pitches;
        std::vector<int> fingers;
        for (std::size_t i = 0; i < note.pitches.size(); ++i) {
            if ((music::diatonicStep(note.pitches[i]) >= lowestOnTreble) != upper) continue;
            pitches.push_back(note.pitches[i]);
            if (i < note.fingers.size()) fingers.push_back(note.fingers[i]);
        }
        note.hidden = pitches.empty();
        if (note.hidden) note.tied = note.rolled = note.bracketed = false;
        note.pitches = std::move(pitches);
        note.fingers = std::move(fingers);
        out.notes.push_back(std::move(note));
    }
    return out;
}

} // namespace

std::vector<Triad> triadsOf(music::Key key)
{
    constexpr std::array numerals{"I", "II", "III", "IV", "V", "VI", "VII"};
    constexpr std::array minors{"i", "ii", "iii", "iv", "v", "vi", "vii"};
    constexpr std::array order{0, 3, 4, 5, 1, 2, 6}; // steps above the tonic
    std::vector<Triad> triads;
    for (int steps : order) {
        music::PitchName const root = scaleStep(key, key.tonic.letter, steps);
        int const third = semitonesUp(root, scaleStep(key, root.letter, 2));
        int const fifth = semitonesUp(root, scaleStep(key, root.letter, 4));
        if (fifth != 7 || triads.size() == mostTriads) continue;
        bool const minor = third == 3;
        auto chord = music::chordFrom(music::plain(root) + (minor ? "m" : ""));
        auto const place = static_cast<std::size_t>(steps);
        if (chord) triads.push_back({*std::move(chord), (minor ? minors : numerals)[place]});
    }
    return triads;
}

std::optional<harp::StringIndex> rootStringFor(harp::Harp const& harp,
                                               harp::LeverSetting const& setup,
                                               Pattern const& pattern, music::PitchName root)
{
    int const usual =
        pattern::stringsSpanned(pattern) > tenth ? wideLowestRoot : usualLowestRoot;
    int const least = std::max(usual, pattern.lowestRoot);
    std::optional<harp::StringIndex> below;
    for (harp::StringIndex const string : harp.indices()) {
        music::Pitch const pitch = harp::sounding(harp.string(string), setup[string]);
        int const low = pattern::stringOf(string, pattern::lowestDegree(pattern));
        int const high = pattern::stringOf(string, pattern::highestDegree(pattern));
        if (nameOf(pitch) != root || low < 0 || high >= harp.count()) continue;
        if (music::midi(pitch) >= least) return string;
        below = string;
    }
    return below;
}

base::Result<arrange::Arrangement> exerciseOf(Exercise const& exercise, Pattern const& pattern,
                                              music::Meter meter,
                                              std::vector<music::Chord> const& chords)
{
    auto setup = harp::settingFor(exercise.harp, exercise.key);
    if (!setup) return setup.error();
    std::vector<music::Chord> kept;
    std::vector<harp::StringIndex> roots;
    for (music::Chord const& chord : chords)
        if (auto const root = rootStringFor(exercise.harp, *setup, pattern, chord.root)) {
            kept.push_back(chord);
            roots.push_back(*root);
        }
    if (kept.empty())
        return base::Fault{base::FaultCode::NothingPlayable,
                           base::say("the pattern {}", pattern.name),
                           base::said("it is wider than this harp")};
    Length const span = music::barLength(meter);
    pattern::Rhythm const rhythm =
        pattern::rhythmsFor(exercise.book, pattern, meter, span).front();
    arrange::Arrangement out{silentTune(exercise.key, meter, kept),
                             0,
                             exercise.harp,
                             exercise.hand,
                             exercise.level,
                             {*std::move(setup), {}},
                             {},
                             {},
                             {},
                             {}};
    out.playing = tune::played(out.tune);
    out.tempo = tune::tempoOf(out.tune);
    for (std::size_t bar = 0; bar < kept.size(); ++bar) {
        int const index = static_cast<int>(bar);
        arrange::Position position{tune::BarIndex(index), {}, span, kept[bar], {}};
        tune::PlayedBarIndex const played(index); // nothing is repeated
        position.played.push_back({played, 1, out.playing.bars[played].at});
        out.positions.push_back(
            {std::move(position), voicingOf(pattern, rhythm, roots[bar]), false});
    }
    return out;
}

Score exerciseScore(arrange::Arrangement const& arrangement)
{
    Score score;
    score.tune = arrangement.tune;
    score.grand = false;
    score.clef = Clef::Bass;
    for (tune::BarIndex const i : score.tune.bars.indices()) {
        PrintedBar bar;
        bar.upper = notation::leftBar(arrangement, i);
        for (tune::ChordMark const& mark : score.tune.bars[i].chords)
            bar.chords.push_back({mark.at, music::shown(mark.chord), std::nullopt});
        score.bars.push_back(std::move(bar));
    }
    spreadOverStaves(score);
    return score;
}

void spreadOverStaves(Score& score)
{
    score.grand = reachesFarAbove(score);
    if (!score.grand) return;
    for (PrintedBar& bar : score.bars) {
        bar.lower = side(bar.upper, false);
        bar.upper = side(bar.upper, true);
    }
}

} // namespace sheet
