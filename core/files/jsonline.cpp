#include "core/files/jsonline.h"

#include <algorithm>
#include <charconv>

namespace files {

namespace {

// Goes over JSON text without building anything.
class Walk {
public:
    explicit Walk(std::string_view json) : m_json(json) { skipSpaces(); }

    // To the value under a key or at a place of the value that stands here.
    bool enter(std::string_view step)
    {
        if (peek() == '{') return enterObject(step);
        if (peek() == '[') return enterArray(step);
        return false;
    }

    int line() const { return lineOfByte(m_json, m_at + 1); }

private:
    char peek() const { return m_at < m_json.size() ? m_json[m_at] : '\0'; }

    void next()
    {
        ++m_at;
        skipSpaces();
    }

    void skipSpaces()
    {
        while (m_at < m_json.size() &&
               std::string_view(" \t\r\n").find(m_json[m_at]) != std::string_view::npos)
            ++m_at;
    }

    // Over a string; its raw text.
    std::string_view string()
    {
        std::size_t const from = ++m_at;
        while (m_at < m_json.size() && peek() != '"') m_at += peek() == '\\' ? 2 : 1;
        std::string_view const text = m_json.substr(from, std::min(m_at, m_json.size()) - from);
        next();
        return text;
    }

    void skipValue()
    {
        int depth = 0;
        do {
            if (peek() == '"') {
                string();
                continue;
            }
            if (peek() == '{' || peek() == '[') ++depth;
            if (peek() == '}' || peek() == ']') --depth;
            next();
        } while (m_at < m_json.size() && (depth > 0 || !endsValue()));
    }

    bool endsValue() const { return peek() == ',' || peek() == '}' || peek() == ']'; }

    bool enterObject(std::string_view key)
    {
        std::size_t const start = m_at;
        next();
        while (peek() == '"') {
            bool const found = string() == key;
            next(); // the colon
            if (found) return true;
            skipValue();
            if (peek() == ',') next();
        }
        m_at = start;
        return false;
    }

    bool enterArray(std::string_view step)
    {
        int place = 0;
        std::from_chars(step.data(), step.data() + step.size(), place);
        std::size_t const start = m_at;
        next();
        for (; peek() != ']' && m_at < m_json.size(); --place) {
            if (place == 0) return true;
            skipValue();
            if (peek() == ',') next();
        }
        m_at = start;
        return false;
    }

    std::string_view m_json;
    std::size_t m_at = 0;
};

} // namespace

int lineOf(std::string_view json, std::string_view pointer)
{
    Walk walk(json);
    while (!pointer.empty()) {
        pointer.remove_prefix(1);
        std::string_view const step = pointer.substr(0, pointer.find('/'));
        if (!walk.enter(step)) break;
        pointer.remove_prefix(step.size());
    }
    return walk.line();
}

int lineOfByte(std::string_view json, std::size_t byte)
{
    std::string_view const before = json.substr(0, byte == 0 ? 0 : byte - 1);
    return 1 + static_cast<int>(std::count(before.begin(), before.end(), '\n'));
}

} // namespace files
