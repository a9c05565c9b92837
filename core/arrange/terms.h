#pragma once

#include "core/arrange/laid.h"
#include "core/arrange/score.h"
#include "core/arrange/view.h"

#include <cstdint>
#include <string_view>
#include <vector>

// The terms of the score. Each judges one thing and changes nothing. A raw judgement is in
// thousandths of a point: 0 nothing to say, 1000 a clear fault that a teacher would mark. The
// style's weight turns it into cost. Where passes differ, a voicing is judged by its worst
// pass.
namespace arrange {

// --- of one voicing ---

// Stretch of fingers placed together beyond what is easy for the hand: one point for each 25 mm
// in a block, less where the notes come one after the other [trade-3.2].
Points reach(View const& view, Laid const& laid);

// Closeness to the level's limit of left-hand notes a second: nothing up to six tenths of it,
// one point at the limit [trade-3.4].
Points rate(View const& view, Laid const& laid);

// Degrees that are no tone of the chord as the levers stand, by beat strength and length:
// seconds and sevenths are mild colour, a wrong third or fifth is heavy. A third that neither
// hand states is missed a little [trade-4].
Points chordFit(View const& view, Laid const& laid);

// Dissonance with the tune's notes that sound at the same time, by interval class (-consonance,
// [hur94]), beat strength, and how long both are counted.
Points melodyClash(View const& view, Laid const& laid);

// Hands on neighbouring strings at one moment: one string apart crowded, two still close
// [trade-3.1]. The tune coming down onto a counted string counts too.
Points collision(View const& view, Laid const& laid);

// Roughness of all strings that ring together within the position, faded by their ring times,
// averaged over its time [hk78, trade-5].
Points mud(View const& view, Laid const& laid);

// The rhythm against the meter and the tune: the first beat is there, no strong beat stays
// empty, a busy tune has a plain left hand, under a held tune the left hand moves [trade-4].
Points meterFit(View const& view, Laid const& laid);

// How plainly the last position of a part or of the tune closes: root, fifth and octave, few
// notes, no open sixths or ninths [trade-4].
Points cadence(View const& view, Laid const& laid);

// How readily a harper takes the shape and the register: 1-5-8 round G2 before all, rest last.
// Common practice, no source.
Points liking(View const& view, Laid const& laid);

// A raw judgement times the style's weight, in thousandths.
Points weighted(Points raw, Weights const& weights, Term term);

// Weights applied to all terms of one voicing; the terms of neighbours are 0.
Account accountOf(View const& view, Laid const& laid, Weights const& weights);

// --- of two neighbours ---

// How two positions stand to each other.
struct Neighbours {
    View const* before = nullptr;
    View const* after = nullptr;
    bool adjacent = true;   // the second is played after the first on some pass
    double gap = 0;         // whole notes from the end of the first to the second, least of all
                            // passes
    bool sameChord = false; // the same chord symbol
    bool sameBar = false;
    bool sameGroup = false; // both in one group of two bars
    friend bool operator==(Neighbours const&, Neighbours const&) = default;
};

// Where a hand is as it begins or ends a voicing.
struct HandPlace {
    bool rests = true;
    double at = 0; // whole notes from the position's start, of its first or last onset
    double centreMm = 0;
    friend bool operator==(HandPlace const&, HandPlace const&) = default;
};
HandPlace handAtStart(View const& view, Laid const& laid);
HandPlace handAtEnd(View const& view, Laid const& laid);

// The way of the hand from one shape to the next against the time for it: bits of a move as in
// Fitts' law [fitts54], an octave of seven gaps having three; the level says how long an octave
// takes. `unplayablePair` where it would take a quarter longer than there is: the level's time
// is a working limit, not a wall.
Points travel(Neighbours const& n, HandPlace const& end, HandPlace const& start);

// A rule, no judgement: the second plucks a string that the first has plucked so late that the
// level does not ask for it again yet.
bool stringTooSoon(Neighbours const& n, Laid const& before, Laid const& after);

// What still rings as the next position begins.
struct Ringing {
    std::vector<int> strings;
    std::vector<double> amplitudes; // of each, 1 as plucked
    std::vector<int> midi;
    std::uint64_t mask = 0;
    std::vector<double> clash; // with each string of the next position, by its pitch there
};
Ringing ringingAfter(Neighbours const& n, Laid const& before);

// Roughness of the strings left ringing against the next position's notes, averaged over these;
// a string plucked anew has stopped [hk78, trade-2.2].
Points ringClash(Neighbours const& n, Ringing const& ringing, Laid const& after);

// Dull: the same shape and rhythm on the same chord again. Restless: another shape without need
// within a group of two bars. Common practice, no source.
Points variety(Neighbours const& n, Laid const& before, Laid const& after);

// Weights applied to the terms of two neighbours; those of one voicing are 0. An unplayable
// pair keeps its full cost whatever the weight.
Account pairAccount(Neighbours const& n, Laid const& before, HandPlace const& end,
                    Ringing const& ringing, Laid const& after, HandPlace const& start,
                    Weights const& weights);

// The same total, from judgements made before, because they are alike for many pairs: `way` of
// travel between the hand's places, `clash` of ringClash.
Points pairCost(Neighbours const& n, Laid const& before, Laid const& after, Points way,
                Points clash, Weights const& weights);

} // namespace arrange
