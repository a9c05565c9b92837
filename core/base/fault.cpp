#include "core/base/fault.h"

#include <array>

namespace base {

namespace {

struct Row {
    FaultCode code;
    Wording wording;
};

// The only place where a refusal is put into words.
constexpr std::array rows{
    Row{FaultCode::FileMissing, {"there is no such file", "check the name and the folder"}},
    Row{FaultCode::FileUnreadable,
        {"the file cannot be read", "check that you may read it and that it is no folder"}},
    Row{FaultCode::FileEmpty, {"the file is empty", "save the tune again and give that file"}},
    Row{FaultCode::FileBinary, {"this is no text", "give an ABC file, saved as plain text"}},
    Row{FaultCode::FileTooLarge,
        {"the file is larger than a tunebook can be", "split it into smaller books"}},
    Row{FaultCode::NoTune,
        {"no tune was found", "a tune begins with a line X:1 and has a key line K:"}},
    Row{FaultCode::NoSuchTune,
        {"the book has no such tune",
         "give the number of its X: line, or its place in the book"}},
    Row{FaultCode::NoNotes, {"the tune has no notes", "write its melody; in ABC, below the K: line"}},
    Row{FaultCode::TuneTooLong,
        {"the tune is longer than any tune can be", "split it, or correct its lengths"}},
    Row{FaultCode::BadField,
        {"the field cannot be understood", "correct the line or take it out"}},
    Row{FaultCode::BadKey,
        {"the key cannot be understood",
         "write K: with a note name and, where needed, a mode, such as K:Ador"}},
    Row{FaultCode::BadMeter,
        {"the meter cannot be understood", "write M: with two numbers, such as M:6/8"}},
    Row{FaultCode::BadLength,
        {"the length cannot be understood", "write a fraction of a whole note, such as 1/8"}},
    Row{FaultCode::BadNote, {"this is no note", "correct or remove it"}},
    Row{FaultCode::BadTuplet,
        {"the tuplet cannot be understood",
         "write (3 before three notes, or (p:q:r with small numbers"}},
    Row{FaultCode::BadChord,
        {"no spelling explains this chord symbol",
         "write a root and a kind, such as G, Em7 or D/F#"}},
    Row{FaultCode::BadRepeat,
        {"the repeats do not fit together",
         "pair each repeat sign, and number the endings from 1"}},
    Row{FaultCode::MeterMidBar,
        {"the meter changes inside a bar", "put the change at a bar line"}},
    Row{FaultCode::UnknownFileKind,
        {"this kind of file is not known", "use one of the endings listed by --help"}},
    Row{FaultCode::Malformed,
        {"the file is damaged here", "correct the place or save it again"}},
    Row{FaultCode::NoScore,
        {"this is no score", "export the score as MusicXML, or give another file"}},
    Row{FaultCode::BadScoreValue,
        {"a value of the score cannot be used",
         "correct it, or export the score again from the program that made it"}},
    Row{FaultCode::CannotWrite,
        {"the file cannot be written",
         "check the folder, its rights and the room on the disk"}},
    Row{FaultCode::TableMissing,
        {"a table of the program is missing",
         "install Sallow again, or set SALLOW_SHARED to its shared folder"}},
    Row{FaultCode::TableMalformed,
        {"a table of the program is damaged", "correct the place or install Sallow again"}},
    Row{FaultCode::StringsOutOfOrder,
        {"the strings are out of order", "each string is one letter above the one before"}},
    Row{FaultCode::BadHarp,
        {"no lever harp is built so", "correct its number of strings, pitch or spacing"}},
    Row{FaultCode::NoSuchHarp, {"no harp goes by that name", "choose one of those listed"}},
    Row{FaultCode::NoSuchTuning, {"no tuning goes by that name", "choose one of those listed"}},
    Row{FaultCode::NoSuchHand,
        {"no hand or level goes by that name", "choose one of those listed"}},
    Row{FaultCode::NoSuchStyle, {"no style goes by that name", "choose one of those listed"}},
    Row{FaultCode::NoSuchSlider, {"no slider goes by that name", "choose one of those listed"}},
    Row{FaultCode::KeyBeyondTuning,
        {"the harp's tuning and levers cannot give this key",
         "choose another key, tune the harp differently as its maker allows, or use --key "
         "best"}},
    Row{FaultCode::NoteOffHarp,
        {"a note of the tune lies beyond the strings",
         "use a larger harp, another key or --key best"}},
    Row{FaultCode::NoMomentForFlip,
        {"no hand is free to turn the lever in time",
         "try a higher level, a slower tempo, another key, or leave the altered note out"}},
    Row{FaultCode::BadPattern,
        {"this is no pattern",
         "write degrees with dashes, such as 1-5-8, + between notes plucked together, ~ "
         "between those of a roll, low5 for the fifth below the root"}},
    Row{FaultCode::PatternTooLong,
        {"the pattern has more notes than a bar can carry",
         "write at most eight, or divide it over two chords"}},
    Row{FaultCode::PatternFingers,
        {"no hand is placed so",
         "the thumb (1) lies highest and finger 4 lowest; mark a crossing with u under or o "
         "over, or leave the fingers out to have the usual ones"}},
    Row{FaultCode::NoSuchPattern,
        {"the book has no such pattern",
         "choose one that \"sallow patterns\" lists, or add your own with --pattern"}},
    Row{FaultCode::NoChords,
        {"the tune has no chord symbols",
         "write chords over the tune, such as \"G\" before a note"}},
    Row{FaultCode::NothingPlayable,
        {"no voicing can be played here",
         "try a higher level, another hand, another key or a larger harp"}},
    Row{FaultCode::BadLock,
        {"the chosen voicing cannot be kept here",
         "choose another variant or unlock the chord"}},
    Row{FaultCode::CannotPlayHere, {"the pattern cannot be played here", {}}},
    Row{FaultCode::NoSoundFont,
        {"no sound font was found",
         "install one, or name it with the SALLOW_SOUNDFONT variable"}},
    Row{FaultCode::NoSoundDevice,
        {"no sound device could be opened", "connect one; writing sound files works without"}},
    Row{FaultCode::NoMidiPort,
        {"the MIDI keyboard cannot be opened",
         "connect it, close other programs that use it, and choose it again"}},
    Row{FaultCode::BadCall, {"the call cannot be understood", "see --help"}},
};

} // namespace

Wording wording(FaultCode code)
{
    for (Row const& row : rows)
        if (row.code == code) return row.wording;
    return {"something is wrong", "see the documentation"};
}

std::string sentence(Fault const& fault)
{
    Wording const words = wording(fault.code);
    std::string out = fault.place;
    if (!out.empty()) out += ": ";
    out += words.wrong;
    if (!fault.detail.empty()) out += " (" + fault.detail + ")";
    if (!words.remedy.empty()) out += "; " + std::string(words.remedy);
    return out;
}

} // namespace base
