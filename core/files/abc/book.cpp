#include "core/files/abc/read.h"
#include "core/files/abc/text.h"

#include <charconv>
#include <optional>
#include <utility>

namespace files {

namespace {

using base::Fault;
using base::FaultCode;
using base::Result;

constexpr std::size_t mostTunes = 100'000;

std::string fieldText(std::string_view line)
{
    return textString(trimmed(withoutComment(asUtf8(line.substr(2)))));
}

int numberOf(std::string_view line, int otherwise)
{
    std::string_view const text = trimmed(line.substr(2));
    int number = otherwise;
    std::from_chars(text.data(), text.data() + text.size(), number);
    return number;
}

// Finds the tunes of a book. A tune runs from its X: line to the next empty line behind its K:
// line, or to the next X: line.
class BookScan {
public:
    std::vector<AbcEntry> scan(std::string_view text)
    {
        Lines lines(text);
        while (auto const raw = lines.next()) {
            std::string_view const line = lineText(*raw, lines.number());
            if (line.starts_with("X:"))
                begin(line, lines);
            else if (m_open)
                goOn(line, lines);
            if (m_entries.size() > mostTunes) break;
        }
        close(text.size());
        return std::move(m_entries);
    }

private:
    void begin(std::string_view line, Lines const& lines)
    {
        close(lines.start());
        AbcEntry entry;
        entry.number = numberOf(line, static_cast<int>(m_entries.size()) + 1);
        entry.from = lines.start();
        entry.line = lines.number();
        m_entries.push_back(entry);
        m_open = true;
        m_titled = m_keyed = false;
    }

    void goOn(std::string_view line, Lines const& lines)
    {
        if (m_keyed && trimmed(line).empty()) return close(lines.start());
        if (line.starts_with("K:")) m_keyed = true;
        if (line.starts_with("T:") && !std::exchange(m_titled, true))
            m_entries.back().title = fieldText(line);
    }

    void close(std::size_t end)
    {
        if (m_open) m_entries.back().to = end;
        m_open = false;
    }

    std::vector<AbcEntry> m_entries;
    bool m_open = false;
    bool m_titled = false;
    bool m_keyed = false;
};

// A text without X: that has a key is one tune.
std::vector<AbcEntry> unnumberedTune(std::string_view text)
{
    std::optional<AbcEntry> entry;
    bool keyed = false;
    Lines lines(text);
    while (auto const raw = lines.next()) {
        std::string_view const line = lineText(*raw, lines.number());
        if (!entry && isFieldLine(line))
            entry = AbcEntry{1, "", lines.start(), text.size(), lines.number()};
        if (line.starts_with("T:") && entry->title.empty()) entry->title = fieldText(line);
        keyed = keyed || line.starts_with("K:");
    }
    return entry && keyed ? std::vector{*entry} : std::vector<AbcEntry>{};
}

} // namespace

Result<std::vector<AbcEntry>> abcTunes(std::string_view bytes, std::string const& file)
{
    constexpr std::string_view blanks = " \t\r\n\f\v";
    if (withoutByteOrderMark(bytes).find_first_not_of(blanks) == std::string_view::npos)
        return Fault{FaultCode::FileEmpty, file, ""};
    if (!isUtf16(bytes) && looksBinary(bytes)) return Fault{FaultCode::FileBinary, file, ""};
    AbcText const text(bytes);
    std::vector<AbcEntry> entries = BookScan().scan(text.view());
    if (entries.size() > mostTunes) return Fault{FaultCode::FileTooLarge, file, ""};
    if (entries.empty()) entries = unnumberedTune(text.view());
    if (entries.empty()) return Fault{FaultCode::NoTune, file, ""};
    return entries;
}

namespace {

// Fields and directives before the first tune hold for every tune of the book.
std::string fileHeader(std::string_view text)
{
    std::string out;
    Lines lines(text);
    while (auto const raw = lines.next()) {
        std::string const line = asUtf8(lineText(*raw, lines.number()));
        if (line.starts_with("X:")) break;
        bool const field = line.size() > 1 && line[1] == ':';
        if (field || line.starts_with("%%")) out += line + '\n';
    }
    return out.empty() ? out : out + '\n';
}

} // namespace

std::string ownText(std::string_view text, AbcEntry const& entry)
{
    AbcText const whole(text);
    Lines lines(whole.view().substr(entry.from, entry.to - entry.from), entry.line);
    std::string out = fileHeader(whole.view());
    while (auto const line = lines.next())
        out += asUtf8(lineText(*line, lines.number())) + '\n';
    return out;
}

} // namespace files
