#pragma once

#include <string>
#include <string_view>

namespace base {

// What went wrong, for tests and for the wording table in fault.cpp. Grouped by the room that
// refuses; a code is added together with its row in the table.
enum class FaultCode {
    // files: reading
    FileMissing,
    FileUnreadable,
    FileEmpty,
    FileBinary,
    FileTooLarge,
    NoTune,
    NoSuchTune,
    NoNotes,
    TuneTooLong,
    BadField,
    BadKey,
    BadMeter,
    BadLength,
    BadNote,
    BadTuplet,
    BadChord,
    BadRepeat,
    MeterMidBar,
    UnknownFileKind,
    Malformed,
    NoScore,
    BadScoreValue,
    // files: writing
    CannotWrite,
    // tables in shared/
    TableMissing,
    TableMalformed,
    // harp, levers
    StringsOutOfOrder,
    BadHarp,
    NoSuchHarp,
    NoSuchTuning,
    NoSuchHand,
    NoSuchStyle,
    NoSuchSlider,
    NoSuchForm,
    KeyBeyondTuning,
    NoteOffHarp,
    NoMomentForFlip,
    // pattern
    BadPattern,
    PatternTooLong,
    PatternFingers,
    NoSuchPattern,
    // arrange
    NoChords,
    NothingPlayable,
    BadLock,
    CannotPlayHere,
    // sound
    NoSoundFont,
    NoSoundDevice,
    NoMidiPort,
    // the call itself
    BadCall,
};

// Something the user's file, harp or wish does not allow: where to look, and what stood there.
// `place` is for the reader ("line 14, column 3", "bar 3, left hand"); `detail` is the
// offending text or value and may be empty.
struct Fault {
    FaultCode code;
    std::string place;
    std::string detail;
    friend bool operator==(Fault const&, Fault const&) = default;
};

// The wording of one code: what is wrong, and what the reader can do about it.
struct Wording {
    std::string_view wrong;
    std::string_view remedy;
};

Wording wording(FaultCode code);

// One line for the reader: "place: what is wrong (detail); what to do".
std::string sentence(Fault const& fault);

} // namespace base
