#pragma once

#include "core/arrange/arrangement.h"
#include "core/tune/tune.h"
#include "tests/harp/harps.h"

#include <cctype>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

// Tunes and arrangements for the tests of the sheet, made by hand. Invented.
namespace example {

inline music::Length wholes(int numerator, int denominator)
{
    return {music::Rational(numerator, denominator)};
}

// One bar from words: "G4:1/8 C5+E5:1/4 z:1/8"; a tilde behind a length ties the note on.
inline tune::Bar bar(std::string const& words, music::Meter meter, music::Key key)
{
    tune::Bar out;
    out.meter = meter;
    out.key = key;
    std::istringstream in(words);
    for (std::string word; in >> word;) {
        tune::Note note;
        note.at = out.length;
        auto const colon = word.find(':');
        auto const slash = word.find('/', colon);
        note.tied = word.back() == '~';
        note.length =
            wholes(std::stoi(word.substr(colon + 1)), std::stoi(word.substr(slash + 1)));
        std::istringstream names(word.substr(0, colon));
        for (std::string name; std::getline(names, name, '+');)
            if (name != "z") note.pitches.push_back(*music::pitchFrom(name));
        out.length = out.length + note.length;
        out.notes.push_back(std::move(note));
    }
    if (out.length < music::barLength(meter)) out.upbeat = music::barLength(meter) - out.length;
    return out;
}

inline tune::Bar withChord(tune::Bar bar, std::string const& chord,
                           music::Length at = music::Length{})
{
    bar.chords.push_back({at, *music::chordFrom(chord), chord, std::nullopt});
    return bar;
}

inline tune::Tune tuneOf(tune::Bars bars, std::string title = "Example")
{
    tune::Tune tune;
    tune.title = std::move(title);
    tune.meter = bars.front().meter;
    tune.key = bars.front().key;
    int number = 0;
    for (tune::Bar& bar : bars)
        if (bar.upbeat == music::Length{} || number > 0) bar.number = ++number;
    bars.back().closes = tune::BarLine::Final;
    tune.bars = std::move(bars);
    return tune;
}

// Played once as written, repeats left alone: enough for a sheet.
inline tune::Playing playedAsWritten(tune::Tune const& tune)
{
    tune::Playing playing;
    for (tune::BarIndex const i : tune.bars.indices()) {
        playing.bars.push_back({i, 1, music::Moment{playing.total.wholes}});
        playing.total = playing.total + tune.bars[i].length;
    }
    return playing;
}

// Every chord as 1-5-8 in quavers from its beat, the last note held to the end of its span; in
// the octave that puts the root between G2 and F sharp 3. Fingers 4-2-1 [trade-4].
inline arrange::Arrangement arrangementOf(tune::Tune tune)
{
    harp::Harp harp = floor34();
    harp::LeverSetting setup = *harp::settingFor(harp, tune.key);
    arrange::Arrangement out{
        std::move(tune), 0, std::move(harp), mediumHand(), {}, {}, {}, {}, {}, {}};
    out.levers.setup = std::move(setup);
    out.tempo = out.tune.tempo.value_or(tune::Tempo{});
    out.playing = playedAsWritten(out.tune);
    for (tune::BarIndex const b : out.tune.bars.indices()) {
        tune::PlayedBarIndex const played(static_cast<int>(b));
        tune::Bar const& bar = out.tune.bars[b];
        for (std::size_t c = 0; c < bar.chords.size(); ++c) {
            music::Length const at = bar.chords[c].at;
            music::Length const end =
                c + 1 < bar.chords.size() ? bar.chords[c + 1].at : bar.length;
            arrange::ArrangedPosition position;
            position.position = {b,
                                 at,
                                 end - at,
                                 bar.chords[c].chord,
                                 {{played, 1, out.playing.bars[played].at + at}}};
            music::PitchName const root = bar.chords[c].chord.root;
            int const octave = root.letter >= music::Letter::G ? 2 : 3;
            harp::StringIndex const rootString =
                *harp::stringFor(out.harp, {root.letter, root.alter, octave});
            position.voicing.pattern = "1-5-8";
            position.voicing.rootString = rootString;
            int const degrees[] = {1, 5, 8};
            int const fingers[] = {4, 2, 1};
            for (int n = 0; n < 3; ++n) {
                music::Length const onset = wholes(n, 8);
                if (!(onset < position.position.span)) break;
                music::Length const held =
                    n == 2 ? position.position.span - onset : wholes(1, 8);
                position.voicing.notes.push_back(
                    {onset, held, rootString + degrees[n] - 1, fingers[n], degrees[n], 0});
            }
            out.positions.push_back(std::move(position));
        }
    }
    return out;
}

// The tune played out, every note with the thumb.
inline void fingerTune(arrange::Arrangement& arrangement)
{
    arrangement.playing = tune::played(arrangement.tune);
    for (tune::BarIndex const b : arrangement.tune.bars.indices())
        for (tune::NoteIndex const n : arrangement.tune.bars[b].notes.indices())
            arrangement.rightFingers.push_back({b, n, {1}, false});
}

inline constexpr music::Meter sixEight{6, 8, false};
inline constexpr music::Meter threeFour{3, 4, false};
inline constexpr music::Meter fourFour{4, 4, false};
inline constexpr music::Key gMajor{{music::Letter::G, 0}, music::Mode::Ionian};
inline constexpr music::Key dMinor{{music::Letter::D, 0}, music::Mode::Aeolian};

// A jig in two parts of eight bars, each repeated, the second with two endings; with a pick-up,
// a triplet of ornaments and an accidental.
inline tune::Tune jig()
{
    auto const b = [](std::string const& words) { return bar(words, sixEight, gMajor); };
    tune::Bars bars{
        b("D4:1/8"),
        withChord(b("G4:1/8 B4:1/8 d5:1/8 g5:1/4 e5:1/8"), "G"),
        withChord(b("d5:1/8 B4:1/8 G4:1/8 A4:1/4 B4:1/8"), "G"),
        withChord(withChord(b("c5:1/8 e5:1/8 g5:1/8 f#5:1/8 e5:1/8 d5:1/8"), "C"), "D",
                  wholes(3, 8)),
        withChord(b("B4:3/8 A4:1/4 D4:1/8"), "G"),
        withChord(b("G4:1/8 B4:1/8 d5:1/8 g5:1/4 a5:1/8"), "Em"),
        withChord(b("b5:1/8 a5:1/8 g5:1/8 e5:1/8 c#5:1/8 d5:1/8"), "A7"),
        withChord(b("c5:1/8 B4:1/8 A4:1/8 D4:1/8 F#4:1/8 A4:1/8"), "D7"),
        withChord(b("G4:3/8 G4:1/4"), "G"),
        b("d5:1/8"),
        withChord(b("e5:3/16 f#5:1/16 e5:1/8 c5:1/4 e5:1/8"), "C"),
        withChord(b("d5:1/8 B4:1/8 G4:1/8 d5:3/8~"), "G"),
        withChord(b("d5:1/8 c5:1/8 B4:1/8 A4:1/8 G4:1/8 F#4:1/8"), "Am"),
        withChord(b("B4:1/4 A4:1/8 A4:1/4 d5:1/8"), "D"),
        withChord(b("e5:1/8 f#5:1/8 g5:1/8 c5:1/4 z:1/8"), "C"),
        withChord(b("d5:1/8 B4:1/8 G4:1/8 E4:1/4 G4:1/8"), "Em"),
        withChord(withChord(b("A4:1/8 B4:1/8 c5:1/8 F#4:1/8 E4:1/8 D4:1/8"), "Am"), "D7",
                  wholes(3, 8)),
        withChord(b("G4:3/8 G4:1/4 d5:1/8"), "G"),
        withChord(b("G4:1/8 D4:1/8 B3:1/8 G3:3/8"), "G/B"),
    };
    bars[1].part = "A";
    bars[1].repeatOpens = true;
    bars[8].repeatCloses = true;
    bars[9].part = "B";
    bars[9].repeatOpens = true;
    bars[17].endings = {1};
    bars[17].repeatCloses = true;
    bars[17].endingCloses = true;
    bars[18].endings = {2};
    bars[18].endingCloses = true;
    bars[5].notes[0].graces = {*music::pitchFrom("A4")};
    bars[10].notes[3].graces = {*music::pitchFrom("d5"), *music::pitchFrom("e5")};
    bars[12].notes[0].marks = {"staccato"};
    bars[4].notes[0].marks = {"fermata"};
    tune::Tune tune = tuneOf(std::move(bars), "The Lantern on the Weir");
    tune.composer = "Composed for this program";
    tune.rhythm = "jig";
    tune.tempo = tune::Tempo{wholes(3, 8), 72};
    return tune;
}

} // namespace example
