#pragma once

#include "core/base/result.h"
#include "core/levers/turn.h"

#include <optional>
#include <span>

namespace levers {

// Why a tune cannot be seated, and the notes that stand in the way (indices into the notes).
struct Refused {
    base::Fault fault; // NoteOffHarp, KeyBeyondTuning, NoMomentForFlip
    int note = 0;
    std::optional<int> after; // the note before it on the same string, of a turn without time
};

// The refusal of a note that no string sounds.
Refused cannotBeHad(harp::Harp const& harp, int note, std::span<tune::PlayedNote const> notes,
                    Performance const& performance);

// The refusal of a turn that finds no window.
Refused noMoment(std::span<tune::PlayedNote const> notes, Turn const& turn,
                 Performance const& performance);

} // namespace levers
