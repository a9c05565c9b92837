#include "core/proposal/edited.h"

#include "core/proposal/formed.h"

#include <algorithm>
#include <map>
#include <optional>
#include <tuple>

namespace proposal {

namespace {

using tune::NotePlace;
using tune::Tune;

// Where each bar of a tune went; none: it is no more.
using BarsNow = base::List<tune::BarIndex, std::optional<tune::BarIndex>>;

BarsNow barsNow(Tune const& before, BarsMoved moved)
{
    BarsNow out;
    for (tune::BarIndex const bar : before.bars.indices()) {
        if (bar < moved.from)
            out.emplace_back(bar);
        else if (bar < moved.from - moved.by)
            out.emplace_back();
        else
            out.emplace_back(bar + moved.by);
    }
    return out;
}

// What a bar of a formed tune is, so that it can be found again in another form.
using Standing =
    std::tuple<tune::Role, int, tune::BarIndex, int>; // role, time, bar as read, which of those

std::map<Standing, tune::BarIndex> standings(tune::Formed const& formed)
{
    std::map<Standing, tune::BarIndex> out;
    for (tune::BarIndex const i : formed.from.indices()) {
        tune::Bar const& bar = formed.tune.bars[i];
        Standing key{bar.role, bar.role == tune::Role::Tune ? bar.time : 1, formed.from[i].bar,
                     0};
        while (out.contains(key)) ++std::get<3>(key); // the same bar, written out again
        out[key] = i;
    }
    return out;
}

// Where the bars of a formed tune went, when those of the tune as read went so.
BarsNow barsNow(tune::Formed const& before, tune::Formed const& after, BarsNow const& asRead)
{
    BarsNow out(before.from.size(), std::nullopt);
    auto const there = standings(after);
    for (auto const& [standing, bar] : standings(before)) {
        Standing key = standing;
        auto const now = asRead[std::get<2>(key)];
        if (!now) continue;
        std::get<2>(key) = *now;
        if (auto const found = there.find(key); found != there.end()) out[bar] = found->second;
    }
    return out;
}

std::optional<tune::BarIndex> barNow(BarsNow const& bars, tune::BarIndex bar)
{
    return bars.holds(bar) ? bars[bar] : std::nullopt;
}

// The note that was at the place, where a note of as many pitches stands at its beat now.
std::optional<NotePlace> noteNow(Tune const& before, Tune const& after, NotePlace place,
                                 BarsNow const& moved)
{
    auto const bar = barNow(moved, place.bar);
    if (!bar || !pitchOf(before, place) || *bar >= after.bars.size()) return std::nullopt;
    tune::Note const& was = before.bars[place.bar].notes[place.note];
    auto const& notes = after.bars[*bar].notes;
    auto const same = std::find_if(notes.begin(), notes.end(), [&was](tune::Note const& note) {
        return note.at == was.at && note.pitches.size() == was.pitches.size() &&
               note.graces.size() == was.graces.size();
    });
    if (same == notes.end()) return std::nullopt;
    place.bar = *bar;
    place.note = notes.indexOf(same);
    return place;
}

// Moves what has a bar; drops it where the bar is no more.
template<typename Item>
void moveBars(std::vector<Item>& items, BarsNow const& moved)
{
    std::vector<Item> kept;
    for (Item item : items)
        if (auto const bar = barNow(moved, item.bar)) {
            item.bar = *bar;
            kept.push_back(std::move(item));
        }
    items = std::move(kept);
}

template<typename Item>
void moveNotes(std::vector<Item>& items, Tune const& before, Tune const& after,
               BarsNow const& moved)
{
    std::vector<Item> kept;
    for (Item item : items)
        if (auto const place = noteNow(before, after, item.place, moved)) {
            item.place = *place;
            kept.push_back(std::move(item));
        }
    items = std::move(kept);
}

// Takes what was decided about bars of the formed tune along to the one that the brief has now.
void carry(Brief& brief, tune::Formed const& before, BarsNow const& asRead)
{
    tune::Formed const after = formOf(brief);
    BarsNow const moved = barsNow(before, after, asRead);
    moveBars(brief.locks, moved);
    moveBars(brief.fingers, moved);
    moveNotes(brief.snagChoices, before.tune, after.tune, moved);
}

} // namespace

Brief withEditedTune(Brief brief, Tune tune, BarsMoved moved, music::Interval transposed)
{
    tune::Formed const before = formOf(brief);
    BarsNow const asRead = barsNow(brief.tune, moved);
    moveNotes(brief.changes, brief.tune, tune, asRead);
    for (Lock& lock : brief.locks)
        if (lock.root) lock.root = music::transposed(*lock.root, transposed);
    brief.tune = std::move(tune);
    carry(brief, before, asRead);
    return brief;
}

Brief withForm(Brief brief, Form form)
{
    tune::Formed const before = formOf(brief);
    brief.form = std::move(form);
    carry(brief, before, barsNow(brief.tune, BarsMoved{}));
    return brief;
}

} // namespace proposal
