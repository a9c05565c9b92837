#include "core/sheet/turns.h"

#include <algorithm>
#include <initializer_list>
#include <utility>

namespace sheet {

namespace {

using music::Length;
using tune::BarIndex;
using Row = StaffBar PrintedBar::*;

constexpr int barsLookedAt = 4; // a hand that rests so long is free in any case

// Whether the notes sound on from the sign before.
bool soundsOn(StaffNote const* before, StaffNote const& note)
{
    if (!before || !before->tied) return false;
    return std::all_of(note.pitches.begin(), note.pitches.end(), [before](music::Pitch pitch) {
        return std::find(before->pitches.begin(), before->pitches.end(), pitch) !=
               before->pitches.end();
    });
}

// When a row is plucked in its bars from `first` to before `end`, from the first one's start.
std::vector<Length> plucks(Score const& score, Row row, BarIndex first, BarIndex end)
{
    std::vector<Length> out;
    StaffNote const* before = nullptr;
    Length start;
    for (BarIndex b = std::max(first - 1, BarIndex(0)); b < end; ++b) {
        for (StaffNote const& note : (score.bars[b].*row).notes) {
            bool const plucked = !note.isRest() && !soundsOn(before, note);
            if (b >= first && plucked) out.push_back(start + note.at);
            before = &note;
        }
        if (b >= first) start = start + score.tune.bars[b].length;
    }
    return out;
}

Length lengthOf(Score const& score, BarIndex first, BarIndex end)
{
    Length sum;
    for (BarIndex b = first; b < end; ++b) sum = sum + score.tune.bars[b].length;
    return sum;
}

} // namespace

double freeBefore(Score const& score, BarIndex bar)
{
    BarIndex const first = std::max(BarIndex(0), bar - barsLookedAt);
    BarIndex const end = std::min(score.bars.beyond(), bar + barsLookedAt);
    Length const before = lengthOf(score, first, bar);
    Length const after = lengthOf(score, bar, end);
    auto const freeOf = [&](std::initializer_list<Row> rows) {
        Length rested = before;
        Length rests = after;
        for (Row row : rows) {
            auto const left = plucks(score, row, first, bar);
            auto const ahead = plucks(score, row, bar, end);
            if (!left.empty()) rested = std::min(rested, before - left.back());
            if (!ahead.empty()) rests = std::min(rests, ahead.front());
        }
        return rested + rests;
    };
    Length longest = freeOf({&PrintedBar::upper});
    if (score.grand)
        longest = std::max(longest, freeOf({&PrintedBar::lower, &PrintedBar::upperBelow}));
    return 4 * longest.wholes.toDouble() * 60 / tune::quartersPerMinute(tune::tempoOf(score.tune));
}

} // namespace sheet
