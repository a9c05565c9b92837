#include "core/notation/words.h"

#include "core/notation/lefthand.h"

#include <algorithm>
#include <array>
#include <optional>

namespace notation {

using music::Length;

namespace {

// "m7b5" as print has it: m7♭5.
std::string withSigns(std::string const& chord)
{
    std::string out;
    for (std::size_t i = 0; i < chord.size(); ++i) {
        bool const altersDigit =
            i > 0 && i + 1 < chord.size() && chord[i + 1] >= '0' && chord[i + 1] <= '9';
        if (altersDigit && chord[i] == 'b')
            out += "♭";
        else if (altersDigit && chord[i] == '#')
            out += "♯";
        else
            out += chord[i];
    }
    return out;
}

std::string chordText(tune::ChordMark const& mark)
{
    std::string const chord = withSigns(music::shown(mark.chord));
    return mark.pass && *mark.pass > 1 ? '(' + chord + ')' : chord;
}

// Marks of ABC 2.1, section 4.14, that are words on a sheet.
struct MarkWords {
    std::string_view mark;
    std::string_view words;
};
constexpr std::array markWords{
    MarkWords{"D.C.", "D.C."},
    MarkWords{"dacapo", "D.C."},
    MarkWords{"D.S.", "D.S."},
    MarkWords{"D.C.alfine", "D.C. al Fine"},
    MarkWords{"D.C.alcoda", "D.C. al Coda"},
    MarkWords{"D.S.alfine", "D.S. al Fine"},
    MarkWords{"D.S.alcoda", "D.S. al Coda"},
    MarkWords{"dacoda", "To Coda"},
    MarkWords{"fine", "Fine"},
};

// Words as they are compared: small letters without blanks and points.
std::string bare(std::string_view words)
{
    std::string out;
    for (char c : words)
        if (c != ' ' && c != '.' && c != '"')
            out += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return out;
}

std::optional<std::string_view> navigationFrom(std::string_view words)
{
    std::string const asked = bare(words);
    for (MarkWords const& known : markWords)
        if (bare(known.words) == asked || bare(known.mark) == asked) return known.words;
    return std::nullopt;
}

// The dynamics of ABC 2.1, section 4.14, and of MusicXML 4.0.
bool isDynamic(std::string_view mark)
{
    constexpr std::array names{"pppp", "ppp", "pp", "p",   "mp",  "mf",  "f",
                               "ff",   "fff", "ffff", "sfz", "sf", "fp", "fz", "rfz"};
    return std::find(names.begin(), names.end(), mark) != names.end();
}

struct HairpinEnd {
    bool crescendo = true;
    bool opens = true;
};
std::optional<HairpinEnd> hairpinEnd(std::string_view mark)
{
    if (mark == "crescendo(" || mark == "<(") return HairpinEnd{true, true};
    if (mark == "crescendo)" || mark == "<)") return HairpinEnd{true, false};
    if (mark == "diminuendo(" || mark == ">(") return HairpinEnd{false, true};
    if (mark == "diminuendo)" || mark == ">)") return HairpinEnd{false, false};
    return std::nullopt;
}

} // namespace

std::vector<Label> chordLabels(tune::Bar const& bar)
{
    std::vector<Label> labels;
    for (tune::ChordMark const& mark : bar.chords) {
        if (!labels.empty() && labels.back().at == mark.at)
            labels.back().text += ' ' + chordText(mark);
        else
            labels.push_back({mark.at, chordText(mark), std::nullopt});
    }
    return labels;
}

std::vector<Label> annotationLabels(tune::Bar const& bar)
{
    std::vector<Label> labels;
    for (tune::Annotation const& words : bar.annotations)
        if (!navigationFrom(words.text)) labels.push_back({words.at, words.text, std::nullopt});
    return labels;
}

std::vector<Label> navigationLabels(tune::Bar const& bar)
{
    std::vector<Label> labels;
    auto const add = [&labels](Length at, std::string_view words) {
        bool const told = std::any_of(labels.begin(), labels.end(),
                                      [words](Label const& l) { return l.text == words; });
        if (!told) labels.push_back({at, std::string(words), std::nullopt});
    };
    for (tune::Annotation const& words : bar.annotations)
        if (auto const known = navigationFrom(words.text)) add(words.at, *known);
    for (tune::Note const& note : bar.notes)
        for (std::string const& mark : note.marks)
            for (MarkWords const& known : markWords)
                if (known.mark == mark) add(note.at, known.words);
    return labels;
}

std::optional<std::string_view> navigationMark(std::string_view words)
{
    for (MarkWords const& known : markWords)
        if (bare(known.words) == bare(words)) return known.mark;
    return std::nullopt;
}

std::vector<Label> dynamicLabels(tune::Bar const& bar)
{
    std::vector<Label> labels;
    for (tune::Note const& note : bar.notes)
        for (std::string const& mark : note.marks)
            if (isDynamic(mark)) labels.push_back({note.at, mark, std::nullopt});
    return labels;
}

std::vector<Hairpin> hairpins(tune::Tune const& tune)
{
    std::vector<Hairpin> out;
    std::array<std::optional<Spot>, 2> open; // crescendo, diminuendo
    for (int bar = 0; bar < static_cast<int>(tune.bars.size()); ++bar)
        for (tune::Note const& note : tune.bars[static_cast<std::size_t>(bar)].notes)
            for (std::string const& mark : note.marks) {
                auto const end = hairpinEnd(mark);
                if (!end) continue;
                auto& begun = open[end->crescendo ? 0 : 1];
                if (end->opens) {
                    begun = Spot{bar, note.at};
                } else if (begun) {
                    out.push_back({*begun, {bar, note.at + note.length}, end->crescendo});
                    begun.reset();
                }
            }
    return out;
}

bool isToldInWords(std::string_view mark)
{
    return isDynamic(mark) || hairpinEnd(mark) ||
           std::any_of(markWords.begin(), markWords.end(),
                       [mark](MarkWords const& known) { return known.mark == mark; });
}

std::string patternWords(std::string const& name)
{
    bool const below =
        name.find("low") != std::string::npos || name.find("deep") != std::string::npos;
    if (!below) return name;
    std::string out;
    for (std::size_t i = 0; i < name.size(); ++i) {
        bool const digit = name[i] >= '0' && name[i] <= '9';
        bool const letterBefore = i > 0 && name[i - 1] >= 'a' && name[i - 1] <= 'z';
        if (digit && letterBefore) out += ' ';
        out += name[i] == '-' ? std::string(", ") : std::string(1, name[i]);
    }
    return out;
}

std::vector<Label> patternLabels(arrange::Arrangement const& arrangement, int bar)
{
    std::vector<Label> labels;
    for (int index : printedPositions(arrangement, bar)) {
        arrange::ArrangedPosition const& position =
            arrangement.positions[static_cast<std::size_t>(index)];
        bool const silent = position.voicing.notes.empty();
        labels.push_back({position.position.at,
                          silent ? std::string{} : patternWords(position.voicing.pattern),
                          index});
    }
    return labels;
}

} // namespace notation
