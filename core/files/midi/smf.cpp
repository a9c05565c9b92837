#include "core/files/midi/smf.h"

#include "core/files/midi/messages.h"

#include <algorithm>
#include <bit>
#include <cassert>
#include <cmath>
#include <tuple>

namespace files {

namespace {

enum Rank { Setting, NoteEnds, NoteBegins }; // the order at one tick

std::string bytes(std::initializer_list<int> values)
{
    std::string out;
    for (int const value : values) out += static_cast<char>(value & 0xFF);
    return out;
}

std::string bigEndian(std::uint32_t value, int count)
{
    std::string out;
    for (int shift = 8 * (count - 1); shift >= 0; shift -= 8)
        out += static_cast<char>((value >> shift) & 0xFF);
    return out;
}

std::string chunkOf(std::string_view type, std::string const& body)
{
    return std::string(type) + bigEndian(static_cast<std::uint32_t>(body.size()), 4) + body;
}

} // namespace

std::string variableLength(std::uint32_t value)
{
    assert(value <= 0x0FFFFFFF);
    std::string out(1, static_cast<char>(value & 0x7F));
    while (value >>= 7) out.insert(out.begin(), static_cast<char>(0x80 | (value & 0x7F)));
    return out;
}

void SmfTrack::meta(std::int64_t tick, int type, std::string_view body)
{
    auto const length = variableLength(static_cast<std::uint32_t>(body.size()));
    m_events.push_back(
        {tick, Setting, bytes({midi::metaEvent, type}) + length + std::string(body)});
}

void SmfTrack::name(std::string_view text) { meta(0, midi::trackName, text); }

void SmfTrack::marker(std::int64_t tick, std::string_view text)
{
    meta(tick, midi::marker, text);
}

void SmfTrack::tempo(std::int64_t tick, double quartersPerMinute)
{
    auto const microseconds = static_cast<std::uint32_t>(std::lround(60e6 / quartersPerMinute));
    meta(tick, midi::setTempo, bigEndian(std::min(microseconds, 0xFFFFFFU), 3));
}

void SmfTrack::meter(std::int64_t tick, int beats, int unit, int clocksAClick)
{
    int const powerOfTwo = std::countr_zero(static_cast<unsigned>(unit));
    constexpr int demisemiquaversACrotchet = 8;
    meta(tick, midi::timeSignature,
         bytes({beats, powerOfTwo, clocksAClick, demisemiquaversACrotchet}));
}

void SmfTrack::key(std::int64_t tick, int sharps, bool minor)
{
    meta(tick, midi::keySignature, bytes({sharps, minor ? 1 : 0}));
}

void SmfTrack::program(int channel, int program)
{
    m_events.push_back({0, Setting, bytes({midi::programChange | channel, program})});
}

void SmfTrack::note(std::int64_t from, std::int64_t to, int channel, int key, int velocity)
{
    m_notes.push_back({channel, key, velocity, from, to});
}

void SmfTrack::end(std::int64_t tick) { m_end = std::max(m_end, tick); }

std::vector<SmfTrack::Event> SmfTrack::events() const
{
    std::vector<Note> notes = m_notes;
    std::ranges::stable_sort(notes, {}, [](Note const& note) {
        return std::tuple(note.channel, note.key, note.from);
    });
    std::vector<Event> all = m_events;
    for (std::size_t i = 0; i < notes.size(); ++i) {
        Note const& note = notes[i];
        bool const again = i + 1 < notes.size() && notes[i + 1].channel == note.channel &&
                           notes[i + 1].key == note.key;
        std::int64_t const to = again ? std::min(note.to, notes[i + 1].from) : note.to;
        if (to <= note.from) continue;
        all.push_back({note.from, NoteBegins,
                       bytes({midi::noteOn | note.channel, note.key, note.velocity})});
        all.push_back(
            {to, NoteEnds,
             bytes({midi::noteOff | note.channel, note.key, midi::usualReleaseVelocity})});
    }
    std::ranges::stable_sort(
        all, {}, [](Event const& event) { return std::tuple(event.tick, event.rank); });
    return all;
}

std::string SmfTrack::chunk() const
{
    std::string body;
    std::int64_t tick = 0;
    for (Event const& event : events()) {
        body += variableLength(static_cast<std::uint32_t>(event.tick - tick)) + event.bytes;
        tick = event.tick;
    }
    auto const rest = static_cast<std::uint32_t>(std::max<std::int64_t>(0, m_end - tick));
    body += variableLength(rest) + bytes({midi::metaEvent, midi::endOfTrack, 0});
    return chunkOf("MTrk", body);
}

std::string smf(int division, std::vector<SmfTrack> const& tracks)
{
    assert(division > 0 && division < 0x8000);
    constexpr std::uint32_t playedTogether = 1;
    std::string out =
        chunkOf("MThd", bigEndian(playedTogether, 2) +
                            bigEndian(static_cast<std::uint32_t>(tracks.size()), 2) +
                            bigEndian(static_cast<std::uint32_t>(division), 2));
    for (SmfTrack const& track : tracks) out += track.chunk();
    return out;
}

} // namespace files
