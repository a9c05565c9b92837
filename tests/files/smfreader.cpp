#include "tests/files/smfreader.h"

#include <algorithm>
#include <map>
#include <stdexcept>
#include <tuple>

namespace smfreader {

namespace {

class Bytes {
public:
    explicit Bytes(std::string_view bytes) : m_bytes(bytes) {}
    bool atEnd() const { return m_at == m_bytes.size(); }
    int next()
    {
        if (atEnd()) throw std::runtime_error("the bytes end too soon");
        return static_cast<unsigned char>(m_bytes[m_at++]);
    }
    int peek() const
    {
        if (atEnd()) throw std::runtime_error("the bytes end too soon");
        return static_cast<unsigned char>(m_bytes[m_at]);
    }
    std::string_view take(std::size_t count)
    {
        if (count > m_bytes.size() - m_at) throw std::runtime_error("the bytes end too soon");
        m_at += count;
        return m_bytes.substr(m_at - count, count);
    }
    std::uint32_t number(int count)
    {
        std::uint32_t value = 0;
        for (int i = 0; i < count; ++i) value = value << 8 | static_cast<std::uint32_t>(next());
        return value;
    }
    std::uint32_t variable()
    {
        std::uint32_t value = 0;
        for (int i = 0; i < 4; ++i) {
            int const byte = next();
            value = value << 7 | static_cast<std::uint32_t>(byte & 0x7F);
            if (byte < 0x80) return value;
        }
        throw std::runtime_error("a length of more than four bytes");
    }

private:
    std::string_view m_bytes;
    std::size_t m_at = 0;
};

std::size_t dataBytes(int status)
{
    int const kind = status >> 4;
    return kind == 0xC || kind == 0xD ? 1 : 2; // program change and channel pressure have one
}

std::vector<Event> trackOf(std::string_view chunk)
{
    Bytes bytes(chunk);
    std::vector<Event> events;
    std::int64_t tick = 0;
    int running = 0;
    while (!bytes.atEnd()) {
        Event event;
        event.tick = tick += bytes.variable();
        event.status = bytes.peek() >= 0x80 ? bytes.next() : running;
        if (event.status == 0xFF) {
            event.metaType = bytes.next();
            event.data = bytes.take(bytes.variable());
            running = 0;
        } else if (event.status >= 0x80 && event.status < 0xF0) {
            event.data = bytes.take(dataBytes(event.status));
            for (char const c : event.data)
                if (static_cast<unsigned char>(c) >= 0x80)
                    throw std::runtime_error("a data byte of more than seven bits");
            running = event.status;
        } else {
            throw std::runtime_error("an unknown status");
        }
        events.push_back(event);
    }
    if (events.empty() || events.back().metaType != 0x2F || metas(events, 0x2F).size() != 1)
        throw std::runtime_error("a track without its end");
    return events;
}

} // namespace

File read(std::string_view all)
{
    Bytes bytes(all);
    if (bytes.take(4) != "MThd" || bytes.number(4) != 6) throw std::runtime_error("no header");
    File file;
    file.format = static_cast<int>(bytes.number(2));
    auto const tracks = bytes.number(2);
    file.division = static_cast<int>(bytes.number(2));
    for (std::uint32_t i = 0; i < tracks; ++i) {
        if (bytes.take(4) != "MTrk") throw std::runtime_error("no track");
        file.tracks.push_back(trackOf(bytes.take(bytes.number(4))));
    }
    if (!bytes.atEnd()) throw std::runtime_error("bytes after the last track");
    return file;
}

std::vector<Event> metas(std::vector<Event> const& track, int type)
{
    std::vector<Event> found;
    std::ranges::copy_if(track, std::back_inserter(found), [type](Event const& event) {
        return event.status == 0xFF && event.metaType == type;
    });
    return found;
}

std::vector<Note> notes(std::vector<Event> const& track)
{
    std::vector<Note> all;
    std::map<std::pair<int, int>, Note> sounding;
    for (Event const& event : track) {
        int const kind = event.status >> 4;
        if (kind != 0x8 && kind != 0x9) continue;
        std::pair const where{event.status & 0xF, event.byte(0)};
        auto const found = sounding.find(where);
        bool const begins = kind == 0x9 && event.byte(1) > 0;
        if (begins == (found != sounding.end()))
            throw std::runtime_error("a note begun twice or ended twice");
        if (begins) {
            sounding[where] = {event.tick, 0, where.first, where.second, event.byte(1)};
        } else {
            found->second.to = event.tick;
            all.push_back(found->second);
            sounding.erase(found);
        }
    }
    if (!sounding.empty()) throw std::runtime_error("a note without end");
    std::ranges::sort(all, {},
                      [](Note const& n) { return std::tuple(n.from, n.channel, n.key); });
    return all;
}

} // namespace smfreader
