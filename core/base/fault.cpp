#include "core/base/fault.h"

#include "core/base/words.h"

#include <array>

namespace base {

namespace {

struct Row {
    FaultCode code;
    Wording wording;
};

// The only place where a refusal is put into words.
constexpr std::array rows{
    Row{FaultCode::FileMissing,
        {marked("there is no such file"), marked("check the name and the folder")}},
    Row{FaultCode::FileUnreadable,
        {marked("the file cannot be read"),
         marked("check that it is a file, not a folder, and that you are "
                "allowed to read it")}},
    Row{FaultCode::FileEmpty,
        {marked("the file is empty"), marked("save the tune again and open the new file")}},
    Row{FaultCode::FileBinary,
        {marked("this is not a text file"), marked("give an ABC file, saved as plain text")}},
    Row{FaultCode::FileTooLarge,
        {marked("the file is too large for a tunebook"),
         marked("split it into smaller tunebooks")}},
    Row{FaultCode::NoTune,
        {marked("there is no tune in this file"),
         marked("each tune needs a line X:1 at its start and a line K: for its "
                "key")}},
    Row{FaultCode::NoSuchTune,
        {marked("the tunebook has no tune with this number"),
         marked("give the number of its X: line, or its place in the book")}},
    Row{FaultCode::NoNotes,
        {marked("the tune has no notes"),
         marked("write its melody first, then open it again")}},
    Row{FaultCode::TuneTooLong,
        {marked("the tune is too long"), marked("split it, or correct its lengths")}},
    Row{FaultCode::BadField,
        {marked("this line cannot be read"), marked("correct the line or take it out")}},
    Row{FaultCode::BadKey,
        {marked("the key cannot be understood"),
         marked("write K: with a note name and, where needed, a mode, such as K:Ador")}},
    Row{FaultCode::BadMeter,
        {marked("the time signature cannot be read"),
         marked("write M: with two numbers, such as M:6/8")}},
    Row{FaultCode::BadLength,
        {marked("the length cannot be understood"),
         marked("write a fraction of a whole note, such as 1/8")}},
    Row{FaultCode::BadNote, {marked("this is not a note"), marked("correct or remove it")}},
    Row{FaultCode::BadTuplet,
        {marked("the tuplet cannot be understood"),
         marked("write (3 before three notes, or (p:q:r for p notes in the time of q, over the "
                "next r "
                "notes")}},
    Row{FaultCode::BadChord,
        {marked("this chord symbol cannot be read"),
         marked("write a root and a kind, such as G, Em7 or D/F#")}},
    Row{FaultCode::BadRepeat,
        {marked("the repeat signs do not match"),
         marked("pair the repeat signs, and number the time bars 1, 2 and so on")}},
    Row{FaultCode::MeterMidBar,
        {marked("the time signature changes inside a bar"),
         marked("put the change at a bar line")}},
    Row{FaultCode::UnknownFileKind,
        {marked("Sallow cannot use this type of file"),
         marked("use a file name with one of these endings")}},
    Row{FaultCode::Malformed,
        {marked("the file is damaged"),
         marked("correct it there, or save the file again from the "
                "program it came from")}},
    Row{FaultCode::NoScore,
        {marked("there is no MusicXML music in this file"),
         marked("export the music as MusicXML, or use another file")}},
    Row{FaultCode::BadScoreValue,
        {marked("the file has a value that cannot be right"),
         marked("correct it, or export the music again from the program it came from")}},
    Row{FaultCode::CannotWrite,
        {marked("the file cannot be written"),
         marked("check that the folder exists, that you may write to it and that the disk has "
                "room")}},
    Row{FaultCode::TableMissing,
        {marked("one of Sallow's own data files is missing"),
         marked("install Sallow again, or set SALLOW_SHARED to its shared folder")}},
    Row{FaultCode::TableMalformed,
        {marked("one of Sallow's own data files is damaged"),
         marked("correct it there, or install Sallow again")}},
    Row{FaultCode::StringsOutOfOrder,
        {marked("the strings are out of order"),
         marked("each string is one letter above the one before")}},
    Row{FaultCode::BadHarp,
        {marked("this description does not fit a lever harp"),
         marked("correct its number of strings, pitch or spacing")}},
    Row{FaultCode::NoSuchHarp,
        {marked("there is no harp of this name"), marked("choose one of those listed")}},
    Row{FaultCode::NoSuchTuning,
        {marked("there is no tuning or lever fitting of this name"),
         marked("choose one of those listed")}},
    Row{FaultCode::NoSuchHand,
        {marked("there is no hand or level of this name"),
         marked("choose one of those listed")}},
    Row{FaultCode::NoSuchStyle,
        {marked("there is no manner of this name"), marked("choose one of those listed")}},
    Row{FaultCode::NoSuchSlider,
        {marked("there is no slider of this name"), marked("choose one of those listed")}},
    Row{FaultCode::NoSuchForm,
        {marked("a time through the tune cannot be played in this manner"),
         marked("choose one of those listed")}},
    Row{FaultCode::KeyBeyondTuning,
        {marked("the harp's tuning and levers cannot give this key"),
         marked("choose another key, or another tuning if the harp's maker allows it")}},
    Row{FaultCode::NoteOffHarp,
        {marked("the harp has no string for a note of the tune"),
         marked("use a larger harp or another key")}},
    Row{FaultCode::NoMomentForFlip,
        {marked("there is no time to flip the lever"),
         marked("try a slower tempo, a higher level or another key, or leave out the note with "
                "the "
                "accidental")}},
    Row{FaultCode::BadPattern,
        {marked("this is not a pattern"),
         marked("write degrees joined by dashes, such as 1-5-8; use + for notes plucked "
                "together, ~ "
                "for a roll, and low5 for the fifth below the root")}},
    Row{FaultCode::PatternTooLong,
        {marked("the pattern is too long"),
         marked("write at most eight notes, or spread them over two chords")}},
    Row{FaultCode::PatternFingers,
        {marked("the hand cannot be placed with these fingers"),
         marked("the thumb (1) goes on the highest string and finger 4 on the lowest; write u "
                "after a "
                "finger that crosses under and o after one that crosses over, or leave the "
                "fingers "
                "out to get the usual ones")}},
    Row{FaultCode::NoSuchPattern,
        {marked("the pattern book has no such pattern"),
         marked("choose one from the pattern book, or write your own")}},
    Row{FaultCode::NoChords,
        {marked("the tune has no chord symbols"),
         marked("write chord symbols into the tune; in ABC, \"G\" before a note")}},
    Row{FaultCode::NothingPlayable,
        {marked("the left hand cannot play anything here"),
         marked("try a slower tempo, a higher level, a larger hand or harp, or another key")}},
    Row{FaultCode::BadLock,
        {marked("the shape you chose cannot be kept here"),
         marked("choose another shape, or let this one change")}},
    Row{FaultCode::CannotPlayHere, {marked("the pattern cannot be played here"), {}}},
    Row{FaultCode::NoSoundFont,
        {marked("no sound font was found"),
         marked("install one, or name it with the SALLOW_SOUNDFONT variable")}},
    Row{FaultCode::NoSoundDevice,
        {marked("the sound output cannot be opened"),
         marked("connect one; you can still save sound files "
                "without it")}},
    Row{FaultCode::NoMidiPort,
        {marked("the MIDI keyboard cannot be opened"),
         marked("connect it, close other programs that use it, and choose it again")}},
    Row{FaultCode::BadCall, {marked("this is not understood"), marked("see --help")}},
};

} // namespace

Wording wording(FaultCode code)
{
    for (Row const& row : rows)
        if (row.code == code)
            return {wordsFor(row.wording.wrong), row.wording.remedy.empty()
                                                     ? row.wording.remedy
                                                     : wordsFor(row.wording.remedy)};
    return {wordsFor(marked("something is wrong")), wordsFor(marked("see the documentation"))};
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
