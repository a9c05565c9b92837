#include "core/collection/entry.h"

#include "core/music/pitch.h"
#include "core/tune/kindwords.h"

#include <algorithm>

namespace collection {

namespace {

// The notes that begin, up to so many; how many of them stand before bar 1.
void readOpening(tune::Tune const& tune, TuneEntry& into)
{
    bool tied = false;
    for (tune::Bar const& bar : tune.bars) {
        for (tune::Note const& note : bar.notes) {
            if (note.pitches.empty()) continue;
            bool const goesOn = std::exchange(tied, note.tied);
            if (goesOn) continue;
            music::Pitch const top = *std::ranges::max_element(
                note.pitches, {}, [](music::Pitch p) { return music::midi(p); });
            into.opening.push_back({music::diatonicStep(top), music::midi(top)});
            if (bar.number == 0 && &bar == &tune.bars.front()) ++into.pickUp;
            if (into.opening.size() == openingLength) return;
        }
    }
}

} // namespace

TuneEntry entryOf(tune::Tune const& tune)
{
    TuneEntry entry;
    entry.number = tune.number;
    entry.title = tune.title;
    for (std::string const& title : tune.otherTitles)
        entry.otherTitles += (entry.otherTitles.empty() ? "" : "; ") + title;
    entry.kind = tune.rhythm;
    entry.likelyKind = tune::kindOf(tune);
    entry.key = tune.key;
    entry.meter = tune.meter;
    entry.bars = static_cast<int>(std::ranges::count_if(
        tune.bars, [](tune::Bar const& bar) { return bar.upbeat == music::Length{}; }));
    entry.chords = tune::hasChords(tune);
    readOpening(tune, entry);
    return entry;
}

std::string kindWords(TuneEntry const& entry)
{
    bool const named = !entry.kind.empty() || entry.likelyKind == tune::Kind::Other;
    return named ? tune::rhythmShown(entry.kind) : tune::kindShown(entry.likelyKind);
}

} // namespace collection
