// How like the demo tunes are to tunes that others wrote: for each the longest run of notes
// that it shares with a tune of the folders, alike in its intervals and in how long its notes
// last beside each other, whatever the key, the unit and the tempo. The demo tunes are to be
// our own.
//
//   sallow_likeness FOLDER...

#include "core/files/abc/read.h"
#include "core/files/textfile.h"
#include "core/music/pitch.h"
#include "tests/bench/orquit.h"
#include "tests/bench/tunebooks.h"
#include "tests/places.h"

#include <algorithm>
#include <iostream>
#include <optional>

namespace {

// From one note to the next: so many semitones up, and so many times as long.
struct Move {
    int semitones = 0;
    music::Rational longer;
    tune::BarIndex bar = 0; // of the note it comes from
    bool alike(Move const& other) const
    {
        return semitones == other.semitones && longer == other.longer;
    }
};

// The moves of a tune as it is written, those of the highest notes; none over a rest.
std::vector<std::optional<Move>> movesOf(tune::Tune const& tune)
{
    struct Sung {
        int midi = 0;
        music::Rational length;
        tune::BarIndex bar = 0;
    };
    std::vector<std::optional<Move>> moves;
    bool tied = false;
    std::vector<std::optional<Sung>> line;
    for (tune::BarIndex const bar : tune.bars.indices())
        for (tune::Note const& note : tune.bars[bar].notes) {
            if (note.pitches.empty()) {
                line.push_back(std::nullopt);
                continue;
            }
            int const midi = music::midi(note.pitches.back());
            if (tied && !line.empty() && line.back() && line.back()->midi == midi)
                line.back()->length += note.length.wholes;
            else
                line.push_back(Sung{midi, note.length.wholes, bar});
            tied = note.tied;
        }
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        if (line[i] && line[i + 1])
            moves.push_back(Move{line[i + 1]->midi - line[i]->midi,
                                 line[i + 1]->length / line[i]->length, line[i]->bar});
        else
            moves.push_back(std::nullopt);
    }
    return moves;
}

struct Run {
    std::size_t moves = 0;
    tune::BarIndex bar = 0; // in which it begins
};

// The longest common run, by the length of the common run that ends at each pair of places.
Run longestRun(std::vector<std::optional<Move>> const& ours,
               std::vector<std::optional<Move>> const& theirs)
{
    Run longest;
    std::vector<std::size_t> ending(theirs.size() + 1, 0);
    for (std::size_t i = 0; i < ours.size(); ++i)
        for (std::size_t j = theirs.size(); j-- > 0;) { // from behind: one row is enough
            bool const same = ours[i] && theirs[j] && ours[i]->alike(*theirs[j]);
            ending[j + 1] = same ? ending[j] + 1 : 0;
            if (ending[j + 1] > longest.moves)
                longest = {ending[j + 1], ours[i + 1 - ending[j + 1]]->bar};
        }
    return longest;
}

} // namespace

int main(int argc, char** argv)
{
    std::vector<tune::Tune> others;
    int unread = 0;
    for (int i = 1; i < argc; ++i)
        for (tune::Tune& tune : tunesIn(argv[i], unread)) others.push_back(std::move(tune));
    if (others.empty()) {
        std::cerr << "sallow_likeness FOLDER...: folders of tunebooks to compare with\n";
        return EXIT_FAILURE;
    }
    std::cout << others.size() << " tunes, " << unread << " not read\n";
    std::vector<std::vector<std::optional<Move>>> moves;
    for (tune::Tune const& other : others) moves.push_back(movesOf(other));

    std::string const path = places::shared() + "/demo/demo.abc";
    std::string const text = orQuit(files::readTextFile(path));
    for (files::AbcEntry const& entry : orQuit(files::abcTunes(text))) {
        tune::Tune const demo = orQuit(files::readAbc(text, entry, path));
        auto const ours = movesOf(demo);
        Run longest;
        std::size_t with = 0;
        for (std::size_t i = 0; i < moves.size(); ++i)
            if (Run const run = longestRun(ours, moves[i]); run.moves > longest.moves) {
                longest = run;
                with = i;
            }
        std::cout << demo.title << ": " << longest.moves + 1 << " of " << ours.size() + 1
                  << " notes, from bar " << demo.bars[longest.bar].number << ", as in "
                  << others[with].title << '\n';
    }
    return EXIT_SUCCESS;
}
