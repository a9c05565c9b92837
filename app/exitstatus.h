#pragma once

#include "core/base/fault.h"

namespace app {

// What the program tells the shell; stable, see DEVELOPERS.md.
enum ExitStatus {
    Fine = 0,
    CallOff = 2,
    InputUnreadable = 3,
    CannotArrange = 4,
    CannotWriteOut = 5,
    Internal = 70 // a fault of the program itself, as sysexits.h numbers it
};

// The status that belongs to a fault.
ExitStatus exitStatus(base::FaultCode code);

// Says a fault on stderr in one line and answers its status.
ExitStatus refuse(base::Fault const& fault);

} // namespace app
