#pragma once

#include "core/arrange/laid.h"
#include "core/arrange/score.h"
#include "core/arrange/view.h"

#include <cstdint>
#include <optional>
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
// one point at the limit, and where one stroke stands in less time than that [trade-3.4].
Points rate(View const& view, Laid const& laid);

// Degrees that are no tone of the chord as the levers stand, by beat strength and length:
// seconds, sixths and sevenths are colour. Also what stands lowest where it is not the chord's
// bass [trade-4].
Points chordFit(View const& view, Laid const& laid);

// What a string is in a chord that asks for another pitch of the same letter: the third of Cm
// where the levers give E natural, the fifth above a leading note, which is diminished, the
// seventh of G7 where F is sharp; or a seventh that is in neither chord nor key. None for tones
// of the chord, and for letters that the chord does not name [trade-4].
enum class WrongTone { Third, Fifth, Seventh, SeventhOffScale };
std::optional<WrongTone> wrongTone(View const& view, Pluck const& pluck);

// The chord's quality: wrong tones, by beat strength; and a third that neither hand states is
// missed a little, where the chord has one. A chord without a third is left open on purpose
// [trade-4].
Points quality(View const& view, Laid const& laid);

// Dissonance with the tune's notes that sound at the same time, by interval class (-consonance,
// [hur94]), beat strength, and how long both are counted.
Points melodyClash(View const& view, Laid const& laid);

// The company that the left hand's notes keep with the tune at the time they begin, on the
// average: thirds, sixths and tenths before fifths, octaves hollow; and both going the same way
// or one standing still, where contrary motion is best. Common practice, no source.
Points melodyCompany(View const& view, Laid const& laid);

// Hands on neighbouring strings at one moment: one string apart crowded, two still close
// [trade-3.1]. The tune coming down onto a counted string counts too.
Points collision(View const& view, Laid const& laid);

// Roughness of all strings that ring together within the position, faded by their ring times,
// averaged over its time [hk78, trade-5].
Points mud(View const& view, Laid const& laid);

// The rhythm against the meter: the first beat is there, no strong beat stays empty in // hands
// [trade-4]. The last chord of an air or a waltz may ring through [music-7].
Points meterFit(View const& view, Laid const& laid);

// The left hand against the tune's activity: plain where the tune is busy, moving where it
// holds or rests [trade-4].
Points activity(View const& view, Laid const& laid);

// Notes of the tune that begin on each beat of the position.
double tuneNotesABeat(View const& view, PassView const& pass);

// The levers: each string that would have to be turned to sound what the chord asks of it, or
// cannot be; and notes so close to a flip of the left hand that it has to hurry [trade-3.6].
Points levers(View const& view, Laid const& laid);

// An air or a waltz, which come to their end slowly.
bool isSlow(View const& view);

// How plainly the last position of a part or of the tune closes: 1-5-8, 1-8 or a roll; few
// notes, no open sixths or ninths, no block that strikes on [trade-4]; on its own bass. And the
// breath there and at the ends of phrases: the last beat is left to ring.
Points cadence(View const& view, Laid const& laid);

// How readily a harper takes the shape and the register: 1-5-8 round G2 before all, rest last.
// Common practice, no source.
Points shapeFit(View const& view, Laid const& laid);

// How many notes a span has room for without hurry at the player's level.
int notesWithoutHurry(View const& view);

// Where each pass is arranged for itself: fewer notes than there is room for at first, more on
// the last pass [trade-4]. 0 where one voicing stands for all passes.
Points passes(View const& view, Laid const& laid);

// A raw judgement times the style's weight, in thousandths.
Points weighted(Points raw, Weights const& weights, Term term);

// Weights applied to all terms of one voicing; the terms of neighbours are 0.
Account accountOf(View const& view, Laid const& laid, Weights const& weights);

// --- of two neighbours ---

// What lies between two positions. Bars go in pairs and pairs in phrases of four bars, counted
// from where a part begins.
enum class Seam { InPair, Pairs, Phrases, Parts };

// How two positions stand to each other.
struct Neighbours {
    View const* before = nullptr;
    View const* after = nullptr;
    bool adjacent = true;   // the second is played after the first on some pass
    double gap = 0;         // whole notes from the end of the first to the second, least of all
                            // passes
    bool sameChord = false; // the same chord symbol
    bool sameBar = false;
    Seam seam = Seam::Pairs;
    friend bool operator==(Neighbours const&, Neighbours const&) = default;
};

// Where a hand is as it begins or ends a voicing.
struct HandPlace {
    bool rests = true;
    double at = 0; // whole notes from the position's start, of its first or last onset
    double centreMm = 0;
    harp::PlacedFinger edge{}; // what plays there: the first note, or the last
    harp::StringIndex low = 0, high = 0; // the outer strings of the shape
    friend bool operator==(HandPlace const&, HandPlace const&) = default;
};
HandPlace handAtStart(View const& view, Laid const& laid);
HandPlace handAtEnd(View const& view, Laid const& laid);

// The way of the hand from one shape to the next against the time for it: bits of a move as in
// Fitts' law [fitts54], an octave of seven gaps having three; the level says how long an octave
// takes. `unplayablePair` where it would take a quarter longer than there is: the level's time
// is a working limit, not a wall. From the level on that crosses and links, the finger that
// begins reaches out for its string while the one that plays last is still on its own: where
// both can be down the hand is led over and goes but a share of the way, and elsewhere what is
// beyond their reach [trade-3.3].
Points travel(Neighbours const& n, HandPlace const& end, HandPlace const& start);

// A rule, no judgement: the second plucks a string that the first has plucked so late that the
// level does not ask for it again yet.
bool stringTooSoon(Neighbours const& n, Laid const& before, Laid const& after);

// What still rings as the next position begins.
struct Ringing {
    std::vector<harp::StringIndex> strings;
    std::vector<double> amplitudes; // of each, 1 as plucked
    std::vector<int> midi;
    std::uint64_t mask = 0;
    base::List<harp::StringIndex, double>
        clash; // with each string of the next position, by its pitch there
};
Ringing ringingAfter(Neighbours const& n, Laid const& before);

// Roughness of the strings left ringing against the next position's notes, averaged over these;
// a string plucked anew has stopped [hk78, trade-2.2].
Points ringClash(Neighbours const& n, Ringing const& ringing, Laid const& after);

// Strings in common help the hand to place the next shape; one that is plucked anew while it is
// still loud is choked, and a finger on it buzzes [trade-3.3].
Points link(Neighbours const& n, Ringing const& ringing, Laid const& before, Laid const& after);

// The way from one top string to the next beyond what makes a line, and whether the last note
// leads by step into a string of the next shape. Common practice, no source.
Points thumbLine(Neighbours const& n, Laid const& before, Laid const& after);

// The way of the lowest strings: by step, by fourth or fifth, rather than by leaps; a chord on
// its fifth is come to and left by step or on the same string. Common practice, no source.
Points bassLine(Neighbours const& n, Laid const& before, Laid const& after);

// One figure holds a phrase together and changes where the phrase does: what it costs to keep
// the shape, to vary its end (1-5-8, 1-5-8-7) or to change it, by the seam between. The same
// strings in the same rhythm on the same chord again are dull anywhere. A beginner keeps one figure
// and is not asked for another, a good player changes more freely. Common practice, no source.
Points variety(Neighbours const& n, Laid const& before, Laid const& after);

// Weights applied to the terms of two neighbours; those of one voicing are 0. An unplayable
// pair costs `unplayablePair` whatever the weights, and nothing besides.
Account pairAccount(Neighbours const& n, Laid const& before, HandPlace const& end,
                    Ringing const& ringing, Laid const& after, HandPlace const& start,
                    Weights const& weights);

// The terms of two neighbours that see nothing of the second but its strings: link, ring clash,
// thumb and bass line. Weights applied, summed.
Points stringsCost(Neighbours const& n, Laid const& before, Ringing const& ringing,
                   Laid const& after, Weights const& weights);

// The total of pairAccount, from judgements made before, because they are alike for many pairs:
// `way` of travel between the hand's places, `strings` of stringsCost.
Points pairCost(Neighbours const& n, Laid const& before, Laid const& after, Points way,
                Points strings, Weights const& weights);

} // namespace arrange
