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
        {"the file cannot be read", "check that it is a file, not a folder, and that you are "
                                    "allowed to read it"}},
    Row{FaultCode::FileEmpty,
        {"the file is empty", "save the tune again and open the new file"}},
    Row{FaultCode::FileBinary,
        {"this is not a text file", "give an ABC file, saved as plain text"}},
    Row{FaultCode::FileTooLarge,
        {"the file is too large for a tunebook", "split it into smaller tunebooks"}},
    Row{FaultCode::NoTune,
        {"there is no tune in this file",
         "each tune needs a line X:1 at its start and a line K: for its "
         "key"}},
    Row{FaultCode::NoSuchTune,
        {"the tunebook has no tune with this number",
         "give the number of its X: line, or its place in the book"}},
    Row{FaultCode::NoNotes,
        {"the tune has no notes", "write its melody first, then open it again"}},
    Row{FaultCode::TuneTooLong, {"the tune is too long", "split it, or correct its lengths"}},
    Row{FaultCode::BadField, {"this line cannot be read", "correct the line or take it out"}},
    Row{FaultCode::BadKey,
        {"the key cannot be understood",
         "write K: with a note name and, where needed, a mode, such as K:Ador"}},
    Row{FaultCode::BadMeter,
        {"the time signature cannot be read", "write M: with two numbers, such as M:6/8"}},
    Row{FaultCode::BadLength,
        {"the length cannot be understood", "write a fraction of a whole note, such as 1/8"}},
    Row{FaultCode::BadNote, {"this is not a note", "correct or remove it"}},
    Row{FaultCode::BadTuplet,
        {"the tuplet cannot be understood",
         "write (3 before three notes, or (p:q:r for p notes in the time of q, over the next r "
         "notes"}},
    Row{FaultCode::BadChord,
        {"this chord symbol cannot be read",
         "write a root and a kind, such as G, Em7 or D/F#"}},
    Row{FaultCode::BadRepeat,
        {"the repeat signs do not match",
         "pair the repeat signs, and number the time bars 1, 2 and so on"}},
    Row{FaultCode::MeterMidBar,
        {"the time signature changes inside a bar", "put the change at a bar line"}},
    Row{FaultCode::UnknownFileKind,
        {"Sallow cannot use this type of file", "use a file name with one of these endings"}},
    Row{FaultCode::Malformed,
        {"the file is damaged", "correct it there, or save the file again from the "
                                "program it came from"}},
    Row{FaultCode::NoScore,
        {"there is no MusicXML music in this file",
         "export the music as MusicXML, or use another file"}},
    Row{FaultCode::BadScoreValue,
        {"the file has a value that cannot be right",
         "correct it, or export the music again from the program it came from"}},
    Row{FaultCode::CannotWrite,
        {"the file cannot be written",
         "check that the folder exists, that you may write to it and that the disk has room"}},
    Row{FaultCode::TableMissing,
        {"one of Sallow's own data files is missing",
         "install Sallow again, or set SALLOW_SHARED to its shared folder"}},
    Row{FaultCode::TableMalformed,
        {"one of Sallow's own data files is damaged",
         "correct it there, or install Sallow again"}},
    Row{FaultCode::StringsOutOfOrder,
        {"the strings are out of order", "each string is one letter above the one before"}},
    Row{FaultCode::BadHarp,
        {"this description does not fit a lever harp",
         "correct its number of strings, pitch or spacing"}},
    Row{FaultCode::NoSuchHarp, {"there is no harp of this name", "choose one of those listed"}},
    Row{FaultCode::NoSuchTuning,
        {"there is no tuning or lever fitting of this name", "choose one of those listed"}},
    Row{FaultCode::NoSuchHand,
        {"there is no hand or level of this name", "choose one of those listed"}},
    Row{FaultCode::NoSuchStyle,
        {"there is no manner of this name", "choose one of those listed"}},
    Row{FaultCode::NoSuchSlider,
        {"there is no slider of this name", "choose one of those listed"}},
    Row{FaultCode::KeyBeyondTuning,
        {"the harp's tuning and levers cannot give this key",
         "choose another key, or another tuning if the harp's maker allows it"}},
    Row{FaultCode::NoteOffHarp,
        {"the harp has no string for a note of the tune", "use a larger harp or another key"}},
    Row{FaultCode::NoMomentForFlip,
        {"there is no time to flip the lever",
         "try a slower tempo, a higher level or another key, or leave out the note with the "
         "accidental"}},
    Row{FaultCode::BadPattern,
        {"this is not a pattern",
         "write degrees joined by dashes, such as 1-5-8; use + for notes plucked together, ~ "
         "for a roll, and low5 for the fifth below the root"}},
    Row{FaultCode::PatternTooLong,
        {"the pattern is too long",
         "write at most eight notes, or spread them over two chords"}},
    Row{FaultCode::PatternFingers,
        {"the hand cannot be placed with these fingers",
         "the thumb (1) goes on the highest string and finger 4 on the lowest; write u after a "
         "finger that crosses under and o after one that crosses over, or leave the fingers "
         "out to get the usual ones"}},
    Row{FaultCode::NoSuchPattern,
        {"the pattern book has no such pattern",
         "choose one from the pattern book, or write your own"}},
    Row{FaultCode::NoChords,
        {"the tune has no chord symbols",
         "write chord symbols into the tune; in ABC, \"G\" before a note"}},
    Row{FaultCode::NothingPlayable,
        {"the left hand cannot play anything here",
         "try a slower tempo, a higher level, a larger hand or harp, or another key"}},
    Row{FaultCode::BadLock,
        {"the shape you chose cannot be kept here",
         "choose another shape, or let this one change"}},
    Row{FaultCode::CannotPlayHere, {"the pattern cannot be played here", {}}},
    Row{FaultCode::NoSoundFont,
        {"no sound font was found",
         "install one, or name it with the SALLOW_SOUNDFONT variable"}},
    Row{FaultCode::NoSoundDevice,
        {"the sound output cannot be opened", "connect one; you can still save sound files "
                                              "without it"}},
    Row{FaultCode::NoMidiPort,
        {"the MIDI keyboard cannot be opened",
         "connect it, close other programs that use it, and choose it again"}},
    Row{FaultCode::BadCall, {"this is not understood", "see --help"}},
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
