#include "core/files/abc/text.h"

#include "core/base/trimmed.h"

#include <utf8.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdint>
#include <iterator>

namespace files {

namespace {

constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";

void append(std::string& out, char32_t point) { utf8::append(point, std::back_inserter(out)); }

struct Decoded {
    char32_t point = 0;
    std::size_t size = 0; // bytes; 0 where the bytes are no UTF-8
};

// The character at the front of the text; overlong forms and surrogates are no UTF-8.
Decoded decoded(std::string_view text)
{
    try {
        auto at = text.begin();
        char32_t const point = utf8::next(at, text.end());
        return {point, static_cast<std::size_t>(at - text.begin())};
    } catch (utf8::exception const&) {
        return {};
    }
}

bool isUtf8(std::string_view text) { return utf8::is_valid(text.begin(), text.end()); }

bool isControl(char c)
{
    auto const byte = static_cast<unsigned char>(c);
    return byte < 0x20 && c != '\t' && c != '\n' && c != '\r' && c != '\f';
}

// An accent as ABC writes it: behind a backslash, or as the end of an entity's name. The pairs
// hold the bare letter and the letter with its accent (ABC 2.1, section 8.2).
struct Accent {
    std::string_view mark;
    std::string_view entity;
    std::string_view pairs;
};
constexpr std::array accents{
    Accent{"`", "grave", "AÀEÈIÌOÒUÙaàeèiìoòuù"},
    Accent{"'", "acute", "AÁEÉIÍOÓUÚYÝaáeéiíoóuúyý"},
    Accent{"^", "circ", "AÂEÊIÎOÔUÛYŶaâeêiîoôuûyŷ"},
    Accent{"~", "tilde", "AÃNÑOÕaãnñoõ"},
    Accent{"\"", "uml", "AÄEËIÏOÖUÜYŸaäeëiïoöuüyÿ"},
    Accent{"c", "cedil", "CÇcç"},
    Accent{"H", "", "OŐUŰoőuű"},
    Accent{"v", "caron", "CČSŠZŽcčsšzž"},
    Accent{"/", "slash", "OØoø"},
    Accent{"u", "", "AĂEĔaăeĕ"},
};

struct Whole {
    std::string_view written;
    std::string_view meant;
};
constexpr std::array wholes{
    Whole{"\\AA", "Å"},     Whole{"\\aa", "å"},    Whole{"\\AE", "Æ"},
    Whole{"\\ae", "æ"},     Whole{"\\OE", "Œ"},    Whole{"\\oe", "œ"},
    Whole{"\\ss", "ß"},     Whole{"\\DH", "Ð"},    Whole{"\\dh", "ð"},
    Whole{"\\TH", "Þ"},     Whole{"\\th", "þ"},    Whole{"\\%", "%"},
    Whole{"\\&", "&"},      Whole{"\\\\", "\\"},   Whole{"&amp;", "&"},
    Whole{"&quot;", "\""},  Whole{"&lt;", "<"},    Whole{"&gt;", ">"},
    Whole{"&aring;", "å"},  Whole{"&Aring;", "Å"}, Whole{"&aelig;", "æ"},
    Whole{"&AElig;", "Æ"},  Whole{"&szlig;", "ß"}, Whole{"&oslash;", "ø"},
    Whole{"&Oslash;", "Ø"}, Whole{"&copy;", "©"},
};

std::optional<std::string_view> accented(std::string_view pairs, char letter)
{
    while (!pairs.empty()) {
        std::size_t const size = decoded(pairs.substr(1)).size;
        if (pairs[0] == letter) return pairs.substr(1, size);
        pairs.remove_prefix(1 + size);
    }
    return std::nullopt;
}

struct Meant {
    std::string text;
    std::size_t size = 0; // bytes it takes in the file
};

// \u00e9
std::optional<Meant> codePoint(std::string_view text)
{
    constexpr std::size_t size = 6;
    if (!text.starts_with("\\u") || text.size() < size) return std::nullopt;
    std::uint32_t point = 0;
    char const* const end = text.data() + size;
    auto const [stop, error] = std::from_chars(text.data() + 2, end, point, 16);
    if (error != std::errc{} || stop != end || point < 0x20) return std::nullopt;
    if (point >= 0xD800 && point <= 0xDFFF) return std::nullopt;
    Meant meant{"", size};
    append(meant.text, point);
    return meant;
}

// The escape at the front of the text, if there is one.
std::optional<Meant> escaped(std::string_view text)
{
    if (auto meant = codePoint(text)) return meant;
    for (Whole const& whole : wholes)
        if (text.starts_with(whole.written))
            return Meant{std::string(whole.meant), whole.written.size()};
    for (Accent const& accent : accents) {
        if (text.size() >= 3 && text[0] == '\\' && text.substr(1).starts_with(accent.mark))
            if (auto const letter = accented(accent.pairs, text[2]))
                return Meant{std::string(*letter), 3};
        if (text[0] == '&' && !accent.entity.empty() &&
            text.substr(std::min<std::size_t>(2, text.size())).starts_with(accent.entity) &&
            text.substr(2 + accent.entity.size()).starts_with(';'))
            if (auto const letter = accented(accent.pairs, text[1]))
                return Meant{std::string(*letter), accent.entity.size() + 3};
    }
    return std::nullopt;
}

// Marks that only turn the direction of writing or show nothing.
bool isInvisible(char32_t point)
{
    return point < 0x20 || point == 0x7F || (point >= 0x80 && point < 0xA0) ||
           (point >= 0x200B && point <= 0x200F) || (point >= 0x202A && point <= 0x202E) ||
           (point >= 0x2066 && point <= 0x2069) || point == 0xFEFF;
}

} // namespace

std::string_view withoutByteOrderMark(std::string_view bytes)
{
    if (bytes.starts_with(byteOrderMark)) bytes.remove_prefix(byteOrderMark.size());
    return bytes;
}

bool isUtf16(std::string_view bytes)
{
    return bytes.starts_with("\xFF\xFE") || bytes.starts_with("\xFE\xFF");
}

std::string utf8FromUtf16(std::string_view bytes)
{
    bool const bigEndian = bytes.starts_with("\xFE\xFF");
    auto const unit = [bytes, bigEndian](std::size_t i) -> char32_t {
        auto const first = static_cast<unsigned char>(bytes[i]);
        auto const second = static_cast<unsigned char>(bytes[i + 1]);
        return bigEndian ? char32_t(first << 8 | second) : char32_t(second << 8 | first);
    };
    std::string out;
    for (std::size_t i = 2; i + 1 < bytes.size(); i += 2) {
        char32_t point = unit(i);
        bool const high = point >= 0xD800 && point < 0xDC00;
        bool const paired =
            high && i + 3 < bytes.size() && unit(i + 2) >= 0xDC00 && unit(i + 2) < 0xE000;
        if (paired) {
            point = 0x10000 + ((point - 0xD800) << 10) + (unit(i + 2) - 0xDC00);
            i += 2;
        } else if (point >= 0xD800 && point < 0xE000) {
            point = 0xFFFD; // half a character
        }
        append(out, point);
    }
    return out;
}

std::string asUtf8(std::string_view line)
{
    if (isUtf8(line)) return std::string(line);
    std::string out;
    for (char c : line) append(out, static_cast<unsigned char>(c));
    return out;
}

bool looksBinary(std::string_view bytes)
{
    constexpr std::size_t mostLooked = 65536;
    std::string_view const head = bytes.substr(0, mostLooked);
    auto const zeros = std::count(head.begin(), head.end(), '\0');
    auto const controls = std::count_if(head.begin(), head.end(), isControl);
    return zeros >= 4 || controls > 8 + static_cast<std::ptrdiff_t>(head.size() / 20);
}

std::optional<std::string_view> Lines::next()
{
    if (m_offset >= m_text.size()) return std::nullopt;
    m_start = m_offset;
    std::size_t const end = std::min(m_text.find_first_of("\r\n", m_start), m_text.size());
    m_offset = end;
    if (m_text.substr(end).starts_with("\r\n"))
        m_offset += 2;
    else if (end < m_text.size())
        m_offset += 1;
    ++m_number;
    return m_text.substr(m_start, end - m_start);
}

std::string_view lineText(std::string_view line, int number)
{
    return number == 1 ? withoutByteOrderMark(line) : line;
}

bool isFieldLine(std::string_view line)
{
    auto const isLetter = [](char c) {
        return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
    };
    return line.size() >= 2 && line[1] == ':' && (isLetter(line[0]) || line[0] == '+');
}

std::string_view trimmed(std::string_view text) { return base::trimmed(text, " \t\f\v"); }

std::string_view withoutComment(std::string_view line)
{
    for (std::size_t at = line.find('%'); at != std::string_view::npos;
         at = line.find('%', at + 1))
        if (at == 0 || line[at - 1] != '\\') return line.substr(0, at);
    return line;
}

std::string textString(std::string_view text)
{
    std::string out;
    while (!text.empty()) {
        if (text[0] == '\\' || text[0] == '&') {
            if (auto const meant = escaped(text)) {
                out += meant->text;
                text.remove_prefix(meant->size);
                continue;
            }
        }
        Decoded const character = decoded(text);
        std::size_t const size = std::max<std::size_t>(character.size, 1);
        if (character.point == '\t')
            out += ' ';
        else if (!isInvisible(character.point))
            out += text.substr(0, size);
        text.remove_prefix(size);
    }
    return out;
}

std::string plainText(std::string_view text)
{
    std::string const whole = asUtf8(text);
    std::string out;
    bool indented = false; // blanks at the beginning of a further line
    for (std::string_view rest = whole; !rest.empty();) {
        Decoded const character = decoded(rest);
        std::size_t const size = std::max<std::size_t>(character.size, 1);
        bool const newLine = character.point == '\n' || character.point == '\r';
        bool const blank = newLine || character.point == '\t' || character.point == ' ';
        if (blank && !(newLine && out.ends_with(' ')) && !indented)
            out += ' ';
        else if (!blank && !isInvisible(character.point))
            out += rest.substr(0, size);
        indented = newLine || (indented && blank);
        rest.remove_prefix(size);
    }
    return out;
}

int columnAt(std::string_view line, std::size_t byte)
{
    std::string_view const before = line.substr(0, byte);
    auto const begins = [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; };
    return 1 + static_cast<int>(std::count_if(before.begin(), before.end(), begins));
}

} // namespace files
