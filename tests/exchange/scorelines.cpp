#include "tests/exchange/scorelines.h"

#include "core/arrange/unfold.h"
#include "core/notation/handcrossing.h"
#include "core/notation/lefthand.h"
#include "core/notation/melody.h"
#include "core/notation/notation.h"

namespace {

std::string pitchText(music::Pitch pitch)
{
    return music::plain(music::PitchName{pitch.letter, 0}) + std::to_string(pitch.alter) + '/' +
           std::to_string(pitch.octave);
}

std::string inDivisions(music::Length length, std::int64_t divisions)
{
    return music::text(length.wholes * music::Rational(4 * divisions));
}

void addStaff(std::string& out, std::string const& head, notation::StaffBar const& bar,
              music::Length end, std::int64_t divisions)
{
    for (notation::StaffNoteIndex const i : bar.notes.indices()) {
        notation::StaffNote const& note = bar.notes[i];
        music::Length const to = i + 1 < bar.notes.size() ? bar.notes[i + 1].at : end;
        for (music::Pitch grace : note.graces) out += head + "grace " + pitchText(grace) + '\n';
        std::string const time =
            inDivisions(note.at, divisions) + ' ' + inDivisions(to - note.at, divisions) + ' ';
        if (note.isRest()) out += head + time + "-\n";
        for (music::Pitch pitch : note.pitches)
            out += head + time + pitchText(pitch) + (note.tied ? " tie\n" : "\n");
    }
}

} // namespace

std::string scoreLines(arrange::Arrangement const& folded, std::int64_t divisions)
{
    arrange::Arrangement const arrangement = arrange::asPrinted(folded);
    std::string out;
    for (tune::BarIndex const i : arrangement.tune.bars.indices()) {
        music::Length const end = arrangement.tune.bars[i].length;
        std::string const measure = std::to_string(i);
        addStaff(out, measure + " 1 1 ",
                 notation::melodyBar(arrangement.tune, i, {}, arrangement.added), end,
                 divisions);
        notation::StaffBar const left = notation::leftBar(arrangement, i);
        notation::PrintedBar moved =
            notation::of(arrangement, notation::Kind::Arrangement).bars[i];
        notation::moveHighNotes(moved, arrangement.tune.bars[i]);
        for (notation::StaffNoteIndex const n : left.notes.indices()) {
            bool const upper = !left.notes[n].isRest() && moved.lower.notes[n].isRest();
            notation::StaffBar one;
            one.notes.push_back(left.notes[n]);
            addStaff(out, measure + (upper ? " 2 1 " : " 2 2 "), one,
                     n + 1 < left.notes.size() ? left.notes[n + 1].at : end, divisions);
        }
    }
    return out;
}

std::int64_t divisionsOf(std::string const& musicXml)
{
    std::string const open = "<divisions>";
    return std::stoll(musicXml.substr(musicXml.find(open) + open.size()));
}
