#include "core/arrange/view.h"

#include "core/arrange/phrases.h"
#include "core/harp/seats.h"

#include <algorithm>

namespace arrange {

namespace {

using music::Length;
using music::Moment;
using music::Rational;

double wholes(Length l) { return l.wholes.toDouble(); }

music::Meter meterOf(Scene const& scene, Position const& p)
{
    return scene.tune.bars[p.bar].meter;
}

base::List<harp::StringIndex, std::int16_t> soundingAt(Scene const& scene, Moment at)
{
    base::List<harp::StringIndex, std::int16_t> midi;
    midi.reserve(scene.harp.count());
    for (harp::StringIndex const s : scene.harp.indices())
        midi.push_back(static_cast<std::int16_t>(
            music::midi(harp::pitchAt(scene.harp, scene.levers, s, at))));
    return midi;
}

int strengthOf(Scene const& scene, tune::PlayedNote const& note)
{
    tune::PlayedBar const& played = scene.playing.bars[note.playedBar];
    tune::Bar const& bar = scene.tune.bars[played.bar];
    return music::beatStrength(bar.meter, (note.at - played.at) + bar.upbeat);
}

std::vector<TuneNote> tuneDuring(Scene const& scene, Moment from, Length span, Length longest)
{
    std::vector<TuneNote> out;
    Moment const to = from + span;
    std::vector<tune::PlayedNote> const& notes = scene.playing.notes;
    auto const first =
        std::ranges::lower_bound(notes, from - longest, {}, &tune::PlayedNote::at);
    for (auto i = first; i != notes.end() && i->at < to; ++i) {
        tune::PlayedNote const& note = *i;
        if (note.at + note.held <= from) continue;
        std::optional<harp::StringIndex> const string =
            harp::stringAtMoment(scene.harp, scene.levers, note.pitch, note.at);
        if (!string) continue;
        out.push_back({wholes(note.at - from), wholes(note.at + note.held - from),
                       note.at - from, *string, music::midi(note.pitch),
                       strengthOf(scene, note)});
    }
    std::ranges::stable_sort(out, [](TuneNote const& a, TuneNote const& b) {
        return a.from != b.from ? a.from < b.from : a.string < b.string;
    });
    return out;
}

std::vector<NearFlip> flipsDuring(Scene const& scene, Moment from, Length span)
{
    std::vector<NearFlip> out;
    Moment const to = from + span;
    for (harp::Flip const& f : scene.levers.flips) {
        bool const turnsHere = f.at > from && f.at < to;
        bool const busyHere = f.freeFrom < to && f.freeTo > from;
        if (!turnsHere && !busyHere) continue;
        int const midi = music::midi(harp::sounding(scene.harp.string(f.string), f.to));
        out.push_back({wholes(f.at - from), wholes(f.freeFrom - from), wholes(f.freeTo - from),
                       f.string, midi, f.hand});
    }
    return out;
}

std::vector<PassView> passesOf(Scene const& scene, Position const& position, Length longest)
{
    std::vector<PassView> passes;
    for (Occurrence const& when : position.played) {
        PassView pass{tuneDuring(scene, when.at, position.span, longest),
                      soundingAt(scene, when.at), flipsDuring(scene, when.at, position.span)};
        if (std::ranges::find(passes, pass) == passes.end()) passes.push_back(std::move(pass));
    }
    return passes;
}

// Whether some string of the note's letter sounds it.
bool soundsSomewhere(Scene const& scene, PassView const& pass, music::PitchName name)
{
    for (harp::StringIndex const s : scene.harp.indices())
        if (scene.harp.string(s).open.letter == name.letter &&
            pass.midi[s] % 12 == music::pitchClass(name))
            return true;
    return false;
}

ChordView chordOf(Scene const& scene, PassView const& pass, music::Chord const& chord,
                  music::Key key)
{
    ChordView view;
    for (int pc = 0; pc < 12; ++pc)
        view.tone[static_cast<std::size_t>(pc)] = music::contains(chord, pc);
    bool const bassSounds = soundsSomewhere(scene, pass, music::lowest(chord));
    music::PitchName const lowest = bassSounds ? music::lowest(chord) : chord.root;
    view.root = music::pitchClass(chord.root);
    view.lowest = music::pitchClass(lowest);
    view.rootLetter = chord.root.letter;
    view.lowestLetter = lowest.letter;
    view.slash = view.lowest != view.root;
    view.onTonic = view.root == music::pitchClass(key.tonic);
    for (music::Interval const& tone : chord.tones) {
        int const pitchClass = (view.root + tone.semitones) % 12;
        if (tone.steps == 2) view.third = pitchClass;
        if (tone.steps == 4) view.fifth = pitchClass;
        if (tone.steps == 6) view.seventh = pitchClass;
    }
    for (music::Letter letter : music::allLetters) {
        music::PitchName const name{letter, music::alterIn(music::signature(key), letter)};
        view.inScale[static_cast<std::size_t>(music::pitchClass(name))] = true;
    }
    return view;
}

bool endsTune(Scene const& scene, Position const& position)
{
    Moment const end{scene.playing.total.wholes};
    return std::ranges::any_of(position.played, [&](Occurrence const& when) {
        return when.at + position.span >= end;
    });
}

bool endsPart(tune::Tune const& tune, tune::BarIndex bar)
{
    tune::Bar const& here = tune.bars[bar];
    bool const newPartNext = bar + 1 < tune.bars.size() && !tune.bars[bar + 1].part.empty();
    return here.repeatCloses || here.endingCloses || newPartNext ||
           here.closes == tune::BarLine::Double || here.closes == tune::BarLine::Final;
}

bool endsBar(Scene const& scene, Position const& position)
{
    tune::Bar const& bar = scene.tune.bars[position.bar];
    return position.at + position.span >= bar.length;
}

Turn turnOf(Scene const& scene, Position const& position)
{
    int played = 0;
    for (tune::PlayedBar const& bar : scene.playing.bars)
        if (bar.bar == position.bar) ++played;
    bool const standsForAll = static_cast<int>(position.played.size()) == played;
    return standsForAll ? Turn{} : Turn{position.played.front().pass, played};
}

bool endsPhrase(Scene const& scene, Position const& position)
{
    int const bar = barOfPart(scene.tune, position.bar);
    return endsBar(scene, position) && (bar + 1) % barsInPhrase == 0;
}

Close closeOf(Scene const& scene, Position const& position)
{
    if (endsTune(scene, position)) return Close::Tune;
    return endsBar(scene, position) && endsPart(scene.tune, position.bar) ? Close::Part
                                                                          : Close::None;
}

// Whether the position is a pick-up of up to half a bar or, at the end of a part, what takes
// its place: no longer than the pick-up of the tune, nor than a beat, after the chord that
// closes.
bool isUpbeat(Scene const& scene, Position const& position)
{
    tune::Bar const& bar = scene.tune.bars[position.bar];
    Length const beat = music::beatLength(bar.meter);
    if (bar.upbeat != Length{})
        return position.span <= std::max(beat, music::barLength(bar.meter) * Rational(1, 2));
    // A bar that is short by the pick-up has none in it: its last chord is the close, and so is
    // the home chord wherever it stands.
    bool const home =
        music::pitchClass(position.chord.root) == music::pitchClass(bar.key.tonic);
    if (home || bar.length < music::barLength(bar.meter) || endsTune(scene, position))
        return false;
    auto const first = std::ranges::find(scene.tune.bars, tune::Role::Tune, &tune::Bar::role);
    return first != scene.tune.bars.end() && first->upbeat != Length{} &&
           position.at != Length{} && position.span <= std::min(first->length, beat) &&
           endsBar(scene, position) && endsPart(scene.tune, position.bar);
}

// Whether the tune has the third of its key, and in one form.
bool isModeSure(tune::Tune const& tune)
{
    int const tonic = music::pitchClass(tune.key.tonic);
    bool minor = false;
    bool major = false;
    for (tune::Bar const& bar : tune.bars)
        for (tune::Note const& note : bar.notes)
            for (music::Pitch const pitch : note.pitches) {
                int const above = (music::midi(pitch) - tonic + 120) % 12;
                minor = minor || above == 3;
                major = major || above == 4;
            }
    return minor != major;
}

} // namespace

int midiAt(PassView const& pass, harp::StringIndex string, double at)
{
    int midi = pass.midi[string];
    for (NearFlip const& f : pass.flips)
        if (f.string == string && f.at > 0 && f.at <= at) midi = f.midi;
    return midi;
}

int strengthAt(View const& view, Length at)
{
    return music::beatStrength(view.meter, view.fromBar + at);
}

int tuneOnsets(View const& view, PassView const& pass)
{
    return static_cast<int>(std::ranges::count_if(
        pass.tune, [&](TuneNote const& n) { return n.from >= 0 && n.from < view.span; }));
}

Length longestNote(tune::Playing const& playing)
{
    Length longest;
    for (tune::PlayedNote const& note : playing.notes) longest = std::max(longest, note.held);
    return longest;
}

View viewOf(Scene const& scene, Position const& position, Length longest)
{
    tune::Bar const& bar = scene.tune.bars[position.bar];
    View view;
    view.meter = meterOf(scene, position);
    view.fromBar = bar.upbeat + position.at;
    view.spanLength = position.span;
    view.span = wholes(position.span);
    view.beat = wholes(music::beatLength(view.meter));
    view.secondsPerWhole = 60.0 / scene.tempo.beatsPerMinute / wholes(scene.tempo.beat);
    view.close = closeOf(scene, position);
    view.endsPhrase = view.close != Close::None || endsPhrase(scene, position);
    view.kind = scene.kind;
    if (auto const pulse = tune::pulseOf(view.kind, view.meter)) view.pulse = wholes(*pulse);
    view.upbeat = isUpbeat(scene, position);
    view.modeSure = view.close == Close::Tune && isModeSure(scene.tune);
    view.turn = turnOf(scene, position);
    view.passes = passesOf(scene, position, longest);
    view.chord = chordOf(scene, view.passes.front(), position.chord, bar.key);
    view.harp = &scene.harp;
    view.hand = &scene.hand;
    view.level = &scene.level;
    view.book = &scene.book;
    view.taste = &scene.weights.taste;
    for (harp::HarpString const& s : scene.harp.strings())
        view.ringSeconds.push_back(harp::ringSeconds(s));
    return view;
}

} // namespace arrange
