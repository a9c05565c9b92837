#include "core/notation/words.h"

#include "core/notation/lefthand.h"

#include <array>
#include <string_view>

namespace notation {

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
        labels.push_back({words.at, words.text, std::nullopt});
    for (tune::Note const& note : bar.notes)
        for (std::string const& mark : note.marks)
            for (MarkWords const& known : markWords)
                if (known.mark == mark)
                    labels.push_back({note.at, std::string(known.words), std::nullopt});
    return labels;
}

std::vector<Label> patternLabels(arrange::Arrangement const& arrangement, int bar)
{
    std::vector<Label> labels;
    for (int index : printedPositions(arrangement, bar)) {
        arrange::ArrangedPosition const& position =
            arrangement.positions[static_cast<std::size_t>(index)];
        bool const silent = position.voicing.notes.empty();
        labels.push_back(
            {position.position.at, silent ? std::string{} : position.voicing.pattern, index});
    }
    return labels;
}

} // namespace notation
