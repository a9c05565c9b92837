#pragma once

#include "app/options.h"
#include "core/base/result.h"
#include "core/files/abc/read.h"
#include "core/files/tables/tables.h"
#include "core/proposal/proposal.h"
#include "core/tune/tune.h"

#include <optional>
#include <string>
#include <vector>

namespace app {

// What was opened: a tunebook, a score of one tune, or a saved arrangement, which holds one tune
// and all that was decided about it.
struct Book {
    std::string name; // as the user gave it; "standard input" for -
    std::string text; // ABC; of a score, its tune written down as such
    std::vector<files::AbcEntry> entries;
    std::optional<proposal::Brief> saved; // of a .sallow file
    std::optional<tune::Tune> score;      // of a MusicXML or MIDI file: the tune as it was read
};

// The endings of files that can be opened: ".abc", ".musicxml" ...
bool canOpen(std::string const& file);

// Opens an ABC, MusicXML, MIDI or .sallow file, or ABC on standard input for "-". Faults: those of
// reading, UnknownFileKind.
base::Result<Book> openBook(std::string const& file, files::Tables const& tables);

// The tunes asked for: "first", "all", an X: number, or else a place in the book counted
// from 1. Fault: NoSuchTune.
base::Result<std::vector<files::AbcEntry>> chosenTunes(Book const& book,
                                                       std::string const& which);

base::Result<tune::Tune> readTune(Book const& book, files::AbcEntry const& entry);

// The brief for one tune: as it was saved, else by the options. A saved arrangement brings its
// own decisions, so options beside it are refused, but for the words of the page and the level:
// see madeFor. Faults: those of reading, BadCall and those of briefFor.
base::Result<proposal::Brief> readBrief(Book const& book, files::AbcEntry const& entry,
                                        ArrangeOptions const& options,
                                        files::Tables const& tables);

// Proposes. A saved arrangement for which another level is asked is proposed as it was and then
// made to fit that level; what changes is told on stderr. Faults: those of propose.
base::Result<proposal::Proposal> madeFor(Book const& book, proposal::Brief const& brief,
                                         ArrangeOptions const& options,
                                         files::Tables const& tables);

} // namespace app
