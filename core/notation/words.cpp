#include "core/notation/words.h"

#include "core/notation/lefthand.h"
#include "core/pattern/pattern.h"
#include "core/tune/jumps.h"

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
        if (!tune::wayMark(words.text)) labels.push_back({words.at, words.text, std::nullopt});
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
        if (auto const known = tune::wayMark(words.text)) add(words.at, known->words);
    for (tune::Note const& note : bar.notes)
        for (std::string const& mark : note.marks)
            if (auto const known = tune::wayMark(mark)) add(note.at, known->words);
    return labels;
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
    for (tune::BarIndex const bar : tune.bars.indices())
        for (tune::Note const& note : tune.bars[bar].notes)
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
    return isDynamic(mark) || hairpinEnd(mark) || tune::wayMark(mark);
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

std::string patternWords(arrange::Voicing const& voicing)
{
    auto const shape = pattern::patternFrom(voicing.pattern);
    bool const oneByOne =
        voicing.pattern.find_first_of("+~(") == std::string::npos &&
        std::ranges::adjacent_find(voicing.notes, [](auto const& a, auto const& b) {
            return a.at >= b.at;
        }) == voicing.notes.end();
    if (!shape || !oneByOne || shape->notes.size() != voicing.notes.size())
        return patternWords(voicing.pattern);
    std::vector<int> degrees, ofShape;
    for (arrange::VoicedNote const& note : voicing.notes) degrees.push_back(note.degree);
    for (pattern::PatternNote const& note : shape->notes) ofShape.push_back(note.degree);
    if (!std::ranges::is_permutation(degrees, ofShape)) return patternWords(voicing.pattern);
    std::string played;
    for (arrange::VoicedNote const& note : voicing.notes)
        played += (played.empty() ? "" : "-") + pattern::degreeText(note.degree);
    return patternWords(played);
}

std::vector<Label> patternLabels(arrange::Arrangement const& arrangement, tune::BarIndex bar)
{
    std::vector<Label> labels;
    for (arrange::PositionIndex const index : printedPositions(arrangement, bar)) {
        arrange::ArrangedPosition const& position = arrangement.positions[index];
        bool const silent = position.voicing.notes.empty();
        labels.push_back({position.position.at,
                          silent ? std::string{} : patternWords(position.voicing), index});
    }
    return labels;
}

} // namespace notation
