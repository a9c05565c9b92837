#pragma once

#include "core/base/result.h"
#include "core/levers/turn.h"
#include "core/levers/useindex.h"

#include <optional>
#include <span>

namespace levers {

// Why a tune cannot be seated, and the notes that stand in the way.
struct Refused {
    base::Fault fault; // NoteOffHarp, KeyBeyondTuning, NoMomentForFlip
    UseIndex note = 0;
    // The note before it on the same string, of a turn without time.
    std::optional<UseIndex> after;
};

// The refusal of a note that no string sounds.
Refused cannotBeHad(harp::Harp const& harp, UseIndex note, Uses const& notes,
                    Performance const& performance);

// The refusal of a turn that finds no window.
Refused noMoment(Uses const& notes, Turn const& turn, Performance const& performance);

} // namespace levers
