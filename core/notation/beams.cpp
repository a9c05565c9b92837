#include "core/notation/beams.h"

#include <algorithm>

namespace notation {

using music::Length;
using music::Meter;
using music::Rational;

namespace {

bool beamable(StaffNote const& note) { return !note.isRest() && beamCount(note.value) > 0; }

// The largest stretch one beam may cover in this meter, and what it falls back to where shorter
// notes would make it hard to read.
struct Windows {
    Length wide;
    Length narrow;
};

Windows windowsOf(Meter meter)
{
    Length const beat = music::beatLength(meter);
    Length const bar = music::barLength(meter);
    if (music::isCompound(meter)) return {beat, beat};
    if (meter == Meter{3, 8, meter.common}) return {bar, bar};
    if (meter.unit == 4 && meter.beats <= 3) return {bar, beat};
    if (meter.unit <= 4 && meter.beats % 2 == 0)
        return {bar * Rational(1, meter.unit == 2 ? meter.beats : meter.beats / 2),
                {Rational(1, 4)}};
    if (meter.unit == 2) return {beat, {Rational(1, 4)}};
    if (meter.unit == 8) return {bar, bar}; // 5/8, 7/8: grouped by the writer's gaps
    return {beat, beat};
}

std::int64_t windowOf(Length at, Length window) { return floorOf(at / window); }

// Whether everything in the wide window around a place is plain quavers or longer.
bool plainQuavers(StaffBar const& bar, Length upbeat, std::int64_t window, Length wide)
{
    return std::none_of(bar.notes.begin(), bar.notes.end(), [&](StaffNote const& note) {
        return windowOf(upbeat + note.at, wide) == window && beamCount(note.value) > 1;
    });
}

bool isIrregular(Meter meter)
{
    return meter.unit == 8 && !music::isCompound(meter) && meter.beats > 3;
}

int tupletOf(StaffBar const& bar, StaffNoteIndex note)
{
    for (std::size_t i = 0; i < bar.tuplets.size(); ++i)
        if (bar.tuplets[i].first <= note && note <= bar.tuplets[i].last)
            return static_cast<int>(i) + 1;
    return 0;
}

bool beginsBeat(StaffBar const& bar, StaffNoteIndex note, Meter meter, Length upbeat)
{
    Length const at = upbeat + bar.notes[note].at;
    return metricDepth(meter, at) >= 2;
}

// Whether a beam may run from one note into the next.
bool joined(StaffBar const& bar, StaffNoteIndex left, StaffNoteIndex right, Meter meter,
            Length upbeat)
{
    StaffNote const& a = bar.notes[left];
    StaffNote const& b = bar.notes[right];
    if (!beamable(a) || !beamable(b)) return false;
    auto const [wide, narrow] = windowsOf(meter);
    Length const from = upbeat + a.at;
    Length const to = upbeat + b.at;
    if (windowOf(from, wide) != windowOf(to, wide)) return false;
    bool const atBeat = windowOf(from, narrow) != windowOf(to, narrow);
    if (atBeat && !plainQuavers(bar, upbeat, windowOf(from, wide), wide)) return false;
    // Each tuplet has a beam of its own, to carry its number.
    if (tupletOf(bar, left) != tupletOf(bar, right) && beginsBeat(bar, right, meter, upbeat))
        return false;
    if (b.beamBroken && (atBeat || isIrregular(meter))) return false;
    return true;
}

int beamsOf(StaffBar const& bar, StaffNoteIndex note)
{
    return beamCount(bar.notes[note].value);
}

} // namespace

std::vector<BeamGroup> beamGroups(StaffBar const& bar, Meter meter, Length upbeat)
{
    std::vector<BeamGroup> groups;
    for (StaffNoteIndex first = 0; first < bar.notes.beyond();) {
        StaffNoteIndex last = first;
        while (bar.notes.holds(last + 1) && joined(bar, last, last + 1, meter, upbeat)) ++last;
        if (last > first) groups.push_back({first, last});
        first = last + 1;
    }
    return groups;
}

std::vector<BeamRun> beamRuns(StaffBar const& bar, BeamGroup group, Meter meter, Length upbeat)
{
    std::vector<BeamRun> runs{{1, group.first, group.last, false}};
    int deepest = 1;
    for (StaffNoteIndex note = group.first; note <= group.last; ++note)
        deepest = std::max(deepest, beamsOf(bar, note));
    for (int level = 2; level <= deepest; ++level)
        for (StaffNoteIndex from = group.first; from <= group.last;) {
            StaffNoteIndex to = from;
            if (beamsOf(bar, from) < level) {
                ++from;
                continue;
            }
            while (to < group.last && beamsOf(bar, to + 1) >= level) ++to;
            bool const left = from != group.first &&
                              !(from < group.last && beginsBeat(bar, from, meter, upbeat));
            runs.push_back({level, from, to, from == to && left});
            from = to + 1;
        }
    return runs;
}

} // namespace notation
