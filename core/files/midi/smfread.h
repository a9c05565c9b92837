#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace files {

// What a Standard MIDI File holds, track by track; times in ticks from the beginning.
struct SmfNote {
    std::int64_t from = 0;
    std::int64_t to = 0;
    int channel = 0;
    int key = 0;
};
struct SmfText {
    std::int64_t at = 0;
    int type = 0; // of the meta event: 1 text, 3 name, 5 lyric, 6 marker
    std::string text;
};
struct SmfMeter {
    std::int64_t at = 0;
    int beats = 4;
    int unit = 4;
};
struct SmfKey {
    std::int64_t at = 0;
    int sharps = 0; // flats negative
    bool minor = false;
};
struct SmfContents {
    struct Track {
        std::vector<SmfNote> notes; // by their beginning
        std::vector<SmfText> texts;
    };
    int ticksACrotchet = 480;
    std::vector<Track> tracks;
    std::vector<SmfMeter> meters; // by time, of all tracks
    std::optional<double> tempo;  // the first, crotchets a minute
    int laterTempos = 0;          // changes of tempo; one that goes on by steps of at most a
                                  // crotchet counts once
    bool slowsAtTheEnd = false;   // it is one, a fall by steps up to the last bars
    std::vector<SmfKey> keys;     // by time, of all tracks
    std::vector<std::string> oddities; // what was wrong and passed over
};

// Standard MIDI File 1.0, format 0 to 2, also inside RIFF. `file` is named in faults, with the
// byte: Malformed, BadScoreValue (no division), TuneTooLong.
base::Result<SmfContents> readSmf(std::string_view bytes, std::string const& file);

} // namespace files
