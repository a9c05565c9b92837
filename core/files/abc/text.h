#pragma once

#include <optional>
#include <string>
#include <string_view>

// The letters of an ABC file: charsets, lines, comments and the accents of its text strings.
namespace files {

// The text as UTF-8: a byte order mark is taken off, UTF-16 with a byte order mark is turned
// over. Other bytes stay as they are; lines that are no UTF-8 are taken as Latin-1 one by one
// by asUtf8.
std::string_view withoutByteOrderMark(std::string_view bytes);
bool isUtf16(std::string_view bytes);
std::string utf8FromUtf16(std::string_view bytes);

// The line itself when it is well-formed UTF-8, else its bytes read as Latin-1 (ISO 8859-1).
std::string asUtf8(std::string_view line);

// Whether the bytes are no text at all: several zero bytes, or many other control characters.
bool looksBinary(std::string_view bytes);

// The bytes themselves, or what they are in UTF-8 where they are UTF-16. The bytes outlive it.
class AbcText {
public:
    explicit AbcText(std::string_view bytes)
        : m_converted(isUtf16(bytes) ? utf8FromUtf16(bytes) : std::string()),
          m_view(isUtf16(bytes) ? std::string_view(m_converted) : bytes)
    {}
    AbcText(AbcText const&) = delete;
    AbcText& operator=(AbcText const&) = delete;
    std::string_view view() const { return m_view; }

private:
    std::string m_converted;
    std::string_view m_view;
};

// Cuts a text into lines that end in LF, CR LF or CR.
class Lines {
public:
    explicit Lines(std::string_view text, int firstNumber = 1)
        : m_text(text), m_number(firstNumber - 1)
    {}

    // The next line without its end; none when the text is used up.
    std::optional<std::string_view> next();
    int number() const { return m_number; }         // of the line last given, from firstNumber
    std::size_t start() const { return m_start; }   // byte where the line last given begins
    std::size_t offset() const { return m_offset; } // byte behind its end

private:
    std::string_view m_text;
    std::size_t m_start = 0;
    std::size_t m_offset = 0;
    int m_number = 0;
};

// A line as it stands, the first of a text without the byte order mark.
std::string_view lineText(std::string_view line, int number);

// "K:G": a letter, or + for a line that goes on, and a colon.
bool isFieldLine(std::string_view line);

std::string_view trimmed(std::string_view text);

// The line up to an unescaped % (ABC 2.1, section 2.2.5).
std::string_view withoutComment(std::string_view line);

// A text string as it is meant: \'e and &eacute; as é, \u00e9 likewise, \% as %, control
// characters and marks that turn the writing direction taken out (ABC 2.1, section 8.2).
std::string textString(std::string_view text);

// A text from elsewhere as it can be shown: well-formed, on one line, without control
// characters and marks that turn the writing direction.
std::string plainText(std::string_view text);

// One-based column of a byte, counted in characters of UTF-8.
int columnAt(std::string_view line, std::size_t byte);

} // namespace files
