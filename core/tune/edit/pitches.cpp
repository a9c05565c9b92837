#include "core/tune/edit/pitches.h"

#include <algorithm>
#include <cstdlib>
#include <functional>

namespace tune {

using music::Pitch;

namespace {

Bar const& barAt(Tune const& tune, BarIndex bar) { return tune.bars[bar]; }
Note& noteOf(Tune& tune, NoteAt at) { return tune.bars[at.bar].notes[at.note]; }

std::optional<NoteAt> next(Tune const& tune, NoteAt at)
{
    if (++at.note < static_cast<int>(barAt(tune, at.bar).notes.size())) return at;
    if (++at.bar == tune.bars.size()) return std::nullopt;
    return NoteAt{at.bar, 0};
}

std::optional<NoteAt> before(Tune const& tune, NoteAt at)
{
    if (--at.note >= 0) return at;
    if (--at.bar < 0) return std::nullopt;
    return NoteAt{at.bar, barAt(tune, at.bar).notes.beyond() - 1};
}

// The note with all that are tied to it, the first first.
std::vector<NoteAt> tiedTogether(Tune const& tune, NoteAt at)
{
    auto first = at;
    for (auto back = before(tune, first); back && noteAt(tune, *back)->tied;
         back = before(tune, first))
        first = *back;
    std::vector<NoteAt> out{first};
    for (auto on = next(tune, first); on && noteAt(tune, out.back())->tied;
         on = next(tune, out.back()))
        out.push_back(*on);
    return out;
}

bool fits(Pitch pitch)
{
    constexpr int highest = 8; // octave
    return pitch.octave >= 0 && pitch.octave <= highest;
}

void sort(std::vector<Pitch>& pitches)
{
    std::sort(pitches.begin(), pitches.end(), [](Pitch a, Pitch b) {
        return std::pair(midi(a), diatonicStep(a)) < std::pair(midi(b), diatonicStep(b));
    });
    pitches.erase(std::unique(pitches.begin(), pitches.end()), pitches.end());
}

Tune moved(Tune tune, NoteAt at, std::function<Pitch(Pitch, music::Key)> const& by)
{
    if (!isIn(tune, at)) return tune;
    Tune out = tune;
    for (NoteAt each : tiedTogether(tune, at)) {
        Note& note = noteOf(out, each);
        for (Pitch& pitch : note.pitches) {
            pitch = by(pitch, barAt(tune, at.bar).key);
            if (!fits(pitch)) return tune;
        }
        sort(note.pitches);
    }
    return out;
}

int inKey(music::Key key, music::Letter letter) { return alterIn(signature(key), letter); }

// The pitch of a key number: of the key; else on the same letter; else a sharp on the way up
// and a flat on the way down.
Pitch spelt(int key, Pitch from, music::Key in, int way)
{
    Pitch same = from;
    same.alter += key - midi(from);
    std::optional<Pitch> bent;
    for (int step = diatonicStep(from) - 1; step <= diatonicStep(from) + 1; ++step) {
        Pitch pitch = music::naturalAt(step);
        pitch.alter = key - midi(pitch);
        if (pitch.alter == inKey(in, pitch.letter)) return pitch;
        if (std::abs(pitch.alter) <= 1 && (pitch.alter == 0 || pitch.alter == way) && !bent)
            bent = pitch;
    }
    if (std::abs(same.alter) <= 1) return same;
    return bent.value_or(same);
}

} // namespace

Pitch typedPitch(Tune const& tune, NoteAt at, music::Letter letter)
{
    Pitch near{music::Letter::B, 0, 4};
    if (isOpenIn(tune, at))
        for (auto back = before(tune, at); back; back = before(tune, *back))
            if (Note const& note = *noteAt(tune, *back); !note.pitches.empty()) {
                near = note.pitches.back();
                break;
            }
    constexpr int fourth = 3; // steps
    Pitch pitch{letter, 0, near.octave};
    while (diatonicStep(pitch) - diatonicStep(near) > fourth) --pitch.octave;
    while (diatonicStep(near) - diatonicStep(pitch) > fourth) ++pitch.octave;
    // Leap by leap it may go beyond what can be read again.
    while (!fits(pitch)) pitch.octave += pitch.octave < 0 ? 1 : -1;
    if (!isOpenIn(tune, at)) return pitch;
    Bar const& bar = barAt(tune, at.bar);
    pitch.alter = inKey(bar.key, letter);
    for (NoteIndex i = 0; i < at.note; ++i)
        for (Pitch const& earlier : bar.notes[i].pitches)
            if (earlier.letter == letter) pitch.alter = earlier.alter;
    return pitch;
}

Tune withStep(Tune tune, NoteAt at, int strings)
{
    return moved(std::move(tune), at, [strings](Pitch pitch, music::Key key) {
        Pitch out = music::naturalAt(diatonicStep(pitch) + strings);
        out.alter = inKey(key, out.letter);
        return out;
    });
}

Tune withSemitone(Tune tune, NoteAt at, int semitone)
{
    return moved(std::move(tune), at, [semitone](Pitch pitch, music::Key key) {
        return spelt(midi(pitch) + semitone, pitch, key, semitone > 0 ? 1 : -1);
    });
}

Tune withOctave(Tune tune, NoteAt at, int octaves)
{
    return moved(std::move(tune), at, [octaves](Pitch pitch, music::Key) {
        pitch.octave += octaves;
        return pitch;
    });
}

Tune withTie(Tune tune, NoteAt at)
{
    if (!isIn(tune, at) || noteAt(tune, at)->pitches.empty()) return tune;
    Note& note = noteOf(tune, at);
    if (note.tied) {
        note.tied = false;
        return tune;
    }
    auto const on = next(tune, at);
    if (!on) return tune;
    std::vector<Pitch> const& there = noteAt(tune, *on)->pitches;
    note.tied = std::any_of(there.begin(), there.end(), [&note](Pitch pitch) {
        return std::find(note.pitches.begin(), note.pitches.end(), pitch) != note.pitches.end();
    });
    return tune;
}

Tune withGraces(Tune tune, NoteAt at, std::vector<Pitch> graces)
{
    if (!isIn(tune, at) || noteAt(tune, at)->pitches.empty()) return tune;
    noteOf(tune, at).graces = std::move(graces);
    return tune;
}

} // namespace tune
