#pragma once

#include "core/notation/clef.h"

namespace sheet {

using notation::Clef;
using notation::staffStep;

// Staff spaces below the top line.
constexpr double yOfStep(int step) { return 2.0 - step / 2.0; }

constexpr bool onLine(int step) { return step % 2 == 0; }

// Ledger lines a notehead needs: positive above the staff, negative below, 0 inside.
constexpr int ledgerLines(int step)
{
    if (step >= 6) return (step - 4) / 2;
    if (step <= -6) return (step + 4) / 2;
    return 0;
}

} // namespace sheet
