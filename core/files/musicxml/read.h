#pragma once

#include "core/base/result.h"
#include "core/tune/tune.h"

#include <string>
#include <string_view>

namespace files {

// The tune of a MusicXML score (1.0 to 4.0, partwise or timewise), plain or in an .mxl archive:
// one voice as the melody, chord symbols, repeats and endings, keys, meters, tempo, tuplets,
// grace notes; parts for transposing instruments as they sound. What is left out or could be
// read in more than one way is said in Tune::said. No other file and no network is looked at,
// and entities are not expanded. `file` is named in faults, with part, measure and line:
// FileEmpty, Malformed, FileTooLarge, NoScore, NoNotes, BadScoreValue, TuneTooLong.
base::Result<tune::Tune> readMusicXml(std::string_view bytes, std::string const& file);

} // namespace files
