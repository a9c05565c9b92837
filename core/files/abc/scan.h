#pragma once

#include "core/base/fault.h"
#include "core/music/rational.h"
#include "core/tune/tune.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

// The signs of one line of ABC music, taken one by one (ABC 2.1, section 4). What they mean
// together is worked out in abcbars.h.
namespace files::sign {

// A note letter with what belongs to it. The octave is that of scientific numbering; the factor
// counts unit lengths.
struct Note {
    std::optional<int> accidental; // as written; 0 is a natural sign
    music::Letter letter = music::Letter::C;
    int octave = 4;
    music::Rational factor{1};
    bool tied = false;    // inside a chord's brackets; else a Tie follows
    bool quarter = false; // the accidental was a fraction of a semitone
};
struct Chord {
    std::vector<Note> notes;
    music::Rational factor{1};
    std::vector<std::string> marks; // of its single notes, such as fingers
};
struct Rest {
    music::Rational factor{1};
    bool hidden = false;
};
struct BarRest {
    int bars = 1;
    bool hidden = false;
};
struct Grace {
    std::vector<Note> notes;
};
// `actual` notes in the time of `normal`, for the next `count` notes.
struct Tuplet {
    int actual = 3;
    std::optional<int> normal;
    std::optional<int> count;
};
// A > B: so many signs, and which of the two notes grows.
struct Broken {
    int signs = 1;
    bool firstGrows = true;
};
struct Tie {};
struct Slur {
    bool opens = true;
};
struct Quoted {
    std::string text;
};
struct Mark {
    std::string name; // of ABC 2.1, section 4.14: "trill", "fermata"
};
struct Bar {
    tune::BarLine line = tune::BarLine::Single;
    int closes = 0; // times the section is played that ends here; 0: none ends
    bool opens = false;
    std::vector<int> endings; // "|1"
};
struct Ending {
    std::vector<int> endings; // "[1"
};
struct Field {
    char letter = ' ';
    std::string text;
};
struct Overlay {};
struct Space {};
struct Stray {
    std::string text; // signs without meaning here
};
struct Refused {
    base::FaultCode code;
    std::string text;
};

using Any = std::variant<Note, Chord, Rest, BarRest, Grace, Tuplet, Broken, Tie, Slur, Quoted,
                         Mark, Bar, Ending, Field, Overlay, Space, Stray, Refused>;

} // namespace files::sign

namespace files {

// What a letter or short sign stands for: the defaults of ABC 2.1, section 4.14, changed by U:.
using Symbols = std::map<char, std::string>;
Symbols usualSymbols();
// Takes up one U: field ("T = !trill!"). False when it cannot be understood.
bool addSymbol(Symbols& symbols, std::string_view text);

class LineScanner {
public:
    // The line without comment and line end; both arguments outlive the scanner.
    LineScanner(std::string_view line, Symbols const& symbols)
        : m_line(line), m_symbols(symbols)
    {}

    std::optional<sign::Any> next();
    int column() const { return m_column; } // of the sign last given, from 1

private:
    char at(std::size_t ahead = 0) const;
    std::string_view rest() const { return m_line.substr(m_at); }
    bool eat(char c);
    std::size_t countOf(char c); // eats a run
    void countColumn();

    std::optional<sign::Any> take();
    sign::Any note();
    sign::Any rest(bool hidden);
    sign::Any barRest(bool hidden);
    sign::Any openBracket();
    sign::Any openRound();
    sign::Any brace();
    sign::Any quoted();
    sign::Any longMark(char fence);
    sign::Any bar();
    sign::Any broken();
    sign::Any stray();

    bool startsNote() const;
    bool startsBar() const;
    bool isMeaningful() const;
    std::optional<sign::Note> readNote();
    std::optional<int> readAccidental(bool& quarter);
    std::optional<music::Rational> readFactor();
    std::optional<long> readNumber();
    std::optional<std::vector<int>> readEndings();
    std::vector<sign::Note> readNotes(std::size_t end,
                                      std::vector<std::string>* marks = nullptr);
    std::optional<std::string_view> upTo(char close, std::size_t most) const;

    std::string_view m_line;
    Symbols const& m_symbols;
    std::size_t m_at = 0;
    std::size_t m_counted = 0; // bytes whose characters are in m_lineColumn
    int m_lineColumn = 1;
    int m_column = 1;
    bool m_badLength = false; // a length inside brackets was out of range
};

} // namespace files
