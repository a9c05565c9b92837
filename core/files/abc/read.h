#pragma once

#include "core/base/result.h"
#include "core/tune/tune.h"

#include <string>
#include <string_view>
#include <vector>

namespace files {

// Where one tune of a tunebook lies, so that a large book opens at once and tunes are read when
// asked.
struct AbcEntry {
    int number = 1; // X:
    std::string title;
    std::size_t from = 0; // bytes
    std::size_t to = 0;
    int line = 1;
};

// The tunes of an ABC text, found by their X: lines alone; a text without any is one tune if it
// has a K: line. UTF-8, UTF-16 with a byte order mark, and lines of Latin-1 are understood.
// `file` is named in faults: FileEmpty, FileBinary, FileTooLarge, NoTune.
base::Result<std::vector<AbcEntry>> abcTunes(std::string_view text,
                                             std::string const& file = {});

// One tune of the text (ABC 2.1, melody and chord symbols; other voices are left out and said).
// What could be read in more than one way is said in Tune::said. `file` is named in faults,
// with line and column: NoTune (no K: line), NoNotes, TuneTooLong, BadKey, BadMeter, BadLength,
// BadNote, BadTuplet, BadChord, BadRepeat, MeterMidBar. A tune that is still to be written may
// be of rests alone: NoNotes only where it has no bar, or rests alone are not allowed.
enum class Rests { NotAlone, Allowed };
base::Result<tune::Tune> readAbc(std::string_view text, AbcEntry const& entry,
                                 std::string const& file, Rests rests = Rests::NotAlone);

// The same for a voice by its V: name.
base::Result<tune::Tune> readAbcVoice(std::string_view text, AbcEntry const& entry,
                                      std::string const& voice, std::string const& file);

// The tune's own lines as UTF-8 with line feeds: a text that reads as the same tune by itself.
std::string ownText(std::string_view text, AbcEntry const& entry);

} // namespace files
