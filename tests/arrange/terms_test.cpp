#include "core/arrange/candidates.h"
#include "core/arrange/neighbours.h"
#include "core/arrange/terms.h"

#include "tests/arrange/scenes.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace arrange;

namespace {

std::vector<music::Rational> const crotchets{{0}, {1, 4}, {1, 2}, {3, 4}};
std::vector<music::Rational> const minims{{0}, {1, 2}};
std::vector<music::Rational> const once{{0}};

// Two positions of an example and how they stand to each other.
struct Pair {
    scenes::Example const& example;
    View before;
    View after;
    Neighbours neighbours;

    explicit Pair(scenes::Example const& x) : example(x), before(x.view(0)), after(x.view(1))
    {
        auto const positions = x.positions();
        neighbours = neighboursOf(x.scene(), positions[0], before, positions[1], after);
    }
    Points travelling(Laid const& a, Laid const& b) const
    {
        return travel(neighbours, handAtEnd(before, a), handAtStart(after, b));
    }
    Points ringing(Laid const& a, Laid const& b) const
    {
        return ringClash(neighbours, ringingAfter(neighbours, a), b);
    }
};

} // namespace

TEST_CASE("An octave lies in easy reach and a twelfth stretches the hand", "[terms]")
{
    // Common practice, no source: a tenth is comfortable round middle C. By hand: thumb and
    // fourth finger of the example hand lie easy up to nine gaps and a half, 142.5 mm; a
    // twelfth, 11 gaps of 15 mm, is 22.5 mm wider: nine tenths of a point in a block, six tenths
    // of that from one finger to the next.
    auto const x = scenes::example("[G] z:1 |");
    View const view = x.view(0);
    harp::StringIndex const g2 = x.string("G2");
    CHECK(reach(view, scenes::laid(view, {1, 5, 8}, g2, crotchets)) == 0);
    Laid block = scenes::laid(view, {1, 12}, g2, {{0}, {0}});
    block.plucks[1].finger = 1;
    CHECK(reach(view, block) == 900);
    Laid broken = scenes::laid(view, {1, 12}, g2, minims);
    broken.plucks[1].finger = 1;
    CHECK(reach(view, broken) == 540);
    // Broken over a finger between, each reach from neighbour to neighbour is easy: 4 and 5 gaps
    // of fingers 4-2 and 3-1, where thumb and fourth finger would lie a ninth of 8.
    Laid const between = scenes::laid(view, {1, 5, 8}, g2, crotchets);
    CHECK(reach(view, between) == 0);
}

TEST_CASE("Notes at the level's limit a second cost what the taste says, an eighth of a point", "[terms]")
{
    // By hand: at 100 crotchets a minute crotchets come 1.67 a second, quavers 3.33.
    auto x = scenes::example("[G] z:1 |");
    x.level.leftNotesPerSecond = 10.0 / 3;
    View const view = x.view(0);
    harp::StringIndex const g2 = x.string("G2");
    CHECK(rate(view, scenes::laid(view, {1, 5, 8}, g2, crotchets)) == 0);
    CHECK(rate(view, scenes::laid(view, {1, 5, 8}, g2, {{0}, {1, 8}, {1, 4}})) == 120);
}

TEST_CASE("A degree that is no chord tone as the levers stand is judged by how wrong it is",
          "[terms]")
{
    // Levers set for G. Over Em: ninths and sevenths are mild colour, a fourth on the first
    // beat is heavy. Thirds and fifths that are wrong belong to quality.
    auto const x = scenes::example("[Em] z:1 | [Cm] z:1 |");
    View const em = x.view(0);
    View const cm = x.view(1);
    Points const plain = chordFit(em, scenes::laid(em, {1, 5, 8}, x.string("E2"), crotchets));
    Points const ninth = chordFit(em, scenes::laid(em, {1, 5, 9}, x.string("E2"), crotchets));
    Points const seventh = chordFit(em, scenes::laid(em, {1, 5, 7}, x.string("E2"), crotchets));
    Points const fourth = chordFit(em, scenes::laid(em, {1, 5, 4}, x.string("E2"), crotchets));
    CHECK(ninth > plain);
    CHECK(seventh > plain);
    CHECK(fourth > 2 * ninth);
    CHECK(chordFit(cm, scenes::laid(cm, {1, 5, 10}, x.string("C2"), crotchets)) == 0);
    CHECK(chordFit(em, scenes::laid(em, {1, 5, 10}, x.string("E2"), crotchets)) == 0);
    CHECK(chordFit(em, resting(em)) == 0);
}

TEST_CASE("The same foreign note weighs less on a weak beat and when it is short", "[terms]")
{
    auto const x = scenes::example("[G] B4:1 |");
    View const view = x.view(0);
    harp::StringIndex const g2 = x.string("G2");
    Points const onFirst = chordFit(view, scenes::laid(view, {9}, g2, once));
    Points const onSecond = chordFit(view, scenes::laid(view, {1, 9}, g2, {{0}, {1, 4}}));
    Points const passing =
        chordFit(view, scenes::laid(view, {1, 9, 8}, g2, {{0}, {1, 8}, {1, 4}}));
    CHECK(onFirst > onSecond);
    CHECK(onSecond > passing);
    CHECK(passing > 0);
}

TEST_CASE(
    "The thumb a semitone or a ninth beside the tune clashes, a third or an octave does not",
    "[terms]")
{
    // Huron 1994: minor seconds and their kin are least consonant, then major seconds, then
    // tritones; thirds, sixths, fourths and fifths are consonant.
    auto const x = scenes::example("[G] G4:1 |");
    View const view = x.view(0);
    auto const with = [&](char const* pitch) {
        return melodyClash(view, scenes::laid(view, {1}, x.string(pitch), once));
    };
    CHECK(with("F3") > with("A3")); // sounds F sharp: minor ninth against major seventh's kin
    CHECK(with("A3") > with("C3") + 1);
    CHECK(with("E3") == 0);
    CHECK(with("G3") == 0);
    CHECK(with("D3") == 0);
    CHECK(with("F3") > with("F2")); // further away is milder
}

TEST_CASE("A clash on the first beat weighs more than one between beats", "[terms]")
{
    auto const x = scenes::example("[G] G4:1 |");
    View const view = x.view(0);
    harp::StringIndex const f3 = x.string("F3");
    CHECK(melodyClash(view, scenes::laid(view, {1}, f3, {{0}})) >
          melodyClash(view, scenes::laid(view, {1}, f3, {{1, 8}})));
}

TEST_CASE("One string beside the right hand is crowded, two are close, three are free",
          "[terms]")
{
    // Common practice, no source: keep the left thumb two strings below the right hand.
    auto const x = scenes::example("[G] G4:1 |");
    View const view = x.view(0);
    auto const at = [&](char const* pitch) {
        return collision(view, scenes::laid(view, {1}, x.string(pitch), once));
    };
    CHECK(at("F4") > at("E4"));
    CHECK(at("E4") > 0);
    CHECK(at("D4") == 0);
}

TEST_CASE(
    "A string that the tune needs within a beat is left to it, and one above a note that rings",
    "[terms]")
{
    // Common practice, no source: neither hand can be placed ahead on a string that the other
    // plucks.
    auto x = scenes::example("[G] B4:1/2 D4:1/4 E4:1/8 D4:1/8 |");
    auto const costs = [&](std::vector<int> const& degrees, char const* root,
                           std::vector<music::Rational> const& at) {
        View const view = x.view(0);
        return collision(view, scenes::laid(view, degrees, x.string(root), at));
    };
    Taste::Collision const taste = x.weights.taste.collision;
    x.level.number = 3;
    Points const shared = taste.stringShared[2];
    // D4 a crotchet after the tune's first D4 would be the tune's own; a quaver before it is
    // shared.
    CHECK(costs({1}, "D4", {{3, 8}}) >= shared);
    CHECK(costs({1}, "D4", {{0}}) < shared); // two beats before: only what rings on
    // The tune comes down to the string next to C4, which rings.
    CHECK(costs({1}, "C4", {{0}}) == 2 * taste.tuneComesClose); // twice
    CHECK(costs({1}, "G3", {{0}}) == 0);
    // The tune comes down below a note that rings.
    CHECK(costs({1}, "G4", {{0}}) >= taste.tuneTakesString);
    // At level 4 the hands are quicker: half a beat at 60 crotchets a minute is time enough.
    x.level.number = 4;
    x.tempo.beatsPerMinute = 60;
    CHECK(costs({1}, "D4", {{3, 8}}) < taste.stringShared[3] + taste.tuneComesClose);
}

TEST_CASE(
    "A finger that passes under the thumb in a hurry is dear, at leisure it costs nothing",
    "[terms]")
{
    // By hand: crotchets at 60 last a second; 0.7 are leisure. A semiquaver of 0.25 s lacks
    // 0.45 of the 0.7.
    auto x = scenes::example("[G] z:1 |");
    x.tempo.beatsPerMinute = 60;
    x.level.leftNotesPerSecond = 100;
    x.level.number = 3;
    View const view = x.view(0);
    harp::StringIndex const g2 = x.string("G2");
    Taste::Rate const taste = x.weights.taste.rate;
    auto const last = [&](music::Rational at) {
        Laid laid = scenes::laid(view, {1, 8, 9}, g2, {{0}, {1, 4}, at});
        laid.plucks[1].finger = 1;
        laid.plucks[2].finger = 2;
        return rate(view, laid);
    };
    CHECK(last({1, 2}) == 0);
    CHECK(last({5, 16}) ==
          std::lround(taste.crossesAtOnce * (1 - 0.25 / taste.crossesAtLeisure[2])));
}

TEST_CASE("The last chord has its bass low, as far as the figures say", "[terms]")
{
    // By hand: G3 stands seven semitones above C3, G2 below it.
    auto x = scenes::example("[D] A4:1 | [G] G4:1 |");
    View const view = x.view(1);
    auto const at = [&](char const* root) {
        return cadence(view, scenes::laid(view, {1, 8}, x.string(root), {{0}, {0}}));
    };
    CHECK(at("G3") - at("G2") == 7 * x.weights.taste.cadence.high);
}

TEST_CASE("Close triads grow muddier as they sink, open shapes stay clear", "[terms]")
{
    // The usual lower limit for a minor third is C3 (Lowell & Pullig 2003); patterns by their
    // roughness [trade-5]: a close triad costs two to three times an open one.
    auto const x = scenes::example("[C] z:1 |", "C");
    View const view = x.view(0);
    auto const on = [&](std::vector<int> const& degrees, char const* root) {
        return mud(view, scenes::laid(view, degrees, x.string(root), {{0}, {0}, {0}}));
    };
    CHECK(on({1, 3, 5}, "C2") > on({1, 3, 5}, "C3"));
    CHECK(on({1, 3, 5}, "C3") > 2 * on({1, 5, 8}, "C3"));
    CHECK(on({1, 3, 5}, "C2") > on({1, 5, 10}, "C2"));
    CHECK(on({1, 5, 10}, "C2") > on({1, 5, 10}, "C3"));
    CHECK(on({1, 5, 8}, "C2") == 0);
    CHECK(on({1, 3, 5}, "C4") < on({1, 3, 5}, "C3"));
}

TEST_CASE("Notes that come one by one make less mud than the same notes at once", "[terms]")
{
    auto const x = scenes::example("[C] z:1 |", "C");
    View const view = x.view(0);
    harp::StringIndex const c2 = x.string("C2");
    CHECK(mud(view, scenes::laid(view, {1, 3, 5}, c2, crotchets)) <
          mud(view, scenes::laid(view, {1, 3, 5}, c2, {{0}, {0}, {0}})));
}

TEST_CASE("A busy tune wants a plain left hand and a held tune a moving one", "[terms]")
{
    auto const busy =
        scenes::example("[G] B4:1/8 C5:1/8 D5:1/8 C5:1/8 B4:1/8 A4:1/8 B4:1/8 C5:1/8 |");
    auto const held = scenes::example("[G] G4:1 | [D] z:1 |");
    View const busyView = busy.view(0);
    View const heldView = held.view(0);
    harp::StringIndex const g2 = busy.string("G2");
    std::vector<music::Rational> const quavers{{0}, {1, 8}, {1, 4}, {3, 8}, {1, 2}};
    std::vector<int> const sweep{1, 5, 8, 9, 10};
    CHECK(activity(busyView, scenes::laid(busyView, sweep, g2, quavers)) >
          activity(busyView, scenes::laid(busyView, {1, 5}, g2, minims)));
    CHECK(activity(heldView, scenes::laid(heldView, {1, 5, 8}, g2, crotchets)) <
          activity(heldView, scenes::laid(heldView, {1}, g2, once)));
}

TEST_CASE("A bar without a first beat is a fault and one with all beats is none", "[terms]")
{
    auto const x = scenes::example("[G] G4:1/4 A4:1/4 B4:1/4 A4:1/4 |");
    View const view = x.view(0);
    harp::StringIndex const g2 = x.string("G2");
    CHECK(meterFit(view, scenes::laid(view, {1, 5}, g2, minims)) == 0);
    CHECK(meterFit(view, scenes::laid(view, {1}, g2, {{1, 2}})) == 1000);
    CHECK(meterFit(view, resting(view)) == 1000);
}

TEST_CASE("The tune closes on root, fifth and octave, and open degrees leave it open",
          "[terms]")
{
    // Common practice, no source: the last bar has a roll or a single low root.
    auto const x = scenes::example("[D] D5:1 | [G] G4:1 |");
    View const first = x.view(0);
    View last = x.view(1);
    REQUIRE(last.close == Close::Tune);
    last.kind = tune::Kind::Reel; // a dance closes dry
    harp::StringIndex const g2 = x.string("G2");
    CHECK(cadence(last, scenes::laid(last, {1, 5, 8}, g2, crotchets)) == 0);
    CHECK(cadence(last, scenes::laid(last, {1, 8}, g2, minims)) == 0);
    CHECK(cadence(last, scenes::laid(last, {1, 8}, g2, {{0}, {0}})) == 0);
    CHECK(cadence(last, scenes::laid(last, {1}, g2, once)) > 0);
    CHECK(cadence(last, scenes::laid(last, {1, 5}, g2, {{0}, {0}})) >
          cadence(last, scenes::laid(last, {1}, g2, once)));
    Laid roll = scenes::laid(last, {1, 5, 8, 10}, g2, {{0}, {0}, {0}, {0}});
    CHECK(cadence(last, roll) > 0);
    roll.voicing.rolled = true;
    CHECK(cadence(last, roll) == x.weights.taste.cadence.rollsDance[2]);
    CHECK(cadence(last, scenes::laid(last, {1, 5, 10}, g2, crotchets)) > 0);
    CHECK(cadence(last, scenes::laid(last, {1, 5, 9}, g2, crotchets)) >
          cadence(last, scenes::laid(last, {1, 5, 10}, g2, crotchets)));
    CHECK(cadence(last, resting(last)) > 0);
    CHECK(cadence(first, scenes::laid(first, {1, 5, 9}, x.string("D2"), crotchets)) == 0);
}

TEST_CASE("An air ends on one stroke, rolled, with its third where the mode is sure", "[terms]")
{
    // Common practice, no source.
    auto x = scenes::example("[D] D5:1 | [G] B4:1/2 G4:1/2 |");
    auto& taste = x.weights.taste.cadence;
    taste.endsWithoutThird = {1, 2, 30, 4, 5};
    taste.endsUnrolled = {0, 0, 200, 0, 0};
    taste.endsBroken = 1000;
    taste.coloured = 7;
    View last = x.view(1);
    last.kind = tune::Kind::Air;
    REQUIRE(last.modeSure); // B in the tune and no B flat
    harp::StringIndex const g2 = x.string("G2");
    Laid tenth = scenes::laid(last, {1, 5, 10}, g2, {{0}, {0}, {0}});
    CHECK(cadence(last, tenth) == 200);
    tenth.voicing.rolled = true;
    CHECK(cadence(last, tenth) == 0);
    CHECK(cadence(last, scenes::laid(last, {1, 5, 8}, g2, crotchets)) == 1230);
    last.modeSure = false;
    CHECK(cadence(last, tenth) == 7);
}

TEST_CASE("A close stands on the chord's own bass", "[terms]")
{
    auto x = scenes::example("[D] D5:1 | [G] G4:1 |");
    x.weights.taste.cadence.inverted = 900;
    View last = x.view(1);
    last.kind = tune::Kind::Reel;
    Laid const rooted = scenes::laid(last, {1, 5, 8}, x.string("G2"), crotchets);
    Laid const turned = scenes::laid(last, {5, 8, 12}, x.string("G2"), crotchets);
    CHECK(cadence(last, turned) - cadence(last, rooted) >= 900);
}

TEST_CASE("The last beat at the end of a phrase is left to ring, in a waltz most of all",
          "[terms]")
{
    // Common practice, no source. Bar 4 ends a phrase, bar 3 does not.
    auto x = scenes::example("[G] G4:3/4 | [D] F#4:3/4 | [G] G4:3/4 | [D] F#4:3/4 | "
                             "[G] G4:3/4 | [D] A4:3/4 | [G] G4:3/4 | [G] G4:3/4 |",
                             "G", {3, 4});
    x.weights.taste.cadence.noBreath = {60, 120, 160};
    x.weights.taste.cadence.breathSlow = 2.5;
    View const third = x.view(2);
    View fourth = x.view(3);
    REQUIRE_FALSE(third.endsPhrase);
    REQUIRE(fourth.endsPhrase);
    REQUIRE(fourth.kind == tune::Kind::Waltz);
    harp::StringIndex const d3 = x.string("D3");
    Laid const onThree = scenes::laid(fourth, {1, 5, 8}, d3, crotchets);
    Laid const rings = scenes::laid(fourth, {1, 5, 8}, d3, {{0}, {1, 8}, {1, 4}});
    CHECK(cadence(fourth, onThree) == 150);
    CHECK(cadence(fourth, rings) == 0);
    CHECK(cadence(third, scenes::laid(third, {1, 5, 8}, x.string("G2"), crotchets)) == 0);
    fourth.kind = tune::Kind::Mazurka;
    CHECK(cadence(fourth, onThree) == 60);
    fourth.close = Close::Part;
    CHECK(cadence(fourth, onThree) - cadence(fourth, rings) == 120);
}

TEST_CASE("A waltz's left hand keeps the beats and an upbeat leaves it free", "[terms]")
{
    auto x = scenes::example("[G] B4:1/4 A4:1/4 G4:1/4 | [D] D5:3/4 | [G] G4:3/4 |", "G", {3, 4});
    x.weights.taste.meterFit.pulseEmpty = {0, 0, 160, 0, 0};
    View view = x.view(0);
    REQUIRE(view.pulse == 0.25);
    harp::StringIndex const g2 = x.string("G2");
    CHECK(meterFit(view, scenes::laid(view, {1, 5, 8}, g2, crotchets)) == 0);
    CHECK(meterFit(view, scenes::laid(view, {1, 5}, g2, {{0}, {1, 4}})) == 160);
    CHECK(meterFit(view, scenes::laid(view, {1}, g2, once)) == 320);
    view.upbeat = true;
    CHECK(meterFit(view, resting(view)) == 0);
    CHECK(shapeFit(view, resting(view)) == 0);
    CHECK(meterFit(view, scenes::laid(view, {1}, g2, once)) ==
          x.weights.taste.meterFit.upbeatStruck);
}

TEST_CASE("The end of a part closes less strictly than the end of the tune", "[terms]")
{
    auto x = scenes::example("[G] G4:1 :| [G] G4:1 |");
    View const part = x.view(0);
    View whole = x.view(1);
    whole.kind = tune::Kind::Reel;
    REQUIRE(part.close == Close::Part);
    harp::StringIndex const g2 = x.string("G2");
    Points const atPart = cadence(part, scenes::laid(part, {1, 5, 9}, g2, crotchets));
    Points const atTune = cadence(whole, scenes::laid(whole, {1, 5, 9}, g2, crotchets));
    CHECK(atPart > 0);
    CHECK(atPart < atTune);
}

TEST_CASE("1-5-8 round G2 is liked best and resting least", "[terms]")
{
    // Common practice, no source: 1-5-8 is the default shape; its tenth is liked as well.
    auto const x = scenes::example("[G] z:1 |");
    View const view = x.view(0);
    harp::StringIndex const g2 = x.string("G2");
    Points const best = shapeFit(view, scenes::laid(view, {1, 5, 8}, g2, crotchets));
    CHECK(best == 0);
    CHECK(shapeFit(view, scenes::laid(view, {1, 5, 10}, g2, crotchets)) >= best);
    CHECK(shapeFit(view, scenes::laid(view, {1, 5, 12}, g2, crotchets)) > best);
    CHECK(shapeFit(view, scenes::laid(view, {1, 5, 8}, x.string("G4"), crotchets)) > best);
    CHECK(shapeFit(view, resting(view)) >
          shapeFit(view, scenes::laid(view, {1, 3, 5}, g2, crotchets)));
}

TEST_CASE("The further the hand has to go and the less time it has, the more travel costs",
          "[terms]")
{
    auto const x = scenes::example("[G] z:1 | [D] z:1 |");
    Pair const pair(x);
    Laid const from = scenes::laid(pair.before, {1, 5, 8}, x.string("G2"), crotchets);
    Laid const late =
        scenes::laid(pair.before, {1, 5, 8}, x.string("G2"), {{0}, {1, 2}, {7, 8}});
    Laid const near = scenes::laid(pair.after, {1, 5, 8}, x.string("D2"), crotchets);
    Laid const far = scenes::laid(pair.after, {1, 5, 8}, x.string("D4"), crotchets);
    Laid const same = scenes::laid(pair.after, {1, 5, 8}, x.string("G2"), crotchets);
    CHECK(pair.travelling(from, same) == 0);
    CHECK(pair.travelling(from, near) > 0);
    CHECK(pair.travelling(from, far) > pair.travelling(from, near));
    CHECK(pair.travelling(late, near) > pair.travelling(from, near));
    CHECK(pair.travelling(from, resting(pair.after)) == 0);
}

TEST_CASE("A hand that is led over from finger to finger has half the way", "[terms]")
{
    // By hand: the thumb is on G3 as finger 4 takes C3, four gaps of eleven that it reaches: half
    // the way from shape to shape is left. No points for the way itself, and all haste counts.
    auto x = scenes::example("[G] z:1 | [C] z:1 |");
    x.weights.taste.travel = {0, 0.0, 9.0, 0.5, 1000};
    auto const hasteOf = [](double gaps) {
        double const share = std::log2(gaps + 1) / 3 * 0.5 / 0.3; // 0.3 s, 0.5 s an octave
        return std::lround(1000 * share * share);
    };
    auto const travelled = [&] {
        Pair const pair(x);
        return pair.travelling(
            scenes::laid(pair.before, {1, 5, 8}, x.string("G2"), {{0}, {1, 2}, {7, 8}}),
            scenes::laid(pair.after, {1, 5, 8}, x.string("C3"), crotchets));
    };
    double const gaps = (harp::distanceMm(x.harp, x.string("G2"), x.string("C3")) +
                         harp::distanceMm(x.harp, x.string("G3"), x.string("C4"))) /
                        2 / 15;
    CHECK(travelled() == hasteOf(gaps / 2));
    x.level.crosses = false;
    CHECK(travelled() == hasteOf(gaps));
}

TEST_CASE("A leap that the level has no time for is no pair at all", "[terms]")
{
    // By hand: a quaver at 100 crotchets a minute is 0.3 s; eleven gaps are log2(12) = 3.58
    // bits, at half a second an octave of three bits 0.6 s.
    auto const x = scenes::example("[G] z:1 | [D] z:1 |");
    Pair const pair(x);
    Laid const late = scenes::laid(pair.before, {1, 1}, x.string("G2"), {{0}, {7, 8}});
    Laid const far = scenes::laid(pair.after, {1}, x.string("D4"), once);
    CHECK(pair.travelling(late, far) == unplayablePair);
}

TEST_CASE(
    "A leap of the whole hand by an octave is not shortened by a finger that reaches ahead",
    "[terms]")
{
    // By hand: both edges of G2-G3 move up seven strings in 0.3 s, and the level asks half a
    // second for an octave; the lowest finger alone would have no way at all from G3.
    auto const x = scenes::example("[G] z:1 | [D] z:1 |");
    Pair const pair(x);
    auto const from = [&](music::Rational last) {
        return scenes::laid(pair.before, {1, 8}, x.string("G2"), {{0}, last});
    };
    Laid const octaveUp = scenes::laid(pair.after, {1, 8}, x.string("G3"), {{0}, {1, 2}});
    Laid const seventhUp = scenes::laid(pair.after, {1, 8}, x.string("F3"), {{0}, {1, 2}});
    CHECK(pair.travelling(from({7, 8}), octaveUp) == unplayablePair);
    CHECK(pair.travelling(from({1, 2}), octaveUp) != unplayablePair);
    CHECK(pair.travelling(from({7, 8}), seventhUp) != unplayablePair);
}

TEST_CASE("A string plucked at the end of one position is not taken at once in the next",
          "[terms]")
{
    // Level 3: 2.5 a second on one string, so 0.4 s apart; a quaver here is 0.3 s.
    auto const x = scenes::example("[G] z:1 | [D] z:1 |");
    Pair const pair(x);
    Laid const late = scenes::laid(pair.before, {1, 5}, x.string("G2"), {{0}, {7, 8}});
    Laid const onTime = scenes::laid(pair.before, {1, 5}, x.string("G2"), minims);
    Laid const d3 = scenes::laid(pair.after, {1}, x.string("D3"), once);
    CHECK(stringTooSoon(pair.neighbours, late, d3));
    CHECK_FALSE(stringTooSoon(pair.neighbours, onTime, d3));
}

TEST_CASE("Bass strings left ringing clash with a chord a step away, not with their own",
          "[terms]")
{
    auto const step = scenes::example("[G] z:1 | [A] z:1 |");
    auto const same = scenes::example("[G] z:1 | [G] z:1 |");
    Pair const toA(step);
    Pair const toG(same);
    Laid const g = scenes::laid(toA.before, {1, 5, 8}, step.string("G2"), crotchets);
    Laid const a = scenes::laid(toA.after, {1, 5, 8}, step.string("A2"), crotchets);
    Laid const again = scenes::laid(toG.after, {1, 5, 8}, same.string("G2"), crotchets);
    CHECK(toA.ringing(g, a) > 3 * toG.ringing(g, again));
}

TEST_CASE("What rings clashes less after a longer time and in a higher octave", "[terms]")
{
    auto fast = scenes::example("[G] z:1 | [A] z:1 |");
    auto slow = fast;
    slow.tempo.beatsPerMinute = 40;
    auto const clash = [](scenes::Example const& x, char const* g, char const* a) {
        Pair const pair(x);
        return pair.ringing(scenes::laid(pair.before, {1, 5, 8}, x.string(g), crotchets),
                            scenes::laid(pair.after, {1, 5, 8}, x.string(a), crotchets));
    };
    CHECK(clash(slow, "G2", "A2") < clash(fast, "G2", "A2"));
    CHECK(clash(fast, "G3", "A3") < clash(fast, "G2", "A2"));
}

TEST_CASE("A string plucked anew no longer rings on", "[terms]")
{
    auto const x = scenes::example("[G] z:1 | [D] z:1 |");
    Pair const pair(x);
    Laid const g = scenes::laid(pair.before, {1, 5}, x.string("F2"), minims); // F sharp, C
    Laid const apart = scenes::laid(pair.after, {1}, x.string("D3"), once);
    Laid const stopping =
        scenes::laid(pair.after, {1, 7}, x.string("D3"), {{0}, {0}}); // D3, C4
    CHECK(pair.ringing(g, apart) > 0);
    Laid const anew = scenes::laid(pair.after, {1, 0}, x.string("D3"), {{0}, {0}}); // D3, C3
    CHECK(pair.ringing(g, anew) < pair.ringing(g, stopping));
}

TEST_CASE("The same shape again on the same chord is duller than another one in its pulse",
          "[terms]")
{
    auto const x = scenes::example("[G] z:1 | [G] z:1 | [D] z:1 |");
    Pair const pair(x);
    harp::StringIndex const g2 = x.string("G2");
    Laid const open = scenes::laid(pair.before, {1, 5, 8}, g2, crotchets);
    Laid const tenth = scenes::laid(pair.after, {1, 5, 10}, g2, crotchets);
    CHECK(variety(pair.neighbours, open, open) > variety(pair.neighbours, open, tenth));
    Laid const high = scenes::laid(pair.after, {1, 5, 8}, x.string("G3"), crotchets);
    CHECK(variety(pair.neighbours, open, high) < variety(pair.neighbours, open, open));
}

TEST_CASE("Inside two bars a figure that stays costs nothing, between them another shape",
          "[terms]")
{
    auto const x = scenes::example("[G] z:1 | [D] z:1 | [G] z:1 |");
    Pair const pair(x);
    Laid const onG = scenes::laid(pair.before, {1, 5, 8}, x.string("G2"), crotchets);
    Laid const onD = scenes::laid(pair.after, {1, 5, 8}, x.string("D3"), crotchets);
    Laid const other = scenes::laid(pair.after, {1, 5, 10}, x.string("D3"), crotchets);
    CHECK(variety(pair.neighbours, onG, onD) == 0);
    CHECK(variety(pair.neighbours, onG, other) > 0);
    Neighbours apart = pair.neighbours;
    apart.seam = Seam::Phrases;
    CHECK(variety(apart, onG, onD) > 0);
    CHECK(variety(apart, onG, other) < variety(apart, onG, onD));
}

TEST_CASE("A change of pulse is restless, within two bars more than between them", "[terms]")
{
    auto const x = scenes::example("[G] z:1 | [G] z:1 | [D] z:1 |");
    Pair pair(x);
    harp::StringIndex const g2 = x.string("G2");
    Laid const crotchetPulse = scenes::laid(pair.before, {1, 5, 8}, g2, crotchets);
    Laid const minimPulse = scenes::laid(pair.after, {1, 5}, g2, minims);
    REQUIRE(pair.neighbours.seam == Seam::InPair);
    Points const within = variety(pair.neighbours, crotchetPulse, minimPulse);
    pair.neighbours.seam = Seam::Phrases;
    Points const between = variety(pair.neighbours, crotchetPulse, minimPulse);
    CHECK(within > between);
    CHECK(between > 0);
}

TEST_CASE("Weights scale each judgement and leave the unplayable as it is", "[terms]")
{
    auto x = scenes::example("[G] z:1 | [D] z:1 |");
    Pair const pair(x);
    Laid const late = scenes::laid(pair.before, {1, 1}, x.string("G2"), {{0}, {7, 8}});
    Laid const far = scenes::laid(pair.after, {1}, x.string("D4"), once);
    x.weights.byTerm.fill(500);
    auto const place = static_cast<std::size_t>(Term::ShapeFit);
    CHECK(accountOf(pair.before, resting(pair.before), x.weights)[place] ==
          shapeFit(pair.before, resting(pair.before)) / 2);
    Account const account = pairAccount(pair.neighbours, late, handAtEnd(pair.before, late),
                                        ringingAfter(pair.neighbours, late), far,
                                        handAtStart(pair.after, far), x.weights);
    CHECK(account[static_cast<std::size_t>(Term::Travel)] == unplayablePair);
}

TEST_CASE("A seventh a semitone under the octave grinds on it, a whole tone under it does not",
          "[terms]")
{
    // By hand: over G the seventh is F sharp, a semitone below G; over D it is C, a whole tone.
    auto const added = [](char const* chord, char const* root,
                          std::vector<int> const& degrees) {
        auto x = scenes::example(chord);
        x.weights.taste.shapeFit.rubsOctave.fill(0);
        View const without = x.view(0);
        Points const plain =
            shapeFit(without, scenes::laid(without, degrees, x.string(root), crotchets));
        x.weights.taste.shapeFit.rubsOctave.fill(77);
        View const with = x.view(0);
        return shapeFit(with, scenes::laid(with, degrees, x.string(root), crotchets)) - plain;
    };
    CHECK(added("[G] z:1 |", "G2", {1, 5, 8, 7}) == 77);
    CHECK(added("[D] z:1 |", "D3", {1, 5, 8, 7}) == 0);
    CHECK(added("[G] z:1 |", "G2", {1, 5, 8}) == 0);
}

TEST_CASE("A dominant seventh misses its leading note, another chord its third only", "[terms]")
{
    auto const added = [](char const* chord, std::vector<int> const& degrees) {
        auto x = scenes::example(chord);
        x.weights.taste.quality.leadingMissed.fill(0);
        View const without = x.view(0);
        Points const plain =
            quality(without, scenes::laid(without, degrees, x.string("D3"), crotchets));
        x.weights.taste.quality.leadingMissed.fill(77);
        View const with = x.view(0);
        return quality(with, scenes::laid(with, degrees, x.string("D3"), crotchets)) - plain;
    };
    CHECK(added("[D7] z:1 |", {1, 5, 8}) == 77);
    CHECK(added("[D7] z:1 |", {1, 5, 10}) == 0);
    CHECK(added("[D] z:1 |", {1, 5, 8}) == 0);
}

TEST_CASE("A string that the tune plucks exactly a beat away is still wanted by both hands",
          "[terms]")
{
    // By hand: the left hand's G4 is plucked on beat 1, the tune's on beat 2; on beat 3 it is
    // free.
    auto const cost = [](char const* tune) {
        auto x = scenes::example(tune);
        x.weights.taste.collision = {};
        x.weights.taste.collision.stringShared.fill(77);
        View const view = x.view(0);
        return collision(view, scenes::laid(view, {1}, x.string("G4"), {{0}}));
    };
    CHECK(cost("[G] z:1/4 G4:1/4 z:1/2 |") == 77);
    CHECK(cost("[G] z:1/2 G4:1/2 |") == 0);
}

TEST_CASE("A close of a beat is struck once, a longer one may be broken", "[terms]")
{
    auto const added = [](char const* chords, PositionIndex last, music::Rational second) {
        auto x = scenes::example(chords);
        x.weights.taste.cadence.chopped = 0;
        View without = x.view(last);
        without.kind = tune::Kind::Reel; // a dance
        Laid const plain = scenes::laid(without, {1, 8}, x.string("G2"), {{0}, second});
        Points const before = cadence(without, plain);
        x.weights.taste.cadence.chopped = 77;
        View with = x.view(last);
        with.kind = tune::Kind::Reel;
        return cadence(with, scenes::laid(with, {1, 8}, x.string("G2"), {{0}, second})) -
               before;
    };
    CHECK(added("[D] z:3/4 [G] z:1/4 |", 1, {1, 8}) == 77);
    CHECK(added("[D] z:3/4 [G] z:1/4 |", 1, {0}) == 0);
    CHECK(added("[D] z:1/2 [G] z:1/2 |", 1, {1, 4}) == 0);
}

TEST_CASE("A chord's tone struck under a note that the tune holds has less right there",
          "[terms]")
{
    // By hand: B3 under C5. It comes while C5 sounds, or C5 passes over it.
    auto const added = [](char const* tune, music::Rational at) {
        auto x = scenes::example(tune);
        x.weights.taste.melodyClash.struckUnderShare = 0;
        View const without = x.view(0);
        Points const before =
            melodyClash(without, scenes::laid(without, {1, 3}, x.string("G3"), {{0}, at}));
        x.weights.taste.melodyClash.struckUnderShare = 1;
        View const with = x.view(0);
        return melodyClash(with, scenes::laid(with, {1, 3}, x.string("G3"), {{0}, at})) -
               before;
    };
    CHECK(added("[G] C5:1 |", {1, 2}) > 0);
    CHECK(added("[G] D5:3/4 C5:1/4 |", {1, 2}) == 0);
}
