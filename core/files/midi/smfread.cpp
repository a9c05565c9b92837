#include "core/files/midi/smfread.h"

#include "core/base/words.h"
#include "core/files/limits.h"
#include "core/files/midi/messages.h"

#include <algorithm>
#include <array>
#include <map>

namespace files {

namespace {

using base::Fault;
using base::FaultCode;
using base::Result;

constexpr std::size_t mostTexts = 20'000;
constexpr std::size_t mostTracks = 1'000;
constexpr std::int64_t lastTick = std::int64_t{1} << 40;

// Bytes read one after the other; beyond the end all is nought and `ended` says so.
class Bytes {
public:
    Bytes(std::string_view bytes, std::size_t from, std::size_t to)
        : m_bytes(bytes), m_at(from), m_to(std::min(to, bytes.size()))
    {}
    bool ended() const { return m_at >= m_to; }
    bool overran() const { return m_overran; }
    std::size_t at() const { return m_at; }
    int peek() const { return ended() ? 0 : static_cast<unsigned char>(m_bytes[m_at]); }
    int next()
    {
        if (ended()) m_overran = true;
        int const byte = peek();
        if (!ended()) ++m_at;
        return byte;
    }
    std::int64_t number(int count)
    {
        std::int64_t value = 0;
        for (int i = 0; i < count; ++i) value = value << 8 | next();
        return value;
    }
    // Seven bits a byte; padded with empty ones by some programs.
    std::int64_t variable()
    {
        constexpr int mostBytes = 8;
        std::int64_t value = 0;
        for (int i = 0; i < mostBytes; ++i) {
            int const byte = next();
            value = value << 7 | (byte & 0x7F);
            if ((byte & 0x80) == 0) return value;
        }
        m_overran = true;
        return value;
    }
    std::string_view take(std::int64_t count)
    {
        std::size_t const size = std::min(static_cast<std::size_t>(count), m_to - m_at);
        m_overran = m_overran || static_cast<std::int64_t>(size) < count;
        std::string_view const out = m_bytes.substr(m_at, size);
        m_at += size;
        return out;
    }

private:
    std::string_view m_bytes;
    std::size_t m_at;
    std::size_t m_to;
    bool m_overran = false;
};

struct TempoAt {
    std::int64_t at = 0;
    double tempo = 0; // crotchets a minute
};

// The first tempo, and what becomes of it.
void takeTempos(SmfContents& contents, std::vector<TempoAt> tempos)
{
    if (tempos.empty()) return;
    std::ranges::stable_sort(tempos, {}, &TempoAt::at);
    contents.tempo = tempos.front().tempo;
    constexpr int fewestSteps = 3;
    constexpr int crotchetsFromTheEnd = 8;
    std::int64_t lastNote = 0;
    for (SmfContents::Track const& track : contents.tracks)
        if (!track.notes.empty()) lastNote = std::max(lastNote, track.notes.back().from);
    TempoAt before = tempos.front();
    int steps = 0;
    std::optional<std::int64_t> falling; // where the last step down was
    std::optional<std::int64_t> rising;
    bool everRises = false;
    for (TempoAt const& now : tempos) {
        if (now.tempo == before.tempo) continue;
        bool const rises = now.tempo > before.tempo;
        everRises = everRises || rises;
        auto& same = rises ? rising : falling;
        (rises ? falling : rising).reset();
        if (!same || now.at - *same > contents.ticksACrotchet) ++contents.laterTempos;
        same = now.at;
        before = now;
        ++steps;
    }
    contents.slowsAtTheEnd =
        contents.laterTempos == 1 && !everRises && steps >= fewestSteps &&
        before.at >= lastNote - std::int64_t{crotchetsFromTheEnd} * contents.ticksACrotchet;
}

class TrackReader {
public:
    TrackReader(Bytes& bytes, SmfContents& contents, SmfContents::Track& track,
                std::vector<TempoAt>& tempos)
        : m_bytes(bytes), m_contents(contents), m_track(track), m_tempos(tempos)
    {}

    // The code of what is wrong; none: the track was read as far as it goes.
    std::optional<FaultCode> read(std::size_t& notesLeft)
    {
        while (!m_bytes.ended() && !m_done) {
            m_tick += m_bytes.variable();
            if (m_bytes.overran() && m_bytes.ended()) break;
            if (m_bytes.overran()) return FaultCode::Malformed;
            if (m_tick > lastTick) return FaultCode::TuneTooLong;
            if (!event()) return FaultCode::Malformed;
            if (m_track.notes.size() + m_open.size() > notesLeft) return FaultCode::TuneTooLong;
        }
        if (!m_done) m_contents.oddities.emplace_back(base::said("a track has no end"));
        if (!m_open.empty())
            m_contents.oddities.emplace_back(base::said("notes are never switched off"));
        for (auto const& [key, from] : m_open) end(key, from);
        std::stable_sort(m_track.notes.begin(), m_track.notes.end(),
                         [](SmfNote const& a, SmfNote const& b) { return a.from < b.from; });
        notesLeft -= m_track.notes.size();
        return std::nullopt;
    }

private:
    bool event()
    {
        int status = m_bytes.peek();
        if (status >= 0x80)
            m_bytes.next();
        else if (m_running == 0)
            return false; // data without a status
        else
            status = m_running;
        if (status == midi::metaEvent) return meta();
        if (status == 0xF0 || status == 0xF7) {
            m_running = 0;
            m_bytes.take(m_bytes.variable());
            return true;
        }
        if (status >= 0xF0) return false; // not of a file
        m_running = status;
        return message(status);
    }

    bool message(int status)
    {
        int const kind = status >> 4;
        int const first = m_bytes.next();
        bool const single = kind == 0xC || kind == 0xD;
        int const second = single ? 0 : m_bytes.next();
        if (m_bytes.overran()) return true; // cut off: the loop ends
        if (first > 0x7F || second > 0x7F) return false;
        std::pair const key{status & 0xF, first};
        if (kind == 0x9 || kind == 0x8)
            if (auto const found = m_open.find(key); found != m_open.end()) {
                end(key, found->second);
                m_open.erase(found);
            }
        if (kind == 0x9 && second > 0) m_open[key] = m_tick;
        return true;
    }

    void end(std::pair<int, int> key, std::int64_t from)
    {
        if (m_tick > from) m_track.notes.push_back({from, m_tick, key.first, key.second});
    }

    bool meta()
    {
        m_running = 0;
        int const type = m_bytes.next();
        std::string_view const body = m_bytes.take(m_bytes.variable());
        auto const byte = [body](std::size_t i) {
            return i < body.size() ? static_cast<unsigned char>(body[i]) : 0;
        };
        if (type == midi::endOfTrack) m_done = true;
        if (type >= 1 && type <= 7 && m_track.texts.size() < mostTexts)
            m_track.texts.push_back({m_tick, type, std::string(body.substr(0, 300))});
        if (type == midi::setTempo && body.size() >= 3) {
            int const microseconds = byte(0) << 16 | byte(1) << 8 | byte(2);
            double const tempo = microseconds > 0 ? 60e6 / microseconds : 0;
            if (tempo > 0) m_tempos.push_back({m_tick, tempo});
        }
        if (type == midi::timeSignature && body.size() >= 2) {
            bool const good = byte(0) >= 1 && byte(0) <= 64 && byte(1) <= 6;
            if (good)
                m_contents.meters.push_back({m_tick, byte(0), 1 << byte(1)});
            else
                m_contents.oddities.emplace_back(base::said("a time signature makes no sense"));
        }
        if (type == midi::keySignature && body.size() >= 2) {
            int const sharps = byte(0) > 0x7F ? byte(0) - 256 : byte(0);
            if (sharps >= -7 && sharps <= 7)
                m_contents.keys.push_back({m_tick, sharps, byte(1) == 1});
        }
        return true;
    }

    Bytes& m_bytes;
    SmfContents& m_contents;
    SmfContents::Track& m_track;
    std::vector<TempoAt>& m_tempos;
    std::int64_t m_tick = 0;
    int m_running = 0;
    bool m_done = false;
    std::map<std::pair<int, int>, std::int64_t> m_open; // by channel and key: since when
};

std::string placeName(std::string const& file, std::size_t byte)
{
    return file + (file.empty() ? "" : ", ") + base::say("byte {}", byte + 1);
}

} // namespace

Result<SmfContents> readSmf(std::string_view bytes, std::string const& file)
{
    std::size_t from = 0;
    if (bytes.starts_with("RIFF")) from = std::min(bytes.find("MThd"), bytes.size());
    if (!bytes.substr(from).starts_with("MThd"))
        return Fault{FaultCode::Malformed, placeName(file, from),
                     base::said("this is not a MIDI file")};
    Bytes header(bytes, from + 4, bytes.size());
    std::int64_t const length = header.number(4);
    std::int64_t const format = header.number(2);
    header.number(2); // the tracks are counted as they come
    std::int64_t const division = header.number(2);
    if (header.overran() || length < 6)
        return Fault{FaultCode::Malformed, placeName(file, header.at()),
                     base::said("the start of the file is incomplete")};
    SmfContents contents;
    contents.ticksACrotchet = static_cast<int>(division);
    if (division >= 0x8000) {
        // Frames a second and ticks a frame; at the usual tempo a crotchet lasts half a second.
        int const frames = 256 - static_cast<int>(division >> 8);
        contents.ticksACrotchet = frames * static_cast<int>(division & 0xFF) / 2;
        contents.oddities.emplace_back(base::said("times are counted in film frames"));
    }
    if (contents.ticksACrotchet == 0)
        return Fault{FaultCode::BadScoreValue, placeName(file, from + 12),
                     base::said("division 0")};
    if (format > 2)
        contents.oddities.emplace_back(base::said("the MIDI format is not 0, 1 or 2"));

    std::size_t notesLeft = limits::mostNotes;
    std::vector<TempoAt> tempos;
    std::size_t at = from + 8 + static_cast<std::size_t>(length);
    while (at + 8 <= bytes.size() && contents.tracks.size() < mostTracks) {
        Bytes head(bytes, at + 4, bytes.size());
        auto const size = static_cast<std::size_t>(head.number(4));
        std::size_t const end = at + 8 + size;
        if (bytes.substr(at, 4) == "MTrk") {
            if (end > bytes.size())
                contents.oddities.emplace_back(base::said("a track is cut off"));
            Bytes body(bytes, at + 8, end);
            contents.tracks.emplace_back();
            TrackReader reader(body, contents, contents.tracks.back(), tempos);
            if (auto const code = reader.read(notesLeft))
                return Fault{*code, placeName(file, body.at()),
                             base::say("in track {}", contents.tracks.size())};
        }
        at = end;
    }
    takeTempos(contents, std::move(tempos));
    std::ranges::stable_sort(contents.meters, {}, &SmfMeter::at);
    std::ranges::stable_sort(contents.keys, {}, &SmfKey::at);
    return contents;
}

} // namespace files
