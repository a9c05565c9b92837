#include "core/files/musicxml/words.h"

#include <algorithm>
#include <array>
#include <utility>

namespace files::musicxml {

namespace {

// Halvings of a semibreve, from the breve on [mxml40].
constexpr std::array<std::string_view, 12> types{"breve",  "whole", "half",  "quarter",
                                                 "eighth", "16th",  "32nd",  "64th",
                                                 "128th",  "256th", "512th", "1024th"};

struct KindRow {
    std::string_view suffix;
    std::string_view kind;
    // "+9" adds a tone, "5b" alters one, "-3" leaves one out; parted by blanks.
    std::string_view degrees;
};

// Suffixes of music::Chord as kind and degrees [mxml40]. Added tones
// count from those of a dominant chord, so a plain 7 is the minor seventh.
constexpr std::array kinds{
    KindRow{"", "major", ""},
    KindRow{"m", "minor", ""},
    KindRow{"5", "power", ""},
    KindRow{"6", "major-sixth", ""},
    KindRow{"m6", "minor-sixth", ""},
    KindRow{"6/9", "major-sixth", "+9"},
    KindRow{"m6/9", "minor-sixth", "+9"},
    KindRow{"7", "dominant", ""},
    KindRow{"m7", "minor-seventh", ""},
    KindRow{"maj7", "major-seventh", ""},
    KindRow{"mMaj7", "major-minor", ""},
    KindRow{"9", "dominant-ninth", ""},
    KindRow{"m9", "minor-ninth", ""},
    KindRow{"maj9", "major-ninth", ""},
    KindRow{"mMaj9", "major-minor", "+9"},
    KindRow{"11", "dominant-11th", "-3"},
    KindRow{"m11", "minor-11th", ""},
    KindRow{"13", "dominant-13th", "-11"},
    KindRow{"m13", "minor-13th", ""},
    KindRow{"maj13", "major-13th", "-11"},
    KindRow{"add9", "major", "+9"},
    KindRow{"m(add9)", "minor", "+9"},
    KindRow{"add11", "major", "+11"},
    KindRow{"dim", "diminished", ""},
    KindRow{"dim7", "diminished-seventh", ""},
    KindRow{"m7b5", "half-diminished", ""},
    KindRow{"aug", "augmented", ""},
    KindRow{"7#5", "augmented-seventh", ""},
    KindRow{"maj7#5", "major-seventh", "5#"},
    KindRow{"sus2", "suspended-second", ""},
    KindRow{"sus4", "suspended-fourth", ""},
    KindRow{"7sus2", "suspended-second", "+7"},
    KindRow{"7sus4", "suspended-fourth", "+7"},
    KindRow{"9sus4", "suspended-fourth", "+7 +9"},
    KindRow{"b5", "major", "5b"},
    KindRow{"7b5", "dominant", "5b"},
    KindRow{"maj7b5", "major-seventh", "5b"},
    KindRow{"7b9", "dominant", "+9b"},
    KindRow{"7#9", "dominant", "+9#"},
    KindRow{"7#11", "dominant", "+11#"},
    KindRow{"maj7#11", "major-seventh", "+11#"},
    KindRow{"7b13", "dominant", "+13b"},
    KindRow{"9#11", "dominant-ninth", "+11#"},
    KindRow{"13b9", "dominant-13th", "9b -11"},
    // Players leave these tones out whether or not a file says so.
    KindRow{"11", "dominant-11th", ""},
    KindRow{"13", "dominant-13th", ""},
    KindRow{"maj13", "major-13th", ""},
    KindRow{"maj9", "major-11th", ""},
    KindRow{"13b9", "dominant-13th", "9b"},
};

// The kinds whose tones no suffix of ours has, as degrees of the major scale [mxml40].
struct KindTones {
    std::string_view kind;
    std::string_view tones; // "1 b3 5"
};
constexpr std::array fullKinds{
    KindTones{"dominant-11th", "1 3 5 b7 9 11"},
    KindTones{"major-11th", "1 3 5 7 9 11"},
    KindTones{"dominant-13th", "1 3 5 b7 9 11 13"},
    KindTones{"major-13th", "1 3 5 7 9 11 13"},
};

std::vector<std::string_view> words(std::string_view text)
{
    std::vector<std::string_view> out;
    while (!text.empty()) {
        std::size_t const end = std::min(text.find(' '), text.size());
        if (end > 0) out.push_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return out;
}

int numberIn(std::string_view text)
{
    int number = 0;
    for (char c : text)
        if (c >= '0' && c <= '9') number = number * 10 + (c - '0');
    return number;
}

int alterIn(std::string_view text)
{
    return static_cast<int>(std::count(text.begin(), text.end(), '#')) -
           static_cast<int>(std::count(text.begin(), text.end(), 'b'));
}

Degree degreeFrom(std::string_view word)
{
    std::string const type = word[0] == '+' ? "add" : word[0] == '-' ? "subtract" : "alter";
    return {numberIn(word), alterIn(word), type};
}

std::vector<Degree> degreesFrom(std::string_view text)
{
    std::vector<Degree> degrees;
    for (std::string_view const word : words(text)) degrees.push_back(degreeFrom(word));
    return degrees;
}

// A chord as the tones it has: degree and semitones against the major scale, in order.
using Tones = std::vector<std::pair<int, int>>;

std::string_view tonesInWords(std::string_view kind)
{
    for (KindTones const& full : fullKinds)
        if (full.kind == kind) return full.tones;
    for (KindRow const& row : kinds)
        if (row.kind == kind && row.degrees.empty()) return music::suffixTones(row.suffix);
    return {};
}

std::optional<Tones> tonesOf(std::string_view kind)
{
    Tones tones;
    for (std::string_view const word : words(tonesInWords(kind)))
        tones.emplace_back(numberIn(word), alterIn(word));
    return tones.empty() ? std::nullopt : std::optional(tones);
}

void apply(Degree const& degree, Tones& tones)
{
    auto const found = std::find_if(tones.begin(), tones.end(), [&degree](auto const& tone) {
        return tone.first == degree.value;
    });
    if (degree.type == "subtract") {
        if (found != tones.end()) tones.erase(found);
    } else if (degree.type == "alter" && found != tones.end()) {
        found->second += degree.alter;
    } else {
        // An altered tone that is not there is one added.
        constexpr int seventh = 7;
        bool const third =
            std::ranges::any_of(tones, [](auto const& tone) { return tone.first == 3; });
        bool const low = third && (degree.value == 2 || degree.value == 4);
        int const value = degree.value + (low ? seventh : 0); // a second is a ninth
        tones.emplace_back(value, degree.alter - (value == seventh ? 1 : 0));
    }
}

std::optional<Tones> tonesOf(std::string_view kind, std::vector<Degree> const& degrees)
{
    auto tones = tonesOf(kind);
    if (!tones) return std::nullopt;
    for (Degree const& degree : degrees) apply(degree, *tones);
    std::sort(tones->begin(), tones->end());
    tones->erase(std::unique(tones->begin(), tones->end()), tones->end());
    return tones;
}

// Those that ABC 2.1 names in section 4.14; of several names for one sign the first is read.
constexpr std::array marks{
    MarkElement{"staccato", "articulations", "staccato"},
    MarkElement{"accent", "articulations", "accent"},
    MarkElement{">", "articulations", "accent"},
    MarkElement{"emphasis", "articulations", "accent"},
    MarkElement{"marcato", "articulations", "strong-accent"},
    MarkElement{"tenuto", "articulations", "tenuto"},
    MarkElement{"wedge", "articulations", "staccatissimo"},
    MarkElement{"breath", "articulations", "breath-mark"},
    MarkElement{"trill", "ornaments", "trill-mark"},
    MarkElement{"turn", "ornaments", "turn"},
    MarkElement{"invertedturn", "ornaments", "inverted-turn"},
    MarkElement{"lowermordent", "ornaments", "mordent"},
    MarkElement{"mordent", "ornaments", "mordent"},
    MarkElement{"uppermordent", "ornaments", "inverted-mordent"},
    MarkElement{"pralltriller", "ornaments", "inverted-mordent"},
    MarkElement{"upbow", "technical", "up-bow"},
    MarkElement{"downbow", "technical", "down-bow"},
    MarkElement{"open", "technical", "open-string"},
    MarkElement{"thumb", "technical", "thumb-position"},
    MarkElement{"snap", "technical", "snap-pizzicato"},
    MarkElement{"plus", "technical", "stopped"},
    MarkElement{"+", "technical", "stopped"},
    MarkElement{"harmonic", "technical", "harmonic"},
    MarkElement{"fermata", "", "fermata"},
    MarkElement{"arpeggio", "", "arpeggiate"},
    MarkElement{"pppp", "dynamics", "pppp"},
    MarkElement{"ppp", "dynamics", "ppp"},
    MarkElement{"pp", "dynamics", "pp"},
    MarkElement{"p", "dynamics", "p"},
    MarkElement{"mp", "dynamics", "mp"},
    MarkElement{"mf", "dynamics", "mf"},
    MarkElement{"f", "dynamics", "f"},
    MarkElement{"ff", "dynamics", "ff"},
    MarkElement{"fff", "dynamics", "fff"},
    MarkElement{"ffff", "dynamics", "ffff"},
    MarkElement{"sfz", "dynamics", "sfz"},
    MarkElement{"sf", "dynamics", "sf"},
    MarkElement{"fp", "dynamics", "fp"},
    MarkElement{"fz", "dynamics", "fz"},
    MarkElement{"rfz", "dynamics", "rfz"},
};

// Signs at a note that MusicXML has as directions of their own [mxml40].
constexpr std::array directions{
    MarkElement{"segno", "", "segno"}, MarkElement{"coda", "", "coda"},
    MarkElement{"muffle", "", "damp"}, MarkElement{"muffleall", "", "damp-all"}};

} // namespace

MarkElement const* directionOf(std::string_view mark)
{
    auto const found = std::find_if(directions.begin(), directions.end(),
                                    [mark](MarkElement const& m) { return m.mark == mark; });
    return found == directions.end() ? nullptr : &*found;
}

MarkElement const* markOfDirection(std::string_view element)
{
    auto const found =
        std::find_if(directions.begin(), directions.end(),
                     [element](MarkElement const& m) { return m.element == element; });
    return found == directions.end() ? nullptr : &*found;
}

std::string_view typeName(notation::NoteValue value)
{
    int const last = static_cast<int>(types.size()) - 1;
    return types[static_cast<std::size_t>(std::clamp(value.halvings + 1, 0, last))];
}

std::optional<int> halvingsOf(std::string_view type)
{
    auto const found = std::find(types.begin(), types.end(), type);
    if (found == types.end()) return std::nullopt;
    return static_cast<int>(found - types.begin()) - 1;
}

std::optional<music::Mode> modeFrom(std::string_view word)
{
    for (music::Mode mode : music::allModes)
        if (music::modeName(mode) == word) return mode;
    if (word == "ionian") return music::Mode::Ionian;
    if (word == "aeolian") return music::Mode::Aeolian;
    return std::nullopt;
}

Kind kindOf(std::string_view suffix)
{
    for (KindRow const& row : kinds)
        if (row.suffix == suffix) return {row.kind, degreesFrom(row.degrees)};
    return {"other", {}};
}

std::optional<std::string> suffixOf(std::string_view kind, std::vector<Degree> const& degrees)
{
    auto const wanted = tonesOf(kind, degrees);
    if (!wanted) return std::nullopt;
    for (KindRow const& row : kinds)
        if (row.kind == kind && degreesFrom(row.degrees) == degrees)
            return std::string(row.suffix);
    for (KindRow const& row : kinds)
        if (tonesOf(row.kind, degreesFrom(row.degrees)) == wanted)
            return std::string(row.suffix);
    return std::nullopt;
}

MarkElement const* elementOf(std::string_view mark)
{
    auto const found = std::find_if(marks.begin(), marks.end(),
                                    [mark](MarkElement const& m) { return m.mark == mark; });
    return found == marks.end() ? nullptr : &*found;
}

MarkElement const* markOf(std::string_view group, std::string_view element)
{
    auto const found =
        std::find_if(marks.begin(), marks.end(), [group, element](MarkElement const& m) {
            return m.group == group && m.element == element;
        });
    return found == marks.end() ? nullptr : &*found;
}

} // namespace files::musicxml
