#include "core/files/abc/quoted.h"

#include "core/files/abc/text.h"

#include <algorithm>
#include <cctype>

namespace files {

namespace {

bool has(std::string_view text, std::string_view anyOf)
{
    return text.find_first_of(anyOf) != std::string_view::npos;
}

bool isUpper(char c) { return c >= 'A' && c <= 'Z'; }
bool isLower(char c) { return c >= 'a' && c <= 'z'; }

// "A1", "B2": the name of a part.
bool isPartLabel(std::string_view word)
{
    return word.size() == 2 && isUpper(word[0]) && word[1] >= '1' && word[1] <= '4';
}

// Small letters without a vowel: no word, "y" being a vowel only at the end of one.
bool isUnpronounceable(std::string_view word)
{
    if (word[0] == 'A' || word[0] == 'E') return false;
    std::string_view const rest = word.substr(1);
    return !rest.empty() && std::all_of(rest.begin(), rest.end(), isLower) &&
           !has(rest, "aeiou") && rest.back() != 'y';
}

bool looksLikeChord(std::string_view word)
{
    if (word.empty() || !isUpper(word[0]) || has(word, " \t.,'~")) return false;
    if (isPartLabel(word)) return false;
    bool const chordRoot = word[0] <= 'G';
    if (chordRoot && (has(word, "#+/") || isUnpronounceable(word))) return true;
    return has(word.substr(1), "0123456789");
}

// "/@<.5A7": a shift to the side, in the old manner of one tune book, before the symbol.
std::string_view withoutShift(std::string_view text)
{
    if (!text.starts_with("/@")) return text;
    std::size_t const symbol = text.find_first_not_of("/@<>.0123456789-");
    return symbol == std::string_view::npos ? text : text.substr(symbol);
}

// "Dm G7", "(Am) D7": every word a chord.
bool isChordRow(std::string_view text)
{
    if (!has(text, " ")) return false;
    while (!text.empty()) {
        std::size_t const end = std::min(text.find(' '), text.size());
        if (!music::chordFrom(text.substr(0, end))) return false;
        text = trimmed(text.substr(end));
    }
    return true;
}

} // namespace

std::variant<music::Chord, Words, Unexplained> quotedMeaning(std::string_view quoted)
{
    std::string_view const text = withoutShift(trimmed(quoted));
    if (auto chord = music::chordFrom(text)) return *std::move(chord);
    if (isChordRow(text)) return *music::chordFrom(text.substr(0, text.find(' ')));
    if (looksLikeChord(text)) return Unexplained{};
    return Words{};
}

} // namespace files
