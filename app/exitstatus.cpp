#include "app/exitstatus.h"

#include <iostream>

namespace app {

ExitStatus exitStatus(base::FaultCode code)
{
    using base::FaultCode;
    switch (code) {
    case FaultCode::BadCall:
    case FaultCode::UnknownFileKind:
    case FaultCode::NoSuchHarp:
    case FaultCode::NoSuchTuning:
    case FaultCode::NoSuchHand:
    case FaultCode::NoSuchStyle:
    case FaultCode::NoSuchSlider:
    case FaultCode::NoSuchForm:
    case FaultCode::BadPattern:
    case FaultCode::PatternTooLong:
    case FaultCode::PatternFingers:
    case FaultCode::NoSuchPattern:
        return CallOff;
    case FaultCode::KeyBeyondTuning:
    case FaultCode::NoteOffHarp:
    case FaultCode::NoMomentForFlip:
    case FaultCode::NoChords:
    case FaultCode::NothingPlayable:
    case FaultCode::BadLock:
    case FaultCode::CannotPlayHere:
        return CannotArrange;
    case FaultCode::CannotWrite:
    case FaultCode::NoSoundFont:
        return CannotWriteOut;
    default:
        return InputUnreadable;
    }
}

ExitStatus refuse(base::Fault const& fault)
{
    std::cerr << "sallow: " << base::sentence(fault) << '\n';
    return exitStatus(fault.code);
}

} // namespace app
