#include "core/files/midi/smf.h"
#include "tests/files/smfreader.h"

#include <catch2/catch.hpp>

using namespace files;
using namespace std::string_literals;

TEST_CASE("Lengths are written in seven bits a byte as the table of the standard has them",
          "[smf]")
{
    // Standard MIDI Files 1.0, "Variable-Length Quantity", the table of examples.
    auto const [value, bytes] = GENERATE(table<std::uint32_t, std::string>({
        {0x00000000, "\x00"s},
        {0x00000040, "\x40"s},
        {0x0000007F, "\x7F"s},
        {0x00000080, "\x81\x00"s},
        {0x00002000, "\xC0\x00"s},
        {0x00003FFF, "\xFF\x7F"s},
        {0x00004000, "\x81\x80\x00"s},
        {0x00100000, "\xC0\x80\x00"s},
        {0x001FFFFF, "\xFF\xFF\x7F"s},
        {0x00200000, "\x81\x80\x80\x00"s},
        {0x08000000, "\xC0\x80\x80\x00"s},
        {0x0FFFFFFF, "\xFF\xFF\xFF\x7F"s},
    }));
    CAPTURE(value);
    CHECK(variableLength(value) == bytes);
}

TEST_CASE("The standard's own example of a track with meter and tempo comes out byte for byte",
          "[smf]")
{
    // Standard MIDI Files 1.0, the example of a format 1 file: the first track (from memory of
    // the standard's listing, division 96, 4/4, tempo 500,000).
    SmfTrack track;
    track.meter(0, 4, 4, 24);
    track.tempo(0, 120);
    track.end(384);
    CHECK(track.chunk() == "MTrk\x00\x00\x00\x14"s
                           "\x00\xFF\x58\x04\x04\x02\x18\x08"s
                           "\x00\xFF\x51\x03\x07\xA1\x20"s
                           "\x83\x00\xFF\x2F\x00"s);
    CHECK(smf(96, {}) == "MThd\x00\x00\x00\x06\x00\x01\x00\x00\x00\x60"s);
}

TEST_CASE("Six quavers a bar are written with a metronome click on the dotted crotchet",
          "[smf]")
{
    // Standard MIDI Files 1.0: "6/8 time, where the metronome clicks every three eighth-notes"
    // is FF 58 04 06 03 24 08.
    SmfTrack track;
    track.meter(0, 6, 8, 36);
    CHECK(track.chunk().substr(8, 8) == "\x00\xFF\x58\x04\x06\x03\x24\x08"s);
}

TEST_CASE("Flats of a key signature are negative sharps", "[smf]")
{
    // Standard MIDI Files 1.0: sf = -3 for three flats, mi = 1 for minor.
    SmfTrack track;
    track.key(0, -3, true);
    CHECK(track.chunk().substr(8, 6) == "\x00\xFF\x59\x02\xFD\x01"s);
}

TEST_CASE("A key struck again ends its first note before the second begins", "[smf]")
{
    SmfTrack track;
    track.note(0, 100, 0, 60, 80);
    track.note(50, 120, 0, 60, 90);
    track.note(50, 120, 1, 60, 70); // another channel is another matter
    auto const file = smfreader::read(smf(96, {track}));
    using smfreader::Note;
    CHECK(smfreader::notes(file.tracks.at(0)) ==
          std::vector<Note>{{0, 50, 0, 60, 80}, {50, 120, 0, 60, 90}, {50, 120, 1, 60, 70}});
}
