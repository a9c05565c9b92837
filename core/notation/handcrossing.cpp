#include "core/notation/handcrossing.h"

#include "core/notation/beams.h"
#include "core/notation/clef.h"

#include <algorithm>
#include <utility>

namespace notation {

namespace {

constexpr int threeLedgerLines = 10; // half spaces above the middle line of the bass staff
constexpr int fiveLedgerLines = 14;
constexpr int middleC = 6;
constexpr int leastApart = 2; // half spaces: a third

struct Run {
    StaffNoteIndex first = 0;
    StaffNoteIndex end = 0;
};

// Signs that a beam or ties hold together, from one on.
Run runFrom(StaffBar const& bar, std::vector<BeamGroup> const& beams, StaffNoteIndex first)
{
    StaffNoteIndex end = first + 1;
    for (bool grown = true; grown && end < bar.notes.beyond();) {
        grown = bar.notes[end - 1].tied;
        for (BeamGroup const& beam : beams)
            grown = grown || (beam.first < end && end <= beam.last);
        if (grown) ++end;
    }
    return {first, end};
}

bool plain(std::vector<music::Pitch> const& pitches, int signature)
{
    return std::all_of(pitches.begin(), pitches.end(), [signature](music::Pitch p) {
        return p.alter == music::alterIn(signature, p.letter);
    });
}

bool plain(StaffBar const& bar, int signature)
{
    return std::all_of(bar.notes.begin(), bar.notes.end(), [signature](StaffNote const& note) {
        return plain(note.pitches, signature) && plain(note.graces, signature);
    });
}

// A tie over a flag that points up would run through it.
bool tiesFlags(StaffBar const& upper)
{
    return std::any_of(upper.notes.begin(), upper.notes.end(), [](StaffNote const& note) {
        return note.tied && beamCount(note.value) > 0;
    });
}

bool tuneLiesAbove(StaffBar const& upper, StaffNote const& note)
{
    int const top = staffStep(note.pitches.back(), Clef::Treble);
    return std::all_of(upper.notes.begin(), upper.notes.end(), [&](StaffNote const& other) {
        bool const together =
            other.at < note.at + note.length && note.at < other.at + other.length;
        if (!together) return true;
        if (other.fillsBar) return false;
        return other.isRest() ||
               staffStep(other.pitches.front(), Clef::Treble) >= top + leastApart;
    });
}

bool mayMove(PrintedBar const& bar, Run run, int signature)
{
    bool far = false;
    for (StaffNoteIndex i = run.first; i < run.end; ++i) {
        StaffNote const& note = bar.lower.notes[i];
        if (note.isRest() || note.rolled || note.bracketed) return false;
        if (staffStep(note.pitches.front(), Clef::Bass) < middleC) return false;
        far = far || staffStep(note.pitches.back(), Clef::Bass) >= threeLedgerLines;
        if (!plain(note.pitches, signature) || !tuneLiesAbove(bar.upper, note)) return false;
    }
    return far;
}

// A figure that climbs to the other staff, falls back and climbs again is easier read on its
// own.
bool comesAndGoes(PrintedBar const& bar, std::vector<Run> const& all, Run run)
{
    auto const position = bar.lower.notes[run.first].position;
    return std::any_of(all.begin(), all.end(), [&](Run other) {
        return other.first != run.first && bar.lower.notes[other.first].position == position;
    });
}

// A figure stays on one staff: a part of it moves only where it would lie beyond all reading.
bool tearsFigure(PrintedBar const& bar, Run run)
{
    auto const position = bar.lower.notes[run.first].position;
    int highest = 0;
    bool torn = false;
    for (StaffNoteIndex i = 0; i < bar.lower.notes.size(); ++i) {
        StaffNote const& note = bar.lower.notes[i];
        if (note.isRest() || note.position != position) continue;
        bool const inside = run.first <= i && i < run.end;
        if (inside)
            highest = std::max(highest, staffStep(note.pitches.back(), Clef::Bass));
        torn = torn || !inside;
    }
    return torn && highest < fiveLedgerLines;
}

StaffNote unprintedRest(StaffNote const& note)
{
    StaffNote rest;
    rest.at = note.at;
    rest.length = note.length;
    rest.value = note.value;
    rest.hidden = true;
    rest.position = note.position;
    return rest;
}

} // namespace

void moveHighNotes(PrintedBar& bar, tune::Bar const& written)
{
    int const signature = music::signature(written.key);
    if (!plain(bar.upper, signature) || tiesFlags(bar.upper)) return;
    std::vector<BeamGroup> const beams = beamGroups(bar.lower, written.meter, written.upbeat);
    std::vector<Run> runs; // that move
    for (StaffNoteIndex i = 0; i < bar.lower.notes.size();) {
        Run const run = runFrom(bar.lower, beams, i);
        i = run.end;
        if (!mayMove(bar, run, signature)) continue;
        bool const goesOn = !runs.empty() && runs.back().end == run.first;
        if (goesOn)
            runs.back().end = run.end;
        else
            runs.push_back(run);
    }
    std::erase_if(runs, [&, all = runs](Run run) { return comesAndGoes(bar, all, run) || tearsFigure(bar, run); });
    for (Run run : runs)
        for (StaffNoteIndex n = run.first; n < run.end; ++n) {
            StaffNote& note = bar.lower.notes[n];
            StaffNote const rest = unprintedRest(note);
            bar.upperBelow.notes.push_back(std::exchange(note, rest));
        }
}

} // namespace notation
