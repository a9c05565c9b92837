#include "core/music/chord.h"

#include "core/base/trimmed.h"
#include "core/music/typedchord.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace music {

namespace {

// What a suffix means: its tones as degrees of the root's major scale, lowered (b) or raised
// (#).
struct Kind {
    std::string_view suffix; // our spelling
    std::string_view tones;
};

// Common practice, no source; the kinds of any printed chord chart. The eleventh leaves out its
// third, as players do.
constexpr std::array kinds{
    Kind{"", "1 3 5"},
    Kind{"m", "1 b3 5"},
    Kind{"5", "1 5"},
    Kind{"6", "1 3 5 6"},
    Kind{"m6", "1 b3 5 6"},
    Kind{"6/9", "1 3 5 6 9"},
    Kind{"m6/9", "1 b3 5 6 9"},
    Kind{"7", "1 3 5 b7"},
    Kind{"m7", "1 b3 5 b7"},
    Kind{"maj7", "1 3 5 7"},
    Kind{"mMaj7", "1 b3 5 7"},
    Kind{"9", "1 3 5 b7 9"},
    Kind{"m9", "1 b3 5 b7 9"},
    Kind{"maj9", "1 3 5 7 9"},
    Kind{"mMaj9", "1 b3 5 7 9"},
    Kind{"11", "1 5 b7 9 11"},
    Kind{"m11", "1 b3 5 b7 9 11"},
    Kind{"13", "1 3 5 b7 9 13"},
    Kind{"m13", "1 b3 5 b7 9 13"},
    Kind{"maj13", "1 3 5 7 9 13"},
    Kind{"add9", "1 3 5 9"},
    Kind{"m(add9)", "1 b3 5 9"},
    Kind{"add11", "1 3 5 11"},
    Kind{"dim", "1 b3 b5"},
    Kind{"dim7", "1 b3 b5 bb7"},
    Kind{"m7b5", "1 b3 b5 b7"},
    Kind{"aug", "1 3 #5"},
    Kind{"7#5", "1 3 #5 b7"},
    Kind{"maj7#5", "1 3 #5 7"},
    Kind{"sus2", "1 2 5"},
    Kind{"sus4", "1 4 5"},
    Kind{"7sus2", "1 2 5 b7"},
    Kind{"7sus4", "1 4 5 b7"},
    Kind{"9sus4", "1 4 5 b7 9"},
    Kind{"b5", "1 3 b5"},
    Kind{"7b5", "1 3 b5 b7"},
    Kind{"maj7b5", "1 3 b5 7"},
    Kind{"7b9", "1 3 5 b7 b9"},
    Kind{"7#9", "1 3 5 b7 #9"},
    Kind{"7#11", "1 3 5 b7 #11"},
    Kind{"maj7#11", "1 3 5 7 #11"},
    Kind{"7b13", "1 3 5 b7 b13"},
    Kind{"9#11", "1 3 5 b7 9 #11"},
    Kind{"13b9", "1 3 5 b7 b9 13"},
};

// How else a suffix is written. Round brackets inside a suffix are dropped before the look-up,
// so that "m7(b5)" and "m7b5" are one row.
struct Spelling {
    std::string_view written;
    std::string_view suffix;
};

constexpr std::array spellings{
    // "Gd" diminished and "Ca" augmented are the spelling of an old folk tune collection.
    Spelling{"d", "dim"},
    Spelling{"a", "aug"},
    Spelling{"maj", ""},
    Spelling{"major", ""},
    Spelling{"M", ""},
    Spelling{"min", "m"},
    Spelling{"minor", "m"},
    Spelling{"mi", "m"},
    Spelling{"-", "m"},
    Spelling{"maj6", "6"},
    Spelling{"M6", "6"},
    Spelling{"add6", "6"},
    Spelling{"min6", "m6"},
    Spelling{"mi6", "m6"},
    Spelling{"-6", "m6"},
    Spelling{"69", "6/9"},
    Spelling{"6add9", "6/9"},
    Spelling{"m69", "m6/9"},
    Spelling{"dom7", "7"},
    Spelling{"dom", "7"},
    Spelling{"M7", "maj7"},
    Spelling{"ma7", "maj7"},
    Spelling{"j7", "maj7"},
    Spelling{"Maj7", "maj7"},
    Spelling{"Δ", "maj7"},
    Spelling{"Δ7", "maj7"},
    Spelling{"min7", "m7"},
    Spelling{"mi7", "m7"},
    Spelling{"-7", "m7"},
    Spelling{"mmaj7", "mMaj7"},
    Spelling{"minmaj7", "mMaj7"},
    Spelling{"mM7", "mMaj7"},
    Spelling{"-maj7", "mMaj7"},
    Spelling{"-M7", "mMaj7"},
    Spelling{"mΔ7", "mMaj7"},
    Spelling{"-Δ7", "mMaj7"},
    Spelling{"mΔ", "mMaj7"},
    Spelling{"79", "9"},
    Spelling{"dom9", "9"},
    Spelling{"min9", "m9"},
    Spelling{"mi9", "m9"},
    Spelling{"-9", "m9"},
    Spelling{"M9", "maj9"},
    Spelling{"ma9", "maj9"},
    Spelling{"Δ9", "maj9"},
    Spelling{"min11", "m11"},
    Spelling{"-11", "m11"},
    Spelling{"min13", "m13"},
    Spelling{"-13", "m13"},
    Spelling{"M13", "maj13"},
    Spelling{"add2", "add9"},
    Spelling{"madd9", "m(add9)"},
    Spelling{"madd2", "m(add9)"},
    Spelling{"minadd9", "m(add9)"},
    Spelling{"add4", "add11"},
    Spelling{"°", "dim"},
    Spelling{"º", "dim"},
    Spelling{"o", "dim"},
    Spelling{"mb5", "dim"},
    Spelling{"°7", "dim7"},
    Spelling{"º7", "dim7"},
    Spelling{"o7", "dim7"},
    Spelling{"d7", "dim7"},
    Spelling{"ø", "m7b5"},
    Spelling{"ø7", "m7b5"},
    Spelling{"min7b5", "m7b5"},
    Spelling{"-7b5", "m7b5"},
    Spelling{"m7-5", "m7b5"},
    Spelling{"m7♭5", "m7b5"},
    Spelling{"+", "aug"},
    Spelling{"#5", "aug"},
    Spelling{"+5", "aug"},
    Spelling{"+7", "7#5"},
    Spelling{"7+", "7#5"},
    Spelling{"7+5", "7#5"},
    Spelling{"aug7", "7#5"},
    Spelling{"7aug", "7#5"},
    Spelling{"a7", "7#5"},
    Spelling{"M7#5", "maj7#5"},
    Spelling{"sus", "sus4"},
    Spelling{"sus9", "sus2"},
    Spelling{"7sus", "7sus4"},
    Spelling{"9sus", "9sus4"},
    Spelling{"-5", "b5"},
    Spelling{"7-5", "7b5"},
    Spelling{"M7b5", "maj7b5"},
    Spelling{"7-9", "7b9"},
    Spelling{"7♭9", "7b9"},
    Spelling{"7addb9", "7b9"},
    Spelling{"7+9", "7#9"},
    Spelling{"7♯9", "7#9"},
    Spelling{"7+11", "7#11"},
    Spelling{"M7#11", "maj7#11"},
    Spelling{"9+11", "9#11"},
};

// "b7" above the root is {6, 10}.
Interval intervalFrom(std::string_view degree)
{
    int alter = 0;
    for (; degree.starts_with('b'); degree.remove_prefix(1)) --alter;
    for (; degree.starts_with('#'); degree.remove_prefix(1)) ++alter;
    int number = 1;
    std::from_chars(degree.data(), degree.data() + degree.size(), number);
    Pitch const root = naturalAt(0);
    return {number - 1, midi(naturalAt(number - 1)) - midi(root) + alter};
}

std::vector<Interval> intervalsFrom(std::string_view tones)
{
    std::vector<Interval> intervals;
    while (!tones.empty()) {
        std::size_t const end = std::min(tones.find(' '), tones.size());
        intervals.push_back(intervalFrom(tones.substr(0, end)));
        tones.remove_prefix(std::min(end + 1, tones.size()));
    }
    return intervals;
}

std::string withoutBrackets(std::string_view text)
{
    std::string out;
    std::copy_if(text.begin(), text.end(), std::back_inserter(out),
                 [](char c) { return c != '(' && c != ')'; });
    return out;
}

Kind const* kindNamed(std::string_view suffix)
{
    auto const kind = std::find_if(kinds.begin(), kinds.end(),
                                   [suffix](Kind k) { return k.suffix == suffix; });
    return kind == kinds.end() ? nullptr : &*kind;
}

Kind const* kindFrom(std::string_view written)
{
    if (Kind const* kind = kindNamed(written)) return kind;
    std::string const bare = withoutBrackets(written);
    if (Kind const* kind = kindNamed(bare)) return kind;
    auto const row = std::find_if(spellings.begin(), spellings.end(),
                                  [&bare](Spelling s) { return s.written == bare; });
    return row == spellings.end() ? nullptr : kindNamed(row->suffix);
}

// Bytes of the note name that opens the text: an upper-case letter and its sharps or flats.
std::size_t rootSize(std::string_view text)
{
    if (text.empty() || text[0] < 'A' || text[0] > 'G') return 0;
    std::size_t size = 1;
    for (;;) {
        std::string_view const rest = text.substr(size);
        if (rest.starts_with('#') || rest.starts_with('b'))
            size += 1;
        else if (rest.starts_with("♯") || rest.starts_with("♭"))
            size += std::string_view("♯").size();
        else
            return size;
    }
}

// The bass behind the stroke, in either case: "F#", "f#", "f+" (an old sharp), "nF" (natural).
std::optional<PitchName> bassFrom(std::string_view text)
{
    if (text.size() > 1 && text[0] == 'n') text.remove_prefix(1);
    std::string name(text);
    std::replace(name.begin(), name.end(), '+', '#');
    return pitchNameFrom(name);
}

Chord chordOf(PitchName root, Kind const& kind, std::optional<PitchName> bass = {})
{
    return {root, intervalsFrom(kind.tones), bass, std::string(kind.suffix)};
}

// A chord without brackets around or behind it.
std::optional<Chord> bareChordFrom(std::string_view symbol)
{
    std::size_t const size = rootSize(symbol);
    auto const root = pitchNameFrom(symbol.substr(0, size));
    if (!root) return std::nullopt;
    std::string_view const rest = symbol.substr(size);
    if (Kind const* kind = kindFrom(rest)) return chordOf(*root, *kind);

    std::size_t const stroke = rest.rfind('/');
    if (stroke == std::string_view::npos || stroke + 1 == rest.size()) return std::nullopt;
    std::string_view const before = rest.substr(0, stroke);
    std::string_view const behind = rest.substr(stroke + 1);
    if (auto const bass = bassFrom(behind)) {
        Kind const* kind = kindFrom(before);
        if (kind == nullptr) return std::nullopt;
        return chordOf(*root, *kind, *bass == *root ? std::nullopt : bass);
    }
    // "D7/b9", "C/dim": the stroke only parts the suffix.
    if (Kind const* kind = kindFrom(std::string(before) + std::string(behind)))
        return chordOf(*root, *kind);
    return std::nullopt;
}

// "(D7)", and the halves of a bracket that spans several symbols: "(A7", "D)".
std::string_view withoutOuterBrackets(std::string_view symbol)
{
    if (symbol.starts_with('(')) symbol.remove_prefix(1);
    if (symbol.ends_with(')') && symbol.find('(') == std::string_view::npos)
        symbol.remove_suffix(1);
    return base::trimmed(symbol);
}

// "G7(Em)": the bracketed alternative is left to the player.
std::string_view withoutAlternative(std::string_view symbol)
{
    std::size_t const open = symbol.rfind('(');
    if (open == std::string_view::npos || open == 0 || !symbol.ends_with(')')) return symbol;
    std::string_view const inside = symbol.substr(open + 1, symbol.size() - open - 2);
    return bareChordFrom(inside) ? base::trimmed(symbol.substr(0, open)) : symbol;
}

} // namespace

std::string_view suffixTones(std::string_view suffix)
{
    Kind const* kind = kindNamed(suffix);
    return kind ? kind->tones : std::string_view{};
}

PitchName lowest(Chord const& chord) { return chord.bass ? *chord.bass : chord.root; }

std::vector<PitchName> toneNames(Chord const& chord)
{
    std::vector<PitchName> names;
    for (Interval tone : chord.tones) names.push_back(transposed(chord.root, tone));
    return names;
}

bool contains(Chord const& chord, int wanted)
{
    if (chord.bass && pitchClass(*chord.bass) == wanted) return true;
    for (PitchName name : toneNames(chord))
        if (pitchClass(name) == wanted) return true;
    return false;
}

Chord noChord() { return {{}, {}, {}, "N.C."}; }

namespace {

// F with a flat fifth is F(b5): Fb5 is F flat with a bare fifth.
std::string afterRoot(std::string const& suffix)
{
    bool const sign = suffix.starts_with('b') || suffix.starts_with('#');
    return sign ? '(' + suffix + ')' : suffix;
}

} // namespace

std::string shown(Chord const& chord)
{
    if (isNoChord(chord)) return chord.suffix;
    return shown(chord.root) + afterRoot(chord.suffix) +
           (chord.bass ? '/' + shown(*chord.bass) : "");
}
std::string plain(Chord const& chord)
{
    if (isNoChord(chord)) return chord.suffix;
    return plain(chord.root) + afterRoot(chord.suffix) +
           (chord.bass ? '/' + plain(*chord.bass) : "");
}

Chord transposed(Chord chord, Interval by)
{
    if (isNoChord(chord)) return chord;
    chord.root = transposed(chord.root, by);
    if (chord.bass) chord.bass = transposed(*chord.bass, by);
    return chord;
}

base::Result<Chord> chordFrom(std::string_view symbol)
{
    std::string_view const text = base::trimmed(symbol);
    if (text == "N.C." || text == "NC" || text == "N.C") return noChord();
    if (auto chord = bareChordFrom(text)) return std::move(*chord);
    if (auto chord = bareChordFrom(withoutOuterBrackets(text))) return std::move(*chord);
    if (auto chord = bareChordFrom(withoutAlternative(text))) return std::move(*chord);
    return base::Fault{base::FaultCode::BadChord, "", std::string(symbol)};
}

namespace {

std::string replaced(std::string text, std::string_view from, std::string_view to)
{
    for (std::size_t at = text.find(from); at != std::string::npos;
         at = text.find(from, at + to.size()))
        text.replace(at, from.size(), to);
    return text;
}

// Typed signs in the spelling that files use: no blanks, plain sharps and flats, a plain hyphen.
std::string inPlainSigns(std::string_view typed)
{
    std::string text(typed);
    std::erase_if(text, [](char c) { return c == ' ' || c == '\t'; });
    text = replaced(text, "♯", "#");
    text = replaced(text, "♭", "b");
    text = replaced(text, "−", "-"); // minus
    text = replaced(text, "–", "-"); // dash
    return text;
}

bool saysNoChord(std::string_view text)
{
    std::string letters;
    for (char c : text)
        if (c != '.' && c != ' ') letters += (c >= 'a' && c <= 'z') ? static_cast<char>(c - 32) : c;
    return letters == "NC";
}

} // namespace

base::Result<Chord> typedChordFrom(std::string_view typed)
{
    if (saysNoChord(typed)) return noChord();
    std::string text = inPlainSigns(typed);
    // "D5no3", "E-B only" and the like: a root and its fifth alone.
    if (auto const no = text.find("no3"); no != std::string::npos && no > 0)
        text = replaced(replaced(text, "(no3)", "no3"), "no3", "5");
    bool const small = !text.empty() && text[0] >= 'a' && text[0] <= 'g';
    if (small) {
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
        std::size_t const size = rootSize(text);
        std::string_view const rest = std::string_view(text).substr(size);
        bool const saysKind = rest.starts_with('m') || rest.starts_with('M') ||
                              rest.starts_with('-') || rest.starts_with("dim") ||
                              rest.starts_with("aug") || rest.starts_with("sus") ||
                              rest.starts_with('5') || rest.starts_with('o') ||
                              rest.starts_with("°") || rest.starts_with("ø") ||
                              rest.starts_with('+') || rest.starts_with("add");
        if (!saysKind) text.insert(size, "m");
    }
    auto chord = chordFrom(text);
    if (!chord) return base::Fault{base::FaultCode::BadChord, "", std::string(typed)};
    return chord;
}

} // namespace music
