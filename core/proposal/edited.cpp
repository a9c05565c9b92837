#include "core/proposal/edited.h"

#include <algorithm>

namespace proposal {

namespace {

using tune::NotePlace;
using tune::Tune;

// Where a bar went; none: it was taken out.
std::optional<int> barNow(int bar, BarsMoved moved)
{
    if (bar < moved.from) return bar;
    if (bar < moved.from - moved.by) return std::nullopt;
    return bar + moved.by;
}

// The note that was at the place, where a note of as many pitches stands at its beat now.
std::optional<NotePlace> noteNow(Tune const& before, Tune const& after, NotePlace place,
                                 BarsMoved moved)
{
    auto const bar = barNow(place.bar, moved);
    if (!bar || !pitchOf(before, place) || *bar >= static_cast<int>(after.bars.size()))
        return std::nullopt;
    tune::Note const& was = before.bars[static_cast<std::size_t>(place.bar)]
                                .notes[static_cast<std::size_t>(place.note)];
    auto const& notes = after.bars[static_cast<std::size_t>(*bar)].notes;
    auto const same = std::find_if(notes.begin(), notes.end(), [&was](tune::Note const& note) {
        return note.at == was.at && note.pitches.size() == was.pitches.size() &&
               note.graces.size() == was.graces.size();
    });
    if (same == notes.end()) return std::nullopt;
    place.bar = *bar;
    place.note = static_cast<int>(same - notes.begin());
    return place;
}

// Moves what has a bar; drops it where the bar is no more.
template<typename Item>
void moveBars(std::vector<Item>& items, BarsMoved moved)
{
    std::vector<Item> kept;
    for (Item item : items)
        if (auto const bar = barNow(item.bar, moved)) {
            item.bar = *bar;
            kept.push_back(std::move(item));
        }
    items = std::move(kept);
}

template<typename Item>
void moveNotes(std::vector<Item>& items, Tune const& before, Tune const& after, BarsMoved moved)
{
    std::vector<Item> kept;
    for (Item item : items)
        if (auto const place = noteNow(before, after, item.place, moved)) {
            item.place = *place;
            kept.push_back(std::move(item));
        }
    items = std::move(kept);
}

} // namespace

Brief withEditedTune(Brief brief, Tune tune, BarsMoved moved, music::Interval transposed)
{
    moveBars(brief.locks, moved);
    moveBars(brief.fingers, moved);
    moveNotes(brief.changes, brief.tune, tune, moved);
    moveNotes(brief.snagChoices, brief.tune, tune, moved);
    for (Lock& lock : brief.locks)
        if (lock.root) lock.root = music::transposed(*lock.root, transposed);
    brief.tune = std::move(tune);
    return brief;
}

} // namespace proposal
