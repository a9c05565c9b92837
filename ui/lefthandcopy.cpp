#include "ui/lefthandcopy.h"

#include <algorithm>
#include <set>

namespace ui {

namespace {

using arrange::Arrangement;

arrange::Position const& at(Arrangement const& arrangement, arrange::PositionIndex position)
{
    return arrangement.positions[position].position;
}

// From the beginning of the tune, as it is written.
music::Length barStart(tune::Tune const& tune, tune::BarIndex bar)
{
    music::Length sum;
    for (tune::BarIndex b = 0; b < bar; ++b) sum = sum + tune.bars[b].length;
    return sum;
}

music::Length writtenAt(Arrangement const& arrangement, arrange::PositionIndex position)
{
    arrange::Position const& place = at(arrangement, position);
    return barStart(arrangement.tune, place.bar) + place.at;
}

// The position that begins at a written time, on that time through or else the last before it.
std::optional<arrange::PositionIndex> positionFor(Arrangement const& arrangement,
                                                  music::Length when, int pass)
{
    std::optional<arrange::PositionIndex> best;
    for (arrange::PositionIndex const p : arrangement.positions.indices()) {
        if (writtenAt(arrangement, p) != when) continue;
        int const here = passOf(arrangement, p);
        if (!best || (here <= pass && here >= passOf(arrangement, *best))) best = p;
    }
    return best;
}

void lay(Laying& laying, proposal::Proposal const& proposal,
         std::optional<arrange::PositionIndex> position, arrange::Voicing const& shape)
{
    if (!position) {
        ++laying.nowhere;
        return;
    }
    if (auto const candidate = candidateLike(proposal, *position, shape))
        laying.shapes.push_back({*position, *candidate});
    else
        ++laying.unplayable;
}

bool sameChords(tune::Bar const& a, tune::Bar const& b)
{
    return a.length == b.length && !a.chords.empty() &&
           std::ranges::equal(a.chords, b.chords,
                              [](tune::ChordMark const& x, tune::ChordMark const& y) {
                                  return x.at == y.at && x.chord == y.chord && x.pass == y.pass;
                              });
}

bool sameNotes(tune::Bar const& a, tune::Bar const& b)
{
    return std::ranges::equal(a.notes, b.notes, [](tune::Note const& x, tune::Note const& y) {
        return x.at == y.at && x.length == y.length && x.pitches == y.pitches;
    });
}

} // namespace

int passOf(Arrangement const& arrangement, arrange::PositionIndex position)
{
    return at(arrangement, position).played.front().pass;
}

CopiedHand copiedFrom(Arrangement const& arrangement,
                      std::vector<arrange::PositionIndex> positions)
{
    CopiedHand copied;
    if (positions.empty()) return copied;
    std::ranges::sort(positions);
    music::Length const first = writtenAt(arrangement, positions.front());
    for (arrange::PositionIndex const position : positions)
        copied.shapes.push_back({position, writtenAt(arrangement, position) - first,
                                 arrangement.positions[position].voicing});
    copied.length = barStart(arrangement.tune, at(arrangement, positions.back()).bar + 1) -
                    barStart(arrangement.tune, at(arrangement, positions.front()).bar);
    return copied;
}

std::vector<arrange::PositionIndex> positionsIn(Arrangement const& arrangement, Passage passage,
                                                std::optional<int> pass)
{
    std::vector<arrange::PositionIndex> out;
    for (arrange::PositionIndex const p : arrangement.positions.indices()) {
        tune::BarIndex const bar = at(arrangement, p).bar;
        if (bar < passage.firstBar || bar > passage.lastBar) continue;
        if (!pass || positionFor(arrangement, writtenAt(arrangement, p), *pass) == p)
            out.push_back(p);
    }
    return out;
}

Laying laidFrom(proposal::Proposal const& proposal, arrange::PositionIndex position,
                CopiedHand const& copied, std::optional<Passage> passage)
{
    Arrangement const& arrangement = proposal.arrangement;
    int const pass = passOf(arrangement, position);
    music::Length const from = writtenAt(arrangement, position);
    std::optional<music::Length> const end =
        passage ? std::optional(barStart(arrangement.tune, passage->lastBar + 1))
                : std::nullopt;
    Laying laying;
    music::Length round = from;
    do {
        for (CopiedHand::Shape const& shape : copied.shapes)
            if (music::Length const when = round + shape.at; !end || when < *end)
                lay(laying, proposal, positionFor(arrangement, when, pass), shape.voicing);
        round = round + copied.length;
    } while (end && round < *end && copied.length > music::Length{});
    return laying;
}

Laying laidOver(proposal::Proposal const& proposal,
                std::vector<arrange::PositionIndex> const& positions, CopiedHand const& copied)
{
    Laying laying;
    for (arrange::PositionIndex const position : positions)
        lay(laying, proposal, position, copied.shapes.front().voicing);
    return laying;
}

std::optional<Laying> swappedFrom(proposal::Proposal const& proposal,
                                  arrange::PositionIndex position, CopiedHand const& copied)
{
    Arrangement const& arrangement = proposal.arrangement;
    int const pass = passOf(arrangement, position);
    music::Length const from = writtenAt(arrangement, position);
    std::set<arrange::PositionIndex> touched;
    Laying laying;
    for (CopiedHand::Shape const& shape : copied.shapes) {
        auto const there = positionFor(arrangement, from + shape.at, pass);
        if (!there) {
            ++laying.nowhere;
            continue;
        }
        if (!touched.insert(*there).second || !touched.insert(shape.position).second)
            return std::nullopt;
        auto const both = swapped(proposal, shape.position, *there);
        if (both)
            laying.shapes.insert(laying.shapes.end(), both->begin(), both->end());
        else
            ++laying.unplayable;
    }
    return laying;
}

LikeBars barsLike(tune::Tune const& tune, tune::BarIndex bar)
{
    auto const& bars = tune.bars;
    tune::Bar const& here = bars[bar];
    LikeBars out;
    for (bool const notes : {true, false}) {
        for (tune::BarIndex const b : bars.indices()) {
            tune::Bar const& other = bars[b];
            if (b != bar && sameChords(here, other) && (!notes || sameNotes(here, other)))
                out.bars.push_back(b);
        }
        out.sameNotes = notes;
        if (!out.bars.empty()) return out;
    }
    return out;
}

} // namespace ui
