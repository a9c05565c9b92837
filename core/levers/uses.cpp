#include "core/levers/uses.h"

#include <algorithm>

namespace levers {

Uses usesOf(tune::Tune const& tune, tune::Playing const& playing)
{
    Uses uses;
    uses.reserve(static_cast<int>(playing.notes.size()));
    std::optional<std::pair<tune::PlayedBarIndex, tune::NoteIndex>>
        before; // bar and note: a chord has its graces once
    for (tune::PlayedNote const& note : playing.notes) {
        std::pair const here(note.playedBar, note.note);
        if (before != here) {
            tune::BarIndex const bar = playing.bars[note.playedBar].bar;
            int grace = 0;
            for (music::Pitch const pitch : tune.bars[bar].notes[note.note].graces)
                uses.push_back({note.at, {}, pitch, note.playedBar, note.note, --grace});
        }
        before = here;
        uses.push_back(note);
    }
    return uses;
}

tune::NotePlace placeOf(tune::PlayedNote const& use, tune::PlayedBars const& bars)
{
    tune::BarIndex const bar = bars[use.playedBar].bar;
    if (isGrace(use)) return {bar, use.note, -1 - use.ofChord, true};
    return {bar, use.note, use.ofChord, false};
}

} // namespace levers
