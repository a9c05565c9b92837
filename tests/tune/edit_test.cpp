#include "core/files/abc/read.h"
#include "core/files/abc/write.h"
#include "core/tune/edit/bars.h"
#include "core/tune/edit/notes.h"
#include "core/tune/edit/pitches.h"
#include "core/tune/edit/rebar.h"
#include "core/tune/edit/whole.h"
#include "tests/tune/oddbars.h"
#include "tests/tune/randomtunes.h"

#include <catch2/catch.hpp>

#include <random>

using namespace tune;
using music::Length;
using music::Letter;
using music::Pitch;
using music::Rational;

namespace {

Tune read(std::string const& abc)
{
    auto const entries = *files::abcTunes(abc);
    auto tune = files::readAbc(abc, entries.front(), "test", files::Rests::Allowed);
    REQUIRE(tune);
    return *tune;
}

Tune jig(std::string const& bars) { return read("X:1\nM:6/8\nL:1/8\nK:G\n" + bars + "\n"); }

Pitch pitch(char const* name) { return *music::pitchFrom(name); }
Length const quaver{Rational(1, 8)};
Length const crotchet{Rational(1, 4)};

// Of ABC only the lines of music, without line ends.
std::string lines(Tune const& tune)
{
    std::string const abc = files::abcOfTune(tune);
    std::size_t const key = abc.find("\nK:");
    std::string out = abc.substr(abc.find('\n', key + 1) + 1);
    std::replace(out.begin(), out.end(), '\n', ' ');
    while (out.ends_with(' ')) out.pop_back();
    return out;
}

// What reading may add: where it stood, and what it remarked.
Tune withoutPlaces(Tune tune)
{
    tune.said.clear();
    for (Bar& bar : tune.bars) {
        bar.place = {};
        for (Note& note : bar.notes) note.place = {};
        for (ChordMark& mark : bar.chords) mark.written = plain(mark.chord);
    }
    return tune;
}

} // namespace

TEST_CASE("A note takes the place of what stands there, and a rest what is left of that",
          "[edit]")
{
    Tune const rests = jig("z6|GABc2d|]");
    CHECK(lines(withNote(rests, {0, 0}, {pitch("D4")}, quaver)) == "Dz5 | GABc2d |]");
    Tune const two = withNote(withNote(rests, {0, 0}, {pitch("D4")}, quaver), {0, 1},
                              {pitch("G4")}, crotchet);
    CHECK(lines(two) == "DG2z3 | GABc2d |]");
    CHECK(lines(withNote(rests, {1, 3}, {pitch("E5")}, quaver)) == "z6 | GABezd |]");
    CHECK(lines(withNote(rests, {1, 1}, {pitch("E5")}, crotchet)) == "z6 | Ge2c2d |]");
    CHECK(lines(withNote(rests, {1, 2}, {}, Length{Rational(3, 8)})) == "z6 | GAz3d |]");
    CHECK(withNote(rests, {5, 0}, {pitch("D4")}, quaver) == rests);
    CHECK(withNote(rests, {0, 7}, {pitch("D4")}, quaver) == rests);
}

TEST_CASE("A note beyond the end of its bar is written, and the bar is said to be too long",
          "[edit]")
{
    Tune const rests = jig("z6|GABc2d|]");
    CHECK(oddBars(rests).empty());
    Tune const over = withNote(rests, {1, 4}, {pitch("D5")}, crotchet);
    CHECK(lines(over) == "z6 | GABc2d2 |]");
    auto const odd = oddBars(over);
    REQUIRE(odd.size() == 1);
    CHECK(odd[0] == OddBar{1, quaver});
    CHECK(oddWords(odd[0]) == "too long by 1/8");
    auto notes = rests.bars[1].notes;
    Tune const three = jig("z6|z6|z6|]");
    CHECK(oddBars(withBarNotes(three, 1, notes, {})).empty());
    notes.pop_back();
    Tune const less = withBarNotes(three, 1, notes, {});
    REQUIRE(oddBars(less).size() == 1);
    CHECK(oddWords(oddBars(less)[0]) == "too short by 1/8");
    // A bar that a pick-up completes, and the pick-up, are right as they are.
    CHECK(oddBars(jig("D|GABc2d|GABc2:|d|gfed2c|B3A2|]")).empty());
}

TEST_CASE("Another length moves what follows, and rests at the end make room", "[edit]")
{
    CHECK(lines(withLength(jig("GABz3|]"), {0, 0}, crotchet)) == "G2ABz2 |]");
    CHECK(lines(withLength(jig("G2ABz2|]"), {0, 0}, quaver)) == "GABz3 |]");
    Tune const dotted = withLength(jig("GABz3|]"), {0, 0}, quaver * Rational(3, 2));
    CHECK(lines(dotted) == "G3/2ABz5/2 |]");
    CHECK(lines(withLength(jig("GABcde|z6|]"), {0, 5}, crotchet)) == "GABcde2 | z6 |]");
}

TEST_CASE("A triplet is three notes in the time of two, and no note of it goes beyond it",
          "[edit]")
{
    Tune tune = withTriplet(jig("z6|]"), {0, 0}, {pitch("G4")}, quaver);
    CHECK(lines(tune) == "(3:2:3Gzzz4 |]");
    tune = withNote(tune, {0, 1}, {pitch("A4")}, quaver);
    tune = withNote(tune, {0, 2}, {pitch("B4")}, crotchet);
    CHECK(lines(tune) == "(3:2:3GABz4 |]");
    CHECK(tune.bars[0].notes[2].length == Length{Rational(1, 12)});
    CHECK(writtenLength(tune.bars[0], 2) == quaver);
    CHECK(lines(withLength(tune, {0, 0}, crotchet)) == "(3:2:2G2Bz4 |]");
    CHECK(lines(withoutNote(tune, {0, 1})) == "(3:2:3GzBz4 |]");
    Tune silent = tune;
    for (NoteIndex i = 2; i >= 0; --i) silent = withoutNote(silent, {0, i});
    CHECK(lines(silent) == "z2z4 |]");
    // Cut into from before, it goes.
    CHECK(lines(withNote(jig("G(3ABcd3|]"), {0, 0}, {pitch("D5")}, crotchet)) == "d2zd3 |]");
}

TEST_CASE("A note taken out lets the rest of its bar move up", "[edit]")
{
    CHECK(lines(withoutNote(jig("GABc2d|]"), {0, 1})) == "GBc2dz |]");
    CHECK(lines(silenced(jig("GABc2d|]"), {0, 1})) == "GzBc2d |]");
    CHECK(lines(withoutNote(jig("D|GABc2d|]"), {0, 0})) == "z | GABc2d |]");
}

TEST_CASE("Chords stay at their places whatever the notes do", "[edit]")
{
    Tune const tune = jig("\"G\"GAB\"D\"c2d|\"G\"G6|]");
    Tune const moved = withLength(tune, {0, 0}, crotchet);
    REQUIRE(moved.bars[0].chords.size() == 2);
    CHECK(moved.bars[0].chords[1].at == Length{Rational(3, 8)});
    Tune const shorter =
        withBarNotes(tune, 0, {tune.bars[0].notes[0], tune.bars[0].notes[1]}, {});
    REQUIRE(shorter.bars[0].chords.size() == 2);
    CHECK(shorter.bars[0].chords[1].at == quaver); // over the last note that there is
}

TEST_CASE("A typed letter is in the key, as earlier in its bar, in the nearest octave",
          "[edit]")
{
    Tune const tune = jig("GABc2d|^c2gz3|]");
    CHECK(typedPitch(tune, {0, 0}, Letter::D) == pitch("D5"));
    CHECK(typedPitch(tune, {0, 0}, Letter::G) == pitch("G4"));
    CHECK(typedPitch(tune, {0, 1}, Letter::F) == pitch("F#4"));
    CHECK(typedPitch(tune, {0, 1}, Letter::D) == pitch("D4")); // a fourth below G
    CHECK(typedPitch(tune, {0, 5}, Letter::C) == pitch("C5"));
    CHECK(typedPitch(tune, {1, 2}, Letter::C) == pitch("C#6")); // a fourth above g
}

TEST_CASE("Pitches move by strings in the key, by semitones and by octaves", "[edit]")
{
    Tune const tune = jig("GABe2d|]");
    CHECK(lines(withStep(tune, {0, 3}, 1)) == "GABf2d |]"); // F sharp of the key
    CHECK(lines(withStep(tune, {0, 0}, -2)) == "EABe2d |]");
    CHECK(lines(withSemitone(tune, {0, 0}, 1)) == "^GABe2d |]");
    CHECK(lines(withSemitone(tune, {0, 1}, -1)) == "G_ABe2d |]");
    CHECK(lines(withSemitone(tune, {0, 2}, 1)) == "GAce2d |]"); // C is of the key
    CHECK(lines(withSemitone(jig("f6|]"), {0, 0}, 1)) == "g6 |]");
    CHECK(lines(withSemitone(jig("f6|]"), {0, 0}, -1)) == "=f6 |]");
    CHECK(lines(withOctave(tune, {0, 0}, 1)) == "gABe2d |]");
    CHECK(lines(withOctave(tune, {0, 0}, -1)) == "G,ABe2d |]");
    CHECK(withOctave(tune, {0, 0}, -9) == tune);
    CHECK(lines(withStep(jig("z2G2-G2|G6|]"), {0, 2}, 1)) == "z2A2-A2 | G6 |]");
}

TEST_CASE("A tie leads to the same pitch, and goes when that goes", "[edit]")
{
    Tune const tune = jig("G3A3|A6|]");
    CHECK(withTie(tune, {0, 0}) == tune);
    Tune const tied = withTie(tune, {0, 1});
    CHECK(lines(tied) == "G3A3- | A6 |]");
    CHECK(withTie(tied, {0, 1}) == tune);
    CHECK(lines(withNote(tied, {1, 0}, {pitch("B4")}, crotchet)) == "G3A3 | B2z4 |]");
}

TEST_CASE("Grace notes are put before a note and taken away", "[edit]")
{
    Tune const tune = jig("G3A3|]");
    Tune const graced = withGraces(tune, {0, 1}, {pitch("B4"), pitch("G4")});
    CHECK(lines(graced) == "G3{BG}A3 |]");
    CHECK(withGraces(graced, {0, 1}, {}) == tune);
}

TEST_CASE("Bars are put in and taken out, and the signs at their ends stay", "[edit]")
{
    Tune const tune = jig("|:G6|A6:|B6|]");
    CHECK(lines(withBars(tune, 1)) == "|:G6 | z6 | A6 :| B6 |]");
    CHECK(lines(withBars(tune, 0, 2)) == "|:z6 | z6 | G6 | A6 :| B6 |]");
    CHECK(lines(withBars(tune, 3)) == "|:G6 | A6 :| B6 | z6 |]");
    CHECK(lines(withoutBars(tune, 1, 1)) == "|:G6 :| B6 |]");
    CHECK(lines(withoutBars(tune, 0, 0)) == "|:A6 :| B6 |]");
    CHECK(lines(withoutBars(tune, 2, 2)) == "|:G6 | A6 :|");
    CHECK(withoutBars(tune, 0, 2) == tune);
    CHECK(withBars(tune, 1).bars[3].number == 4);
}

TEST_CASE("Repeats, time bars and parts are set and taken away", "[edit]")
{
    Tune const tune = jig("G6|A6|B6|c6|]");
    CHECK(lines(withRepeat(tune, 0, 1)) == "|:G6 | A6 :| B6 | c6 |]");
    CHECK(lines(withoutRepeat(withRepeat(tune, 0, 1), 0, 1)) == lines(tune));
    auto const timed = withTimeBars(tune, 0, 1, 1);
    REQUIRE(timed);
    CHECK(lines(*timed) == "G6 | [1 A6 :| [2 A6 || B6 | c6 |]");
    CHECK(withTimeBars(*timed, 0, 1, 1).error().code == base::FaultCode::BadRepeat);
    CHECK(withTimeBars(tune, 0, 0, 0).error().code == base::FaultCode::BadRepeat);
    CHECK(lines(*withTimeBars(tune, 0, 3, 3)) == "G6 | A6 | B6 | [1 c6 :| [2 c6 |]");
    CHECK(sectionOf(withRepeat(tune, 0, 1), 1) == BarRange{0, 1});
    CHECK(sectionOf(withRepeat(tune, 0, 1), 2) == BarRange{2, 3});
    CHECK(withPart(tune, 2, "B").bars[2].part == "B");
}

TEST_CASE("The tune goes to another key by the nearest way, chords with it", "[edit]")
{
    Tune const tune = jig("\"G\"GAB\"D7\"c2d|]");
    music::Interval const up = wayTo(tune, {Letter::A, 0});
    CHECK(up == music::Interval{1, 2});
    CHECK(wayTo(tune, {Letter::D, 0}) == music::Interval{-3, -5});
    CHECK(wayTo(tune, {Letter::F, 1}) == music::Interval{-1, -1});
    CHECK(lines(transposed(tune, up)) == "\"A\"ABc\"E7\"d2e |]");
    // In G the F is sharp by its signature; in C it is plain.
    Tune const plainer =
        withSignature(jig("\"D\"F2GABc|]"), {{Letter::C, 0}, music::Mode::Ionian});
    CHECK(lines(plainer) == "\"D\"F2GABc |]");
    CHECK(plainer.bars[0].notes[0].pitches[0] == pitch("F4"));
}

TEST_CASE("Another time signature fills bars of rest and leaves notes as they are", "[edit]")
{
    Tune const tune = withMeter(jig("z6|GABc2d|z6|]"), {4, 4, false});
    CHECK(tune.bars[0].length == Length{1});
    REQUIRE(oddBars(tune).size() == 1);
    CHECK(oddBars(tune)[0] == OddBar{1, Length{Rational(-1, 4)}});
}

TEST_CASE("Bar lines are drawn anew for another time signature, and notes across them tied",
          "[edit]")
{
    Tune const four =
        read("X:1\nM:4/4\nL:1/8\nK:G\n\"G\"G2AB \"D\"c4|\"G\"B8|\"D\"A4 \"G\"G4|]\n");
    CHECK(lines(*rebarred(four, {2, 4, false})) ==
          "\"G\"G2AB | \"D\"c4 | \"G\"B4- | B4 | \"D\"A4 | \"G\"G4 |]");
    // 24 quavers: four bars of 6/8, the third note of the second across the line.
    Tune const six = *rebarred(four, {6, 8, false});
    REQUIRE(six.bars.size() == 4);
    CHECK(lines(six) == "\"G\"G2AB \"D\"c2- | c2 \"G\"B4- | B4 \"D\"A2- | A2 \"G\"G4 |]");
    for (Bar const& bar : six.bars) CHECK(bar.length == barLength(bar.meter));
    CHECK(oddBars(six).empty());
    // There and back nothing is lost but where a note was one.
    Tune const back = *rebarred(*rebarred(four, {2, 4, false}), {4, 4, false});
    CHECK(back.bars.size() == four.bars.size());
    CHECK(back.meter == four.meter);
}

TEST_CASE("New bar lines leave pick-ups, repeats, time bars and parts where they are", "[edit]")
{
    Tune const tune = read("X:1\nM:2/4\nL:1/8\nK:G\n"
                           "D|:G2AB|c2BA|G2AB|1c3D:|2c4|]\n");
    Tune const out = *rebarred(tune, {4, 4, false});
    CHECK(lines(out) == "D | |:G2AB c2BA | G2AB | [1 c3D :| [2 c4 |]");
    CHECK(pickUpOf(out) == quaver);
    CHECK(out.bars.front().number == 0);
    // Three bars of 2/4 are one of 4/4 and half a one.
    CHECK(out.bars[2].length == Length{Rational(1, 2)});
}

TEST_CASE("A triplet is not cut by a bar line", "[edit]")
{
    Tune const tune = read("X:1\nM:4/4\nL:1/8\nK:G\nG2(3ABcd2e2|d8|]\n");
    CHECK(rebarred(tune, {2, 4, false}));
    CHECK_FALSE(rebarred(tune, {3, 8, false})); // the line would fall inside
    Tune const inside = *rebarred(tune, {2, 4, false});
    REQUIRE(inside.bars[0].tuplets.size() == 1);
    CHECK(inside.bars[0].tuplets[0] == tune.bars[0].tuplets[0]);
}

TEST_CASE("Where the bars have the new length already no line need be moved", "[edit]")
{
    CHECK_FALSE(needsNewBars(jig("GABc2d|G6|]"), {3, 4, false}));
    CHECK(needsNewBars(jig("GABc2d|G6|]"), {4, 4, false}));
    CHECK_FALSE(needsNewBars(read("X:1\nM:4/4\nL:1/8\nK:G\nGABc2d|G6|B6|]\n"), {6, 8, false}));
}

TEST_CASE("The whole tune goes an octave up and down, but not beyond C0 and B8", "[edit]")
{
    Tune const tune = jig("G3{A}B3|]");
    CHECK(lines(withAllOctave(tune, 1)) == "g3{a}b3 |]");
    CHECK(withAllOctave(withAllOctave(tune, -1), 1) == tune);
    CHECK(withAllOctave(tune, 5) == tune);
}

TEST_CASE("A pick-up is put in, made longer or shorter, and taken away", "[edit]")
{
    Tune const tune = jig("GABc2d|G6|]");
    Tune const up = *withPickUp(tune, quaver);
    CHECK(lines(up) == "z | GABc2d | G6 |]");
    CHECK(up.bars[0].number == 0);
    CHECK(up.bars[1].number == 1);
    CHECK(pickUpOf(up) == quaver);
    CHECK(lines(*withPickUp(withNote(up, {0, 0}, {pitch("D4")}, quaver), crotchet)) ==
          "z D | GABc2d | G6 |]");
    CHECK(lines(*withPickUp(jig("DE|GABc2d|G6|]"), quaver)) == "E | GABc2d | G6 |]");
    CHECK(*withPickUp(up, std::nullopt) == tune);
    CHECK(withPickUp(tune, Length{Rational(3, 4)}).error().code == base::FaultCode::BadLength);
}

TEST_CASE("A new tune is bars of rest in the time signature of its kind", "[edit]")
{
    CHECK(usualMeter(Kind::Jig) == music::Meter{6, 8, false});
    CHECK(usualMeter(Kind::SlipJig) == music::Meter{9, 8, false});
    CHECK(usualMeter(Kind::Reel) == music::Meter{4, 4, false});
    NewTune wish{
        "The Kiln Door", Kind::SlipJig, {{Letter::A, 0}, music::Mode::Dorian}, {9, 8, false}, 8,
        quaver};
    Tune const tune = newTune(wish);
    CHECK(tune.bars.size() == 9);
    CHECK(tune.bars.back().number == 8);
    CHECK(kindOf(tune) == Kind::SlipJig);
    CHECK(tune.rhythm == "slip jig");
    CHECK_FALSE(hasNotes(tune));
    CHECK(withoutPlaces(read(files::abcOfTune(tune))) == withoutPlaces(tune));
}

TEST_CASE("Whatever is edited is written to ABC and read back the same", "[edit]")
{
    std::mt19937 random(20260904); // fixed, so that a failure can be seen again
    int changed = 0;
    for (int run = 0; run < 60; ++run) {
        Tune tune = run % 2 == 0 ? randomtunes::empty() : randomtunes::full();
        for (int step = 0; step < 40; ++step) {
            Tune const before = tune;
            tune = randomtunes::edited(before, random);
            if (tune == before) continue;
            ++changed;
            std::string const abc = files::abcOfTune(tune);
            INFO("run " << run << ", step " << step << "\n"
                        << files::abcOfTune(before) << "\n"
                        << abc);
            for (Bar const& bar : tune.bars) {
                Length sum;
                for (Note const& note : bar.notes) {
                    REQUIRE(note.at == sum);
                    REQUIRE(note.length > Length{});
                    sum = sum + note.length;
                }
                REQUIRE(bar.length == sum);
            }
            // A chord inside a note cuts it in ABC: chords are looked at apart.
            Tune bare = tune;
            for (Bar& bar : bare.bars) bar.chords.clear();
            REQUIRE(withoutPlaces(read(files::abcOfTune(bare))) == withoutPlaces(bare));
        }
    }
    CHECK(changed > 1000);
}
