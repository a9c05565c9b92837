#pragma once

#include "core/arrange/points.h"

#include <array>
#include <cstddef>

// The figures that the terms of the score go by. None stands in code: all are read from
// shared/taste.json, and a style may have some of its own (shared/weights.json). Thousandths of
// a point unless said otherwise; times in seconds; "share" is a factor. What each figure is for
// stands beside the term that uses it (core/arrange/terms).
namespace arrange {

inline constexpr std::size_t levelCount = 5;

template<typename T>
using ByLevel = std::array<T, levelCount>;
template<typename T>
using ByStrength = std::array<T, 4>; // of the beat, as music::beatStrength
using ByDegree = std::array<Points, 7>;
template<typename T>
using BySeam = std::array<T, 4>; // inside a pair of bars, between pairs, phrases, parts
template<typename T>
using ByClose = std::array<T, 3>; // of a phrase, a part, the tune

struct Taste {
    struct Reach {
        double pointEveryMm = 0;
        double inBlock = 0; // shares
        double inRoll = 0;
        double oneByOne = 0; // between neighbouring fingers of a broken or rolled shape
    } reach;
    struct Rate {
        double easyShare = 0; // of the level's limit
        double atTheLimit = 0;
        // Seconds that a finger has to pass under the thumb, by level.
        std::array<double, 5> crossesAtLeisure{1, 1, 1, 1, 1};
        double crossesAtOnce = 0;    // points where it has none
    } rate;
    struct ChordFit {
        std::array<Points, 12> foreignness{}; // by semitones above the root
        Points inverted = 0;                  // third lowest
        Points sixFour = 0;                   // fifth lowest, where no bass names it
        Points strangeBass = 0;               // any other tone lowest
        Points overBass = 0; // a tone foreign to a chord that stands on a named bass
        ByStrength<double> byStrength{};
    } chordFit;
    struct Quality {
        Points thirdMissed = 0;
        Points longThirdMissed = 0;    // on top of that, where the chord fills a bar
        Points ninthWithoutThird = 0;  // a ninth or second over a chord whose third is missed
        Points rootMissed = 0;         // over a named bass
        Points wrongThird = 0;
        Points wrongFifth = 0;
        Points wrongSeventh = 0;
        Points seventhOffScale = 0;
        ByStrength<double> byStrength{};
    } quality;
    struct MelodyClash {
        double pointsEach = 0;
        double chordToneShare = 0;
        std::array<double, 3> byOctaves{};
        ByStrength<double> byStrength{};
    } melodyClash;
    struct MelodyCompany {
        std::array<Points, 7> byIntervalClass{};
        Points sameWay = 0;
        Points holdsStill = 0;
    } melodyCompany;
    struct Collision {
        std::array<Points, 3> crowded{}; // by strings between the hands
        Points tuneTakesString = 0;
        Points tuneComesClose = 0; // onto the next string above one that rings on
        // A string that the other hand plucks within a beat, by level; from level 4 on within
        // `sharedSeconds`.
        std::array<Points, 5> stringShared{};
        double sharedSeconds = 0;
    } collision;
    struct Mud {
        double clear = 0; // roughness
        double pointEvery = 0;
    } mud;
    struct MeterFit {
        Points firstBeatMissing = 0;
        Points strongBeatEmpty = 0;
        Points beatEmpty = 0;
        ByLevel<Points> pulseEmpty{}; // by the left hand, of a dance's pulse
        Points upbeatStruck = 0;
    } meterFit;
    struct Activity {
        double busyNotesABeat = 0;
        double heldNotesABeat = 0;
        Points extraNote = 0;
        Points stillness = 0;
    } activity;
    struct Levers {
        Points needsFlip = 0;
        Points cannotBeHad = 0;
        Points hurried = 0;
        double unhurriedSeconds = 0;
    } levers;
    struct Cadence {
        Points openEnd = 0;
        Points coloured = 0;
        Points notOnRoot = 0;
        Points inverted = 0; // another tone than the chord's own bass lowest
        Points noOctave = 0;
        Points block = 0;
        Points stirs = 0;
        Points rests = 0;
        double partShare = 0;
        int highAbove = 0; // midi
        Points high = 0;   // a semitone that the bass of the last chord stands above that
        ByClose<Points> noBreath{}; // the last beat is struck
        double breathSlow = 0;      // times that much in airs and waltzes
        ByLevel<Points> endsWithoutThird{}; // the tune, in airs and waltzes whose mode is sure
        ByLevel<Points> endsUnrolled{};     // where it could be rolled
        Points endsBroken = 0;              // one string after the other where it could be held
        Points rollsDance = 0;
    } cadence;
    struct Liking {
        int lowestHome = 0; // MIDI keys
        int highestHome = 0;
        int lowestBest = 0;
        int highestBest = 0;
        int lowestThird = 0;
        Points outsideHome = 0; // a semitone
        Points outsideBest = 0; // a semitone
        Points rests = 0;
        Points missingNote = 0;
        Points missingRichness = 0;
        Points extraNote = 0;
        Points block = 0;
        Points noFifth = 0;
        Points bareRoot = 0;
        Points turn = 0;
        Points returns = 0;
        Points lowClosedThird = 0;
        ByDegree closeDegree{};
        ByDegree highDegree{};
        ByLevel<int> mostNotes{};
        ByLevel<double> unhurriedSeconds{};        // a note
        ByLevel<ByLevel<Points>> byPatternLevel{}; // [player's level][pattern's level]
    } liking;
    struct Passes {
        int fewerAtFirst = 0; // notes less than the span has room for
        int moreAtLast = 0;
        Points noteTooMany = 0;
        Points noteTooFew = 0;
    } passes;
    struct Travel {
        double pointsABit = 0;
        double easyShare = 0; // of the time there is
        double allowedShare = 0;
        double ledShare = 0; // of the way that a hand goes which is led over
    } travel;
    struct Link {
        Points nothingShared = 0;
        Points oneShared = 0;
        Points pluckedWhileLoud = 0;
        double loud = 0; // of a pluck's amplitude
    } link;
    struct RingClash {
        double usual = 0; // roughness
        double pointEvery = 0;
        double inaudible = 0; // of a pluck's amplitude
    } ringClash;
    struct ThumbLine {
        int freeStrings = 0; // the thumb's way from one shape to the next
        Points stringBeyond = 0;
        Points leadsBySame = 0; // the last note's string comes again at once
        Points leadsNowhere = 0;
        Points seventhHangs = 0; // a seventh that neither falls nor stays
        Points seventhLeads = 0; // one that does, below 0: it is liked
        Points ninthHangs = 0;   // a ninth that goes nowhere
    } thumbLine;
    struct BassLine {
        std::array<Points, 9> byStrings{}; // between the lowest notes, an octave and more last
        Points stepLeaps = 0; // where chords go by step and the bass does not
        Points sixFourLeaps = 0; // to or from a chord on its fifth
    } bassLine;
    struct Variety {
        Points sameAgain = 0; // shape, rhythm and chord, inside a phrase
        BySeam<Points> keeps{};
        BySeam<Points> varies{};
        BySeam<Points> changes{};
        BySeam<Points> otherPulse{};
        BySeam<Points> dropsOut{};
        BySeam<Points> otherRhythm{}; // of the same length
        ByLevel<double> change{}; // times what a change costs inside a phrase
        ByLevel<double> renewal{}; // and what costs where nothing changes
        Points inBar = 0; // another shape or rhythm within a bar, both parts equally long
        ByLevel<Points> unlikePhrase{}; // otherwise than earlier bars with the same tune and
                                        // chords, two or more in a row
        ByLevel<Points> unlikeBar{};    // than a single one
    } variety;
};

} // namespace arrange
