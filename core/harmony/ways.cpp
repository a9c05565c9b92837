#include "core/harmony/ways.h"

#include <algorithm>
#include <array>

namespace harmony {

namespace {

using music::Chord;
using music::Mode;

int above(int upper, int lower) { return ((upper - lower) % 12 + 12) % 12; }

Chord withSuffix(Chord const& chord, std::string const& suffix)
{
    return *music::chordFrom(plain(chord.root) + suffix);
}

Chord openFifth(Chord const& chord) { return withSuffix(chord, "5"); }

bool isMajor(Chord const& chord) { return chord.suffix.empty() && !chord.bass; }

// Pitch classes of the whole tune.
std::array<bool, 12> heardIn(tune::Tune const& tune)
{
    std::array<bool, 12> has{};
    for (tune::Bar const& bar : tune.bars)
        for (tune::Note const& note : bar.notes)
            for (music::Pitch const& pitch : note.pitches)
                has[static_cast<std::size_t>(pitchClass(pitch))] = true;
    return has;
}

// Whether the tune bears a chord's third out: it has it, and not the other third beside it.
bool thirdIsBorneOut(Chord const& chord, std::array<bool, 12> const& has)
{
    if (chord.tones.size() < 2) return true;
    int const third = chord.tones[1].semitones;
    int const root = pitchClass(chord.root);
    auto const at = [&has, root](int up) { return has[static_cast<std::size_t>((root + up) % 12)]; };
    return at(third) && !at(third == 4 ? 3 : 4);
}

// A dominant that falls a fifth into its goal takes its seventh in the last unit before it, if
// the seventh is in the scale and does not rub against a long leading note of the tune.
void addSevenths(std::vector<FoundChord>& chords, std::array<bool, 12> const& has)
{
    for (std::size_t i = 0; i + 1 < chords.size(); ++i) {
        FoundChord& here = chords[i];
        FoundChord const& next = chords[i + 1];
        if (here.kept || !isMajor(here.chord)) continue;
        bool const falls =
            above(pitchClass(here.chord.root), pitchClass(next.chord.root)) == 7;
        bool const close = next.unit.barsToEnd == 0 || here.unit.barOfPhrase == 3 ||
                           here.unit.barOfPhrase == 7 || here.unit.barOfPhrase == 6;
        auto const seventh =
            static_cast<std::size_t>((pitchClass(here.chord.root) + 10) % 12);
        if (falls && close && has[seventh]) here.chord = withSuffix(here.chord, "7");
    }
}

// Passing basses, as counted in folk tunes with chords [own-chords]: a third in the bass is
// entered by step in seven of ten and left by step in eight.
void addPassingBasses(std::vector<FoundChord>& chords)
{
    for (std::size_t i = 1; i + 1 < chords.size(); ++i) {
        FoundChord& here = chords[i];
        if (here.kept || !isMajor(here.chord) || here.unit.barsToEnd == 0) continue;
        if (here.unit.first || here.unit.barOfStrain == 0) continue;
        FoundChord const& before = chords[i - 1];
        FoundChord const& after = chords[i + 1];
        if (before.chord.bass || before.chord.root == here.chord.root) continue;
        // The bass goes by step: down from the chord before or up to the one after, one or two
        // semitones on both sides.
        int const root = pitchClass(here.chord.root);
        int const third = (root + 4) % 12;
        auto const step = [](int a, int b) {
            int const d = above(a, b);
            return d == 1 || d == 2 || d == 10 || d == 11;
        };
        if (step(pitchClass(before.chord.root), third) &&
            step(pitchClass(after.chord.root), third) &&
            before.chord.root != after.chord.root)
            here.chord.bass = transposed(here.chord.root, {2, 4});
    }
    // The same chord for two units before a chord a fourth up: its third leads there.
    for (std::size_t i = 1; i + 1 < chords.size(); ++i) {
        FoundChord& here = chords[i];
        FoundChord const& before = chords[i - 1];
        FoundChord const& after = chords[i + 1];
        bool const stays = before.chord == here.chord && !here.unit.opensBar;
        bool const up = above(pitchClass(after.chord.root), pitchClass(here.chord.root)) == 5;
        if (!here.kept && isMajor(here.chord) && stays && up && !after.chord.bass &&
            after.unit.barsToEnd != 0 && after.unit.barOfStrain != 0)
            here.chord.bass = transposed(here.chord.root, {2, 4});
    }
}

} // namespace

Leaning leaningOf(Way way)
{
    switch (way) {
    case Way::Plainer: return {nat, nat / 2};
    case Way::Richer: return {-nat / 4, 0};
    default: return {0, 0};
    }
}

bool isPlain(Degree degree, Mode mode)
{
    using Q = Quality;
    static std::vector<Degree> const major{{0, Q::Major}, {5, Q::Major}, {7, Q::Major}};
    // Counted from the major tonic of the signature: i is vi, iv ii, V III, v iii.
    static std::vector<Degree> const minor{{9, Q::Minor}, {2, Q::Minor}, {4, Q::Major},
                                           {4, Q::Minor}, {7, Q::Major}, {0, Q::Major}};
    static std::vector<Degree> const dorian{
        {2, Q::Minor}, {0, Q::Major}, {7, Q::Major}, {9, Q::Minor}};
    static std::vector<Degree> const mixolydian{
        {7, Q::Major}, {5, Q::Major}, {0, Q::Major}, {2, Q::Minor}};
    std::vector<Degree> const& plain = mode == Mode::Aeolian      ? minor
                                       : mode == Mode::Dorian     ? dorian
                                       : mode == Mode::Mixolydian ? mixolydian
                                                                  : major;
    return std::find(plain.begin(), plain.end(), degree) != plain.end();
}

void dress(Suggestion& suggestion, tune::Tune const& tune, Way way)
{
    auto& chords = suggestion.chords;
    std::array<bool, 12> const has = heardIn(tune);
    switch (way) {
    case Way::Richer:
        addPassingBasses(chords);
        addSevenths(chords, has);
        break;
    case Way::Open:
        for (FoundChord& found : chords)
            if (!found.kept) found.chord = openFifth(found.chord);
        break;
    case Way::Drone:
        for (FoundChord& found : chords)
            if (!found.kept) found.chord = *music::chordFrom(plain(suggestion.heardIn.tonic) + "5");
        break;
    case Way::Plainer:
    case Way::Usual:
        if (!suggestion.modeUnsure) break;
        for (FoundChord& found : chords)
            if (!found.kept && !thirdIsBorneOut(found.chord, has))
                found.chord = openFifth(found.chord);
        break;
    }
}

} // namespace harmony
