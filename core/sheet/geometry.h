#pragma once

// The numbers of engraving, in staff spaces unless said otherwise. What the music font knows of
// itself (thickness of lines and beams, where a stem meets a notehead) is not here: it comes
// from the font's SMuFL metadata. What names no source is house style, found by eye.
namespace sheet::geometry {

// Stems
inline constexpr double stemLength = 3.5;        // an octave [gould11, ross70]
inline constexpr double shortestStem = 2.75;     // inside a beamed group [gould11]
inline constexpr double stemPerExtraFlag = 0.75; // from the third flag on

// Beams
inline constexpr double steepestBeam = 1.25;  // rise over a whole group [ross70]
inline constexpr double steepestNarrow = 0.5; // of a group narrower than:
inline constexpr double narrowGroup = 5;
inline constexpr double beamStub = 1.0; // the part of a beam that belongs to one note alone

// Spacing along the line
inline constexpr double crotchetSpace = 3.4; // from one crotchet to the next, unstretched
inline constexpr double spacingPower = 0.6;  // width grows as duration to this power [ross70]
inline constexpr double betweenNotes = 0.35; // least gap between two signs on one staff
inline constexpr double afterBarLine = 1.1;  // from a bar line to a notehead
inline constexpr double beforeBarLine = 0.7;
inline constexpr double afterClef = 0.9;
inline constexpr double afterSignature = 0.9;
inline constexpr double accidentalGap = 0.2;
inline constexpr double dotGap = 0.35;
inline constexpr double rollGap = 0.45;
inline constexpr double bracketHook = 0.45;      // of the bracket that says "together"
inline constexpr double bracketThickness = 0.14; // between a stem and a bar line
inline constexpr double beforeGraced = 0.3;      // from grace notes to their note
inline constexpr double betweenGraces = 0.4;
inline constexpr double betweenChordSymbols = 1.2;
inline constexpr double betweenLabels = 0.8;
inline constexpr double besideLabels = 1.8; // white to a finger behind one

// Between things stacked above and below the staves
inline constexpr double fingerGap = 0.35;
inline constexpr double markGap = 0.4;
inline constexpr double chordGap = 0.7;
inline constexpr double chordAboveStaff = 1.4; // lowest place of the row's baseline
inline constexpr double labelGap = 0.6;
inline constexpr double labelBelowStaff = 1.6; // highest place of the row's capitals
inline constexpr double endingGap = 0.6;
inline constexpr double endingHook = 1.6;
inline constexpr double leverGap = 0.5;
inline constexpr double verseGap = 0.5;
inline constexpr double verseBelowStaff = 1.4; // highest place of the row's capitals
inline constexpr double placingGap = 0.3;
inline constexpr double placingHook = 0.55;
inline constexpr double placingThickness = 0.11;

// Staves and systems
inline constexpr double leastStaffGap = 6.0;      // between the two staves of a system
inline constexpr double clearBetweenStaves = 0.9; // white between what reaches in from both
inline constexpr double leastSystemGap = 2.0;     // white between two systems
inline constexpr double widestSystemGap = 7.0;
inline constexpr double widestGapOnFullPage = 14.0; // of a page that another follows
inline constexpr double braceGap = 0.35;
inline constexpr double longestStretch = 1.55; // a last line is not stretched beyond this

// Sizes
inline constexpr double graceScale = 0.62; // [gould11]
inline constexpr double fingerScale = 1.1;
inline constexpr double cueClefScale = 0.75;
inline constexpr double chordHeight = 2.3; // em of the chord symbols
inline constexpr double labelHeight = 1.55;
inline constexpr double leverHeight = 1.6;
inline constexpr double barNumberHeight = 1.35;
inline constexpr double partHeight = 2.0;
inline constexpr double endingHeight = 1.6;
inline constexpr double annotationHeight = 1.6;
inline constexpr double starHeight = 2.4;
inline constexpr double navigationHeight = 1.75;
inline constexpr double verseHeight = 1.75;
inline constexpr double handHeight = 1.35;
inline constexpr double syllableAfterBarLine = 0.75; // its furthest reach left of its note
inline constexpr double syllableBeforeBarLine = 0.4; // white between it and the bar line
inline constexpr double betweenSyllables = 0.55;
inline constexpr double hyphenWidth = 0.33 * verseHeight;
inline constexpr double aroundHyphen = hyphenWidth + 0.4; // between two syllables of a word
inline constexpr double aroundLeverCue = 1.4;            // the box and white to the next

} // namespace sheet::geometry
