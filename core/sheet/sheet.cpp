#include "core/sheet/sheet.h"

#include "core/arrange/unfold.h"
#include "core/hands/easing.h"
#include "core/sheet/engrave.h"
#include "core/sheet/handcrossing.h"
#include "core/sheet/lefthand.h"
#include "core/sheet/levercues.h"
#include "core/sheet/melody.h"
#include "core/sheet/papers/cautions.h"
#include "core/sheet/papers/shapes.h"
#include "core/sheet/placings.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace sheet {

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

// Two chords at one place, for the first and second time, are printed side by side.
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

std::vector<Label> patternLabels(arrange::Arrangement const& arrangement, int bar, bool shown)
{
    std::vector<Label> labels;
    for (int index : printedPositions(arrangement, bar)) {
        arrange::ArrangedPosition const& position =
            arrangement.positions[static_cast<std::size_t>(index)];
        bool const silent = position.voicing.notes.empty();
        labels.push_back({position.position.at,
                          shown && !silent ? position.voicing.pattern : std::string{}, index});
    }
    return labels;
}

std::string harpLine(arrange::Arrangement const& arrangement)
{
    return std::to_string(arrangement.harp.count()) + " strings · " +
           music::shown(arrangement.harp.tuning()) + " tuning · level " +
           std::to_string(arrangement.level.number);
}

// Tune, chords and annotations: what every sheet has.
Score leadScore(tune::Tune const& tune, std::vector<arrange::NoteFingers> const& fingers,
                std::vector<arrange::AddedBelow> const& added, SheetStyle const& style)
{
    Score score;
    score.tune = tune;
    score.grand = false;
    score.notes = tune.notes;
    for (int i = 0; i < static_cast<int>(tune.bars.size()); ++i) {
        tune::Bar const& bar = tune.bars[static_cast<std::size_t>(i)];
        SheetBar out;
        out.upper = melodyBar(tune, i, fingers, added);
        if (style.chordSymbols) out.chords = chordLabels(bar);
        out.annotations = annotationLabels(bar);
        score.bars.push_back(std::move(out));
    }
    score.wordsBelow = tune.words;
    return score;
}

// What the hands are to mind, each thing once with all the bars it holds for.
std::vector<std::string> handLines(arrange::Arrangement const& arrangement)
{
    constexpr std::size_t mostBars = 8;
    std::vector<std::pair<std::string, std::vector<int>>> byWords;
    for (arrange::HandRemark const& remark : arrangement.handRemarks) {
        if (!hands::easesHand(remark)) continue; // a changed finger is printed itself
        std::string const words =
            (remark.hand == harp::Side::Left ? "left hand: " : "right hand: ") + remark.words;
        auto found = std::find_if(byWords.begin(), byWords.end(),
                                  [&words](auto const& one) { return one.first == words; });
        if (found == byWords.end()) found = byWords.insert(byWords.end(), {words, {}});
        if (found->second.empty() || found->second.back() != remark.bar)
            found->second.push_back(remark.bar);
    }
    std::vector<std::string> lines;
    for (auto const& [words, bars] : byWords) {
        std::string line = bars.size() > 1 ? "Bars " : "Bar ";
        for (std::size_t i = 0; i < std::min(bars.size(), mostBars); ++i) {
            tune::Bar const& bar = arrangement.tune.bars[static_cast<std::size_t>(bars[i])];
            line += (i > 0 ? ", " : "") + std::to_string(bar.number);
        }
        lines.push_back(line + (bars.size() > mostBars ? " and others, " : ", ") + words + '.');
    }
    return lines;
}

void addLeftHand(Score& score, arrange::Arrangement const& arrangement, SheetStyle const& style)
{
    for (int i = 0; i < static_cast<int>(score.bars.size()); ++i) {
        SheetBar& bar = score.bars[static_cast<std::size_t>(i)];
        bar.lower = leftBar(arrangement, i);
        if (!style.fingers)
            for (StaffNote& note : bar.lower.notes) note.fingers.clear();
        bar.leverCues = leverCues(arrangement, i);
        moveHighNotes(bar, score.tune.bars[static_cast<std::size_t>(i)]);
    }
    if (style.fingers) score.footLines = handLines(arrangement);
    if (style.fingers && style.placings) score.placings = placingBrackets(arrangement);
    for (std::string& line : cautions(arrangement)) score.footLines.push_back(std::move(line));
    score.caution = care;
}

void addLabels(Score& score, arrange::Arrangement const& arrangement, bool shown)
{
    for (int i = 0; i < static_cast<int>(score.bars.size()); ++i)
        score.bars[static_cast<std::size_t>(i)].labels = patternLabels(arrangement, i, shown);
    score.setupLine = harp::setupLine(arrangement.harp, arrangement.levers.setup);
    score.levers = leverPicture(arrangement.harp, arrangement.levers.setup);
    score.harpLine = harpLine(arrangement);
}

tune::Tune withTempo(arrange::Arrangement const& arrangement)
{
    tune::Tune tune = arrangement.tune;
    tune.tempo = arrangement.tempo;
    return tune;
}

} // namespace

namespace {

Score grandScore(arrange::Arrangement const& arrangement, SheetStyle const& style)
{
    Score score = leadScore(withTempo(arrangement),
                            style.fingers ? arrangement.rightFingers
                                          : std::vector<arrange::NoteFingers>{},
                            arrangement.added, style);
    score.grand = true;
    addLeftHand(score, arrangement, style);
    addLabels(score, arrangement, style.patternLabels);
    if (style.shapes) score.shapes = shapesUsed(arrangement);
    return score;
}

Document grandSheet(arrange::Arrangement const& arrangement, MusicFont const& font,
                    SheetStyle const& style)
{
    return engraved(grandScore(arrangement, style), font, style);
}

Document labelledSheet(arrange::Arrangement const& arrangement, MusicFont const& font,
                       SheetStyle const& style)
{
    Score score = leadScore(withTempo(arrangement), {}, {}, style);
    addLabels(score, arrangement, true);
    return engraved(score, font, style);
}

std::optional<int> mapped(std::optional<int> index, std::vector<int> const& to)
{
    return index ? std::optional(to[static_cast<std::size_t>(*index)]) : std::nullopt;
}

// Whoever clicks on a page means bars and positions of the arrangement as it is.
Document folded(Document document, arrange::Unfolded const& unfolded)
{
    for (Page& page : document.pages) {
        for (Mark& mark : page.marks) {
            mark.bar = mapped(mark.bar, unfolded.bars);
            mark.position = mapped(mark.position, unfolded.positions);
        }
        for (Area& area : page.areas) {
            area.bar = *mapped(area.bar, unfolded.bars);
            area.position = mapped(area.position, unfolded.positions);
        }
    }
    return document;
}

using Sheet = Document (*)(arrange::Arrangement const&, MusicFont const&, SheetStyle const&);

// What is printed is what is played: passes that differ are written out.
Document asPlayed(Sheet sheet, arrange::Arrangement const& arrangement, MusicFont const& font,
                  SheetStyle const& style)
{
    if (!arrange::passesDiffer(arrangement)) return sheet(arrangement, font, style);
    arrange::Unfolded const unfolded = arrange::unfolded(arrangement);
    return folded(sheet(unfolded.arrangement, font, style), unfolded);
}

} // namespace

Document arrangementSheet(arrange::Arrangement const& arrangement, MusicFont const& font,
                          SheetStyle const& style)
{
    return asPlayed(grandSheet, arrangement, font, style);
}

Breaks commonBreaks(std::vector<arrange::Arrangement> const& arrangements,
                    MusicFont const& font, SheetStyle const& style)
{
    std::vector<Score> scores;
    for (arrange::Arrangement const& arrangement : arrangements)
        scores.push_back(grandScore(arrangement, style));
    return commonBreaks(scores, font, style);
}

Document patternSheet(arrange::Arrangement const& arrangement, MusicFont const& font,
                      SheetStyle const& style)
{
    return asPlayed(labelledSheet, arrangement, font, style);
}

Document leadSheet(tune::Tune const& tune, MusicFont const& font, SheetStyle const& style)
{
    return engraved(leadScore(tune, {}, {}, style), font, style);
}

} // namespace sheet
