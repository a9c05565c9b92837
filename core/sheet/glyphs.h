#pragma once

#include <array>
#include <string_view>

// The characters of a SMuFL music font that our sheets use, by their names in the standard
// (Standard Music Font Layout 1.4, W3C Music Notation Community Group) [smufl-1.4].
namespace sheet::glyph {

// Barlines and repeats.
inline constexpr char32_t brace = 0xE000;
inline constexpr char32_t bracket = 0xE002;
inline constexpr char32_t bracketTop = 0xE003;
inline constexpr char32_t bracketBottom = 0xE004;
inline constexpr char32_t repeatLeft = 0xE040;
inline constexpr char32_t repeatRight = 0xE041;
inline constexpr char32_t repeatDots = 0xE043;
inline constexpr char32_t repeatDot = 0xE044;
inline constexpr char32_t dalSegno = 0xE045;
inline constexpr char32_t daCapo = 0xE046;
inline constexpr char32_t segno = 0xE047;
inline constexpr char32_t coda = 0xE048;

// Clefs.
inline constexpr char32_t gClef = 0xE050;
inline constexpr char32_t gClef8vb = 0xE052;
inline constexpr char32_t gClef8va = 0xE053;
inline constexpr char32_t fClef = 0xE062;

// Time signatures.
inline constexpr char32_t timeSig0 = 0xE080;
inline constexpr char32_t timeSig1 = 0xE081;
inline constexpr char32_t timeSig2 = 0xE082;
inline constexpr char32_t timeSig3 = 0xE083;
inline constexpr char32_t timeSig4 = 0xE084;
inline constexpr char32_t timeSig5 = 0xE085;
inline constexpr char32_t timeSig6 = 0xE086;
inline constexpr char32_t timeSig7 = 0xE087;
inline constexpr char32_t timeSig8 = 0xE088;
inline constexpr char32_t timeSig9 = 0xE089;
inline constexpr char32_t timeSigCommon = 0xE08A;
inline constexpr char32_t timeSigCutCommon = 0xE08B;

// Noteheads and dots.
inline constexpr char32_t noteheadDoubleWhole = 0xE0A0;
inline constexpr char32_t noteheadWhole = 0xE0A2;
inline constexpr char32_t noteheadHalf = 0xE0A3;
inline constexpr char32_t noteheadBlack = 0xE0A4;
inline constexpr char32_t augmentationDot = 0xE1E7;

// Flags.
inline constexpr char32_t flag8thUp = 0xE240;
inline constexpr char32_t flag8thDown = 0xE241;
inline constexpr char32_t flag16thUp = 0xE242;
inline constexpr char32_t flag16thDown = 0xE243;
inline constexpr char32_t flag32ndUp = 0xE244;
inline constexpr char32_t flag32ndDown = 0xE245;
inline constexpr char32_t flag64thUp = 0xE246;
inline constexpr char32_t flag64thDown = 0xE247;

// Accidentals.
inline constexpr char32_t accidentalFlat = 0xE260;
inline constexpr char32_t accidentalNatural = 0xE261;
inline constexpr char32_t accidentalSharp = 0xE262;
inline constexpr char32_t accidentalDoubleSharp = 0xE263;
inline constexpr char32_t accidentalDoubleFlat = 0xE264;
inline constexpr char32_t accidentalParensLeft = 0xE26A;
inline constexpr char32_t accidentalParensRight = 0xE26B;

// Rests.
inline constexpr char32_t restDoubleWhole = 0xE4E2;
inline constexpr char32_t restWhole = 0xE4E3;
inline constexpr char32_t restHalf = 0xE4E4;
inline constexpr char32_t restQuarter = 0xE4E5;
inline constexpr char32_t rest8th = 0xE4E6;
inline constexpr char32_t rest16th = 0xE4E7;
inline constexpr char32_t rest32nd = 0xE4E8;
inline constexpr char32_t rest64th = 0xE4E9;
inline constexpr char32_t restWholeLegerLine = 0xE4F4;
inline constexpr char32_t restHalfLegerLine = 0xE4F5;

// Articulation and holds.
inline constexpr char32_t articAccentAbove = 0xE4A0;
inline constexpr char32_t articAccentBelow = 0xE4A1;
inline constexpr char32_t articStaccatoAbove = 0xE4A2;
inline constexpr char32_t articStaccatoBelow = 0xE4A3;
inline constexpr char32_t articTenutoAbove = 0xE4A4;
inline constexpr char32_t articTenutoBelow = 0xE4A5;
inline constexpr char32_t articStaccatissimoAbove = 0xE4A6;
inline constexpr char32_t articStaccatissimoBelow = 0xE4A7;
inline constexpr char32_t articMarcatoAbove = 0xE4AC;
inline constexpr char32_t articMarcatoBelow = 0xE4AD;
inline constexpr char32_t fermataAbove = 0xE4C0;
inline constexpr char32_t fermataBelow = 0xE4C1;
inline constexpr char32_t breathMarkComma = 0xE4CE;
inline constexpr char32_t caesura = 0xE4D1;

// Ornaments.
inline constexpr char32_t graceNoteSlashStemUp = 0xE564;
inline constexpr char32_t ornamentTrill = 0xE566;
inline constexpr char32_t ornamentTurn = 0xE567;
inline constexpr char32_t ornamentTurnInverted = 0xE568;
inline constexpr char32_t ornamentShortTrill = 0xE56C;
inline constexpr char32_t ornamentMordent = 0xE56D;

// Bowing, harmonics, damping.
inline constexpr char32_t stringsDownBow = 0xE610;
inline constexpr char32_t stringsUpBow = 0xE612;
inline constexpr char32_t stringsHarmonic = 0xE614;
inline constexpr char32_t pluckedDamp = 0xE638;
inline constexpr char32_t pluckedDampAll = 0xE639;

// Rolls.
inline constexpr char32_t wiggleArpeggiatoUp = 0xEAA9;
inline constexpr char32_t wiggleArpeggiatoDown = 0xEAAA;
inline constexpr char32_t wiggleArpeggiatoUpArrow = 0xEAAD;
inline constexpr char32_t wiggleArpeggiatoDownArrow = 0xEAAE;
inline constexpr char32_t arpeggiatoUp = 0xE634;
inline constexpr char32_t arpeggiatoDown = 0xE635;

// Fingers.
inline constexpr char32_t fingering0 = 0xED10;
inline constexpr char32_t fingering1 = 0xED11;
inline constexpr char32_t fingering2 = 0xED12;
inline constexpr char32_t fingering3 = 0xED13;
inline constexpr char32_t fingering4 = 0xED14;
inline constexpr char32_t fingering5 = 0xED15;

// Tuplets.
inline constexpr char32_t tuplet0 = 0xE880;
inline constexpr char32_t tuplet1 = 0xE881;
inline constexpr char32_t tuplet2 = 0xE882;
inline constexpr char32_t tuplet3 = 0xE883;
inline constexpr char32_t tuplet4 = 0xE884;
inline constexpr char32_t tuplet5 = 0xE885;
inline constexpr char32_t tuplet6 = 0xE886;
inline constexpr char32_t tuplet7 = 0xE887;
inline constexpr char32_t tuplet8 = 0xE888;
inline constexpr char32_t tuplet9 = 0xE889;
inline constexpr char32_t tupletColon = 0xE88A;

// Metronome marks.
inline constexpr char32_t metNoteWhole = 0xECA2;
inline constexpr char32_t metNoteHalfUp = 0xECA3;
inline constexpr char32_t metNoteQuarterUp = 0xECA5;
inline constexpr char32_t metNote8thUp = 0xECA7;
inline constexpr char32_t metNote16thUp = 0xECA9;
inline constexpr char32_t metAugmentationDot = 0xECB7;

// Digits stand in order: 0 to 9 of a time signature or a tuplet, 0 to 5 of a fingering.
inline constexpr char32_t dynamicPiano = 0xE520;
inline constexpr char32_t dynamicMezzo = 0xE521;
inline constexpr char32_t dynamicForte = 0xE522;
inline constexpr char32_t dynamicRinforzando = 0xE523;
inline constexpr char32_t dynamicSforzando = 0xE524;
inline constexpr char32_t dynamicZ = 0xE525;
inline constexpr char32_t wiggleTrill = 0xEAA4;
inline constexpr char32_t ornamentTurnSlash = 0xE569;
inline constexpr char32_t stringsThumbPosition = 0xE624;
inline constexpr char32_t pluckedSnapPizzicatoAbove = 0xE631;
inline constexpr char32_t pluckedLeftHandPizzicato = 0xE633;
constexpr char32_t timeSig(int digit) { return timeSig0 + static_cast<char32_t>(digit); }
constexpr char32_t tuplet(int digit) { return tuplet0 + static_cast<char32_t>(digit); }
constexpr char32_t fingering(int digit) { return fingering0 + static_cast<char32_t>(digit); }

// A name of the standard and its code point.
struct Named {
    std::string_view name;
    char32_t code = 0;
};

// Font metadata is keyed by these names.
inline constexpr std::array all{
    Named{"dynamicPiano", dynamicPiano},
    Named{"dynamicMezzo", dynamicMezzo},
    Named{"dynamicForte", dynamicForte},
    Named{"dynamicRinforzando", dynamicRinforzando},
    Named{"dynamicSforzando", dynamicSforzando},
    Named{"dynamicZ", dynamicZ},
    Named{"wiggleTrill", wiggleTrill},
    Named{"ornamentTurnSlash", ornamentTurnSlash},
    Named{"stringsThumbPosition", stringsThumbPosition},
    Named{"pluckedSnapPizzicatoAbove", pluckedSnapPizzicatoAbove},
    Named{"pluckedLeftHandPizzicato", pluckedLeftHandPizzicato},
    Named{"brace", brace},
    Named{"bracket", bracket},
    Named{"bracketTop", bracketTop},
    Named{"bracketBottom", bracketBottom},
    Named{"repeatLeft", repeatLeft},
    Named{"repeatRight", repeatRight},
    Named{"repeatDots", repeatDots},
    Named{"repeatDot", repeatDot},
    Named{"dalSegno", dalSegno},
    Named{"daCapo", daCapo},
    Named{"segno", segno},
    Named{"coda", coda},
    Named{"gClef", gClef},
    Named{"gClef8vb", gClef8vb},
    Named{"gClef8va", gClef8va},
    Named{"fClef", fClef},
    Named{"timeSig0", timeSig0},
    Named{"timeSig1", timeSig1},
    Named{"timeSig2", timeSig2},
    Named{"timeSig3", timeSig3},
    Named{"timeSig4", timeSig4},
    Named{"timeSig5", timeSig5},
    Named{"timeSig6", timeSig6},
    Named{"timeSig7", timeSig7},
    Named{"timeSig8", timeSig8},
    Named{"timeSig9", timeSig9},
    Named{"timeSigCommon", timeSigCommon},
    Named{"timeSigCutCommon", timeSigCutCommon},
    Named{"noteheadDoubleWhole", noteheadDoubleWhole},
    Named{"noteheadWhole", noteheadWhole},
    Named{"noteheadHalf", noteheadHalf},
    Named{"noteheadBlack", noteheadBlack},
    Named{"augmentationDot", augmentationDot},
    Named{"flag8thUp", flag8thUp},
    Named{"flag8thDown", flag8thDown},
    Named{"flag16thUp", flag16thUp},
    Named{"flag16thDown", flag16thDown},
    Named{"flag32ndUp", flag32ndUp},
    Named{"flag32ndDown", flag32ndDown},
    Named{"flag64thUp", flag64thUp},
    Named{"flag64thDown", flag64thDown},
    Named{"accidentalFlat", accidentalFlat},
    Named{"accidentalNatural", accidentalNatural},
    Named{"accidentalSharp", accidentalSharp},
    Named{"accidentalDoubleSharp", accidentalDoubleSharp},
    Named{"accidentalDoubleFlat", accidentalDoubleFlat},
    Named{"accidentalParensLeft", accidentalParensLeft},
    Named{"accidentalParensRight", accidentalParensRight},
    Named{"restDoubleWhole", restDoubleWhole},
    Named{"restWhole", restWhole},
    Named{"restHalf", restHalf},
    Named{"restQuarter", restQuarter},
    Named{"rest8th", rest8th},
    Named{"rest16th", rest16th},
    Named{"rest32nd", rest32nd},
    Named{"rest64th", rest64th},
    Named{"restWholeLegerLine", restWholeLegerLine},
    Named{"restHalfLegerLine", restHalfLegerLine},
    Named{"articAccentAbove", articAccentAbove},
    Named{"articAccentBelow", articAccentBelow},
    Named{"articStaccatoAbove", articStaccatoAbove},
    Named{"articStaccatoBelow", articStaccatoBelow},
    Named{"articTenutoAbove", articTenutoAbove},
    Named{"articTenutoBelow", articTenutoBelow},
    Named{"articStaccatissimoAbove", articStaccatissimoAbove},
    Named{"articStaccatissimoBelow", articStaccatissimoBelow},
    Named{"articMarcatoAbove", articMarcatoAbove},
    Named{"articMarcatoBelow", articMarcatoBelow},
    Named{"fermataAbove", fermataAbove},
    Named{"fermataBelow", fermataBelow},
    Named{"breathMarkComma", breathMarkComma},
    Named{"caesura", caesura},
    Named{"graceNoteSlashStemUp", graceNoteSlashStemUp},
    Named{"ornamentTrill", ornamentTrill},
    Named{"ornamentTurn", ornamentTurn},
    Named{"ornamentTurnInverted", ornamentTurnInverted},
    Named{"ornamentShortTrill", ornamentShortTrill},
    Named{"ornamentMordent", ornamentMordent},
    Named{"stringsDownBow", stringsDownBow},
    Named{"stringsUpBow", stringsUpBow},
    Named{"stringsHarmonic", stringsHarmonic},
    Named{"pluckedDamp", pluckedDamp},
    Named{"pluckedDampAll", pluckedDampAll},
    Named{"wiggleArpeggiatoUp", wiggleArpeggiatoUp},
    Named{"wiggleArpeggiatoDown", wiggleArpeggiatoDown},
    Named{"wiggleArpeggiatoUpArrow", wiggleArpeggiatoUpArrow},
    Named{"wiggleArpeggiatoDownArrow", wiggleArpeggiatoDownArrow},
    Named{"arpeggiatoUp", arpeggiatoUp},
    Named{"arpeggiatoDown", arpeggiatoDown},
    Named{"fingering0", fingering0},
    Named{"fingering1", fingering1},
    Named{"fingering2", fingering2},
    Named{"fingering3", fingering3},
    Named{"fingering4", fingering4},
    Named{"fingering5", fingering5},
    Named{"tuplet0", tuplet0},
    Named{"tuplet1", tuplet1},
    Named{"tuplet2", tuplet2},
    Named{"tuplet3", tuplet3},
    Named{"tuplet4", tuplet4},
    Named{"tuplet5", tuplet5},
    Named{"tuplet6", tuplet6},
    Named{"tuplet7", tuplet7},
    Named{"tuplet8", tuplet8},
    Named{"tuplet9", tuplet9},
    Named{"tupletColon", tupletColon},
    Named{"metNoteWhole", metNoteWhole},
    Named{"metNoteHalfUp", metNoteHalfUp},
    Named{"metNoteQuarterUp", metNoteQuarterUp},
    Named{"metNote8thUp", metNote8thUp},
    Named{"metNote16thUp", metNote16thUp},
    Named{"metAugmentationDot", metAugmentationDot},
};

} // namespace sheet::glyph
