#include "core/files/abc/scan.h"

#include "core/files/abc/text.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace files {

namespace {

using base::FaultCode;
using music::Rational;
using tune::BarLine;

// How far the end of a bracket is looked for: longer ones are damage.
constexpr std::size_t longestBracket = 1000; // bytes
constexpr std::size_t longestMark = 60;
constexpr std::size_t mostNotesAtOnce = 64;
constexpr long largestFactorTerm = 4096;

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isLetter(char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); }
bool isNoteLetter(char c) { return (c >= 'A' && c <= 'G') || (c >= 'a' && c <= 'g'); }
// Letters that may stand for a mark (ABC 2.1, section 4.16), apart from rests and spacers.
bool isSymbolLetter(char c) { return (c >= 'H' && c <= 'W') || (c >= 'h' && c <= 'w'); }

// Signs of layout, which say nothing of the music: beams run on, lines break, old line breaks.
bool isLayout(char c) { return c == '`' || c == '\\' || c == '$' || c == '*'; }

bool isMarkName(std::string_view text)
{
    return !text.empty() && text.find_first_of(" \t|\"") == std::string_view::npos;
}

struct Short {
    char sign;
    std::string_view name;
};
constexpr std::array usual{
    Short{'.', "staccato"},     Short{'~', "roll"},         Short{'H', "fermata"},
    Short{'L', "accent"},       Short{'M', "lowermordent"}, Short{'O', "coda"},
    Short{'P', "uppermordent"}, Short{'S', "segno"},        Short{'T', "trill"},
    Short{'u', "upbow"},        Short{'v', "downbow"},
};

// What the colons of a bar line mean: those before it close a repeat, those behind it open one
// (ABC 2.1, section 4.8). Between two lines they open behind the first ("|:|"), else close.
struct Colons {
    std::size_t before = 0;
    bool opens = false;
};
Colons colonsOf(std::string_view written)
{
    std::size_t const firstLine = written.find_first_not_of(':');
    if (firstLine == std::string_view::npos) return {written.size() / 2, true};
    std::size_t const lastLine = written.find_last_not_of(':');
    Colons colons{firstLine, lastLine + 1 < written.size()};
    std::size_t const between = written.find(':', firstLine);
    if (between < lastLine) {
        bool const behindFirst = firstLine == 0 && between == 1;
        colons.opens = colons.opens || behindFirst;
        if (!behindFirst) colons.before = std::max<std::size_t>(colons.before, 1);
    }
    return colons;
}

} // namespace

Symbols usualSymbols()
{
    Symbols symbols;
    for (Short const& row : usual) symbols[row.sign] = row.name;
    return symbols;
}

bool addSymbol(Symbols& symbols, std::string_view text)
{
    text = trimmed(text);
    std::size_t const equals = text.find('=');
    if (equals == std::string_view::npos || text.empty()) return false;
    char const letter = text[0];
    std::string_view meant = trimmed(text.substr(equals + 1));
    if (!isSymbolLetter(letter) && letter != '~' && letter != '.') return false;
    if (meant.size() < 2 || meant.size() > longestMark) return false;
    if ((meant[0] != '!' && meant[0] != '+') || meant.back() != meant[0]) return false;
    meant = meant.substr(1, meant.size() - 2);
    if (meant == "nil")
        symbols.erase(letter);
    else
        symbols[letter] = meant;
    return true;
}

std::optional<sign::Any> LineScanner::next()
{
    while (m_at < m_line.size()) {
        countColumn();
        if (auto taken = take()) return taken;
    }
    return std::nullopt;
}

char LineScanner::at(std::size_t ahead) const
{
    return m_at + ahead < m_line.size() ? m_line[m_at + ahead] : '\0';
}

bool LineScanner::eat(char c)
{
    if (at() != c || m_at >= m_line.size()) return false;
    ++m_at;
    return true;
}

std::size_t LineScanner::countOf(char c)
{
    std::size_t count = 0;
    while (eat(c)) ++count;
    return count;
}

void LineScanner::countColumn()
{
    m_lineColumn += columnAt(m_line.substr(m_counted), m_at - m_counted) - 1;
    m_counted = m_at;
    m_column = m_lineColumn;
}

// One sign; none for what only serves the layout.
std::optional<sign::Any> LineScanner::take()
{
    char const c = at();
    if (startsNote()) return note();
    if (startsBar()) return bar();
    if (isLayout(c)) {
        ++m_at;
        return std::nullopt;
    }
    switch (c) {
    case ' ':
    case '\t':
        ++m_at;
        return sign::Space{};
    case 'z':
        ++m_at;
        return rest(false);
    case 'x':
        ++m_at;
        return rest(true);
    case 'Z':
        ++m_at;
        return barRest(false);
    case 'X':
        ++m_at;
        return barRest(true);
    case 'y':
        ++m_at;
        readFactor();
        return sign::Space{};
    case '-':
        countOf('-');
        return sign::Tie{};
    case '>':
    case '<':
        return broken();
    case '(':
        return openRound();
    case ')':
        ++m_at;
        return sign::Slur{false};
    case '[':
        return openBracket();
    case '{':
        return brace();
    case '"':
        return quoted();
    case '!':
    case '+':
        return longMark(c);
    case '&':
        countOf('&');
        return sign::Overlay{};
    default:
        break;
    }
    // A dotted slur or tie (ABC 2.1, section 4.11).
    if (c == '.' && (at(1) == '(' || at(1) == ')' || at(1) == '-')) {
        ++m_at;
        return std::nullopt;
    }
    if (auto const symbol = m_symbols.find(c); symbol != m_symbols.end()) {
        ++m_at;
        return sign::Mark{symbol->second};
    }
    return stray();
}

bool LineScanner::startsNote() const
{
    constexpr std::string_view signs = "^_=";
    constexpr std::string_view quarters = "/0123456789";
    std::string_view const ahead = rest().substr(0, longestMark);
    std::size_t letter = ahead.find_first_not_of(signs);
    if (letter != 0) letter = ahead.find_first_not_of(quarters, letter);
    return letter < ahead.size() && isNoteLetter(ahead[letter]);
}

bool LineScanner::startsBar() const
{
    char const c = at();
    char const after = at(1);
    if (c == '|') return true;
    if (c == ':' && after == '[' && at(2) == '|') return true;
    if (c == ':') return after == '|' || after == ':' || after == ']';
    return (c == '[' || c == '.') && after == '|';
}

std::optional<long> LineScanner::readNumber()
{
    std::size_t const from = m_at;
    while (isDigit(at())) ++m_at;
    long value = 0;
    char const* const begin = m_line.data() + from;
    auto const [stop, error] = std::from_chars(begin, m_line.data() + m_at, value);
    return error == std::errc{} ? std::optional(value) : std::nullopt;
}

// "3", "/2", "3/4", "/", "//": how many unit lengths. None when out of range.
std::optional<Rational> LineScanner::readFactor()
{
    long numerator = 1;
    long denominator = 1;
    bool fits = true;
    if (isDigit(at())) {
        auto const number = readNumber();
        fits = number && *number <= largestFactorTerm;
        if (fits) numerator = *number;
    }
    while (eat('/')) {
        std::optional<long> divisor = 2;
        if (isDigit(at())) divisor = readNumber();
        fits = fits && divisor && *divisor > 0 && *divisor <= largestFactorTerm;
        if (fits) denominator *= *divisor;
        fits = fits && denominator <= largestFactorTerm;
    }
    if (!fits) return std::nullopt;
    return Rational(numerator, denominator);
}

std::optional<int> LineScanner::readAccidental(bool& quarter)
{
    int alter = 0;
    bool const written = at() == '^' || at() == '_' || at() == '=';
    for (;; ++m_at) {
        if (at() == '^')
            ++alter;
        else if (at() == '_')
            --alter;
        else if (at() != '=')
            break;
    }
    quarter = isDigit(at()) || at() == '/';
    while (isDigit(at()) || at() == '/') ++m_at;
    return written ? std::optional(std::clamp(alter, -2, 2)) : std::nullopt;
}

// The note that begins here; none when its length is out of range.
std::optional<sign::Note> LineScanner::readNote()
{
    sign::Note note;
    if (!isNoteLetter(at())) note.accidental = readAccidental(note.quarter);
    char const letter = at();
    ++m_at;
    bool const small = letter >= 'a';
    note.letter = music::pitchNameFrom(std::string_view(&letter, 1))->letter;
    note.octave = small ? 5 : 4;
    for (;;) {
        if (eat('\''))
            ++note.octave;
        else if (eat(','))
            --note.octave;
        else
            break;
    }
    auto const factor = readFactor();
    if (!factor) return std::nullopt;
    note.factor = *factor;
    return note;
}

sign::Any LineScanner::note()
{
    std::size_t const from = m_at;
    if (auto const note = readNote()) return *note;
    return sign::Refused{FaultCode::BadLength, std::string(m_line.substr(from, m_at - from))};
}

sign::Any LineScanner::rest(bool hidden)
{
    std::size_t const from = m_at - 1;
    auto const factor = readFactor();
    if (!factor)
        return sign::Refused{FaultCode::BadLength,
                             std::string(m_line.substr(from, m_at - from))};
    return sign::Rest{*factor, hidden};
}

sign::Any LineScanner::barRest(bool hidden)
{
    constexpr long mostBars = 500;
    std::size_t const from = m_at - 1;
    auto const bars = isDigit(at()) ? readNumber() : std::optional(1L);
    if (!bars || *bars < 1 || *bars > mostBars)
        return sign::Refused{FaultCode::BadLength,
                             std::string(m_line.substr(from, m_at - from))};
    return sign::BarRest{static_cast<int>(*bars), hidden};
}

std::optional<std::string_view> LineScanner::upTo(char close, std::size_t most) const
{
    std::string_view const inside = m_line.substr(m_at + 1, most);
    std::size_t const end = inside.find(close);
    if (end == std::string_view::npos) return std::nullopt;
    return inside.substr(0, end);
}

// The notes up to the closing bracket at `end`, and the names of marks on them; all else
// between them is passed over.
std::vector<sign::Note> LineScanner::readNotes(std::size_t end, std::vector<std::string>* marks)
{
    std::vector<sign::Note> notes;
    while (m_at < end) {
        if (at() == '"' || at() == '!') {
            auto const inside = upTo(at(), end - m_at);
            if (marks != nullptr && at() == '!' && inside && isMarkName(*inside))
                marks->emplace_back(*inside);
            m_at += inside ? inside->size() + 2 : 1;
        } else if (!startsNote()) {
            if (at() == '-' && !notes.empty()) notes.back().tied = true;
            ++m_at;
        } else if (auto const note = readNote()) {
            if (notes.size() < mostNotesAtOnce) notes.push_back(*note);
        } else {
            m_badLength = true;
        }
    }
    m_at = end + 1;
    return notes;
}

// "[K:D]", "[1", "[CEG]".
sign::Any LineScanner::openBracket()
{
    if (isDigit(at(1))) {
        std::size_t const from = m_at++;
        if (auto const endings = readEndings()) return sign::Ending{*endings};
        return sign::Refused{FaultCode::BadRepeat,
                             std::string(m_line.substr(from, m_at - from))};
    }
    auto const inside = upTo(']', longestBracket);
    if (!inside) return stray();
    if (isLetter(at(1)) && at(2) == ':') {
        sign::Field field{at(1), std::string(inside->substr(2))};
        m_at += inside->size() + 2;
        return field;
    }
    std::string const text(*inside);
    m_badLength = false;
    sign::Chord chord{{}, 1, {}};
    chord.notes = readNotes(m_at + inside->size() + 1, &chord.marks);
    auto const factor = readFactor();
    if (m_badLength || !factor) return sign::Refused{FaultCode::BadLength, '[' + text + ']'};
    if (chord.notes.empty()) return sign::Stray{'[' + text + ']'};
    chord.factor = *factor;
    return chord;
}

// "(3", "(3:2:2", or the start of a slur.
sign::Any LineScanner::openRound()
{
    constexpr long largest = 64;
    std::size_t const from = m_at++;
    if (!isDigit(at())) return sign::Slur{true};
    bool fits = true;
    auto const number = [this, &fits]() -> std::optional<int> {
        if (!isDigit(at())) return std::nullopt;
        auto const value = readNumber();
        fits = fits && value && *value >= 1 && *value <= largest;
        return fits ? std::optional(static_cast<int>(*value)) : std::nullopt;
    };
    sign::Tuplet tuplet;
    tuplet.actual = number().value_or(0);
    if (eat(':')) tuplet.normal = number();
    if (eat(':')) tuplet.count = number();
    if (!fits || tuplet.actual < 2)
        return sign::Refused{FaultCode::BadTuplet,
                             std::string(m_line.substr(from, m_at - from))};
    return tuplet;
}

sign::Any LineScanner::brace()
{
    auto const inside = upTo('}', longestBracket);
    if (!inside) return stray();
    return sign::Grace{readNotes(m_at + inside->size() + 1)};
}

sign::Any LineScanner::quoted()
{
    auto const inside = upTo('"', longestBracket);
    if (!inside) return stray();
    m_at += inside->size() + 2;
    return sign::Quoted{std::string(*inside)};
}

// "!trill!", and "+trill+" of old files. A lone "!" was a line break once.
sign::Any LineScanner::longMark(char fence)
{
    auto const inside = upTo(fence, longestMark);
    if (inside && isMarkName(*inside)) {
        m_at += inside->size() + 2;
        return sign::Mark{std::string(*inside)};
    }
    if (fence == '+') return stray();
    ++m_at;
    return sign::Space{};
}

// "1", "1,3", "1-3" behind a bar line or bracket. None when a number is out of range.
std::optional<std::vector<int>> LineScanner::readEndings()
{
    constexpr long last = 99;
    std::vector<int> endings;
    bool range = false;
    while (isDigit(at())) {
        auto const number = readNumber();
        if (!number || *number < 1 || *number > last) return std::nullopt;
        int const to = static_cast<int>(*number);
        int const from = range && !endings.empty() ? endings.back() + 1 : to;
        for (int ending = from; ending <= to; ++ending) endings.push_back(ending);
        range = false;
        while ((at() == ',' || at() == '-' || at() == '.') && isDigit(at(1))) {
            range = at() == '-';
            ++m_at;
        }
    }
    std::sort(endings.begin(), endings.end());
    endings.erase(std::unique(endings.begin(), endings.end()), endings.end());
    return endings;
}

// Any run of | : ] and [| is one bar line.
sign::Any LineScanner::bar()
{
    constexpr std::size_t mostTimes = 50;
    eat('.');
    std::size_t const from = m_at;
    while (at() == '|' || at() == ':' || at() == ']' || (at() == '[' && at(1) == '|')) ++m_at;
    std::string_view const written = m_line.substr(from, m_at - from);
    Colons const colons = colonsOf(written);
    sign::Bar bar;
    if (colons.before > 0)
        bar.closes = static_cast<int>(std::min(colons.before, mostTimes)) + 1;
    bar.opens = colons.opens;
    if (written.find("|]") != std::string_view::npos && written != "[|]")
        bar.line = BarLine::Final;
    else if (written.find("||") != std::string_view::npos || written == "[|")
        bar.line = BarLine::Double;
    else if (written == "[|]")
        bar.line = BarLine::None;
    if (!isDigit(at())) return bar;
    auto const endings = readEndings();
    if (!endings)
        return sign::Refused{FaultCode::BadRepeat,
                             std::string(m_line.substr(from, m_at - from))};
    bar.endings = *endings;
    return bar;
}

sign::Any LineScanner::broken()
{
    bool const firstGrows = at() == '>';
    std::size_t const signs = countOf(at());
    return sign::Broken{static_cast<int>(std::min<std::size_t>(signs, 1000)), firstGrows};
}

// Whether the sign here begins something that take() knows.
bool LineScanner::isMeaningful() const
{
    constexpr std::string_view signs = " \tzxZXy-><()[{\"!&";
    return startsNote() || startsBar() || isLayout(at()) ||
           signs.find(at()) != std::string_view::npos || m_symbols.contains(at());
}

sign::Any LineScanner::stray()
{
    std::size_t const from = m_at++;
    while (m_at < m_line.size() && !isMeaningful()) ++m_at;
    return sign::Stray{std::string(m_line.substr(from, m_at - from))};
}

} // namespace files
